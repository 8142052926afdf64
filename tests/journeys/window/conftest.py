"""What the journeys share: one world a run, and windows that are closed after each test."""

import itertools
import os
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from window import DESKTOP, PHONE, Window, end_reminders
from world import Home, World

Open = Callable[..., Window]
SIZES = {"phone": PHONE, "desktop": DESKTOP}


@pytest.fixture(scope="session")
def world(tmp_path_factory: pytest.TempPathFactory) -> World:
    """Two clinics and the files of one of them."""
    return World.new(tmp_path_factory.mktemp("world") / "made")


@pytest.fixture(scope="session")
def at_home(world: World, tmp_path_factory: pytest.TempPathFactory) -> Home:
    """A patient who has taken the plan in, and has the first two minutes behind them."""
    folder = tmp_path_factory.mktemp("at-home")
    home = Home(folder / "data")
    home.receive(world)
    window = Window(home, folder / "home", PHONE)
    try:
        window.at("first")
        window.press("first-later")
        window.at("day")
    finally:
        window.close()
        end_reminders(folder)
    return home


@pytest.fixture
def empty(tmp_path: Path) -> Home:
    """A data folder without anything."""
    return Home(tmp_path / "data")


@pytest.fixture
def patient(at_home: Home, tmp_path: Path) -> Home:
    """A patient with a plan, of one's own."""
    home = Home(tmp_path / "data")
    home.copy_of(at_home)
    return home


@pytest.fixture(params=list(SIZES))
def size(request: pytest.FixtureRequest) -> tuple[int, int]:
    """A phone's window, and a desktop's."""
    return SIZES[request.param]


@pytest.fixture
def open_window(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[Open]:
    """Opens windows. After a failure, what they showed is kept as a picture."""
    windows: list[Window] = []
    numbers = itertools.count()

    def opened(
        data: Home,
        size: tuple[int, int] = PHONE,
        file: Path | None = None,
        more: dict[str, str] | None = None,
    ) -> Window:
        window = Window(data, tmp_path / "home", size, file, more)
        windows.append(window)
        return window

    yield opened
    has_failed = getattr(request.node, "has_failed", False)
    for window in windows:
        if has_failed and window.processes():
            window.shoot(f"{request.node.name}-{next(numbers)}")
        if window.server.poll() is None:
            window.close()
    end_reminders(tmp_path)


def pytest_configure(config: pytest.Config) -> None:
    """Knows the one mark."""
    config.addinivalue_line("markers", "alone: must be in time, so nothing else runs meanwhile")


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Leaves every so manieth test to this hand, if there are several."""
    hand, _, hands = os.environ.get("SENDALUNA_HAND", "0/1").partition("/")
    items[:] = items[int(hand) :: int(hands)]


@pytest.hookimpl(wrapper=True)
def pytest_runtest_makereport(
    item: pytest.Item, call: pytest.CallInfo[None]
) -> Iterator[None]:
    """Remembers whether a test has failed."""
    report = yield
    if report.failed:
        item.has_failed = True
    return report

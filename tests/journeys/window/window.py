"""The real window, driven through WebDriver.

Every window has a data folder, a home folder, ports and an environment of its own.
"""

import contextlib
import json
import os
import signal
import socket
import subprocess
import time
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any, TypeVar

from selenium.common.exceptions import JavascriptException, WebDriverException
from selenium.webdriver import Remote
from selenium.webdriver.common.action_chains import ActionChains
from selenium.webdriver.common.options import BaseOptions
from selenium.webdriver.remote.client_config import ClientConfig
from selenium.webdriver.support.ui import WebDriverWait
from urllib3.exceptions import HTTPError
from Xlib import X
from Xlib.display import Display
from Xlib.protocol.event import ClientMessage

from words import say
from world import BIN_DIR, ROOT, ZONE, Home

PROGRAM = BIN_DIR / "sendaluna"
SHOTS = ROOT / "target" / "journeys"
AXE = ROOT / "ui" / "node_modules" / "axe-core" / "axe.min.js"
SCRIPTS = Path(__file__).resolve().parent / "page.js"
PHONE = (360, 640)
DESKTOP = (1100, 800)
# So long anything may take before it counts as not happening.
PATIENCE_S = 20.0
POLL_S = 0.05
# A hand takes so long from one tap to the next; what comes sooner is taken for a shaking one.
HAND_S = 0.45
# A window that is still there after so long was never told to close.
LOST_S = 3.0
# So long the driver may take for one command.
DRIVER_PATIENCE_S = 25
# The European rules' levels, and the contrast that this program promises beyond them.
AXE_TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"]
AXE_BEYOND = "color-contrast-enhanced"

T = TypeVar("T")


class Options(BaseOptions):
    """The capabilities that the driver of this kind of window reads."""

    def __init__(self, args: list[str]) -> None:
        super().__init__()
        self.args = args

    @property
    def default_capabilities(self) -> dict[str, str]:
        """None that would narrow the choice."""
        return {}

    def to_capabilities(self) -> dict[str, Any]:
        """Which program to start, with which arguments."""
        return {"browserName": "wry", "tauri:options": {"application": str(PROGRAM), "args": self.args}}


def driver_program() -> str:
    """The driver: the one that was installed for the tests, else the one on the path."""
    ours = ROOT / "target" / "tools" / "bin" / "tauri-driver"
    return str(ours) if ours.exists() else "tauri-driver"


def free_port() -> int:
    """A port that nobody listens on."""
    with socket.socket() as found:
        found.bind(("127.0.0.1", 0))
        return int(found.getsockname()[1])


def environment(home: Path) -> dict[str, str]:
    """A fixed environment with a home folder of its own."""
    kept = ("PATH", "DISPLAY", "XAUTHORITY", "DBUS_SESSION_BUS_ADDRESS")
    fixed = {name: os.environ[name] for name in kept if name in os.environ}
    fixed |= {"LANG": "en_US.UTF-8", "TZ": ZONE, "HOME": str(home), "WEBKIT_DISABLE_DMABUF_RENDERER": "1"}
    for name, place in (("CONFIG", "config"), ("DATA", "data"), ("CACHE", "cache"), ("STATE", "state")):
        fixed[f"XDG_{name}_HOME"] = str(home / place)
    runtime = home / "runtime"
    runtime.mkdir(mode=0o700, parents=True, exist_ok=True)
    return fixed | {"XDG_RUNTIME_DIR": str(runtime), "GTK_A11Y": "none", "NO_AT_BRIDGE": "1"}


def prefer(home: Path, *lines: str) -> None:
    """Sets the desktop of this home folder."""
    file = home / "config" / "gtk-3.0" / "settings.ini"
    file.parent.mkdir(parents=True, exist_ok=True)
    said = file.read_text(encoding="utf-8").splitlines() if file.exists() else ["[Settings]"]
    said += [line for line in lines if line not in said]
    file.write_text("\n".join([*said, ""]), encoding="utf-8")


def prefer_dark(home: Path) -> None:
    """The desktop of this home folder is dark."""
    prefer(home, "gtk-theme-name=Adwaita-dark", "gtk-application-prefer-dark-theme=1")


class Window:
    """A window that is open."""

    def __init__(
        self,
        data: Home,
        home: Path,
        size: tuple[int, int],
        file: Path | None = None,
        more: dict[str, str] | None = None,
    ) -> None:
        self.data = data
        self.home = home
        self.lang = "en"
        self.tapped = 0.0
        self.env = environment(home) | (more or {})
        self.args = ["--data", str(data.folder), "--key-in-file"]
        port, native = free_port(), free_port()
        command = [driver_program(), "--port", str(port), "--native-port", str(native)]
        self.log = (home / "driver.log").open("ab")
        self.server = subprocess.Popen(command, env=self.env, stdout=self.log, stderr=self.log)
        try:
            url = f"http://127.0.0.1:{port}"
            wait_for_port(port)
            wait_for_port(native)
            options = Options(self.args + ([str(file)] if file else []))
            pool = {"init_args_for_pool_manager": {"retries": False}}
            config = ClientConfig(url, timeout=DRIVER_PATIENCE_S, init_args_for_pool_manager=pool)
            self.driver = Remote(url, options=options, client_config=config)
            self.driver.set_script_timeout(DRIVER_PATIENCE_S - 5)
            self.resize(size)
            self.until(lambda: self.screen() not in ("", "blank"), "a first page")
        except BaseException:
            self.server.kill()
            raise

    # Its life.

    def close(self) -> None:
        """Closes the window, and ends its driver."""
        with contextlib.suppress(WebDriverException, HTTPError, OSError):
            self.driver.quit()
        self.server.terminate()
        self.server.wait(10)
        self.log.close()
        # On a busy machine the driver's wish to close is at times lost; a hand's never was.
        with contextlib.suppress(AssertionError):
            until(lambda: not self.processes(), "a closed window", lambda: "", LOST_S)
        for process in self.processes():
            with contextlib.suppress(ProcessLookupError):
                os.kill(process, signal.SIGTERM)
        until(lambda: not self.processes(), "the end of the program", lambda: str(self.processes()))

    def processes(self) -> list[int]:
        """The program's processes on this data folder."""
        found = []
        for folder in Path("/proc").iterdir():
            if not folder.name.isdigit():
                continue
            try:
                words = (folder / "cmdline").read_bytes().decode().split("\0")
                dead = " Z " in (folder / "stat").read_text(encoding="utf-8")
            except (OSError, UnicodeDecodeError):
                continue
            if words[0] == str(PROGRAM) and str(self.data.folder) in words and not dead:
                found.append(int(folder.name))
        return found

    def close_by_hand(self) -> None:
        """Asks the window to close as a window manager does: WM_DELETE_WINDOW (ICCCM, 4.2.8.1)."""
        screen = Display(self.env["DISPLAY"])
        protocols, delete = (screen.intern_atom(name) for name in ("WM_PROTOCOLS", "WM_DELETE_WINDOW"))
        for number in self.x_windows():
            window = screen.create_resource_object("window", int(number))
            data = (32, [delete, X.CurrentTime, 0, 0, 0])
            window.send_event(ClientMessage(window=window, client_type=protocols, data=data))
        screen.sync()
        screen.close()

    def kill(self) -> None:
        """The battery is flat: the program ends without a word."""
        for process in self.processes():
            os.kill(process, signal.SIGKILL)
        self.close()

    def start_again_with(self, file: Path, **env: str) -> int:
        """A second start of the program with a file; gives its exit code."""
        command = [str(PROGRAM), *self.args, str(file)]
        return subprocess.run(command, env=self.env | env, check=False, timeout=PATIENCE_S).returncode

    def x_windows(self) -> list[str]:
        """The ids of the program's windows on the screen, hidden ones too."""
        command = ["xdotool", "search", "--name", "^Sendaluna$"]
        done = subprocess.run(command, env=self.env, capture_output=True, text=True, check=False)
        return done.stdout.split()

    def x_hide(self, hidden: bool) -> None:
        """Takes the window off the screen, or puts it back."""
        for window in self.x_windows():
            act = "windowunmap" if hidden else "windowmap"
            subprocess.run(["xdotool", act, window], env=self.env, check=True)

    def resize(self, size: tuple[int, ...]) -> None:
        """Makes it a phone's or a desktop's."""
        width, height = size
        self.driver.set_window_rect(0, 0, width, height)
        self.until(lambda: self.js("return [innerWidth, innerHeight]") == [*size], f"a window of {size}")
        # The page is laid out anew with a later frame.
        frames = "const done = arguments[0]; requestAnimationFrame(() => requestAnimationFrame(() => done()))"
        self.driver.execute_async_script(frames)

    # What it shows.

    def js(self, script: str, *args: Any) -> Any:
        """Runs a script in the page."""
        return self.driver.execute_script(script, *args)

    def page(self, call: str, *args: Any) -> Any:
        """Calls one of the helpers that live in the page."""
        source = SCRIPTS.read_text(encoding="utf-8")
        return self.js(f"{source}\nreturn helpers.{call}(...arguments)", *args)

    def screen(self) -> str:
        """The name of the page that is shown."""
        found = self.js("return document.querySelector('[data-screen]')?.dataset.screen ?? ''")
        return str(found)

    def stage(self) -> str:
        """Where a session stands, while it is counted; empty while it waits."""
        return str(self.js("return document.querySelector('[data-stage]')?.dataset.stage ?? ''"))

    def text(self) -> str:
        """Everything that can be read, with single spaces."""
        return str(self.page("text"))

    def title(self) -> str:
        """The page's heading."""
        return str(self.page("text", "h1"))

    def until(self, right: Callable[[], T], what: str, patience_s: float = PATIENCE_S) -> T:
        """Waits until something is so."""
        return until(right, what, lambda: f"{self.screen()}: {self.text()[:600]}", patience_s)

    def at(self, screen: str, patience_s: float = PATIENCE_S) -> None:
        """Waits for a page."""
        self.until(lambda: self.screen() == screen, f"the page {screen}", patience_s)

    def wait_beside(self, right: Callable[[], T], what: str) -> T:
        """Waits until something is so, without asking the page."""
        return until(right, what, lambda: "none of that", 2 * PATIENCE_S)

    def reads(self, name: str, /, **args: str | int) -> None:
        """Waits until a message can be read."""
        wanted = " ".join(say(name, self.lang, **args).split())
        self.until(lambda: wanted in self.text(), f"“{wanted}”")

    def sees(self, text: str) -> None:
        """Waits until words can be read."""
        self.until(lambda: text in self.text(), f"“{text}”")

    def offers(self, name: str, /, **args: str | int) -> bool:
        """Whether something to press says this."""
        return bool(self.page("control", say(name, self.lang, **args)))

    # What is done in it.

    def press(self, name: str, /, **args: str | int) -> None:
        """Presses what says this message."""
        self.press_text(say(name, self.lang, **args))

    def press_text(self, text: str) -> None:
        """Presses what says these words."""
        self.tap(lambda: self.page("control", text), f"“{text}” to press")

    def press_twice(self, text: str) -> None:
        """Presses what says these words as a shaking hand does."""
        found = self.until(lambda: self.page("control", text), f"“{text}” to press")
        ActionChains(self.driver).double_click(found).perform()
        self.tapped = time.monotonic()

    def press_at(self, selector: str) -> None:
        """Presses what a selector finds."""
        self.tap(lambda: self.js("return document.querySelector(arguments[0])", selector), selector)

    def tap(self, find: Callable[[], Any], what: str) -> None:
        """Presses an element as soon as it is there; tries again if the page changed meanwhile."""

        def pressed() -> bool:
            found = find()
            if not found:
                return False
            try:
                self.js("arguments[0].scrollIntoView({ block: 'center' })", found)
                if time.monotonic() - self.tapped < HAND_S:
                    return False
                found.click()
                self.tapped = time.monotonic()
            except WebDriverException:
                return False
            return True

        self.until(pressed, what)

    def keys(self, keys: str) -> None:
        """Types into whatever has the focus."""
        ActionChains(self.driver).send_keys(keys).perform()

    def invoke(self, command: str, args: dict[str, Any] | None = None) -> tuple[bool, Any]:
        """Asks the host directly; says whether it answered, and what."""
        script = (
            "const done = arguments[2];"
            "window.__TAURI_INTERNALS__.invoke(arguments[0], arguments[1])"
            ".then((value) => done([true, value ?? null]), (reason) => done([false, reason ?? null]))"
        )
        well, value = self.driver.execute_async_script(script, command, args or {})
        return bool(well), value

    def channel(self) -> str:
        """A channel as it is written in a command's arguments."""
        number = self.js("return window.__TAURI_INTERNALS__.transformCallback(() => {})")
        return f"__CHANNEL__:{number}"

    # What is checked of it.

    def axe(self) -> None:
        """No violation on this page, on light and on dark paper."""
        for theme in ("light", "dark"):
            found = self.axe_now(theme)
            assert not found, f"{self.screen()}, {theme}: {json.dumps(found, indent=1)}"

    def axe_now(self, theme: str) -> list[dict[str, Any]]:
        """What is wrong with the page on one paper."""
        if not self.js("return 'axe' in window"):
            # The page's own policy lets no script in; what comes through the driver is not the page's.
            self.js(AXE.read_text(encoding="utf-8") + "\nwindow.axe = axe;")
        script = SCRIPTS.read_text(encoding="utf-8") + (
            "\nconst done = arguments[3];"
            "helpers.axe(arguments[0], arguments[1], arguments[2])"
            ".then(done, (reason) => done([{ id: String(reason) }]))"
        )
        found: list[dict[str, Any]] = self.driver.execute_async_script(script, theme, AXE_TAGS, AXE_BEYOND)
        return found

    def check(self) -> None:
        """On a phone and on a desktop, nothing is wrong with this page."""
        size = tuple(self.js("return [innerWidth, innerHeight]"))
        for other in (PHONE, DESKTOP):
            self.resize(other)
            self.axe()
            self.fits()
        self.resize(size)

    def fits(self) -> None:
        """Nothing has to be scrolled sideways."""
        over = self.js("return document.documentElement.scrollWidth - document.documentElement.clientWidth")
        assert over <= 0, f"{self.screen()}: {over} px too wide"

    def shoot(self, name: str) -> None:
        """Keeps a picture of the screen, where ImageMagick is there to take it."""
        SHOTS.mkdir(parents=True, exist_ok=True)
        with contextlib.suppress(OSError, subprocess.TimeoutExpired):
            command = ["import", "-window", "root", str(SHOTS / f"{name}.png")]
            subprocess.run(command, env=self.env, check=False, timeout=PATIENCE_S)


def end_reminders(folder: Path) -> None:
    """Ends the reminder programs of this data folder and of those under it: they outlive their windows, as they should."""
    reminds = lambda args: Path(args[0]).name == "sendaluna-reminders" and any(  # noqa: E731
        f"{arg}/".startswith(f"{folder}/") for arg in args
    )
    left = lambda: [process for process, args in running() if reminds(args)]  # noqa: E731
    for process in left():
        with contextlib.suppress(ProcessLookupError):
            os.kill(process, signal.SIGTERM)
    until(lambda: not left(), "the end of the reminder programs", lambda: str(left()))


def running() -> Iterator[tuple[int, list[str]]]:
    """Every process that runs, and its arguments."""
    for process in Path("/proc").iterdir():
        if process.name.isdigit():
            with contextlib.suppress(OSError, UnicodeDecodeError):
                args = (process / "cmdline").read_bytes().decode().split("\0")
                if args != [""]:
                    yield int(process.name), args


def wait_for_port(port: int) -> None:
    """Waits until somebody listens."""

    def listens() -> bool:
        with socket.socket() as tried:
            return tried.connect_ex(("127.0.0.1", port)) == 0

    until(listens, f"port {port}", lambda: "nobody listens")


def until(
    right: Callable[[], T], what: str, seen: Callable[[], str], patience_s: float = PATIENCE_S
) -> T:
    """Waits until something is so, or says what there was instead."""
    wait: WebDriverWait[None] = WebDriverWait(None, patience_s, POLL_S, (JavascriptException,))
    try:
        return wait.until(lambda _: right())
    except WebDriverException as error:
        raise AssertionError(f"waited for {what}; there was {seen()}") from error


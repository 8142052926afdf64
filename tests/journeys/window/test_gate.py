"""What is shut stays shut, and the page can do nothing but ask."""

import socket
from collections.abc import Iterator
from typing import Any

import pytest

from conftest import Open
from steps import SHUT
from window import Window
from world import Home, World

NOT_OURS = (
    ("plugin:dialog|open", {"options": {}}),
    ("plugin:dialog|message", {"message": "x"}),
    ("plugin:opener|open_path", {"path": "/etc/hostname"}),
    ("plugin:opener|open_url", {"url": "tel:1"}),
    ("plugin:fs|read_file", {"path": "/etc/hostname"}),
    ("plugin:window|close", {}),
    ("plugin:webview|create_webview", {}),
    ("plugin:event|listen", {"event": "x", "target": {"kind": "Any"}, "handler": 1}),
    ("read_file", {"path": "/etc/hostname"}),
    ("no_such_command", {}),
)


@pytest.fixture
def listener() -> Iterator[socket.socket]:
    """Somebody on this device who would like to be called."""
    with socket.create_server(("127.0.0.1", 0)) as made:
        made.setblocking(False)
        yield made


def refused(window: Window, command: str, **args: Any) -> str:
    """The code with which a command is refused."""
    well, problem = window.invoke(command, args)
    assert not well, f"{command} {args}: {problem}"
    return str(problem["code"])


def was_called(listener: socket.socket) -> bool:
    """Whether anybody has connected."""
    try:
        listener.accept()[0].close()
    except BlockingIOError:
        return False
    return True


def test_a_gate_holds(open_window: Open, patient: Home, size: tuple[int, int]) -> None:
    """No way to begin what is shut, neither on the page nor past it."""
    window = open_window(patient, size)
    window.press_at("[data-item=leg-raise]")
    window.at("not-yet")
    assert window.title() == SHUT
    window.sees("12 weeks after the operation")
    window.sees("Dr Ilka Brandvoll (surgeon)")
    window.reads("not-yet-caution")
    window.reads("ring-clinic", clinic="Larkfield Hip Clinic", phone="555-0171")
    for name in ("item-begin", "before-begin", "day-begin"):
        assert not window.offers(name), name
    assert not window.js("return document.querySelector('[data-do=begin]')")
    window.axe()
    window.fits()

    begin = {"only": "leg-raise", "goesOn": False, "helper": False}
    assert refused(window, "before", only="leg-raise", goesOn=False) == "not-yet"
    well, _ = window.invoke("answer_before", {"signs": [], "pain": {"morning": None, "now": 1}, "helper": False})
    assert well
    assert refused(window, "begin", **begin, channel=window.channel()) == "not-yet"
    begin["goesOn"] = True
    assert refused(window, "begin", **begin, channel=window.channel()) == "no-open-session"
    assert refused(window, "before", only="no-such-thing", goesOn=False) == "no-such-item"
    assert window.invoke("attach", {"channel": window.channel()}) == (True, False)
    window.press("not-yet-back")
    window.at("day")
    assert patient.due("leg-raise")["done"] == 0
    assert not patient.ask("due")["can_go_on"]


def test_the_page_can_do_nothing_else(
    open_window: Open, patient: Home, world: World, listener: socket.socket
) -> None:
    """No other command, no path, no script that is not the program's, no connection."""
    window = open_window(patient)
    window.at("day")
    for command, args in NOT_OURS:
        well, reason = window.invoke(command, args)
        assert not well, f"{command}: {reason}"
        assert "not allowed" in str(reason) or "not found" in str(reason), f"{command}: {reason}"

    path = str(world.newer)
    assert window.invoke("next_file", {"path": path}) == (True, None)
    assert refused(window, "try_code", code=world.clinic.letter_code, path=path) == "no-file"
    assert refused(window, "take_in", digest="", sides=[], today=None, path=path) == "no-file"

    for script in (
        "const made = document.createElement('script'); made.textContent = 'window.ran = 1';"
        "document.body.append(made);",
        "document.body.insertAdjacentHTML('beforeend', '<img src=x onerror=\"window.ran = 1\">');",
        "const made = document.createElement('button'); made.setAttribute('onclick', 'window.ran = 1');"
        "document.body.append(made); made.click(); made.remove();",
        "try { new Function('window.ran = 1')() } catch { }",
        "try { (0, eval)('window.ran = 1') } catch { }",
        "try { setTimeout('window.ran = 1') } catch { }",
    ):
        window.js(script)
        settled(window)
        assert window.js("return window.ran ?? null") is None, script

    port = listener.getsockname()[1]
    url = f"http://127.0.0.1:{port}/"
    assert called(window, f"fetch('{url}', {{ mode: 'no-cors' }})") == "refused"
    assert called(window, picture(url)) == "refused"
    for way in (f"navigator.sendBeacon('{url}', 'x')", f"window.open('{url}')", f"location.href = '{url}'"):
        window.js(way)
    settled(window)
    assert not was_called(listener)
    assert window.js("return location.protocol") == "tauri:"
    window.at("day")


def settled(window: Window) -> None:
    """Two frames and a task have passed in the page."""
    window.driver.execute_async_script(
        "const done = arguments[0];"
        "requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done)))"
    )


def picture(url: str) -> str:
    """A picture from elsewhere."""
    return (
        "new Promise((well, badly) => { const made = new Image(); made.onload = well; made.onerror = badly;"
        f" made.src = '{url}x.png'; }})"
    )


def called(window: Window, promise: str) -> str:
    """What comes of a call to the outside."""
    script = f"const done = arguments[0]; {promise}.then(() => done('let through'), () => done('refused'))"
    return str(window.driver.execute_async_script(script))

"""What a screen reader finds in the window, over AT-SPI. Run by the system's own Python, which has the bindings.

    heard.py tree            everything that is there: role, name, states, what it says of itself
    heard.py live SECONDS    every text that a live region says meanwhile, in order

Answers in JSON.
"""

import json
import sys
import time
from collections.abc import Iterator
from typing import Any

import gi

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi, GLib  # noqa: E402

PROGRAM = "sendaluna"
# Stands in a text for a child that is no text.
OBJECT = "\ufffc"
PATIENCE_S = 20.0
DEEPEST = 60
STATES = {
    "focusable": Atspi.StateType.FOCUSABLE,
    "focused": Atspi.StateType.FOCUSED,
    "pressed": Atspi.StateType.PRESSED,
    "checked": Atspi.StateType.CHECKED,
    "showing": Atspi.StateType.SHOWING,
}


def program() -> Any:
    """The program, as soon as it has told of itself."""
    ends = time.monotonic() + PATIENCE_S
    while time.monotonic() < ends:
        desktop = Atspi.get_desktop(0)
        for number in range(desktop.get_child_count()):
            found = desktop.get_child_at_index(number)
            if found is not None and (found.get_name() or "").lower() == PROGRAM and found.get_child_count():
                return found
        time.sleep(0.1)
    sys.exit("the program never told of itself")


def below(node: Any, depth: int = 0) -> Iterator[Any]:
    """A node and everything below it, in reading order."""
    yield node
    if depth > DEEPEST:
        return
    for number in range(node.get_child_count()):
        child = node.get_child_at_index(number)
        if child is not None:
            yield from below(child, depth + 1)


def text_of(node: Any) -> str:
    """The text that a node holds itself."""
    if "Text" not in node.get_interfaces():
        return ""
    return str(Atspi.Text.get_text(node, 0, -1)).replace(OBJECT, "")


def told(node: Any) -> dict[str, Any]:
    """What a reader is told of a node."""
    states = node.get_state_set()
    return {
        "role": node.get_role_name(),
        "name": node.get_name() or "",
        "text": text_of(node),
        "states": [name for name, state in STATES.items() if states.contains(state)],
        "attributes": node.get_attributes() or {},
    }


def tree() -> list[dict[str, Any]]:
    """Everything that is there."""
    found = []
    for node in below(program()):
        try:
            found.append(told(node))
        except GLib.Error:
            # Gone since it was listed.
            continue
    return found


def live(seconds: float) -> list[list[Any]]:
    """What live regions say, with the moment of each and how politely."""
    # Only what was looked at once tells of its changes.
    tree()
    print("listening", file=sys.stderr, flush=True)
    heard: list[list[Any]] = []
    began = time.monotonic()

    def hear(event: Any) -> None:
        try:
            politeness = (event.source.get_attributes() or {}).get("live")
            if politeness:
                said = " ".join(filter(None, map(text_of, below(event.any_data))))
                heard.append([round(time.monotonic() - began, 2), politeness, said])
        except GLib.Error:
            # Gone before it could be read.
            heard.append([round(time.monotonic() - began, 2), "", ""])

    listener = Atspi.EventListener.new(hear)
    listener.register("object:children-changed:add")
    GLib.timeout_add(int(seconds * 1000), Atspi.event_quit)
    Atspi.event_main()
    return heard


def main() -> None:
    """Answers."""
    Atspi.init()
    answer = live(float(sys.argv[2])) if sys.argv[1] == "live" else tree()
    print(json.dumps(answer, ensure_ascii=False))


if __name__ == "__main__":
    main()

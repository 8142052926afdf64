"""What a screen reader finds in a session: names, roles, and what is said meanwhile."""

import json
import subprocess
from pathlib import Path
from typing import Any

import pytest

from conftest import Open
from steps import RAISE, asks_ready, begin, ready, tally
from window import Window
from words import say
from world import Home

pytestmark = pytest.mark.alone

# The system's own, which has the bindings.
PYTHON = "/usr/bin/python3"
HEARD = Path(__file__).with_name("heard.py")
READER = {"NO_AT_BRIDGE": "0", "GTK_A11Y": "atspi"}
# From before "I am ready" to the end of the first round.
SESSION_S = 14.0
SAID = ["1: go.", "And back.", "2: go.", "And back."]


def found(window: Window) -> list[dict[str, Any]]:
    """Everything that a screen reader finds, in reading order."""
    command = [PYTHON, str(HEARD), "tree"]
    done = subprocess.run(command, env=window.env, capture_output=True, text=True, check=False, timeout=60)
    assert done.returncode == 0, done.stderr
    answer: list[dict[str, Any]] = json.loads(done.stdout)
    return answer


def named(nodes: list[dict[str, Any]], role: str) -> list[str]:
    """The names of everything of one role."""
    return [node["name"] for node in nodes if node["role"] == role]


def test_a_session_is_read_and_said(open_window: Open, patient: Home) -> None:
    """Count, phase, tally and every button have names; each part of a repetition is said once, politely."""
    window = open_window(patient, more=READER)
    begin(window, "raise")
    window.until(lambda: asks_ready(window), "the question")
    listening = [PYTHON, str(HEARD), "live", str(SESSION_S)]
    with subprocess.Popen(
        listening, env=window.env, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True
    ) as reader:
        assert reader.stdout and reader.stderr
        while "listening" not in (line := reader.stderr.readline()):
            assert line, "the reader ended"
        ready(window, RAISE)
        window.until(lambda: tally(window).startswith("1 "), "a repetition")
        nodes = found(window)
        heard = json.loads(reader.stdout.read())

    assert named(nodes, "heading") == [RAISE]
    assert named(nodes, "push button") == [say("session-pause"), say("session-hurts")]
    images = named(nodes, "image")
    assert all(images) and any(image.endswith("of 4 done.") for image in images), images
    texts = [node["text"] for node in nodes if node["role"] == "paragraph"]
    assert any(text.isdigit() for text in texts), f"no count among {texts}"
    assert any(text.startswith(("Go", "Back", "Hold")) for text in texts), f"no phase among {texts}"
    assert [node for node in nodes if "focused" in node["states"]], "nothing has the focus"
    unnamed = [node for node in nodes if node["role"] == "push button" and not node["name"]]
    assert not unnamed, unnamed
    assert [node["attributes"]["live"] for node in nodes if "live" in node["attributes"]] == ["polite"]

    said = [text for _, _, text in heard]
    assert {politeness for _, politeness, _ in heard} == {"polite"}, heard
    assert not [text for text in said if text.isdigit() or not text], said
    assert not [one for one, other in zip(said, said[1:], strict=False) if one == other], said
    at = said.index(SAID[0])
    assert said[at : at + len(SAID)] == SAID, said

"""A session that nobody sees: led from its first cue to its last by speech and tones alone.

What is played is caught by an ear (`sound.py`). Every cue is there, in order and in time; the headset's key is the
only hand.
"""

import subprocess
from pathlib import Path

import pytest

from conftest import Open
from sound import Heard, Room
from steps import SLIDE, begin
from window import PHONE, Window
from words import say
from world import Home, World

pytestmark = pytest.mark.alone

PLAYER = "org.mpris.MediaPlayer2.sendaluna"
# Slow enough for words: out, hold and back of two seconds each, four seconds of rest.
FAST = "out_s = 1, hold_s = 0, back_s = 1, pause_s = 0 }, rest_s = 2"
SLOW = "out_s = 2, hold_s = 2, back_s = 2, pause_s = 0 }, rest_s = 4"
COUNT_IN_S = 3
# So far from its place a tone may be heard.
TONE_OFF_S = 0.15
# A word comes after its tone; so long after its cue at most.
WORD_AFTER_S = 1.1
PATIENCE_S = 90.0


def press_key() -> None:
    """Presses the headset's one key, as a desktop hands it on."""
    to = (f"--dest={PLAYER}", "/org/mpris/MediaPlayer2", "org.mpris.MediaPlayer2.Player.PlayPause")
    subprocess.run(["dbus-send", "--session", "--print-reply", *to], check=True, capture_output=True)


def a_round() -> list[tuple[float, str, str]]:
    """Two repetitions after a count-in: seconds from its beginning, tone, words."""
    cues = [(float(3 - left), "tick", str(left)) for left in (3, 2, 1)]
    for number in (1, 2):
        at = COUNT_IN_S + 6.0 * (number - 1)
        cues += [
            (at, "out", say("cue-out", n=number)),
            (at + 2, "hold", say("stage-hold")),
            (at + 3, "tick", "1"),
            (at + 4, "back", say("cue-back")),
        ]
    return cues


def hear(open_window: Open, patient: Home, world: World, room: Room) -> None:
    """Leads a session with the window off the screen."""
    patient.ask("receive", world.clinic.plan(2, {FAST: SLOW}), "--yes")
    window = open_window(patient, PHONE, more=room.env)
    begin(window, "slide")
    window.until(lambda: window.offers("session-ready"), "the question")
    until_asked(window, room, say("stage-say-when-ready"), 1)
    window.x_hide(True)
    press_key()
    until_asked(window, room, say("cue-end"), 1)
    window.x_hide(False)


def until_asked(window: Window, room: Room, text: str, count: int) -> None:
    """Waits until something was spoken so often."""
    window.until(
        lambda: sum(asked.text == text for asked in room.asked()) >= count, f"“{text}” aloud", PATIENCE_S
    )


def check_times(heard: Heard) -> None:
    """Each tone stands where its cue is, and its words come after it."""
    ticks = [tone for tone in heard.tones if tone.tone == "tick"]
    starts = [ticks[0].at_s]
    rest = next(tone for tone in heard.tones if tone.tone == "rest")
    starts.append(next(tick.at_s for tick in ticks if tick.at_s > rest.at_s))
    for start in starts:
        for offset, name, text in a_round():
            at_s = start + offset
            off = min(abs(tone.at_s - at_s) for tone in heard.tones if tone.tone == name)
            assert off <= TONE_OFF_S, f"{name} at {offset} s is off by {off:.3f} s"
            late = min(asked.at_s - at_s for asked in heard.asked if asked.text == text and asked.at_s >= at_s - 0.1)
            assert late <= WORD_AFTER_S, f"“{text}” at {offset} s comes after {late:.3f} s"


def test_a_session_is_led_by_ear_alone(
    open_window: Open, patient: Home, world: World, tmp_path: Path
) -> None:
    """First cue to last, window hidden: every cue, in order, in time."""
    with Room(tmp_path / "room") as room:
        hear(open_window, patient, world, room)
        heard = room.close()
    round_texts = [text for _, _, text in a_round()]
    done = say("cue-set-done", n=2)
    wanted = [
        say("cue-if-it-hurts"),
        say("cue-set-up", name=SLIDE, side=say("side-left")),
        say("movement-heel-slide-set-up"),
        say("stage-say-when-ready"),
        *round_texts,
        done,
        say("cue-rest", n=4),
        *round_texts,
        done,
        say("cue-end"),
    ]
    assert [asked.text for asked in heard.asked] == wanted
    round_tones = [tone for _, tone, _ in a_round()]
    assert [tone.tone for tone in heard.tones] == ["ready", *round_tones, "rest", *round_tones, "done"]
    check_times(heard)
    assert len(heard.speech) >= len(wanted) // 2, "somebody was heard to speak"

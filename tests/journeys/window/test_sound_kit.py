"""The ear itself: a dozen cues of an example, led at a real tempo, are each heard, in order and in time.

It needs the example that the workspace's tests build: `cargo build -p sendaluna-device --examples`.
"""

import contextlib
import itertools
import json
import os
import subprocess
import threading
from collections.abc import Generator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

from sound import TONES, Heard, Room
from world import BIN_DIR

pytestmark = pytest.mark.alone

EXAMPLE = BIN_DIR / "examples" / "speaks"
PLAYER = "org.mpris.MediaPlayer2.speaks"
PATIENCE_S = 40
# So much later than a cue its tone may begin, and its words after that.
TONE_WITHIN_S = 0.15
WORDS_WITHIN_S = 0.35
# So long what was cut off may still be heard.
CUT_WITHIN_S = 0.25
# So early a measured beginning may seem: clocks and frames.
EARLY_S = 0.04
# A voice may be so soft for so long within a sentence that it is not told from silence.
SOFT_S = 0.25
# A caller may be held up for so long, in millionths of a second, of all cues the middle one.
HANDOVER_US = 1000

Line = dict[str, Any]


@dataclass(frozen=True)
class Run:
    """What the example told, and what was heard of it."""

    lines: list[Line]
    heard: Heard

    def cues(self) -> list[Line]:
        """The cues, in order."""
        return [line for line in self.lines if "cue" in line]

    def told(self, name: str) -> Line:
        """The first line that tells of something."""
        return next(line for line in self.lines if name in line)


def example(env: dict[str, str], *args: str) -> Generator[Line]:
    """Runs the example, and gives line after line; ends it if nobody wants more."""
    with subprocess.Popen([EXAMPLE, *args], env=os.environ | env, stdout=subprocess.PIPE, text=True) as process:
        ends = threading.Timer(PATIENCE_S, process.kill)
        ends.start()
        try:
            assert process.stdout is not None
            yield from map(json.loads, process.stdout)
        except GeneratorExit:
            process.kill()
            raise
        finally:
            ends.cancel()
    assert process.returncode == 0


def press(method: str) -> None:
    """Presses a key, as a desktop hands it on."""
    to = (f"--dest={PLAYER}", "/org/mpris/MediaPlayer2", f"org.mpris.MediaPlayer2.Player.{method}")
    subprocess.run(["dbus-send", "--session", "--print-reply", *to], check=True, capture_output=True)


@pytest.fixture(scope="module")
def run(tmp_path_factory: pytest.TempPathFactory) -> Run:
    """The dozen cues, once."""
    lines = []
    with Room(tmp_path_factory.mktemp("room")) as room:
        for line in example(room.env):
            lines.append(line)
            if line.get("cue") == 6:
                press("PlayPause")
        return Run(lines, room.close())


def test_the_tones_that_are_looked_for_are_those_that_are_made() -> None:
    """Both tables say the same."""
    made = {line["tone"]: [tuple(note) for note in line["notes"]] for line in example({}, "--tones")}
    assert made == TONES


def test_every_tone_is_heard_in_order_and_in_time(run: Run) -> None:
    """Each tone once, soon after its cue, as loud as it was made, and no other."""
    wanted = [line for line in run.cues() if line["tone"]]
    assert [tone.tone for tone in run.heard.tones] == [line["tone"] for line in wanted]
    for line, tone in zip(wanted, run.heard.tones, strict=True):
        assert -EARLY_S <= tone.at_s - line["at_s"] <= TONE_WITHIN_S, line
        assert 0.8 <= tone.level <= 1.2, line


def test_every_text_is_spoken_in_order_and_after_its_tone(run: Run) -> None:
    """Each text is asked for once, and heard soon after its cue and its tone."""
    wanted = [line for line in run.cues() if line["text"]]
    assert [asked.text for asked in run.heard.asked] == [line["text"] for line in wanted]
    for line in wanted:
        tone_s = sum(length + gap for _, length, gap in TONES.get(line["tone"], [])) / 1000
        spoken = run.heard.speech_after(line["at_s"] + tone_s - EARLY_S)
        assert spoken is not None, line
        assert spoken.from_s - line["at_s"] - tone_s <= WORDS_WITHIN_S, line


def test_nothing_is_said_where_nothing_was_to_be_said(run: Run) -> None:
    """A cue with a tone alone brings no words, until the next."""
    silent, after = run.cues()[6], run.cues()[7]
    assert not silent["text"]
    said = [stretch for stretch in run.heard.speech if silent["at_s"] <= stretch.from_s < after["at_s"]]
    assert said == []


def test_a_cut_is_silence_at_once(run: Run) -> None:
    """A long sentence goes on until it is cut off, and no longer."""
    cut_s, sentence = run.told("cut")["at_s"], run.cues()[10]
    heard = run.heard.speech_after(sentence["at_s"] - EARLY_S)
    assert heard is not None
    assert cut_s - SOFT_S <= heard.to_s <= cut_s + CUT_WITHIN_S


def test_whoever_hands_a_cue_over_is_not_held_up(run: Run) -> None:
    """The middle one of all handovers."""
    took = sorted(line["took_us"] for line in run.cues())
    assert took[len(took) // 2] < HANDOVER_US, took


def test_the_state_is_told_and_the_last_word_waited_for(run: Run) -> None:
    """Both are to be had here, and it is quiet in the end."""
    first = run.told("speech")
    assert (first["speech"], first["tones"]) == ("Yes", "Yes")
    assert run.told("quiet")["quiet"] is True


def test_the_play_key_is_heard(run: Run) -> None:
    """As a desktop hands it on, with no window anywhere."""
    assert [line["key"] for line in run.lines if "key" in line] == ["PlayPause"]


def test_without_speech_the_tones_go_on_and_the_reason_is_told(tmp_path: Path) -> None:
    """A room in which nobody speaks: tones alone, and why."""
    with Room(tmp_path, speaks=False) as room:
        with contextlib.closing(example(room.env)) as told:
            lines = list(itertools.takewhile(lambda line: line.get("cue") != 1, told))
        heard = room.close()
    assert lines[0]["speech"] == "No(NoService)"
    assert [tone.tone for tone in heard.tones][:1] == ["ready"]
    assert heard.speech == []

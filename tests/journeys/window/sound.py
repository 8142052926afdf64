"""What can be heard: a sound server, a speech service and an ear, each of the test's own.

A `Room` starts them and gives the environment for the program under test. Its sound server has no device, but
keeps real time. When it is closed, it says which of our tones sounded and when somebody spoke, in seconds since
1970, like every other moment here.
"""

import contextlib
import json
import os
import subprocess
import sys
import threading
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from types import TracebackType
from typing import Any

import numpy as np
from numpy.typing import NDArray
from scipy.signal import correlate, hilbert, resample_poly

Samples = NDArray[np.float64]

HERE = Path(__file__).resolve().parent
# Where Debian puts what speaks.
MODULES = Path("/usr/lib/speech-dispatcher-modules")
ALSA = Path("/usr/share/alsa/alsa.conf")
RATE_HZ = 48_000
# Everything that is looked for lies under half of this.
LOOKED_AT_HZ = 8_000
# So long a service may take to be there.
PATIENCE_S = 10.0
POLL_S = 0.02
# So long what was played still lies in buffers.
BUFFERED_S = 0.3

# Our tones: pitch in Hz, length in ms, gap after it in ms. Written down a second time, so that a change there
# is seen here.
TONES: dict[str, list[tuple[int, int, int]]] = {
    "out": [(523, 70, 0), (784, 130, 0)],
    "hold": [(659, 220, 0)],
    "back": [(698, 130, 0), (466, 70, 0)],
    "rest": [(392, 180, 90), (330, 260, 0)],
    "done": [(440, 110, 20), (554, 110, 20), (740, 280, 0)],
    "tick": [(880, 60, 0)],
    "ready": [(587, 90, 110), (587, 90, 110), (830, 150, 0)],
}
PEAK = 0.4
OCTAVE = 0.2
ATTACK_MS = 8
RELEASE_MS = 30
EDGE_MS = 2

# A tone is there if at least so much of it is.
LEAST_OF_A_TONE = 0.6
# Louder than this is somebody speaking; of full scale.
SPEAKS_FROM = 0.03
FRAME_S = 0.01
# A pause within a sentence is no longer, and a word no shorter.
LONGEST_PAUSE_S = 0.2
SHORTEST_WORD_S = 0.05


@dataclass(frozen=True)
class Sounded:
    """A tone that was heard."""

    tone: str
    at_s: float
    # How loud, of the level at which it is made.
    level: float


@dataclass(frozen=True)
class Stretch:
    """Somebody spoke."""

    from_s: float
    to_s: float


@dataclass(frozen=True)
class Asked:
    """The service was asked to speak."""

    text: str
    at_s: float


@dataclass(frozen=True)
class Heard:
    """What was heard in a room."""

    tones: list[Sounded]
    speech: list[Stretch]
    asked: list[Asked]

    def speech_after(self, at_s: float) -> Stretch | None:
        """The first stretch that begins after a moment."""
        return next((stretch for stretch in self.speech if stretch.from_s >= at_s), None)

    def sounded(self, from_s: float, to_s: float) -> list[str]:
        """The tones that began between two moments."""
        return [tone.tone for tone in self.tones if from_s <= tone.at_s <= to_s]


def made(notes: Sequence[tuple[int, int, int]], rate_hz: int) -> Samples:
    """A tone, as the program makes it."""

    def count(ms: int) -> int:
        return ms * rate_hz // 1000

    def eased(part: Samples) -> Samples:
        part = np.clip(part, 0, 1)
        return part * part * (3 - 2 * part)

    parts = [np.zeros(count(EDGE_MS))]
    for pitch_hz, length_ms, gap_ms in notes:
        at = np.arange(count(length_ms))
        swell = eased(at / count(ATTACK_MS)) * eased((len(at) - 1 - at) / count(RELEASE_MS))
        phase = 2 * np.pi * pitch_hz * at / rate_hz
        wave = (np.sin(phase) + OCTAVE * np.sin(2 * phase)) / (1 + OCTAVE)
        parts += [PEAK * swell * wave, np.zeros(count(gap_ms))]
    return np.concatenate([*parts, np.zeros(count(EDGE_MS))])


def find_tones(heard: Samples, rate_hz: int) -> tuple[list[tuple[str, int, float]], Samples]:
    """Finds tones, the most certain first, each as name, place and level; and what is left without them."""
    left = heard.copy()
    found: list[tuple[str, int, float]] = []
    shapes = {name: hilbert(made(notes, rate_hz)) for name, notes in TONES.items()}
    energies = {name: float(np.sum(shape.real**2)) for name, shape in shapes.items()}
    fits = {name: fit(left, shape, energies[name]) for name, shape in shapes.items()}
    while True:
        best: tuple[float, str, int] | None = None
        for name, of_name in fits.items():
            at = int(np.argmax(np.abs(of_name)))
            level = float(abs(of_name[at]))
            explained = level * level * energies[name]
            if level >= LEAST_OF_A_TONE and (best is None or explained > best[0]):
                best = (explained, name, at)
        if best is None:
            return found, left
        _, name, at = best
        shape, weight = shapes[name], fits[name][at]
        found.append((name, at, float(abs(weight))))
        left[at : at + len(shape)] -= (np.conj(weight) * shape).real
        for other, of_other in fits.items():
            # Only what overlaps has changed.
            first = max(0, at - len(shapes[other]))
            last = min(len(of_other), at + len(shape))
            part = left[first : last + len(shapes[other]) - 1]
            of_other[first:last] = fit(part, shapes[other], energies[other])


def fit(heard: Samples, shape: NDArray[np.complex128], energy: float) -> NDArray[np.complex128]:
    """How much of a tone begins at each place, whatever its phase."""
    if len(heard) < len(shape):
        return np.zeros(0, dtype=np.complex128)
    fitted: NDArray[np.complex128] = correlate(heard.astype(np.complex128), shape, mode="valid", method="fft")
    # The shape is analytic: its imaginary part is the same tone a quarter of a wave later.
    return np.asarray(np.conj(fitted) / energy, dtype=np.complex128)


def find_speech(heard: Samples, rate_hz: int) -> list[tuple[float, float]]:
    """Stretches that are louder than silence, in seconds."""
    frame = int(FRAME_S * rate_hz)
    frames = heard[: len(heard) // frame * frame].reshape(-1, frame)
    loud = np.sqrt(np.mean(frames**2, axis=1)) > SPEAKS_FROM
    stretches: list[tuple[float, float]] = []
    for at in np.flatnonzero(loud) * FRAME_S:
        if stretches and at - stretches[-1][1] <= LONGEST_PAUSE_S:
            stretches[-1] = (stretches[-1][0], at + FRAME_S)
        else:
            stretches.append((at, at + FRAME_S))
    return [(begins, ends) for begins, ends in stretches if ends - begins >= SHORTEST_WORD_S]


@dataclass
class Ear:
    """Listens to a sound server, and remembers when each piece came in."""

    process: subprocess.Popen[bytes]
    pieces: list[bytes] = field(default_factory=list)
    # The earliest that the first sample can have been heard, as each piece tells.
    begins: list[float] = field(default_factory=list)

    def listen(self) -> None:
        """Reads until the server hangs up."""
        assert self.process.stdout is not None
        length = 0
        while piece := os.read(self.process.stdout.fileno(), 65_536):
            self.pieces.append(piece)
            length += len(piece)
            self.begins.append(time.time() - length / 2 / RATE_HZ)

    def heard(self) -> tuple[Samples, float]:
        """Everything, and when it began."""
        whole = b"".join(self.pieces)
        samples = np.frombuffer(whole[: len(whole) // 2 * 2], dtype="<i2").astype(np.float64) / 32_768
        # A piece may come late, never early.
        return samples, min(self.begins, default=time.time())


class Room:
    """A sound server, a speech service and an ear, until it is closed."""

    def __init__(self, folder: Path, *, speaks: bool = True) -> None:
        self.folder = folder
        self.runtime = folder / "sound"
        self.runtime.mkdir(mode=0o700, parents=True)
        self.pulse = self.runtime / "sound.sock"
        self.speech = self.runtime / "speech.sock"
        self.spoken = self.runtime / "spoken.jsonl"
        self.log = (self.runtime / "services.log").open("ab")
        self.processes: list[subprocess.Popen[bytes]] = []
        self.env = {
            "PULSE_SERVER": f"unix:{self.pulse}",
            "ALSA_CONFIG_PATH": str(self.write("alsa.conf", alsa_settings())),
            "SPEECHD_ADDRESS": f"unix_socket:{self.speech}",
        }
        try:
            self.serve_sound()
            self.ear = self.open_ear()
            if speaks:
                self.serve_speech()
        except BaseException:
            self.stop()
            raise

    def __enter__(self) -> "Room":
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self.stop()

    def write(self, name: str, text: str) -> Path:
        """Puts a file of settings into the room."""
        path = self.runtime / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")
        return path

    def start(self, command: Sequence[str | Path], **more: Any) -> subprocess.Popen[bytes]:
        """Starts one of the services, in a home of its own."""
        home = {"HOME": str(self.runtime), "XDG_RUNTIME_DIR": str(self.runtime), "LC_ALL": "C.UTF-8"}
        env = {"PATH": os.environ["PATH"]} | home | self.env
        given: dict[str, Any] = {"stdin": subprocess.DEVNULL, "stdout": self.log, "stderr": self.log}
        process = subprocess.Popen(list(command), env=env, **(given | more))
        self.processes.append(process)
        return process

    def serve_sound(self) -> None:
        """Starts a server whose only output leads nowhere, in real time."""
        sink = f"load-module module-null-sink sink_name=room rate={RATE_HZ} channels=2 format=s16le norewinds=1"
        socket = f"load-module module-native-protocol-unix socket={self.pulse} auth-anonymous=1"
        settings = self.write("sound.pa", f"{sink}\n{socket}\n")
        quiet = ("--daemonize=no", "--use-pid-file=no", "--exit-idle-time=-1", "--log-level=error")
        server = self.start(["pulseaudio", "-n", "-F", settings, *quiet])
        wait_for(self.pulse.exists, server, "the sound server")

    def open_ear(self) -> Ear:
        """Begins to listen to all that is played."""
        form = ("--format=s16le", f"--rate={RATE_HZ}", "--channels=1", "--raw", "--latency-msec=10")
        ear = Ear(self.start(["parec", "--device=room.monitor", *form], stdout=subprocess.PIPE))
        threading.Thread(target=ear.listen, daemon=True).start()
        wait_for(lambda: bool(ear.pieces), ear.process, "the ear")
        return ear

    def serve_speech(self) -> None:
        """Starts a speech service with one voice, whose every text is written down."""
        voice = [sys.executable, HERE / "spoken.py", self.spoken, MODULES / "sd_espeak-ng"]
        script = self.write("voice", "#!/bin/sh\nexec " + " ".join(f"'{part}'" for part in voice) + ' "$@"\n')
        script.chmod(0o755)
        self.write("settings/modules/voice.conf", "Debug 0\n")
        settings = (
            "LogLevel 2",
            f'LogDir "{self.runtime}"',
            'AudioOutputMethod "pulse"',
            f'AddModule "espeak-ng" "{script}" "voice.conf"',
            "DefaultModule espeak-ng",
            "DefaultLanguage en",
        )
        self.write("settings/speechd.conf", "\n".join(settings) + "\n")
        places = ("-C", self.runtime / "settings", "-S", self.speech, "-P", self.runtime / "speech.pid")
        kept = ("-L", self.runtime, "-t", "0")
        service = self.start(["speech-dispatcher", "--run-single", *places, *kept])
        wait_for(self.speech.exists, service, "the speech service")

    def close(self) -> Heard:
        """Ends everything, and says what was heard."""
        time.sleep(BUFFERED_S)
        self.stop()
        return self.heard()

    def stop(self) -> None:
        """Ends what was started here, the last first."""
        for process in reversed(self.processes):
            process.terminate()
        for process in self.processes:
            try:
                process.wait(PATIENCE_S)
            except subprocess.TimeoutExpired:
                process.kill()
                process.wait()
        self.processes.clear()
        self.log.close()

    def heard(self) -> Heard:
        """What was heard so far."""
        samples, began_s = self.ear.heard()
        low = resample_poly(samples, 1, RATE_HZ // LOOKED_AT_HZ)
        found, rest = find_tones(low, LOOKED_AT_HZ)
        tones = [Sounded(name, began_s + at / LOOKED_AT_HZ, level) for name, at, level in found]
        speech = [Stretch(began_s + a, began_s + b) for a, b in find_speech(rest, LOOKED_AT_HZ)]
        return Heard(sorted(tones, key=lambda tone: tone.at_s), speech, self.asked())

    def asked(self) -> list[Asked]:
        """What was to be spoken."""
        if not self.spoken.exists():
            return []
        lines = self.spoken.read_text(encoding="utf-8").splitlines()
        return [Asked(**json.loads(line)) for line in lines]


def alsa_settings() -> str:
    """The usual ones, with the server as the one output."""
    ours = "pcm.!default { type pulse }\nctl.!default { type pulse }\n"
    return f"<{ALSA}>\n{ours}"


def wait_for(is_there: Callable[[], bool], process: subprocess.Popen[bytes], what: str) -> None:
    """Waits until something is there."""
    until = time.monotonic() + PATIENCE_S
    while not is_there():
        assert process.poll() is None, f"{what} has ended"
        assert time.monotonic() < until, f"{what} does not come"
        with contextlib.suppress(subprocess.TimeoutExpired):
            process.wait(POLL_S)

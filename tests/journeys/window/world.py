"""Two invented clinics and a patient, made with the real clinic program.

The doses are so short that a whole session takes seconds. Everything is made once a run.
"""

import datetime
import json
import os
import shutil
import subprocess
from dataclasses import dataclass
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

ROOT = Path(__file__).resolve().parents[3]
BIN_DIR = Path(os.environ.get("SENDALUNA_BIN_DIR", ROOT / "target" / "debug")).resolve()
SOURCES = Path(__file__).resolve().parent / "world"
ZONE = "Europe/Dublin"
# The patient is in week 3; what is shut opens with week 13.
DAYS_AGO = 16
SHUT_FOR_WEEKS = 12

# Every test that a clinic can ask for at home.
TESTS = "".join(
    f'[[home_tests]]\nid = "{name}"\nepisode = "hip"\ntest = "{test}"\nfrom_week = 2\nevery_weeks = 4\n'
    for name, test in (("rise", "chair-stand"), ("go", "timed-up-and-go"), ("stand", "four-stage-balance"))
)
# The thigh squeeze once, or twice after one whole session; it stands where its order does in the source.
ORDER = "order = 20\n"
GRADED = """order = 20

[items.graded]
start = 1
up_after_sessions = 1
up_pain_at_most = 2
down_pain_over = 4
doses = [
    { sets = 1, repetitions = 1, tempo = { out_s = 1, hold_s = 1, back_s = 1, pause_s = 0 } },
    { sets = 1, repetitions = 2, tempo = { out_s = 1, hold_s = 1, back_s = 1, pause_s = 0 } },
]
"""

PASSPHRASE = {"SENDALUNA_PASSPHRASE": "four invented window words"}
ENV = {name: value for name, value in os.environ.items() if not name.startswith("SENDALUNA_")}
ENV |= PASSPHRASE | {"LC_ALL": "C.UTF-8", "TZ": ZONE}


def run(program: str, *args: str | Path, folder: Path | None = None) -> dict[str, Any]:
    """Runs one of the two programs, which must succeed, and gives its answer."""
    command = [BIN_DIR / program, *args, "--json"]
    done = subprocess.run(command, cwd=folder, env=ENV, capture_output=True, text=True, check=False)
    assert done.returncode == 0, f"{program} {args}: {done.stdout}{done.stderr}"
    answer: dict[str, Any] = json.loads(done.stdout or "{}")
    return answer


def today() -> datetime.date:
    """Today where the patient is."""
    return datetime.datetime.now(ZoneInfo(ZONE)).date()


def day_zero() -> datetime.date:
    """The day of the operation."""
    return today() - datetime.timedelta(days=DAYS_AGO)


def opens() -> datetime.date:
    """The day on which what is shut opens."""
    return day_zero() + datetime.timedelta(weeks=SHUT_FOR_WEEKS)


def dates() -> dict[str, str]:
    """Every placeholder of the sources, filled."""
    return {
        "@DAY0@": day_zero().isoformat(),
        "@SIGNERS_FROM@": (day_zero() - datetime.timedelta(days=30)).isoformat(),
        "@LAST_DAY@": (day_zero() + datetime.timedelta(weeks=16, days=-1)).isoformat(),
        "@REVIEW_BY@": (day_zero() + datetime.timedelta(weeks=13, days=-1)).isoformat(),
        "@HOME_TESTS@": "",
    }


def fill(name: str, folder: Path, changes: dict[str, str]) -> None:
    """Puts a source into a folder, with its dates and other changes."""
    text = (SOURCES / name).read_text(encoding="utf-8")
    for old, new in (dates() | changes).items():
        text = text.replace(old, new)
    (folder / name).write_text(text, encoding="utf-8")


@dataclass(frozen=True)
class Clinic:
    """A clinic with its keys and its list of signers."""

    folder: Path
    name: str
    letter_code: str

    @classmethod
    def new(cls, folder: Path, name: str) -> "Clinic":
        """Makes the keys, and signs the list and the precautions."""
        folder.mkdir(parents=True)
        for who in ("clinic", "surgeon", "therapist"):
            run("sendaluna-clinic", "key", "new", "--out", f"{who}.key", folder=folder)
        run("sendaluna-clinic", "key", "new", "--for", "reports", "--out", "reports.key", folder=folder)
        fill("signers.toml", folder, {"@CLINIC@": name})
        fill("precautions.toml", folder, {})
        given: tuple[str, ...] = ("--key", "clinic.key", "--out", "signers.jws")
        run("sendaluna-clinic", "signers", "sign", "signers.toml", *given, folder=folder)
        given = ("--signers", "signers.jws", "--key", "surgeon.key", "--out", "precautions.jws")
        run("sendaluna-clinic", "precautions", "sign", "precautions.toml", *given, folder=folder)
        code = run("sendaluna-clinic", "letter-code", "--signers", "signers.jws", folder=folder)
        return cls(folder, name, code["letter_code"])

    def plan(self, revision: int = 1, changes: dict[str, str] | None = None) -> Path:
        """Signs a revision of the plan."""
        fill("plan.toml", self.folder, {"@CLINIC@": self.name, "@REVISION@": str(revision)} | (changes or {}))
        out = self.folder / f"plan-{revision}.sendaluna"
        given: list[str | Path] = ["--signers", "signers.jws", "--precautions", "precautions.jws"]
        if revision > 1:
            given += ["--previous", f"plan-{revision - 1}.sendaluna"]
        given += ["--key", "therapist.key", "--out", out]
        run("sendaluna-clinic", "plan", "sign", "plan.toml", *given, folder=self.folder)
        return out


@dataclass(frozen=True)
class World:
    """What every test starts from."""

    clinic: Clinic
    plan: Path
    newer: Path
    altered: Path
    other_clinic: Clinic

    @classmethod
    def new(cls, folder: Path) -> "World":
        """Makes both clinics and all files."""
        clinic = Clinic.new(folder / "clinic", "Larkfield Hip Clinic")
        other = Clinic.new(folder / "other", "Saltmarsh Clinic")
        plan = clinic.plan()
        return cls(clinic, plan, clinic.plan(2), alter(plan, folder / "altered.sendaluna"), other)


def alter(plan: Path, out: Path) -> Path:
    """The plan with one character of a signed part changed."""
    text = plan.read_text(encoding="utf-8")
    at = len(text) // 2
    changed = "A" if text[at] != "A" else "B"
    out.write_text(text[:at] + changed + text[at + 1 :], encoding="utf-8")
    return out


class Home:
    """A patient's data folder, seen with the terminal."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder

    def ask(self, *args: str | Path) -> dict[str, Any]:
        """Runs a command of the patient's program here."""
        return run("sendaluna", *args, "--data", self.folder, "--key-in-file")

    def receive(self, world: World) -> None:
        """Takes the first plan in."""
        given = ("--code", world.clinic.letter_code, "--side", "left", "--yes")
        self.ask("receive", world.plan, *given)

    def due(self, item: str) -> dict[str, Any]:
        """One item as `due` tells of it."""
        day = self.ask("due")
        found: list[dict[str, Any]] = [view for view in day["due"] + day["not_yet"] if view["item"] == item]
        assert found, f"{item}: {day}"
        return found[0]

    def copy_of(self, other: "Home") -> None:
        """Begins as another home is now."""
        shutil.copytree(other.folder, self.folder)

"""Runs the two programs, and lets them make what `demo/run` makes.

Programs are taken from `SENDALUNA_BIN_DIR`, else from `target/debug`.
"""

import datetime
import json
import os
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parents[3]
BIN_DIR = Path(os.environ.get("SENDALUNA_BIN_DIR", ROOT / "target" / "debug")).resolve()
ENV = {name: value for name, value in os.environ.items() if not name.startswith("SENDALUNA_")}
ENV |= {"SENDALUNA_PASSPHRASE": "for these checks only", "LC_ALL": "C.UTF-8"}


# Whatever takes longer hangs, and is named.
ANSWERS_WITHIN_S = 300


@dataclass(frozen=True)
class Answer:
    """What a program answered."""

    exit_code: int
    text: str

    @property
    def json(self) -> dict[str, Any]:
        """The answer as JSON; empty if it is none."""
        try:
            value = json.loads(self.text)
        except ValueError:
            return {}
        return value if isinstance(value, dict) else {}

    @property
    def error(self) -> str:
        """The stable code of a refusal; empty if there is none."""
        return str(self.json.get("error", {}).get("code", ""))


def run(program: str, *args: str | Path, folder: Path | None = None) -> Answer:
    """Runs a program in a folder."""
    command = [BIN_DIR / program, *args]
    done = subprocess.run(
        command, cwd=folder, env=ENV, capture_output=True, text=True, check=False, timeout=ANSWERS_WITHIN_S
    )
    return Answer(done.returncode, done.stdout or done.stderr)


def clinic(*args: str | Path, folder: Path | None = None) -> Answer:
    """Runs the clinic's program."""
    return run("sendaluna-clinic", *args, folder=folder)


def clinic_does(*args: str | Path, folder: Path | None = None) -> Answer:
    """Runs the clinic's program; it must succeed, or nothing more can be checked."""
    answer = clinic(*args, folder=folder)
    if answer.exit_code != 0:
        raise SystemExit(f"sendaluna-clinic {' '.join(map(str, args))}: {answer.text}")
    return answer


def show(file: Path) -> Answer:
    """The clinic verifies a plan file and shows what it says."""
    return clinic("plan", "show", file, "--json")


def receive(file: Path, data: Path, code: str, side: str) -> Answer:
    """The patient's program takes a plan file in."""
    given = ("--code", code, "--side", side, "--yes", "--json", "--data", data, "--key-in-file")
    return run("sendaluna", "receive", file, *given)


def demo_sources() -> list[Path]:
    """Every source of the demo."""
    return sorted(p for p in (ROOT / "demo").glob("*/*.toml") if p.parent.name != "out" and p.name != "Cargo.toml")


def fill(source: Path, out: Path, days_ago: int) -> None:
    """Fills the dates of a demo source with the demo's own program."""
    day_zero = datetime.date.today() - datetime.timedelta(days=days_ago)
    command: list[str | Path] = [
        sys.executable,
        ROOT / "demo" / "fill.py",
        source,
        out,
        "--day-zero",
        str(day_zero),
    ]
    subprocess.run(command, check=True)


def make_keys(folder: Path, reports_to: str = "") -> None:
    """The keys that the demo's sources name; reports are sealed to another program's key if one is given."""
    for name in ("clinic", "surgeon", "therapist"):
        clinic_does("key", "new", "--out", f"{name}.key", folder=folder)
    clinic_does("key", "new", "--for", "reports", "--out", "reports.key", folder=folder)
    if reports_to:
        (folder / "reports.key.pub").write_text(f"{reports_to}\n")


def sign_demo(name: str, folder: Path, days_ago: int, reports_to: str = "") -> Path:
    """Makes one demo clinic's keys and signed parts in a folder, and its plan file."""
    for source in (ROOT / "demo" / name).glob("*.toml"):
        fill(source, folder / source.name, days_ago)
    make_keys(folder, reports_to)
    given = ("--key", "clinic.key", "--out", "signers.jws")
    clinic_does("signers", "sign", "signers.toml", *given, folder=folder)
    sign_statement(folder, "precautions", "surgeon")
    return sign_plan(folder, "plan", ["precautions"])


def sign_statement(folder: Path, name: str, who: str) -> Path:
    """Signs a precaution statement."""
    given = ("--signers", "signers.jws", "--key", f"{who}.key", "--out", f"{name}.jws")
    clinic_does("precautions", "sign", f"{name}.toml", *given, folder=folder)
    return folder / f"{name}.jws"


def sign_plan(folder: Path, name: str, statements: list[str], previous: str = "") -> Path:
    """Signs a plan that rests on statements."""
    ground = ["--signers", "signers.jws", "--precautions", *(f"{s}.jws" for s in statements)]
    ground += ["--previous", f"{previous}.sendaluna"] if previous else []
    given = (*ground, "--key", "therapist.key", "--out", f"{name}.sendaluna")
    clinic_does("plan", "sign", f"{name}.toml", *given, folder=folder)
    return folder / f"{name}.sendaluna"

"""Stands between the speech service and its voice, and writes down what is to be spoken, and when.

The service starts it in the place of a module: LOG, the module itself, and what the module is given.
"""

import json
import re
import subprocess
import sys
import time
from collections.abc import Iterable
from typing import IO

# What the service asks to be spoken, letter by letter or not.
ASKS = {b"SPEAK\n", b"CHAR\n", b"KEY\n", b"SOUND_ICON\n"}
TAG = re.compile(r"<[^>]*>")


def pass_on(lines: Iterable[bytes], module: IO[bytes], log: IO[str]) -> None:
    """Hands every line on, and writes down the texts among them."""
    text: list[str] | None = None
    for line in lines:
        module.write(line)
        module.flush()
        if text is None:
            text = [] if line in ASKS else None
        elif line == b".\n":
            said = TAG.sub("", " ".join(text)).strip()
            log.write(json.dumps({"at_s": time.time(), "text": said}) + "\n")
            log.flush()
            text = None
        else:
            text.append(line.decode("utf-8", "replace").strip())


def main() -> int:
    """Runs until the service hangs up. What the module answers goes straight to the service."""
    log_path, *command = sys.argv[1:]
    with (
        open(log_path, "a", encoding="utf-8") as log,
        subprocess.Popen(command, stdin=subprocess.PIPE) as module,
    ):
        assert module.stdin is not None
        pass_on(iter(sys.stdin.buffer.readline, b""), module.stdin, log)
        module.stdin.close()
        return module.wait()


if __name__ == "__main__":
    sys.exit(main())

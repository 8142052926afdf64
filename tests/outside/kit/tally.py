"""Counts checks, says which failed, and ends with the line `N passed, N failed`."""

import sys
from typing import NoReturn


class Tally:
    """Checks, counted."""

    def __init__(self) -> None:
        self.passed = 0
        self.failed = 0

    def check(self, what: str, right: bool, seen: object = "") -> None:
        """One check; what was seen is only said if it failed."""
        if right:
            self.passed += 1
        else:
            self.failed += 1
            print(f"FAILED: {what}: {seen}")

    def same(self, what: str, seen: object, wanted: object) -> None:
        """One check that two values are the same."""
        self.check(what, seen == wanted, f"{seen!r}, wanted {wanted!r}")

    def finish(self) -> NoReturn:
        """Says the count and ends."""
        print(f"{self.passed} passed, {self.failed} failed")
        sys.exit(1 if self.failed or not self.passed else 0)

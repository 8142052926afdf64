"""What the program says, from the files it says it from."""

from functools import cache
from pathlib import Path

from fluent.runtime import FluentBundle, FluentResource

from world import ROOT


# Where a language lies that does not ship.
PLACES: dict[str, Path] = {}
LANGUAGES = sorted(folder.name for folder in (ROOT / "locales").iterdir())


@cache
def bundle(lang: str) -> FluentBundle:
    """Every message of a language."""
    made = FluentBundle([lang], use_isolating=False)
    for file in sorted(PLACES.get(lang, ROOT / "locales" / lang).glob("*.ftl")):
        made.add_resource(FluentResource(file.read_text(encoding="utf-8")))
    return made


def say(name: str, lang: str = "en", /, **args: str | int) -> str:
    """A message, as the window shows it."""
    pattern = bundle(lang).get_message(name).value
    assert pattern is not None, name
    text, errors = bundle(lang).format_pattern(pattern, args)
    assert not errors, f"{name}: {errors}"
    return str(text)

"""How the patient wants it, every quiet page, and a record that cannot be opened."""

from selenium.webdriver.common.keys import Keys

from conftest import Open
from steps import answer_signs
from window import Window, prefer_dark
from words import say
from world import Home

NARROW = (320, 640)
DARK_PAPER = "rgb(27, 22, 17)"
LIGHT_PAPER = "rgb(245, 237, 221)"


def look(window: Window) -> dict[str, str]:
    """What the whole page is set to."""
    script = (
        "const root = document.documentElement;"
        "return { lang: root.lang, dir: root.dir, text: root.dataset.text, theme: root.dataset.theme ?? '',"
        " paper: getComputedStyle(root).backgroundColor,"
        " size: getComputedStyle(document.querySelector('main p')).fontSize }"
    )
    found: dict[str, str] = window.js(script)
    return found


def test_language_text_and_paper_stay(open_window: Open, patient: Home) -> None:
    """Spanish, twice as large and dark: at once, and after a restart."""
    window = open_window(patient)
    window.at("day")
    before = look(window)
    assert before["paper"] == LIGHT_PAPER
    window.press("settings-title")
    window.at("settings")
    window.check()
    window.press("settings-language", name="English")
    window.check()
    window.press_text("Español")
    window.lang = "es"
    window.reads("settings-title")
    window.press("settings-text", size=100)
    window.check()
    window.press("settings-text-largest")
    window.reads("settings-text", size=200)
    window.press("settings-theme", theme="system")
    window.press("settings-theme-dark")
    window.reads("settings-theme", theme="dark")
    window.check()
    window.press("settings-back")
    window.at("day")
    wanted = look(window)
    assert (wanted["lang"], wanted["text"], wanted["theme"]) == ("es", "200", "dark")
    assert wanted["paper"] == DARK_PAPER
    assert float(wanted["size"][:-2]) == 2 * float(before["size"][:-2])
    window.close()

    window = open_window(patient)
    window.lang = "es"
    window.at("day")
    assert look(window) == wanted
    # The largest text in the narrowest window: every word is there, and nothing lies beside the page.
    window.resize(NARROW)
    window.axe()
    window.fits()
    window.press("day-begin")
    window.at("before")
    window.axe()
    window.fits()
    answer_signs(window)
    window.reads("before-pain")
    window.fits()
    window.press_text("1")
    window.press("before-pain-go-on")
    window.reads("before-coming")
    window.axe()
    window.fits()
    window.press("before-begin")
    window.at("session")
    window.fits()
    window.axe()
    window.press("session-unwell")
    window.at("stop")
    window.axe()
    window.fits()
    window.close()
    assert patient.ask("settings")["language"] == "es"


def test_as_this_device(open_window: Open, patient: Home) -> None:
    """Without a choice of one's own, the paper is as dark as the desktop."""
    prefer_dark(patient.folder.parent / "home")
    window = open_window(patient)
    window.at("day")
    assert window.js("return matchMedia('(prefers-color-scheme: dark)').matches")
    assert look(window)["paper"] == DARK_PAPER


def test_quiet_pages(open_window: Open, patient: Home) -> None:
    """Weeks, an empty past, a new plan file; and the keyboard alone reaches them."""
    window = open_window(patient)
    window.at("day")
    window.check()
    window.press_at("main .reading button")
    window.at("weeks")
    window.check()
    window.press("day-back")
    window.press("past-title")
    window.reads("past-sessions", n=0)
    window.check()
    window.press("day-back")
    window.press("day-new-plan")
    window.at("receive")
    window.check()
    window.press("receive-back-to-today")
    window.at("day")
    reached = set()
    for _ in range(20):
        window.keys(Keys.TAB)
        reached.add(window.js("return document.activeElement.innerText.split('\\n')[0].trim()"))
    for name in ("day-begin", "contacts-title", "settings-title", "past-title"):
        assert say(name) in reached, (name, reached)


def test_the_check_would_tell(open_window: Open, patient: Home) -> None:
    """A grey that is only just enough for the middle level, and a picture without words, are found."""
    window = open_window(patient)
    window.at("day")
    window.axe()
    window.js(
        "const words = document.createElement('p'); words.textContent = 'grey words';"
        "words.style.color = '#6b6b6b'; words.append(new Image());"
        "document.querySelector('main p').after(words)"
    )
    found = {violation["id"] for violation in window.axe_now("light")}
    assert found == {"color-contrast-enhanced", "image-alt"}


def test_a_record_without_its_key(open_window: Open, patient: Home) -> None:
    """It says so, deletes nothing, and opens as soon as the key is back."""
    key = next(file for file in patient.folder.iterdir() if "key" in file.name)
    away = patient.folder.parent / "away"
    key.rename(away)
    window = open_window(patient)
    window.at("problem")
    window.reads("err-store-key-missing")
    window.check()
    window.press("problem-try-again")
    window.at("problem")
    away.rename(key)
    window.press("problem-try-again")
    window.at("day")

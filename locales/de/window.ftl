### Was mehrere Seiten des Fensters sagen.

weeks-one = Woche { $week }
weeks-this = Woche { $week }, diese Woche
weeks-opens = { $name }: erlaubt ab { $day }

past-sessions = { $n ->
    [0] Noch keine Übungseinheit.
    [one] Bisher 1 Übungseinheit.
   *[other] Bisher { $n } Übungseinheiten.
}
past-week-from = Ab { $day }
past-whole = Eine ganze Übungseinheit.
past-part = Ein Teil einer Übungseinheit.
past-remembered = { $n ->
    [one] 1 Übung ohne das Programm, aus dem Gedächtnis.
   *[other] { $n } Übungen ohne das Programm, aus dem Gedächtnis.
}
past-none = Kein Eintrag.
past-ahead = Kommt noch.
past-pain-before = vor einer Übungseinheit, in Ruhe
past-pain-during = während einer Übungseinheit
past-pain-after = nach einer Übungseinheit
past-pain-next-morning = am Morgen danach

position-supine = auf dem Rücken liegend
position-hook-lying = auf dem Rücken liegend, Knie gebeugt
position-side-lying = auf der Seite liegend; die Seite, mit der Sie üben, ist oben
position-side-lying-under = auf der Seite liegend; die Seite, mit der Sie üben, ist unten
position-prone = auf dem Bauch liegend
position-seated = im Sitzen
position-standing = im Stehen
position-bent-over = im Stehen, vorgebeugt und abgestützt
position-kneeling = im Knien
position-hands-and-knees = auf Händen und Knien
position-unknown = Stellung nicht bekannt

# Alle stehen im Akkusativ, nach „Sie brauchen:“.
prop-chair = einen festen Stuhl
prop-rail = etwas zum Festhalten
prop-towel = ein Handtuch
prop-roll = ein zusammengerolltes Handtuch
prop-strap = einen Gurt oder Gürtel
prop-step = eine Stufe
prop-band = Ihr Übungsband
prop-cuff = Ihre Gewichtsmanschette
prop-pillow = ein Kissen
prop-stick = einen Stab
prop-walking-aid = Ihre Gehhilfe
prop-table = einen Tisch
prop-wall = eine Wand oder einen Türrahmen
prop-helper = jemanden, der Ihnen hilft

care-done-of = Heute { $done } von { $times } Mal erledigt.
care-done = { $done ->
    [0] Heute noch nicht erledigt.
   *[other] Heute { $done } Mal erledigt.
}

language-name = Deutsch
# ltr, oder rtl für Sprachen, die man von rechts nach links schreibt.
language-direction = ltr

window-no-screen = Hier gibt es keinen Bildschirm zum Zeichnen.
window-pick-title = Den Plan von Ihrer Klinik öffnen
window-pick-kind = Sendaluna-Plan
window-failed = In diesem Fenster hat etwas nicht geklappt: { $what } Was aufgeschrieben war, ist sicher.
window-failed-do = Schließen Sie Sendaluna und öffnen Sie es neu. Wenn es so bleibt, nehmen Sie Ihren Plan auf Papier. Oder rufen Sie Ihre Klinik an.
problem-emergency = Rufen Sie im Notfall die Notrufnummer an Ihrem Ort an. Die Nummer Ihrer Klinik steht in Ihrem Brief.
past-before-plan = Vor diesem Plan.

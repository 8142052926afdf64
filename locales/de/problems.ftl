### Probleme in dem, was eine Klinik schreibt. Davor steht jeweils die Stelle.

problem-missing = Das fehlt.
problem-out-of-bounds = { $value } liegt außerhalb von { $least } bis { $most }{ $unit }.
problem-too-long = { $value } Einträge sind zu viele; erlaubt sind { $most }.
problem-empty-text = Der Text ist leer.
problem-hidden-characters = Der Text enthält unsichtbare Zeichen, die ändern könnten, wie man ihn liest.
problem-language-missing = Der Text fehlt in { $lang }, einer Sprache dieses Plans.
problem-repeated-id = { $id } kommt zweimal vor.
problem-unknown-id = { $id } gibt es nicht.
problem-weeks-reversed = Die letzte Woche liegt vor der ersten.
problem-dates-reversed = Der letzte Tag liegt vor dem ersten.
problem-one-amount = Geben Sie genau eines an: Wiederholungen, Atemzüge, Minuten oder Schritte.
problem-tempo-missing = Wiederholungen und Atemzüge brauchen ein Tempo.
problem-pain-order = Die Werte steigen nicht der Reihe nach an.
problem-counts-reversed = Die größere Zahl steht vor der kleineren.
problem-no-warning-signs = Ein Plan braucht Warnzeichen.
problem-no-emergency-sign = Ein Plan braucht mindestens ein Warnzeichen für den Notruf.
problem-no-conditions = Es sind zu wenige Einträge, als dass das etwas bedeutet.
problem-one-most = Geben Sie genau eines an: most_kg oder most_percent.
problem-none-and-some = „Keine“ (none) und Vorsichtsregeln widersprechen sich.
problem-joint-motion = Bei diesem Gelenk ({ $joint }) gibt es diese Bewegung nicht: { $motion }.
problem-not-a-key = Das ist kein Schlüssel der richtigen Art.
problem-no-rights = Wer keine Rechte hat, kann nichts signieren.
problem-repeated-day = Ein Tag kommt zweimal vor.
problem-zone-unknown = Die Zeitzone { $zone } gibt es nicht.
problem-episode-differs = Seite oder Tag 0 von { $id } sind nicht wie in den Erklärungen.
problem-statement-none = Keine Erklärung von jemandem, der Vorsichtsregeln festlegen darf. Auch „Keine“ (none) wird signiert.
problem-person-differs = Eine Erklärung ist für eine andere Person.
problem-other-format = Dieses Programm schreibt und liest Format 1.
problem-precaution-changed = Die Vorsichtsregel { $id } hat einen anderen Inhalt als vorher. Geben Sie ihr eine neue Id.
problem-unknown-family = Keine Übung gehört zur Familie { $id }. Es gibt: { $known }.
problem-not-a-number = Darin steht keine Telefonnummer.
problem-not-restated = Die Vorsichtsregel { $id } der vorigen Datei wurde mit einem Schlüssel signiert, dem nicht mehr vertraut wird. Lassen Sie sie neu erklären, mit derselben Id und demselben Inhalt.

# Nach dem Höchsten: „von 1 bis 260 Wochen“.
unit-weeks = Wochen
unit-days = Tagen
unit-characters = Zeichen
unit-body-weight = % des Körpergewichts

### Was an die Klinik zurückgeht, im Fenster.

hand-title = Für Ihre Klinik
hand-intro = Das ist alles, was Ihre Klinik lesen kann. Nichts wird verschickt. Sie speichern es und geben es bei Ihrem Termin ab.
hand-figures = Wie es gegangen ist
hand-exercises = Übung für Übung
hand-own-words = Ihre eigenen Worte
hand-no-words = Sie haben nichts in Worten aufgeschrieben.
hand-words-go = Meine eigenen Worte mitgeben
hand-record = Alle Ihre Einträge
hand-ask = Was ich meine Klinik fragen möchte
hand-save = Für die Klinik speichern
hand-sealed = Nur Ihre Klinik kann die versiegelte Datei öffnen. Die Seiten, die Tabelle und das Dokument daneben sind offen. Jeder kann sie lesen.

### Einen Plan aufnehmen.

receive-title = Ihr Plan ist da.
receive-for = Für { $called }, geboren { $born }. Von: { $clinic }.
receive-episode = { $name }: { $day }.
receive-exercises = { $n ->
    [one] 1 Übung.
   *[other] { $n } Übungen.
}
receive-not-yet = Noch nicht erlaubt:
receive-which-side = Welche Seite wurde behandelt? ({ $name }) links, rechts, beide oder keine
receive-is-it-yours = Stimmt das alles, und ist es Ihr Plan? ja oder nein
receive-done = Das ist jetzt Ihr Plan. Version { $revision }.
receive-same-again = Diesen Plan haben Sie schon. Es hat sich nichts geändert. Version { $revision }.
ask-date = Heute ist { $day }. Stimmt das? ja oder nein

# Im Fenster.
receive-file-title = Öffnen Sie Ihren Plan
receive-file-drop = Ziehen Sie die Datei von Ihrer Klinik hierher, oder öffnen Sie sie.
receive-file-where = Die Datei kann in einer E-Mail von Ihrer Klinik sein oder auf einem USB-Stick.
receive-open = Datei öffnen
receive-open-another = Andere Datei öffnen
receive-busy = Einen Moment, bitte.
receive-code-title = Der Code aus Ihrem Brief
receive-code-how = Sehen Sie in den Brief von Ihrer Klinik. Tippen Sie den Brief-Code hier ein.
receive-code-label = 12 Buchstaben und Ziffern
receive-code-missing = { $n ->
    [one] Es fehlt noch 1 Buchstabe oder 1 Ziffer. Dann geht es weiter.
   *[other] Es fehlen noch { $n } Buchstaben oder Ziffern. Dann geht es weiter.
}
receive-code-go-on = Weiter
receive-who = Für wen dieser Plan ist
receive-name = Name
receive-born = Geburtsjahr
receive-clinic = Klinik
receive-day-zero = Tag der Operation: { $day }
receive-check = Bitte antworten Sie zuerst
receive-check-why = Sie und Ihre Klinik müssen dasselbe meinen. Sehen Sie in Ihren Brief, wenn Sie nicht sicher sind.
receive-side = { $name }: Welche Seite wurde behandelt?
receive-side-left = Links
receive-side-right = Rechts
receive-side-both = Beide Seiten
receive-side-neither = Keine Seite
receive-side-needed = Sagen Sie zuerst, welche Seite behandelt wurde.
receive-date = Heute ist { $day }. Stimmt das?
receive-date-yes = Ja, das stimmt
receive-date-no = Nein, es ist ein anderer Tag
receive-date-needed = Sagen Sie zuerst, ob das Datum stimmt.
receive-date-wrong = Dann hat dieses Gerät das falsche Datum. Der Plan wurde nicht aufgenommen. Stellen Sie das Datum am Gerät richtig ein. Öffnen Sie dann die Datei noch einmal.
receive-mine = Das ist mein Plan
receive-not-mine = Das ist nicht mein Plan
receive-not-mine-do = Der Plan wurde nicht aufgenommen. Rufen Sie die Klinik aus Ihrem Brief an und sagen Sie es dort.
receive-new-title = Ein neuer Plan ist für Sie da.
receive-new = Das ist Version { $revision } Ihres Plans. Diese Version ersetzt den Plan, den Sie haben. Was Sie aufgeschrieben haben, bleibt.
receive-take-in = Diesen Plan nehmen
receive-back-to-today = Zurück zu heute
receive-refused-title = Diese Datei wurde nicht verwendet.
receive-ring-letter = Rufen Sie Ihre Klinik an. Die Nummer steht in Ihrem Brief.
receive-code-first = Die ersten vier Zeichen des Codes
receive-code-middle = Die mittleren vier Zeichen des Codes
receive-code-last = Die letzten vier Zeichen des Codes
receive-what = Was darin steht
receive-back = Zurück
receive-same-again-title = Es gibt nichts Neues.
receive-open-again = Datei noch einmal öffnen

### Eine Übungseinheit: Fragen, Ansagen, Antworten.

ask-signs = Ist davon etwas neu oder schlimmer als beim letzten Mal?
# Auf diese Frage muss „nein“ heißen: Nichts ist neu oder schlimmer.
ask-signs-again = Noch einmal: Ist etwas neu oder schlimmer als beim letzten Mal?
ask-signs-how = Tippen Sie die Nummern ein, die zutreffen. Drücken Sie die Eingabetaste, wenn nichts zutrifft.
ask-pain-now = Wie stark sind die Schmerzen jetzt, in Ruhe? 0 (keine) bis 10 (die schlimmsten, die Sie sich vorstellen können)
ask-go-on = Sie haben heute eine Übungseinheit angefangen. Nach der letzten fertigen Runde weitermachen? ja oder nein
ask-pain-how-much = Wie stark sind die Schmerzen? 0 (keine) bis 10 (die schlimmsten, die Sie sich vorstellen können)
ask-pain-kind = Was für ein Schmerz ist es? 1 Dehnung oder müde Muskeln, 2 scharf oder stechend
ask-pain-place = Wo? 1 Hüfte, 2 Oberschenkel, 3 Knie, 4 Wade, 5 Fuß, 6 Rücken, 7 Schulter, 8 woanders
ask-how-many = Wie viele haben Sie gemacht?
ask-effort = Wie anstrengend war es? 0 (wie Ausruhen) bis 10 (Ihre ganze Kraft). Eingabetaste: überspringen.
ask-pain-after = Wie stark sind die Schmerzen jetzt? 0 (keine) bis 10 (die schlimmsten, die Sie sich vorstellen können). Eingabetaste: überspringen.
ask-words = Möchten Sie etwas aufschreiben? Eingabetaste: überspringen.

signs-noted = Aufgeschrieben. Sie können weitermachen. Sagen Sie es Ihrer Klinik beim nächsten Termin.
signs-emergency = Rufen Sie jetzt den Notruf an, wenn etwas davon zutrifft
signs-ring-today = Üben Sie nicht, und rufen Sie heute die Klinik an, wenn etwas davon zutrifft
sign-unwell = Ihnen ist unwohl oder schwindelig.
signs-note = Sagen Sie es der Klinik beim nächsten Termin, wenn etwas davon zutrifft

stop-emergency = Stopp. Rufen Sie jetzt { $emergency } an. Sagen Sie, dass Sie operiert wurden und was nicht stimmt.
stop-ring-today = Hören Sie für heute auf. Rufen Sie jetzt Ihre Klinik an: { $clinic }, { $phone }. Abends, nachts und am Wochenende: { $night }.
stop-when-spoken = Es beginnt keine Übungseinheit, bis Sie mit der Klinik gesprochen haben. Tippen Sie danach: sendaluna spoke

hurts-go-on = Das ist in Ordnung. Es geht weiter.
hurts-gently = Machen Sie vorsichtig weiter. Machen Sie die Bewegung kleiner und langsamer.
hurts-easier = Nehmen Sie die leichtere Form.
hurts-stop-exercise = Hören Sie mit dieser Übung auf. Heute nicht mehr.
hurts-stop-today = Hören Sie für heute auf, und rufen Sie Ihre Klinik an.

session-keys = Leertaste: anhalten oder weitermachen. h: das tut weh. f: ich habe weniger gemacht. e: leichtere Form. l: diese Übung auslassen. Eingabetaste: gleich weiter. u: mir ist unwohl. q: aufhören.
session-paused = Angehalten. Lassen Sie sich Zeit.

cue-if-it-hurts = Wenn es wehtut, hören Sie einfach auf. Sagen Sie es mir danach.
cue-hand-on-rail = Legen Sie das Telefon weg. Halten Sie sich am Geländer fest.
cue-beside-you = Bei dieser Übung brauchen Sie jemanden neben sich.
cue-set-up = Als Nächstes: { $name }, { $side }.
cue-ready = Drücken Sie die Leertaste, wenn Sie bereit sind.
cue-change-side = Wechseln Sie die Seite: { $side }.
cue-number = { $n }
cue-out = { $n }: los.
cue-hold = { $n ->
    [one] Halten Sie 1 Sekunde.
   *[other] Halten Sie { $n } Sekunden.
}
cue-back = Und zurück.
cue-minutes-left = { $n ->
    [one] Noch 1 Minute.
   *[other] Noch { $n } Minuten.
}
cue-steps = { $n ->
    [one] Gehen Sie 1 Schritt.
   *[other] Gehen Sie { $n } Schritte.
} Drücken Sie danach die Leertaste.
cue-set-done = { $n ->
    [one] Das war 1.
   *[other] Das waren { $n }.
} Aufgeschrieben.
cue-rest = { $n ->
    [one] Erholen Sie sich 1 Sekunde.
   *[other] Erholen Sie sich { $n } Sekunden.
}
cue-going-on = Es geht weiter. Machen Sie sich bereit.
cue-lost-time = Angehalten, weil das Gerät geschlafen hat. Drücken Sie die Leertaste, um weiterzumachen.
cue-end = Das war die letzte Übung.

ended-whole = Geschafft. Sie haben die ganze Übungseinheit gemacht.
ended-part = Sie haben einen Teil der Übungseinheit gemacht. Er ist aufgeschrieben.
ended-stopped-as-told = Sie haben aufgehört, wie Ihr Plan es sagt. Das war richtig. Was Sie gemacht haben, ist aufgeschrieben.

## Das Fenster, vor einer Übungseinheit.

before-back = Zurück
before-date = Heute ist { $day }. Stimmt das?
before-date-yes = Ja, das stimmt
before-date-no = Nein
before-date-wrong = Das Datum auf diesem Gerät ist falsch.
before-date-why = Ihr Plan richtet sich nach dem Datum. Darum gibt es keine Übungseinheit, bis es stimmt. Nichts ist verloren.
before-date-do = Stellen Sie das Datum in den Einstellungen dieses Geräts richtig ein. Kommen Sie dann zurück und fangen Sie neu an.
before-back-to-today = Zurück zu heute
before-tap = Tippen Sie alles an, was zutrifft.
before-nothing = Nichts ist neu oder schlimmer
before-something = Etwas ist neu oder schlimmer
before-go-on-with = Weiter mit dieser Auswahl
before-pain = Wie stark sind die Schmerzen jetzt, in Ruhe?
before-pain-go-on = Weiter
before-coming = Was jetzt kommt
before-going-on = Sie haben diese Übungseinheit heute angefangen. Nach der letzten fertigen Runde geht es weiter.
before-minutes = { $n ->
    [one] Es dauert etwa 1 Minute.
   *[other] Es dauert etwa { $n } Minuten.
}
before-have-ready = Das brauchen Sie:
before-beside-you = Bei einem Teil davon brauchen Sie jemanden neben sich.
before-helper = Jemand hilft mir und antwortet
before-exercises = Die Übungen, in dieser Reihenfolge
before-begin = Anfangen

## Das Fenster, während einer Übungseinheit.

session-none = keine Schmerzen
session-worst = die schlimmsten, die Sie sich vorstellen können
session-back = Zurück
session-ready = Ich bin bereit
session-walked = Ich bin die Schritte gegangen
session-beside-start = Jemand ist neben mir. Anfangen
session-beside-nobody = Niemand ist hier: Übung auslassen
session-pause = Anhalten
session-step-on = Nächste Bewegung
session-hurts = Das tut weh
session-fewer = Weniger gemacht
session-easier = Leichtere Form
session-leave = Übung auslassen
session-go-on = Weiter
session-go-on-without = Weiter ohne diese Übung
session-go-on-now = Gleich weiter
session-stop = Für heute aufhören
session-unwell = Mir ist unwohl oder schwindelig
session-paused-phase = Pause
session-take-your-time = Lassen Sie sich Zeit.
session-next = Als Nächstes
session-not-fewer = Nicht ändern
session-saving = Einen Moment.

## Das Fenster: Das tut weh.

hurts-how-much = Wie stark sind die Schmerzen?
hurts-still = Sie haben aufgehört. Das ist richtig. Bleiben Sie einen Moment ruhig.
hurts-seen = Eine Zahl zu sagen geht nicht. Ich sehe:
hurts-seen-none = Kein Leiden
hurts-seen-some = Etwas Leiden
hurts-seen-much = Starkes Leiden
hurts-kind = Was für ein Schmerz ist es?
hurts-stretching = Eine Dehnung oder müde Muskeln
hurts-sharp = Scharf oder stechend
hurts-where = Wo tut es weh?
hurts-places = Stellen am Körper
hurts-hip = Hüfte
hurts-thigh = Oberschenkel
hurts-knee = Knie
hurts-calf = Wade
hurts-foot = Fuß
hurts-back = Rücken
hurts-shoulder = Schulter
hurts-elsewhere = Woanders
hurts-cannot-say = Ich kann nicht sagen, wo
hurts-go-on-with = Weiter mit dieser Stelle

## Das Fenster: ein Stopp.

stop-call-emergency = Notruf
stop-call-clinic = { $clinic } anrufen
stop-call-night = Abends, nachts, am Wochen{"\u00AD"}ende
stop-until-spoken = Es beginnt keine Übung, bis Sie mit der Klinik gesprochen haben.
stop-spoke = Ich habe mit der Klinik gesprochen
stop-spoke-sure = Haben Sie darüber wirklich mit jemandem in der Klinik gesprochen?
stop-spoke-yes = Ja, wir haben gesprochen
stop-spoke-no = Nein, noch nicht

## Das Fenster, nach einer Übungseinheit.

after-effort = Wie anstrengend war es?
after-effort-least = wie Ausruhen
after-effort-most = Ihre ganze Kraft
after-pain = Wie stark sind die Schmerzen jetzt?
after-words = Möchten Sie etwas auf{"\u00AD"}schreiben?
after-words-label = Eine Zeile für Ihren nächsten Termin
after-skip = Überspringen
after-go-on = Weiter
after-keep = Speichern
after-stopped = Sie haben aufgehört. Das war richtig.
after-nothing-asked = Jetzt fragt Sie das Programm nichts mehr. Was Sie gemacht haben, bleibt gespeichert.
after-busy = Es wird aufgeschrieben. Einen Moment.
ended-tally = Was Sie gemacht haben
ended-back = Zurück zu heute

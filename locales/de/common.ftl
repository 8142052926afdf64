### Wörter, die an vielen Stellen vorkommen.

date-day = { $weekday }, { $day }. { $month }
date-short = { $day }. { $month }
date-day-and-year = { $weekday }, { $day }. { $month } { $year }

# Mehrere Dinge: „a, b und c“.
list-comma = {", "}
list-semicolon = {"; "}
list-last = { $first } und { $last }

side-left = linke Seite
side-right = rechte Seite
side-both = beide Seiten zugleich
side-one-after-the-other = erst eine Seite, dann die andere
side-in-turn = die Seiten im Wechsel

dose-repetitions = { $n ->
    [one] Machen Sie es einmal.
   *[other] Machen Sie es { $n } Mal.
}
dose-repetitions-range = Machen Sie es { $least } bis { $most } Mal.
dose-hold = { $n ->
    [one] Halten Sie 1 Sekunde.
   *[other] Halten Sie { $n } Sekunden.
}
dose-breaths = { $n ->
    [one] Atmen Sie einmal langsam.
   *[other] Atmen Sie { $n } Mal langsam.
}
dose-minutes = { $n ->
    [one] Machen Sie es 1 Minute lang.
   *[other] Machen Sie es { $n } Minuten lang.
}
# Der Name der Gehhilfe kommt von der Klinik. Nach dem Doppelpunkt passt jede Form.
dose-steps = { $n ->
    [one] Gehen Sie 1 Schritt. Gehhilfe: { $aid }.
   *[other] Gehen Sie { $n } Schritte. Gehhilfe: { $aid }.
}
# „Runde“ heißt es in jeder Datei, die Patientinnen und Patienten lesen.
dose-sets = { $n ->
    [one] Das ist eine Runde.
   *[other] Machen Sie davon { $n } Runden.
}
dose-rest = { $n ->
    [one] Erholen Sie sich zwischen den Runden 1 Sekunde.
   *[other] Erholen Sie sich zwischen den Runden { $n } Sekunden.
}
dose-weight = Nehmen Sie { $kg } kg.
dose-band = Dazu nehmen Sie: { $band }.

ring-clinic = { $clinic } anrufen: { $phone }
ring-out-of-hours = Abends, nachts und am Wochenende: { $night }
ring-emergency = Notruf: { $emergency }

# Wörter, die als Antwort gelten, mit einem Leerzeichen dazwischen.
answers-yes = ja j
answers-no = nein n
answers-left = links linke l
answers-right = rechts rechte r
answers-both = beide beides b
answers-neither = keine keins kein nichts weder k n
answers-again = nochmal nochmals wiederholen w

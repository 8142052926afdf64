### Heute: was ansteht, was noch nicht erlaubt ist, welche Regeln gelten.

day-week = Woche { $week } nach: { $name }
day-week-unknown = Der Tag der Operation ist noch nicht bekannt: { $name }
day-zero-estimated = { $day }, geschätzt
day-zero-unknown = Tag noch nicht bekannt
day-now = Jetzt: { $exercises ->
    [one] 1 Übung
   *[other] { $exercises } Übungen
}, { $minutes ->
    [one] 1 Minute
   *[other] { $minutes } Minuten
}.
day-nothing-now = Jetzt ist nichts zu tun. Ausruhen gehört dazu.
day-can-go-on = Sie haben heute eine Übungseinheit angefangen. Sie können nach der letzten fertigen Runde weitermachen.
day-not-yet = Noch nicht
day-care = Sorgen Sie gut für sich
day-rules = Regeln für jeden Tag
day-lifts-ignored = Gilt weiter

times-today = { $times ->
    [one] Heute einmal
   *[other] Heute { $times } Mal
}, { $done ->
    [0] noch nicht gemacht
    [one] schon einmal gemacht
   *[other] schon { $done } Mal gemacht
}.
times-as-needed = Wenn Sie es brauchen, { $most ->
    [one] höchstens einmal am Tag
   *[other] höchstens { $most } Mal am Tag
}. { $done ->
    [0] Heute noch nicht gemacht.
    [one] Heute einmal gemacht.
   *[other] Heute { $done } Mal gemacht.
}
times-again-from = Wieder ab { $time } Uhr.
times-rests-today = Heute nicht mehr, weil es wehgetan hat.
times-not-today = Heute nicht vorgesehen.

gate-open = Das dürfen Sie machen.
gate-open-from = Jetzt nicht. Ihr Plan sieht es ab { $day } vor.
gate-not-in-plan = Jetzt nicht. Ihr Plan sieht es nicht vor.
not-yet-opens = Noch nicht. Erlaubt ab { $day }.
not-yet-opens-after-weeks = Noch nicht. Erlaubt ab { $day }, { $weeks ->
    [one] 1 Woche
   *[other] { $weeks } Wochen
} nach der Operation.
not-yet-open-ended = Noch nicht. Das bleibt so, bis Ihre Klinik es erlaubt.

reason-precaution = { $why } Festgelegt von { $who }.
set-by = Festgelegt von { $who }.
reason-through = Bis einschließlich { $day }.
reason-until-lifted = Bis Ihre Klinik etwas anderes sagt.
reason-until-lifted-not-before = Bis Ihre Klinik etwas anderes sagt, und nicht vor { $day }.
reason-day-zero-unknown = Der Tag der Operation ist noch nicht bekannt.
reason-facts-differ = Diese Übung ist nicht die, die Ihre Klinik geprüft hat.
reason-movement-unknown = Diese Version von Sendaluna kennt diese Übung nicht.
reason-movement-not-seen = Das ist eine eigene Übung Ihrer Klinik. Wer Ihre Vorsichtsregeln festlegt, hat sie noch nicht gesehen.
reason-tightened = Ihre Klinik hat am { $day } gesagt: Hören Sie damit auf.
lift-ignored = Gilt weiter: { $why } { $by } darf das nicht aufheben. { $who ->
    [none] Es ist nicht bekannt, wer es festgelegt hat.
   *[other] Festgelegt von { $who }.
}

reason-past-review = Ihre Klinik sollte Ihren Plan jetzt wieder ansehen. Vorher ist nichts Neues erlaubt. Rufen Sie dort an.
reason-set-back = Sie sind gestürzt, oder es gab einen Rückschlag. Nichts Neues ist erlaubt, bis Ihre Klinik es sagt. Rufen Sie dort an.
notice-must-ring = Ihre letzten Antworten sagen: Rufen Sie die Klinik an. Wenn Sie mit der Klinik gesprochen haben, sagen Sie es hier.
notice-clock = Die Uhr dieses Geräts hat sich plötzlich verstellt. Vor der nächsten Übungseinheit fragt das Programm nach dem Datum.
notice-restart = Es gab eine Unterbrechung von einigen Tagen. Die erste Übungseinheit danach ist kleiner, wie Ihre Klinik es geschrieben hat.
notice-steps-after-break = Bei manchen Übungen war die Menge schon größer. Diese Übungen fangen jetzt wieder mit der Menge an, die Ihre Klinik dafür vorsieht.
notice-ring-first = Es gab eine lange Unterbrechung. Rufen Sie Ihre Klinik an, bevor Sie wieder anfangen.
notice-plan-over = Der letzte Tag dieses Plans ist vorbei. Fragen Sie Ihre Klinik, was als Nächstes kommt.

did-written = Aufgeschrieben für { $day }, aus dem Gedächtnis.
did-against-gate = Das ist noch nicht erlaubt. Machen Sie es vorerst nicht wieder. Rufen Sie Ihre Klinik an und sagen Sie es dort.
tighten-done = Beendet, wie Ihre Klinik es gesagt hat. Das Programm bietet diese Übung nicht mehr an.
tighten-ended = Diese Übung gilt wieder. Das Programm bietet sie an, wenn die Regeln Ihrer Klinik es erlauben.
spoke-done = Gut. Es ist aufgeschrieben, dass Sie mit der Klinik gesprochen haben.
settings-now = Sprache: { $lang }. Wach von { $from } bis { $to } Uhr.

day-later-or-done = Heute später, schon gemacht oder ausgelassen
day-kind = Machen Sie es in Ihrem Tempo. Auch eine kleinere Übungseinheit zählt.
day-care-done = Erledigt
day-all-weeks = Zeigt alle Wochen Ihres Plans.
day-begin = Anfangen
day-go-on = Weitermachen
day-begin-anew = Neu anfangen
day-back = Zurück zu heute
day-elsewhere = Mehr
day-new-plan = Eine neue Plan-Datei
day-print = Übungen von heute drucken

not-yet-caution = „Noch nicht“ heißt: Fragen Sie Ihre Klinik. Es heißt nicht: vorsichtig versuchen.
not-yet-back = Zurück zu den Übungen von heute
not-yet-why = Warum, und wer das sagt
not-yet-did = Ich habe es trotzdem gemacht
not-yet-day-zero-unknown = Noch nicht. Der Tag der Operation ist noch nicht bekannt. Wenn er bekannt ist, bitten Sie Ihre Klinik um eine neue Plan-Datei.

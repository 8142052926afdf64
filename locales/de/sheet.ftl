### Der Plan auf Papier.

sheet-title = Ihr Plan
sheet-for = Für { $called }
sheet-by = Von: { $clinic }
sheet-revision = Version { $revision } vom { $day }
sheet-foot = Plan für { $called }, Version { $revision }
sheet-page = Seite { $n } von { $of }
sheet-after = Nach: { $name }, { $side }. Tag 0: { $day }.
sheet-side-left = linke Seite
sheet-side-right = rechte Seite
sheet-side-both = beide Seiten
sheet-side-neither = keine Seite
sheet-holds = Dieses Blatt gilt bis einschließlich { $day }. Der Plan endet am { $last }.
sheet-newer = Wenn Ihre Klinik Ihnen eine neuere Version gibt, legen Sie dieses Blatt weg.
sheet-review = Nach { $day } ist nichts Neues erlaubt, bis Ihre Klinik Ihren Plan wieder angesehen hat. Rufen Sie dort an.
sheet-review-week = nur wenn Ihre Klinik Ihren Plan wieder angesehen hat

sheet-stop = Wann Sie aufhören und wen Sie anrufen
sheet-stop-emergency = Stopp. Rufen Sie sofort { $phone } an
sheet-stop-ring = Heute nicht üben. Rufen Sie heute Ihre Klinik an
sheet-stop-note = Schreiben Sie es auf, und machen Sie weiter
sheet-whom = Wen Sie anrufen
sheet-whom-day = zu den Sprechzeiten
sheet-whom-night = Abends, nachts und am Wochenende
sheet-whom-emergency = Notruf

sheet-pain = Wenn es wehtut
sheet-pain-scale = Geben Sie dem Schmerz eine Zahl: 0 ist kein Schmerz, 10 ist der schlimmste, den Sie sich vorstellen können.
sheet-pain-when = Was Sie spüren
sheet-pain-do = Was zu tun ist
sheet-pain-rest = In Ruhe, bevor Sie anfangen: { $level } oder mehr
sheet-pain-rest-do = Heute nicht üben. Rufen Sie Ihre Klinik an.
sheet-pain-during = Während Sie üben: { $level } oder mehr
sheet-pain-slow-do = Machen Sie vorsichtig weiter.
sheet-pain-easier-do = Nehmen Sie die leichtere Form, wenn es eine gibt.
sheet-pain-stop-do = Machen Sie diese Übung heute nicht mehr.
sheet-pain-today-do = Hören Sie für heute auf. Rufen Sie Ihre Klinik an.
sheet-pain-rise = Während Sie üben: { $level } mehr als vor dem Anfangen
sheet-pain-sharp = Scharfer oder stechender Schmerz, auch wenn er schwach ist
sheet-pain-settle = Danach: Der Schmerz soll innerhalb von { $minutes } Minuten nachlassen
sheet-pain-settle-do = Wenn nicht, machen Sie beim nächsten Mal weniger. Sagen Sie es Ihrer Klinik.
sheet-pain-morning = Am Morgen danach: { $level } mehr als vor dem Üben
sheet-pain-morning-do = Machen Sie heute weniger. Sagen Sie es Ihrer Klinik.

sheet-rules = Regeln für jeden Tag
sheet-rule = Die Regel
sheet-until = Bis wann
sheet-who = Festgelegt von
sheet-not-opened = Gilt weiter

sheet-week = Woche
sheet-days = Tage
sheet-what = Was es ist
sheet-opens = Was neu erlaubt ist
sheet-weeks-of = Ihre Wochen nach: { $name }
sheet-unknown-zero = Der Tag der Operation ist noch nicht bekannt. Wenn er bekannt ist, bitten Sie Ihre Klinik um ein neues Blatt.

sheet-what-to-do = Was in welcher Woche zu tun ist
sheet-exercise = Übung
sheet-how-often = Wie oft
sheet-how-much = Wie viel
sheet-stage-weeks = Wochen { $from } bis { $through }
sheet-stage-week = Woche { $from }
sheet-stage-days = { $from } bis { $through }
sheet-round = { $items }: der Reihe nach je eine Runde, { $rounds } Mal. Erholen Sie sich jedes Mal danach { $rest } Sekunden.
sheet-not-in-stage = Noch in keiner Woche
sheet-not-in-stage-why = Ihr Plan sieht diese Übungen noch nicht vor.

when-times-a-day = { $times ->
    [1] Einmal am Tag.
    [2] Zweimal am Tag.
   *[other] { $times } Mal am Tag.
}
when-hours-between = { $hours ->
    [1] Mit mindestens 1 Stunde Abstand.
   *[other] Mit mindestens { $hours } Stunden Abstand.
}
when-every-hours = { $hours ->
    [one] Jede Stunde, solange Sie wach sind.
   *[other] Alle { $hours } Stunden, solange Sie wach sind.
}
when-weekdays = Am { $days }.
when-days-a-week = { $days ->
    [one] An 1 Tag in der Woche.
   *[other] An { $days } Tagen in der Woche, nie an zwei Tagen nacheinander.
}
when-as-needed = Wenn Sie es brauchen. { $most ->
    [one] Höchstens einmal am Tag.
   *[other] Höchstens { $most } Mal am Tag.
}
when-times-that-day = { $times ->
    [one] Einmal an so einem Tag.
   *[other] { $times } Mal an so einem Tag.
}

sheet-exercises = Ihre Übungen, eine nach der anderen
sheet-start = Anfang
sheet-end = Ende
sheet-figure-still = { $name }: So sieht es aus.
sheet-figure-start = { $name }: der Anfang.
sheet-figure-end = { $name }: das Ende.
sheet-have-ready = Sie brauchen: { $things }.
sheet-beside = Nur wenn jemand neben Ihnen ist.
sheet-brace = Lassen Sie Ihre Schiene oder Schlinge an.
sheet-set-up = Vorbereitung
sheet-how = So geht es
sheet-feel = Was Sie spüren
sheet-watch = Achten Sie darauf
sheet-note = Von Ihrer Klinik
sheet-easier = Leichtere Form von { $of }: { $name }
sheet-easier-see = Leichtere Form von { $of }: { $name }. Siehe { $n }.
sheet-dose-elsewhere = In manchen Wochen ist es mehr oder weniger: siehe „{ $title }“.
sheet-tempo = Zählen Sie: hin { $out }, halten { $hold }, zurück { $back }, locker lassen { $pause }.
sheet-tempo-no-hold = Zählen Sie: hin { $out }, zurück { $back }, locker lassen { $pause }.
sheet-breath = Atmen Sie ein, während Sie bis { $in } zählen. Atmen Sie aus, während Sie bis { $out } zählen.
sheet-graded = Nach und nach mehr
sheet-graded-step = Menge { $n } von { $of }: { $dose }
sheet-graded-start = Sie fangen mit Menge { $n } an.
sheet-graded-now = Heute sind Sie bei Menge { $step } von { $steps }.
sheet-graded-up = Die nächste größere Menge ist erlaubt nach { $sessions } ganzen Übungseinheiten hintereinander, wenn der Schmerz dabei höchstens { $pain } war. Mehr wird es nur, wenn Sie möchten, und nicht nach einer Unterbrechung.
sheet-graded-up-effort = Die nächste größere Menge ist erlaubt nach { $sessions } ganzen Übungseinheiten hintereinander, wenn der Schmerz dabei höchstens { $pain } war und die Anstrengung höchstens { $effort }. Mehr wird es nur, wenn Sie möchten, und nicht nach einer Unterbrechung.
sheet-graded-down = Sofort die nächste kleinere Menge, wenn der Schmerz über { $pain } geht.
sheet-ramp = { $grows ->
    [sets] { $start ->
        [one] Fangen Sie mit 1 Runde an.
       *[other] Fangen Sie mit { $start } Runden an.
    } Nehmen Sie { $days ->
        [one] jeden Tag
       *[other] alle { $days } Tage
    } { $step } dazu, bis { $cap }.
    [repetitions] { $start ->
        [one] Machen Sie es am Anfang einmal.
       *[other] Machen Sie es am Anfang { $start } Mal.
    } Nehmen Sie { $days ->
        [one] jeden Tag
       *[other] alle { $days } Tage
    } { $step } dazu, bis { $cap }.
    [hold] { $start ->
        [one] Halten Sie am Anfang 1 Sekunde.
       *[other] Halten Sie am Anfang { $start } Sekunden.
    } Nehmen Sie { $days ->
        [one] jeden Tag
       *[other] alle { $days } Tage
    } { $step } dazu, bis { $cap }.
   *[minutes] { $start ->
        [one] Fangen Sie mit 1 Minute an.
       *[other] Fangen Sie mit { $start } Minuten an.
    } Nehmen Sie { $days ->
        [one] jeden Tag
       *[other] alle { $days } Tage
    } { $step } dazu, bis { $cap }.
}
sheet-ramp-yes = Nur wenn es gut geht, und nicht nach einer Unterbrechung.

sheet-care = Sorgen Sie gut für sich
sheet-care-times = { $times ->
    [0] Wie Ihre Klinik es gesagt hat.
    [one] Einmal am Tag.
   *[other] { $times } Mal am Tag.
}

sheet-return = Nach einer Unterbrechung
sheet-return-start = Nach { $days } Tagen oder mehr ohne Üben machen Sie beim ersten Mal weniger:
sheet-return-same = Nach { $days } Tagen oder mehr ohne Üben seien Sie beim ersten Mal vorsichtig.
sheet-return-ring = Nach { $days } Tagen oder mehr rufen Sie Ihre Klinik an, bevor Sie wieder anfangen.

sheet-tests = Tests zu Hause
sheet-tests-helper = Nur mit einer Hilfsperson neben Ihnen. Und nur, wenn die Regeln Ihrer Klinik es dann erlauben. Wenn Sie sich unsicher fühlen, hören Sie auf und setzen Sie sich hin.
sheet-test-chair-stand-count = Ihre Hilfsperson zählt, wie oft Sie aufrecht stehen, und schreibt es auf.
sheet-test-timed-up-and-go-time = Ihre Hilfsperson misst die Zeit von „los“, bis Sie wieder sitzen, und schreibt sie auf.
sheet-test-four-stage-balance-time = Ihre Hilfsperson misst bei jeder Art die Zeit. Die Zeit endet, wenn sich Ihre Füße bewegen oder Sie sich festhalten. Wenn Sie nicht 10 Sekunden stehen können, gehen Sie nicht zur nächsten weiter.
sheet-test-weeks = Ab Woche { $from } { $every ->
    [one] jede Woche.
   *[other] alle { $every } Wochen.
}

sheet-cautions = Bitte denken Sie daran
sheet-tick = Meine Woche
sheet-tick-how = Machen Sie für jedes Mal einen Strich. Schreiben Sie die Schmerzen vorher und nachher auf.
sheet-tick-pain = Schmerzen vorher und nachher

sheet-written = Ihr Plan für den Kühlschrank: { $path }

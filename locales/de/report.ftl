### Der Bericht, in der Klinik und wenn er gemacht wird.

hand-back-days = Ganze Tage: { $whole } von { $due }, an denen etwas vorgesehen war.
hand-back-files = Gespeichert in { $folder }. { $sealed } kann nur Ihre Klinik öffnen. { $pages } ist dasselbe auf zwei Seiten. { $table } sind Ihre Einträge als Tabelle. { $fhir } ist für andere Programme.
hand-back-words = { $n ->
    [0] Keines Ihrer eigenen Worte ist dabei.
    [one] Ihre eigenen Worte sind einmal dabei.
   *[other] Ihre eigenen Worte sind { $n } Mal dabei.
}
hand-back-only-clinic = Nichts wurde verschickt. Geben Sie die versiegelte Datei bei Ihrem Termin in der Klinik ab. Vorher sieht sie dort niemand. Wenn jetzt etwas nicht stimmt, rufen Sie dort an.

hand-back-day = Am { $from }.
hand-back-span = Von { $from } bis { $through }.
hand-back-entries = { $n ->
    [one] 1 Eintrag
   *[other] { $n } Einträge
}
hand-back-exercise = { $name }: { $done } von { $of ->
    [one] 1 Runde
   *[other] { $of } Runden
}
hand-back-exercise-part = { $name }: { $done } von { $of ->
    [one] 1 Runde
   *[other] { $of } Runden
}, und ein Teil einer weiteren
hand-back-pain = Schmerzen in Ruhe zuletzt: meist { $median }, zwischen { $least } und { $most }.
hand-back-pain-same = Schmerzen in Ruhe zuletzt: immer { $median }.
hand-back-test = Ein Test, { $day }: { $result }
hand-back-choose = Wo es für die Klinik gespeichert werden soll

break-written = Eine Unterbrechung von { $from } bis einschließlich { $through } ist aufgeschrieben. Was noch nicht erlaubt ist, wird dadurch nicht früher erlaubt.
break-ended = Die Unterbrechung endet heute. Ihre Übungen sind wieder vorgesehen. Hat Ihre Klinik die Unterbrechung angeordnet, fragen Sie zuerst dort nach.

report-title-day = { $called }, { $from }
report-title = { $called }, { $from } bis { $through }
report-vouched-for = Geprüft: Signatur, Einträge und alle Zahlen stimmen.
report-not-vouched-for = So nicht vertrauenswürdig:
report-figures-differ = Die Zahlen darin folgen nicht aus den Einträgen. Die Zahlen unten wurden neu berechnet.
report-not-authentic = Wer den Bericht gemacht hat, hatte das Geheimnis des Plans nicht.
report-does-not-extend = Er führt keinen früheren Bericht fort.
report-person-other = Er gehört zu einer anderen Person als der frühere Bericht.
report-older = Er ist älter als ein Bericht, der schon da war.
report-clinic-not-compared = Keine Liste der Unterzeichnenden angegeben: Ob die Pläne darin von Ihnen sind, wurde nicht verglichen.
report-device-new = Kein früherer Bericht angegeben: Dieses Gerät gilt als neu.
report-words-withheld = Eigene Worte wurden zurückbehalten.
report-ring-today = Heute anrufen:
report-talk-about = Besprechen:
report-the-file = Die Datei:
report-last-days = Letzte Tage: { $days }
report-days = Tage mit Aufgaben: { $due }; ganz { $whole }, teilweise { $part }, nach Vorgabe beendet { $told }, kein Eintrag { $none }. Ohne selbst gemeldete Unterbrechungen: { $bare-whole } von { $bare-due } ganz.
report-dose = Sätze: { $done } von { $of } ({ $percent } %); gezählt { $counted }, gezählt ohne Bestätigung { $unconfirmed }, aus dem Gedächtnis { $remembered }; darüber hinaus { $beyond }.
report-pain = Schmerz in Ruhe in der letzten Woche mit Antworten: Median { $median }, von { $least } bis { $most }.
report-worst = Am wenigsten gemacht: { $item }, { $done } von { $of } Sätzen; { $left } Mal mit Grund ausgelassen.
report-asks = Frage an die Klinik: { $words }
report-exercises = Übungen:
report-exercise = { $item }: { $done } von { $of } Sätzen ({ $remembered } aus dem Gedächtnis), { $left } Mal ausgelassen
report-as-needed = { $item }: { $needed } Sätze bei Bedarf
report-not-asked = { $item }: { $beyond } Sätze, die nicht vorgesehen waren
report-tests = Tests zu Hause:
report-test = { $day }, { $test }: { $said }
report-chair-stand = 30-Sekunden-Aufstehtest: { $n }.
report-chair-stand-arms = 30-Sekunden-Aufstehtest: { $n } mit den Armen, was als 0 zählt.
report-chair-stand-table = CDC STEADI mit { $younger } oder { $older } Jahren (der Plan nennt das Geburtsjahr, aber nicht, ob Mann oder Frau): Männer: { $men }; Frauen: { $women }.
report-timed-up-and-go = Timed-up-and-go-Test: { $seconds } s.
report-walk-risk = 12 s oder mehr: Sturzrisiko (CDC STEADI).
report-walk-no-risk = Unter 12 s (CDC STEADI).
report-four-stage-balance = Gleichgewichtstest in vier Stellungen: { $held }.
report-stance-side-by-side = Füße nebeneinander { $seconds } s
report-stance-semi-tandem = Semitandem { $seconds } s
report-stance-tandem = Tandem { $seconds } s
report-stance-one-leg = ein Bein { $seconds } s
report-tandem-risk = Tandem unter 10 s: Sturzrisiko (CDC STEADI).
report-tandem-no-risk = Tandem 10 s gehalten (CDC STEADI).
report-test-helper = Mit Hilfsperson.
report-test-alone = Es war niemand daneben.
report-test-timed = Wie gemessen.
report-test-by-hand = Von Hand oder berichtigt.
report-test-against-gate = An diesem Tag war der Test nicht erlaubt.
norm-below-average = unter dem Durchschnitt (unter { $below })
norm-not-below-average = nicht unter dem Durchschnitt ({ $below } oder mehr)
norm-by-birthday = unter dem Durchschnitt oder nicht, je nach Geburtstag (Grenzen { $below })
norm-no-norm = keine Norm
report-caution = Tage ohne Eintrag sind weder gemacht noch verweigert. Die Zahlen stammen vom eigenen Gerät der behandelten Person.
flag-warning-sign = { $day }: ein Warnzeichen war neu oder schlimmer
flag-pain-over-limit = { $day }: Schmerz { $level }, über der Grenze des Plans
flag-fall = { $day }: ein Sturz
flag-readmission = { $day }: ein Aufenthalt im Krankenhaus
flag-against-gate = { $day }: „{ $item }“ gemacht, obwohl noch nicht erlaubt
flag-test-against-gate = { $day }: Test { $test } gemacht, obwohl noch nicht erlaubt
flag-rising-pain = { $day }: Schmerz in Ruhe um { $change } Punkte gestiegen (erst über 2 Punkte heißt es Veränderung)
flag-skipped = { $day }: „{ $item }“ { $times } Mal mit Grund ausgelassen
flag-overdone = { $day }: „{ $item }“ an { $days } Tagen mehr gemacht als vorgesehen
flag-lift-ignored = { $day }: eine Aufhebung hatte keine Wirkung: „{ $precaution }“
flag-clock = { $day }: die Uhr sprang um { $hours } Stunden, und das Datum wurde bestätigt
flag-chain-broken = { $day }: die Einträge schließen ab Ereignis { $seq } nicht aneinander an
mark-not-due = nichts vorgesehen
mark-whole = ganz
mark-part = teilweise
mark-stopped-as-told = nach Vorgabe beendet
mark-no-record = kein Eintrag

### Der Bericht auf Papier.

report-page-title = Bericht für { $called }
report-page-span = { $from } bis { $through }
report-page-day = { $day }
report-page-made = Erstellt am { $day }. Plan-Version { $revision }.
report-page-foot = Bericht für { $called }, { $day }
report-page-episode = { $name }, { $side }: Woche { $week }, Tag { $day }
report-page-episode-unknown = { $name }, { $side }: Tag 0 nicht bekannt
report-page-weight = Belastung
report-page-gates = Noch nicht
report-page-gates-n = { $n ->
    [0] Nichts aus dem Plan ist zurückgestellt.
    [one] 1 Übung ist zurückgestellt.
   *[other] { $n } Übungen sind zurückgestellt.
}
report-page-next = Als Nächstes erlaubt: { $name }, ab { $day }.
report-page-next-none = Für keine davon steht ein Tag fest, ab dem sie erlaubt ist.
report-page-review = Der Plan sollte bis { $day } angesehen werden. Bis das geschehen ist, wird nichts Neues erlaubt.
report-page-ring = Heute anrufen
report-page-earlier = Früher, in den Einträgen: { $n }
report-page-ring-none = Nichts, was heute einen Anruf braucht.
report-page-talk = Besprechen
report-page-file = Die Datei
report-page-last = Letzte sieben Tage
report-page-worst = Am wenigsten gemacht
report-page-worst-of = { $item }: { $part }. { $reasons }
report-page-worst-none = Nichts wurde weniger gemacht als vorgesehen.
report-page-left = Ausgelassen: { $reasons }.
report-page-left-times = { $reason } ({ $n })
report-page-pain = Schmerz
report-page-pain-rest = In Ruhe, letzte Woche mit Antworten: { $levels }
report-page-pain-morning = Am Morgen danach: { $levels }
report-page-pain-change = { $change ->
    [rose] In Ruhe von der ersten zur letzten Woche um { $points } gestiegen.
    [fell] In Ruhe von der ersten zur letzten Woche um { $points } gesunken.
   *[same] In Ruhe von der ersten zur letzten Woche um { $points } anders: 2 Punkte oder weniger heißen nicht Veränderung.
}
report-page-asks = Frage an die Klinik
report-page-asks-none = Es wurde keine Frage aufgeschrieben.

report-page-weeks = Woche für Woche
report-page-week = Woche
report-page-weeks-from = { $first }–{ $last }
report-page-all = Gesamt
report-page-bare = Ohne eigene Unterbrechungen
report-page-due = Fällig
report-page-whole = Ganz
report-page-part = Teil
report-page-told = Nach Vorgabe beendet
report-page-none = Kein Eintrag
report-page-dose = Gemachte Sätze
report-page-counted = Gezählt
report-page-unconfirmed = Nicht bestätigt
report-page-remembered = Erinnert
report-page-beyond = Darüber
report-page-needed = Bei Bedarf
report-page-breaks = { $n ->
    [0] Keine eigene Unterbrechung wurde erst nach ihrem Beginn gemeldet.
    [one] 1 Tag einer eigenen Unterbrechung wurde erst nach ihrem Beginn gemeldet.
   *[other] { $n } Tage eigener Unterbrechungen wurden erst nach ihrem Beginn gemeldet.
}
report-page-bar = Balken: gezählt ist gefüllt, nicht bestätigt ist grau, erinnert ist hohl.

report-page-exercises = Übung für Übung
report-page-exercise = Übung
report-page-also = Außerdem
report-page-easier = { $n ->
    [one] Einmal die leichtere Form.
   *[other] { $n } Mal die leichtere Form.
}
report-page-against = { $n ->
    [one] An 1 Tag gemacht, obwohl noch nicht erlaubt.
   *[other] An { $n } Tagen gemacht, obwohl noch nicht erlaubt.
}

report-page-feeling = Schmerz und Anstrengung
report-page-rest = In Ruhe, davor
report-page-during = Während
report-page-after = Danach
report-page-morning = Am Morgen danach
report-page-effort = Anstrengung
report-page-chart = Schmerz in Ruhe nach Wochen, 0 bis 10: { $said }
report-page-chart-week = Woche { $week }: { $levels }
report-page-chart-key = Ein Punkt ist der Median der Woche in Ruhe, der Strich seine Spanne. Ein Kreuz ist der Median während einer Übungseinheit.
report-page-no-pain = Niemand hat zu Schmerzen geantwortet.

report-page-words = In eigenen Worten
report-page-words-none = Es wurde nichts aufgeschrieben.
report-page-words-more = { $n ->
    [one] 1 früherer Eintrag steht in der Datei.
   *[other] { $n } frühere Einträge stehen in der Datei.
}
report-page-words-withheld = { $n ->
    [one] 1 Eintrag wurde von der behandelten Person zurückbehalten.
   *[other] { $n } Einträge wurden von der behandelten Person zurückbehalten.
}
report-page-checked = Was geprüft wurde
report-page-not-checked = Noch nicht geprüft. Das Programm der Klinik prüft die versiegelte Datei: Signatur, Einträge und jede Zahl.
report-page-definitions = Was die Zahlen bedeuten
report-page-def-due = Fällig ist, was der an dem Tag gültige Plan vorsah. Nicht fällig sind: Tage, bevor der Plan kam; was noch nicht erlaubt ist; Unterbrechungen, die die Klinik angeordnet hat; Tage im Krankenhaus.
report-page-def-days = Ein Tag ist ganz, wenn alles Fällige gemacht wurde. Kein Eintrag heißt weder gemacht noch verweigert.
report-page-def-dose = Gemachte Sätze durch vorgesehene Sätze. Eine Übung zählt höchstens so viel, wie vorgesehen war. So verdeckt ein Mehr bei der einen keine andere. Was darüber hinaus gemacht wurde, ist eine eigene Zahl.
report-page-def-how = Gezählt: das Programm zählte mit, und jemand antwortete. Nicht bestätigt: niemand antwortete. Erinnert: aus dem Gedächtnis. Tagebücher nennen oft mehr, als gemacht wurde (Nicolson 2018).
report-page-def-pain = Median, dann kleinster bis größter Wert, von 0 bis 10. Veränderung heißt es erst über 2 Punkte (Farrar 2001; Childs 2005).
report-page-def-trend = Steigung des Schmerzes in Ruhe nach Theil und Sen, mit ihrem 95-%-Intervall.
report-page-trend = { $slope } Punkte pro Woche (von { $low } bis { $high }; { $n } Antworten)
report-page-trend-none = Zu wenige Antworten für eine Steigung.

report-part = { $done } von { $of } ({ $percent } %)
report-levels = { $median } ({ $least }–{ $most })
report-left-chose = wollte nicht
report-left-hurt = tat weh
report-left-tired = zu müde
report-left-no-time = keine Zeit
report-left-unsure = wusste nicht, wie
report-left-no-helper = keine Hilfsperson
report-left-nothing-at-hand = etwas fehlte

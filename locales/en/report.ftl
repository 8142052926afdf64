### A patient's report, at the clinic and when it is made.

hand-back-days = Whole days: { $whole } of { $due } on which something was due.
hand-back-files = Written to { $folder }: { $sealed }, which only your clinic opens, { $pages }, the same on two pages, { $table }, your record as a table, and { $fhir } for other programs.
hand-back-words = { $n ->
    [0] None of your own words are in it.
    [one] Your own words are in it once.
   *[other] Your own words are in it { $n } times.
}
hand-back-only-clinic = Nothing was sent. Hand the sealed file to your clinic at your visit. Nobody at the clinic sees it before. If something is wrong now, ring them.

hand-back-day = On { $from }.
hand-back-span = From { $from } to { $through }.
hand-back-entries = { $n ->
    [one] 1 entry
   *[other] { $n } entries
}
hand-back-exercise = { $name }: { $done } of { $of ->
    [one] 1 round
   *[other] { $of } rounds
}
hand-back-exercise-part = { $name }: { $done } of { $of ->
    [one] 1 round
   *[other] { $of } rounds
}, and a part of one more
hand-back-pain = Pain at rest lately: usually { $median }, from { $least } to { $most }.
hand-back-pain-same = Pain at rest lately: { $median } each time.
hand-back-test = A test, { $day }: { $result }
hand-back-choose = Where to save it for the clinic

break-written = A break from { $from } through { $through } is written down. What is not allowed yet does not open earlier for it.
break-ended = The break ends today. Your exercises are due again. If your clinic ordered the break, ask them first.

report-title-day = { $called }, { $from }
report-title = { $called }, { $from } to { $through }
report-vouched-for = Checked: signature, record and every figure hold.
report-not-vouched-for = Not to be trusted as it is:
report-figures-differ = The figures in it do not follow from its record. The figures below were worked out again.
report-not-authentic = Whoever made it did not have the plan’s secret.
report-does-not-extend = It does not go on from an earlier report.
report-person-other = It is another person’s than the earlier report.
report-older = It is older than a report that you had before.
report-clinic-not-compared = No signers list was given: whether its plans are yours was not compared.
report-device-new = No earlier report was given: this device counts as new.
report-words-withheld = The patient kept words of their own back.
report-ring-today = Ring today:
report-talk-about = Talk about:
report-the-file = The file:
report-last-days = Last days: { $days }
report-days = Days due: { $due }; whole { $whole }, part { $part }, stopped as told { $told }, no record { $none }. Without breaks of the patient’s own: { $bare-whole } of { $bare-due } whole.
report-dose = Sets: { $done } of { $of } ({ $percent } %); counted { $counted }, counted, not confirmed { $unconfirmed }, from memory { $remembered }; beyond that { $beyond }.
report-pain = Pain at rest in the last week with answers: median { $median }, from { $least } to { $most }.
report-worst = Least was done of { $item }: { $done } of { $of } sets; left out { $left } times with a reason.
report-asks = The patient asks: { $words }
report-exercises = Exercises:
report-exercise = { $item }: { $done } of { $of } sets ({ $remembered } from memory), left out { $left } times
report-as-needed = { $item }: { $needed } sets as needed
report-not-asked = { $item }: { $beyond } sets that were not asked for
report-tests = Home tests:
report-test = { $day }, { $test }: { $said }
report-chair-stand = 30-second chair stand: { $n }.
report-chair-stand-arms = 30-second chair stand: { $n } with the arms, which scores 0.
report-chair-stand-table = CDC STEADI at { $younger } or { $older } years (the plan says the year of birth, and not whether man or woman): men, { $men }; women, { $women }.
report-timed-up-and-go = Timed up and go: { $seconds } s.
report-walk-risk = 12 s or more: risk of falling (CDC STEADI).
report-walk-no-risk = Under 12 s (CDC STEADI).
report-four-stage-balance = Four-stage balance: { $held }.
report-stance-side-by-side = side by side { $seconds } s
report-stance-semi-tandem = semi-tandem { $seconds } s
report-stance-tandem = tandem { $seconds } s
report-stance-one-leg = one leg { $seconds } s
report-tandem-risk = Tandem under 10 s: risk of falling (CDC STEADI).
report-tandem-no-risk = Tandem held for 10 s (CDC STEADI).
report-test-helper = With a helper.
report-test-alone = Nobody was beside the patient.
report-test-timed = As timed.
report-test-by-hand = By hand, or corrected.
report-test-against-gate = It was not allowed on that day.
norm-below-average = below average (under { $below })
norm-not-below-average = not below average ({ $below } or more)
norm-by-birthday = below average or not, by the birthday (limits { $below })
norm-no-norm = no norm
report-caution = Days without a record are neither done nor refused. Figures are from the patient’s own device.
flag-warning-sign = { $day }: a warning sign was new or worse
flag-pain-over-limit = { $day }: pain { $level }, over the plan’s limit
flag-fall = { $day }: a fall
flag-readmission = { $day }: a stay in hospital
flag-against-gate = { $day }: { $item } was done while it was not allowed
flag-test-against-gate = { $day }: the home test { $test } was done while it was not allowed
flag-rising-pain = { $day }: pain at rest rose by { $change } points (only past 2 points it is called a change)
flag-skipped = { $day }: { $item } was left out { $times } times with a reason
flag-overdone = { $day }: { $item } was done more than asked on { $days } days
flag-lift-ignored = { $day }: a lift had no effect: “{ $precaution }”
flag-clock = { $day }: the clock jumped by { $hours } hours, and the date was confirmed
flag-chain-broken = { $day }: the record does not follow from event { $seq } on
mark-not-due = nothing due
mark-whole = whole
mark-part = part
mark-stopped-as-told = stopped as told
mark-no-record = no record

### The report on paper.

report-page-title = Report of { $called }
report-page-span = { $from } to { $through }
report-page-day = { $day }
report-page-made = Made on { $day }. Plan version { $revision }.
report-page-foot = Report of { $called }, { $day }
report-page-episode = { $name }, { $side }: week { $week }, day { $day }
report-page-episode-unknown = { $name }, { $side }: day 0 not known
report-page-weight = Weight bearing
report-page-gates = Not yet
report-page-gates-n = { $n ->
    [0] Nothing of the plan is held back.
    [one] 1 exercise is held back.
   *[other] { $n } exercises are held back.
}
report-page-next = Next to open: { $name }, { $day }.
report-page-next-none = None of them has a day on which it opens.
report-page-review = The plan was to be looked at by { $day }. Nothing new opens until then.
report-page-ring = Ring today
report-page-earlier = Earlier, in the record: { $n }
report-page-ring-none = Nothing that needs a call today.
report-page-talk = Talk about
report-page-file = The file
report-page-last = Last seven days
report-page-worst = Least done
report-page-worst-of = { $item }: { $part }. { $reasons }
report-page-worst-none = Nothing was done less than asked.
report-page-left = Left out: { $reasons }.
report-page-left-times = { $reason } ({ $n })
report-page-pain = Pain
report-page-pain-rest = At rest, last week with answers: { $levels }
report-page-pain-morning = Next morning: { $levels }
report-page-pain-change = { $change ->
    [rose] At rest it rose by { $points } from the first week to the last.
    [fell] At rest it fell by { $points } from the first week to the last.
   *[same] At rest it changed by { $points } from the first week to the last: 2 points or less is not called a change.
}
report-page-asks = The patient asks
report-page-asks-none = No question was written down.

report-page-weeks = Week by week
report-page-week = Week
report-page-weeks-from = { $first }–{ $last }
report-page-all = Whole span
report-page-bare = Without own breaks
report-page-due = Due
report-page-whole = Whole
report-page-part = Part
report-page-told = Stopped as told
report-page-none = No record
report-page-dose = Sets done
report-page-counted = Counted
report-page-unconfirmed = Not confirmed
report-page-remembered = Remembered
report-page-beyond = Beyond
report-page-needed = As needed
report-page-breaks = { $n ->
    [0] No break of the patient’s own was declared only after it had begun.
    [one] 1 day of a break of the patient’s own was declared only after it had begun.
   *[other] { $n } days of breaks of the patient’s own were declared only after they had begun.
}
report-page-bar = Bars: counted is filled, not confirmed is grey, remembered is hollow.

report-page-exercises = Exercise by exercise
report-page-exercise = Exercise
report-page-also = Also
report-page-easier = { $n ->
    [one] The easier way once.
   *[other] The easier way { $n } times.
}
report-page-against = { $n ->
    [one] Done on 1 day while not allowed.
   *[other] Done on { $n } days while not allowed.
}

report-page-feeling = Pain and effort
report-page-rest = At rest, before
report-page-during = During
report-page-after = After
report-page-morning = Next morning
report-page-effort = Effort
report-page-chart = Pain at rest by week, 0 to 10: { $said }
report-page-chart-week = week { $week }: { $levels }
report-page-chart-key = A dot is the week’s median at rest, the bar its range. A cross is the median during a session.
report-page-no-pain = Nobody answered about pain.

report-page-words = In the patient’s words
report-page-words-none = Nothing was written down.
report-page-words-more = { $n ->
    [one] 1 earlier entry is in the record.
   *[other] { $n } earlier entries are in the record.
}
report-page-words-withheld = { $n ->
    [one] 1 entry was kept back by the patient.
   *[other] { $n } entries were kept back by the patient.
}
report-page-checked = What was checked
report-page-not-checked = Not checked yet. The clinic’s program checks the sealed file: signature, record, and every figure.
report-page-definitions = What the figures mean
report-page-def-due = Due is what the plan in force on that day asked. Not due: days before the plan came, what is not yet allowed, breaks that the clinic ordered, days in hospital.
report-page-def-days = A day is whole if all that was due was done. No record is neither done nor refused.
report-page-def-dose = Sets done over sets prescribed. An exercise counts at most as much as was asked, so that doing more of one does not hide another. What was done beyond is a figure of its own.
report-page-def-how = Counted: led by the count, and somebody answered. Not confirmed: nobody answered. Remembered: from memory. Diaries tend to say more than was done (Nicolson 2018).
report-page-def-pain = Median, then least to most, of 0 to 10. A change is called one only past 2 points (Farrar 2001; Childs 2005).
report-page-def-trend = Slope of pain at rest after Theil and Sen, with its 95 % interval.
report-page-trend = { $slope } points a week (from { $low } to { $high }; { $n } answers)
report-page-trend-none = Too few answers for a slope.

report-part = { $done } of { $of } ({ $percent } %)
report-levels = { $median } ({ $least }–{ $most })
report-left-chose = chose to
report-left-hurt = it hurt
report-left-tired = too tired
report-left-no-time = no time
report-left-unsure = did not know how
report-left-no-helper = no helper
report-left-nothing-at-hand = something was missing

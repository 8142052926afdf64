### A patient's report, at the clinic and when it is made.

hand-back-days = Whole days: { $whole } of { $due } on which something was due.
hand-back-files = Written to { $folder }: { $sealed }, which only your clinic opens, and { $table }, your record as a table.
hand-back-words = { $n ->
    [0] None of your own words are in it.
    [one] Your own words are in it once.
   *[other] Your own words are in it { $n } times.
}
hand-back-only-clinic = Nothing was sent. Hand the sealed file to your clinic at your visit. Nobody at the clinic sees it before. If something is wrong now, ring them.

hand-back-span = From { $from } to { $through }.
hand-back-entries = { $n ->
    [one] 1 entry
   *[other] { $n } entries
}
hand-back-exercise = { $name }: { $done } of { $of } rounds
hand-back-pain = Pain at rest lately: { $median } in the middle, from { $least } to { $most }.
hand-back-test = A test, { $day }: { $result }
hand-back-choose = Where to save it for the clinic

break-written = A break from { $from } through { $through } is written down. What is not allowed yet does not open earlier for it.

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
flag-lift-ignored = { $day }: a lift of { $precaution } had no effect
flag-clock = { $day }: the clock jumped by { $hours } hours, and the date was confirmed
flag-chain-broken = { $day }: the record does not follow from event { $seq } on
mark-not-due = nothing due
mark-whole = whole
mark-part = part
mark-stopped-as-told = stopped as told
mark-no-record = no record

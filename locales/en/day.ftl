### Today: what is due, what is not yet, which rules hold.

day-week = Week { $week } after: { $name }
day-week-unknown = The day of the operation is not known yet: { $name }
day-zero-estimated = { $day }, estimated
day-zero-unknown = day not known yet
day-now = Now: { $exercises ->
    [one] 1 exercise
   *[other] { $exercises } exercises
}, { $minutes ->
    [one] 1 minute
   *[other] { $minutes } minutes
}.
day-nothing-now = Nothing is due now. Well rested is well done.
day-can-go-on = You began a session today. You can go on from the last finished round.
day-not-yet = Not yet
day-care = Look after yourself
day-rules = Rules for every day
day-lifts-ignored = Not opened

times-today = { $times ->
    [one] Once today
   *[other] { $times } times today
}, { $done ->
    [0] none done yet
   *[other] { $done } done
}.
times-as-needed = When you need it, { $most ->
    [one] once a day at most
   *[other] { $most } times a day at most
}. { $done ->
    [0] None done today.
   *[other] { $done } done today.
}
times-again-from = Again from { $time }.
times-rests-today = Left for today, because it hurt.
times-not-today = Not asked for today.

gate-open = You may do this.
gate-open-from = Not now. Your plan asks for it from { $day }.
gate-not-in-plan = Not now. Your plan does not ask for it.
not-yet-opens = Not yet. Opens { $day }.
not-yet-opens-after-weeks = Not yet. Opens { $day }, { $weeks ->
    [one] 1 week
   *[other] { $weeks } weeks
} after the operation.
not-yet-open-ended = Not yet. It stays so until your clinic opens it.

reason-precaution = { $why } Set by { $who }.
set-by = Set by { $who }.
reason-through = Through { $day }.
reason-until-lifted = Until your clinic says otherwise.
reason-until-lifted-not-before = Until your clinic says otherwise, and not before { $day }.
reason-day-zero-unknown = The day of the operation is not known yet.
reason-facts-differ = This exercise is not the one that your clinic checked.
reason-movement-unknown = This version of Sendaluna does not know this exercise.
reason-movement-not-seen = This is your clinic's own exercise. The person who sets your precautions has not seen it yet.
reason-tightened = On { $day } your clinic told you to stop this.
lift-ignored = Not opened: { $why } { $by } is not allowed to lift this. { $who ->
    [none] It is not known who set it.
   *[other] Set by { $who }.
}

reason-past-review = Your clinic was to look at your plan by now. Nothing new opens until they have. Ring them.
reason-set-back = You had a fall or a set-back. Nothing new opens until your clinic says so. Ring them.
notice-must-ring = Your last answers said: ring the clinic. When you have spoken to them, say so here.
notice-clock = The clock on this device has changed suddenly. You will be asked for the date before the next session.
notice-restart = You had a break of some days. The first session back is smaller, as your clinic wrote it.
notice-steps-after-break = Exercises that had gone up begin again where your clinic lets them start.
notice-ring-first = You had a long break. Ring your clinic before you start again.
notice-plan-over = The last day of this plan has passed. Ask your clinic what comes next.

did-written = Written down for { $day }, from memory.
did-against-gate = This is not allowed yet. Do not do it again for now. Ring your clinic and tell them.
tighten-done = Stopped, as your clinic told you. It will not be offered.
tighten-ended = This exercise is no longer stopped. It is offered again, if your clinic's rules allow it.
spoke-done = Good. It is written down that you have spoken to the clinic.
settings-now = Language: { $lang }. Awake from { $from } to { $to }.

day-later-or-done = Later, done or left out today
day-kind = Go at your own pace. A smaller session counts too.
day-care-done = Done
day-all-weeks = Shows every week of your plan.
day-begin = Begin
day-go-on = Go on
day-begin-anew = Begin anew
day-back = Back to today
day-elsewhere = More
day-new-plan = A new plan file
day-print = Print today’s page

not-yet-caution = Not yet means: ask your clinic. It does not mean: try gently.
not-yet-back = Back to today's exercises
not-yet-why = Why, and who says so
not-yet-did = I did it all the same
not-yet-day-zero-unknown = Not yet. The day of the operation is not known yet. Ask your clinic for a new plan file when it is.

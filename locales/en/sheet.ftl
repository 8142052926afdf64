### The plan on paper.

sheet-title = Your plan
sheet-for = For { $called }
sheet-by = From { $clinic }
sheet-revision = Version { $revision } of { $day }
sheet-foot = Plan of { $called }, version { $revision }
sheet-page = Page { $n } of { $of }
sheet-after = After: { $name }, { $side }. Day 0: { $day }.
sheet-side-left = left side
sheet-side-right = right side
sheet-side-both = both sides
sheet-side-neither = no side
sheet-holds = This sheet holds through { $day }. The plan ends on { $last }.
sheet-newer = If your clinic gives you a newer version, put this one away.
sheet-review = After { $day } nothing new opens until your clinic has looked at your plan again. Ring them.
sheet-review-week = only if your clinic has looked at your plan again

sheet-stop = When to stop, and whom to ring
sheet-stop-emergency = Stop. Ring { $phone } at once
sheet-stop-ring = No exercise today. Ring your clinic today
sheet-stop-note = Note it down, and carry on
sheet-whom = Whom to ring
sheet-whom-day = In working hours
sheet-whom-night = Evenings, nights and weekends
sheet-whom-emergency = Emergency

sheet-pain = If it hurts
sheet-pain-scale = Give it a number: 0 is none, 10 is the worst you can imagine.
sheet-pain-when = What you feel
sheet-pain-do = What to do
sheet-pain-rest = At rest, before you start: { $level } or more
sheet-pain-rest-do = No exercise today. Ring your clinic.
sheet-pain-during = While you exercise: { $level } or more
sheet-pain-slow-do = Go on gently.
sheet-pain-easier-do = Take the easier way, if there is one.
sheet-pain-stop-do = Stop this exercise for today.
sheet-pain-today-do = Stop for today. Ring your clinic.
sheet-pain-rise = While you exercise: { $level } more than before you started
sheet-pain-sharp = Sharp or stabbing pain, even if it is little
sheet-pain-settle = Afterwards: it should settle within { $minutes } minutes
sheet-pain-settle-do = If it does not, do less next time, and tell your clinic.
sheet-pain-morning = The next morning: { $level } more than before you exercised
sheet-pain-morning-do = Do less today. Tell your clinic.

sheet-rules = Rules for every day
sheet-rule = The rule
sheet-until = Until when
sheet-who = Set by
sheet-not-opened = Not opened

sheet-week = Week
sheet-days = Days
sheet-what = What it is
sheet-opens = What opens
sheet-weeks-of = Your weeks after: { $name }
sheet-unknown-zero = The day of the operation is not known yet. Ask your clinic for a new sheet when it is.

sheet-what-to-do = What to do in which week
sheet-exercise = Exercise
sheet-how-often = How often
sheet-how-much = How much
sheet-stage-weeks = Weeks { $from } to { $through }
sheet-stage-week = Week { $from }
sheet-stage-days = { $from } to { $through }
sheet-round = { $items }: one round of each in turn, { $rounds } times. Rest { $rest } seconds after each turn.
sheet-not-in-stage = In no week yet
sheet-not-in-stage-why = Your plan does not ask for these yet.

when-times-a-day = { $times ->
    [1] Once a day.
    [2] Twice a day.
   *[other] { $times } times a day.
}
when-hours-between = { $hours ->
    [1] At least 1 hour apart.
   *[other] At least { $hours } hours apart.
}
when-every-hours = { $hours ->
    [one] Every hour while you are awake.
   *[other] Every { $hours } hours while you are awake.
}
when-weekdays = On { $days }.
when-days-a-week = { $days ->
    [one] On 1 day a week.
   *[other] On { $days } days a week, never two in a row.
}
when-as-needed = When you need it. { $most ->
    [one] Once a day at most.
   *[other] { $most } times a day at most.
}
when-times-that-day = { $times ->
    [one] Once on such a day.
   *[other] { $times } times on such a day.
}

sheet-exercises = Your exercises, one by one
sheet-start = Start
sheet-end = End
sheet-figure-still = { $name }: how it looks.
sheet-figure-start = { $name }: the start.
sheet-figure-end = { $name }: the end.
sheet-have-ready = Have ready: { $things }.
sheet-beside = Only with someone beside you.
sheet-brace = Keep your brace or sling on.
sheet-set-up = Get ready
sheet-how = How to do it
sheet-feel = What you feel
sheet-watch = Keep an eye on this
sheet-note = From your clinic
sheet-easier = Easier way of { $of }: { $name }
sheet-easier-see = Easier way of { $of }: { $name }. See { $n }.
sheet-dose-elsewhere = In some weeks it is more or less: see “{ $title }”.
sheet-tempo = Count { $out } to go, { $hold } to hold, { $back } to come back, { $pause } to let go.
sheet-tempo-no-hold = Count { $out } to go, { $back } to come back, { $pause } to let go.
sheet-breath = Breathe in while you count { $in }. Breathe out while you count { $out }.
sheet-graded = Step by step
sheet-graded-step = Step { $n } of { $of }: { $dose }
sheet-graded-start = You begin with step { $n }.
sheet-graded-now = Today you are at step { $step } of { $steps }.
sheet-graded-up = One step up after { $sessions } whole sessions in a row, if pain was { $pain } at most. Only if you want to, and not after a break.
sheet-graded-up-effort = One step up after { $sessions } whole sessions in a row, if pain was { $pain } at most and effort { $effort } at most. Only if you want to, and not after a break.
sheet-graded-down = One step down at once if pain goes over { $pain }.
sheet-ramp = { $grows ->
    [sets] { $start ->
        [one] Start with 1 round.
       *[other] Start with { $start } rounds.
    } Add { $step } { $days ->
        [one] every day
       *[other] every { $days } days
    }, up to { $cap }.
    [repetitions] { $start ->
        [one] Start by doing it once.
       *[other] Start by doing it { $start } times.
    } Add { $step } { $days ->
        [one] every day
       *[other] every { $days } days
    }, up to { $cap }.
    [hold] { $start ->
        [one] Start by holding for 1 second.
       *[other] Start by holding for { $start } seconds.
    } Add { $step } { $days ->
        [one] every day
       *[other] every { $days } days
    }, up to { $cap }.
   *[minutes] { $start ->
        [one] Start with 1 minute.
       *[other] Start with { $start } minutes.
    } Add { $step } { $days ->
        [one] every day
       *[other] every { $days } days
    }, up to { $cap }.
}
sheet-ramp-yes = Only if it goes well, and not after a break.

sheet-care = Look after yourself
sheet-care-times = { $times ->
    [0] As your clinic told you.
    [one] Once a day.
   *[other] { $times } times a day.
}

sheet-return = After a break
sheet-return-start = After { $days } days or more without exercise, do less the first time:
sheet-return-same = After { $days } days or more without exercise, take care the first time.
sheet-return-ring = After { $days } days or more, ring your clinic before you start again.

sheet-tests = Tests at home
sheet-tests-helper = Only with a helper beside you, and only if your clinic’s rules allow it by then. If you feel unsafe, stop and sit down.
sheet-test-chair-stand-count = Your helper counts how often you stand upright, and writes it down.
sheet-test-timed-up-and-go-time = Your helper takes the time, from “go” until you sit again, and writes it down.
sheet-test-four-stage-balance-time = Your helper takes the time of each, until your feet move or you hold on. Do not go on to the next if you cannot stand for 10 seconds.
sheet-test-weeks = From week { $from } on, { $every ->
    [one] every week.
   *[other] every { $every } weeks.
}

sheet-cautions = Please remember
sheet-tick = My week
sheet-tick-how = Make a stroke for each time. Note pain before and after.
sheet-tick-pain = Pain before and after

sheet-written = Your plan for the fridge: { $path }

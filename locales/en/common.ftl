### Words used in many places.

date-day = { $weekday } { $day } { $month }
date-short = { $day } { $month }
date-day-and-year = { $weekday } { $day } { $month } { $year }

# Several things: “a, b and c”.
list-comma = {", "}
list-semicolon = {"; "}
list-last = { $first } and { $last }

side-left = left side
side-right = right side
side-both = both sides together
side-one-after-the-other = one side, then the other
side-in-turn = each side in turn

dose-repetitions = { $n ->
    [one] Do it once.
   *[other] Do it { $n } times.
}
dose-repetitions-range = Do it { $least } to { $most } times.
dose-hold = { $n ->
    [one] Hold for 1 second.
   *[other] Hold for { $n } seconds.
}
dose-breaths = { $n ->
    [one] Take 1 slow breath.
   *[other] Take { $n } slow breaths.
}
dose-minutes = { $n ->
    [one] Do it for 1 minute.
   *[other] Do it for { $n } minutes.
}
dose-steps = { $n ->
    [one] Walk 1 step with { $aid }.
   *[other] Walk { $n } steps with { $aid }.
}
# Sets, in words that need no word for a set.
dose-sets = { $n ->
    [one] That is one round.
   *[other] Do this { $n } rounds.
}
dose-rest = { $n ->
    [one] Rest for 1 second between rounds.
   *[other] Rest for { $n } seconds between rounds.
}
dose-weight = Use { $kg } kg.
dose-band = Use { $band }.

ring-clinic = Ring { $clinic }: { $phone }
ring-out-of-hours = Evenings, nights and weekends: { $night }
ring-emergency = Emergency number: { $emergency }

# Words that count as an answer, one space between them.
answers-yes = yes y
answers-no = no n
answers-left = left l
answers-right = right r
answers-both = both b
answers-neither = neither none n
answers-again = again a

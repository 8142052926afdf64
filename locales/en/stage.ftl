### What a session shows in large type, and says.

stage-get-ready = Get ready
stage-change-sides = Change sides
stage-count-in = Ready
stage-out = Go
stage-hold = Hold
stage-back = Back
stage-let-go = Let go
stage-breathe-in = Breathe in
stage-breathe-out = Breathe out
stage-keep-going = Keep going
stage-walk = Walk
stage-rest = Rest
stage-paused = Paused
stage-done = Done
stage-of = of { $of }
stage-of-round = of { $of }, round { $round } of { $rounds }
stage-round = round { $round } of { $rounds }
stage-minutes = minutes to go
stage-steps = steps
stage-minutes-left = { $n ->
    [0] Less than a minute left
    [one] 1 minute left
   *[other] { $n } minutes left
}
stage-tally = { $done } of { $of } done.
stage-say-when-ready = Get into place. Say when you are ready.
stage-walk-steps = { $n ->
    [one] Walk 1 step.
   *[other] Walk { $n } steps.
} Say when you have.
stage-lost-time = Paused, because the device was asleep. Go on when you like.
ended-none = Ended. Nothing was done that could be written down. You can write it down by hand.

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
stage-of-round = of { $of }, round{"\u00A0"}{ $round }{"\u00A0"}of{"\u00A0"}{ $rounds }
stage-round = round{"\u00A0"}{ $round }{"\u00A0"}of{"\u00A0"}{ $rounds }
stage-minutes = { $n ->
    [one] minute to go
   *[other] minutes to go
}
stage-steps = steps
stage-minutes-left = { $n ->
    [0] Less than a minute left
    [one] 1 minute left
   *[other] { $n } minutes left
}
stage-tally = { $done } of { $of } done.
stage-say-when-ready = Get into place. Then press “{ session-ready }”.
stage-say-when-beside = Have somebody beside you. Then press “{ session-beside-start }”.
stage-walk-steps = { $n ->
    [one] Walk 1 step.
   *[other] Walk { $n } steps.
} Then press “{ session-walked }”.
stage-lost-time = Paused, because the device was asleep. Go on when you like.
ended-none = Ended. Nothing was done that could be written down. You can write it down by hand.

# What a desktop shows of the program that keeps its screen on.
ears-why-awake = A session is running.
ears-no-speech = Nothing on this device can speak. You hear tones and see large words.
ears-no-voice = This device has no voice for your language. You hear tones and see large words.
ears-no-tones = This device gives no sound. You see large words.

# In the tray of a desktop, while the window is put away.
tray-open = Open Sendaluna
tray-close = Close Sendaluna

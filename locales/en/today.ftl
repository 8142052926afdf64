### Today on one page, for somebody beside the patient who counts and ticks.

today-title = Today, for { $called }
today-how = For whoever helps: go from top to bottom. Count aloud. Cross out a stroke each time. When it is done, tick the box.
today-not-yet-how = Do not try these today, not even gently.
today-until-lifted = { $names }: until your clinic opens it
today-rests = Leave it for today, because it hurt: { $names }
today-done = Done for today: { $names }
today-left-out = There was no room for more. What is left is in Sendaluna.

today-signs = Is one of these new or worse? Then stop
today-hurts = If it hurts, just stop.
today-pain = Pain from 0 to 10. Before: { $rest } or more, do not start, ring today. { $sharp ->
    [today] During: { $stop } or more, or { $rise } more than before, stop this exercise. { $today } or more, or sharp: stop for today and ring.
   *[exercise] During: { $stop } or more, { $rise } more than before, or sharp: stop this exercise. { $today } or more: stop for today and ring.
}

today-pain-before = Pain before
today-pain-after = Pain after
today-words = In your words
today-note = Pain: 0 none, 10 the worst. How hard: 0 { $least }, 10 { $most }. Later, enter in Sendaluna what was done.

today-choose = Where today’s page goes
today-written = Today on one page, to print: { $path }

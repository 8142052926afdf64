### A session: questions, cues, answers.

ask-signs = Is anything of this new, or worse than last time?
ask-signs-again = Once more: is anything new, or worse than last time?
ask-signs-how = Type the numbers that are. Press Enter if nothing is.
ask-pain-now = How much does it hurt now, at rest? 0 (none) to 10 (worst you can imagine)
ask-go-on = You began a session today. Go on from the last finished round? yes or no
ask-pain-how-much = How much does it hurt? 0 (none) to 10 (worst you can imagine)
ask-pain-kind = What kind of pain? 1 a stretch or tired muscles, 2 sharp or stabbing
ask-pain-place = Where? 1 hip, 2 thigh, 3 knee, 4 calf, 5 foot, 6 back, 7 shoulder, 8 elsewhere
ask-how-many = How many did you do?
ask-effort = How hard was it? 0 (like resting) to 10 (all you have). Enter to skip.
ask-pain-after = How much does it hurt now? 0 (none) to 10 (worst you can imagine). Enter to skip.
ask-words = Anything you want to write down? Enter to skip.

signs-noted = Noted. You can go on. Tell your clinic at your next visit.
signs-emergency = Ring the emergency number now if you have
signs-ring-today = Do not exercise, and ring the clinic today, if you have
sign-unwell = You feel unwell or dizzy.
signs-note = Tell the clinic at your next visit if you have

stop-emergency = Stop. Ring { $emergency } now. Say that you had an operation, and what is wrong.
stop-ring-today = Stop for today. Ring { $clinic } now: { $phone }. Evenings, nights and weekends: { $night }.
stop-when-spoken = No session starts until you have spoken to the clinic. Then run: sendaluna spoke

hurts-go-on = That is all right. Going on.
hurts-gently = Go on gently. Make the movement smaller and slower.
hurts-easier = Take the easier way.
hurts-stop-exercise = Leave this exercise for today.
hurts-stop-today = Stop for today, and ring your clinic.

session-keys = Space bar: pause or go on. h: this hurts. f: I did fewer. e: easier way. l: leave this one. Enter: go on now. u: I feel unwell. q: stop.
session-paused = Paused. Take your time.

cue-if-it-hurts = If it hurts, just stop. Tell me afterwards.
cue-hand-on-rail = Put the phone down. Hold on to the rail.
cue-beside-you = Have someone beside you for this one.
cue-set-up = Next: { $name }, { $side }.
cue-ready = Press the space bar when you are ready.
cue-change-side = Change sides: { $side }.
cue-number = { $n }
cue-out = { $n }: go.
cue-hold = { $n ->
    [one] Hold for 1 second.
   *[other] Hold for { $n } seconds.
}
cue-back = And back.
cue-minutes-left = { $n ->
    [one] 1 minute to go.
   *[other] { $n } minutes to go.
}
cue-steps = { $n ->
    [one] Walk 1 step.
   *[other] Walk { $n } steps.
} Press the space bar when you have.
cue-set-done = { $n ->
    [one] That was 1.
   *[other] That was { $n }.
} Written down.
cue-rest = { $n ->
    [one] Rest for 1 second.
   *[other] Rest for { $n } seconds.
}
cue-going-on = Going on. Get ready.
cue-lost-time = Paused, because the device was asleep. Press the space bar to go on.
cue-end = That was the last one.

ended-whole = Done, the whole session.
ended-part = Done for now, a part of the session. What you did is written down.
ended-stopped-as-told = Stopped as told. That was right. What you did is written down.

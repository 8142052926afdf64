### A session: questions, cues, answers.

ask-signs = Is any of this new, or worse than last time?
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
signs-emergency = Ring the emergency number now for any of these
signs-ring-today = Do not exercise, and ring the clinic today, for any of these
sign-unwell = You feel unwell or dizzy.
signs-note = Tell the clinic at your next visit about any of these

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
ended-part = You did a part of the session. It is written down.
ended-stopped-as-told = Stopped as told. That was right. What you did is written down.

## The window, before a session.

before-back = Back
before-date = Today is { $day }. Is that right?
before-date-yes = Yes, that is right
before-date-no = No
before-date-wrong = The date on this device is wrong.
before-date-why = Your plan goes by the date. So there is no session until it is right. Nothing is lost.
before-date-do = Set the date in the settings of this device. Then come back and begin again.
before-back-to-today = Back to today
before-tap = Tap each one that is.
before-nothing = Nothing is new or worse
before-something = Something is
before-go-on-with = Go on with these
before-pain = How much does it hurt now, at rest?
before-pain-go-on = Go on
before-coming = What is coming
before-going-on = You began this session today. It goes on from the last finished round.
before-minutes = { $n ->
    [one] It takes about 1 minute.
   *[other] It takes about { $n } minutes.
}
before-have-ready = Have this ready:
before-beside-you = Have someone beside you for a part of this.
before-helper = Someone is helping me and answers
before-exercises = The exercises, in this order
before-begin = Begin

## The window, during a session.

session-none = none
session-worst = worst you can imagine
session-back = Back
session-ready = I am ready
session-walked = I have walked them
session-beside-start = Somebody is beside me. Start
session-beside-nobody = Nobody is here: leave this one
session-pause = Pause
session-step-on = Next
session-hurts = This hurts
session-fewer = I did fewer
session-easier = Easier way
session-leave = Leave this one
session-go-on = Go on
session-go-on-without = Go on without this exercise
session-go-on-now = Go on now
session-stop = Stop for today
session-unwell = I feel unwell or dizzy
session-paused-phase = Paused
session-take-your-time = Take your time.
session-next = Next
session-not-fewer = Do not change it
session-saving = One moment.

## The window: this hurts.

hurts-how-much = How much does it hurt?
hurts-still = You have stopped. That is right. Stay still for a moment.
hurts-seen = They cannot say a number. I see:
hurts-seen-none = No distress
hurts-seen-some = Some distress
hurts-seen-much = Much distress
hurts-kind = What kind of pain is it?
hurts-stretching = A stretch, or tired muscles
hurts-sharp = Sharp or stabbing
hurts-where = Where does it hurt?
hurts-places = Places on the body
hurts-hip = Hip
hurts-thigh = Thigh
hurts-knee = Knee
hurts-calf = Calf
hurts-foot = Foot
hurts-back = Back
hurts-shoulder = Shoulder
hurts-elsewhere = Somewhere else
hurts-cannot-say = I cannot say where
hurts-go-on-with = Go on with this

## The window: a stop.

stop-call-emergency = Emergency number
stop-call-clinic = Ring { $clinic }
stop-call-night = Evenings, nights, weekends
stop-until-spoken = No exercise starts until you have spoken to the clinic.
stop-spoke = I have spoken to the clinic
stop-spoke-sure = Have you really spoken to someone at the clinic about this?
stop-spoke-yes = Yes, we have spoken
stop-spoke-no = No, not yet

## The window, after a session.

after-effort = How hard was it?
after-effort-least = like resting
after-effort-most = all you have
after-pain = How much does it hurt now?
after-words = Anything you want to write down?
after-words-label = One line for your next visit
after-skip = Skip
after-go-on = Go on
after-keep = Keep it
after-stopped = You stopped. That was right.
after-nothing-asked = You are asked nothing more now. What you did is kept.
after-busy = It is being written down. One moment.
ended-tally = What you did
ended-back = Back to today

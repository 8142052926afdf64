### A home test: what to do, and the bare figure. What a table says of it belongs to the clinic.

test-day = A test from your clinic
test-until = Once, up to { $day }.
test-chair-stand = Stand up and sit down
test-timed-up-and-go = Stand up, walk and come back
test-four-stage-balance = Stand in four ways

## Before. After CDC STEADI, from memory.

test-chair-stand-place = Put a firm chair against a wall. Its seat is as high as your knee. It has no wheels.
test-chair-stand-how = Sit in the middle of the seat, feet flat on the floor. Cross your arms on your chest.
test-chair-stand-go = Stand up all the way, then sit down again. Go on for 30 seconds.
test-chair-stand-helper = Your helper taps each time you stand upright.
test-timed-up-and-go-place = Put a firm chair with arms against a wall. Mark a line 3 metres in front of it.
test-timed-up-and-go-how = Wear your usual shoes. Use your stick or frame if you have one.
test-timed-up-and-go-go = Stand up and walk to the line at your usual pace. Turn with small steps, walk back and sit down.
test-timed-up-and-go-helper = Your helper says go and taps. They tap again when you sit.
test-four-stage-balance-place = Stand next to something firm that you can hold, such as a kitchen top.
test-four-stage-balance-how = You stand in four ways, each harder than the last. Keep your eyes open. Do not use a stick or frame.
test-four-stage-balance-go = Your helper helps you into place. Then let go, and stand still for 10 seconds.
test-four-stage-balance-helper = Your helper taps when you stand still. They tap again if your feet move or you hold on.
test-close = Somebody must stay beside you, close enough to hold you.
test-unsafe = If you feel unsafe, stop and sit down.

test-mind = Mind this
test-ask-helper = Is somebody beside you now, who can hold you?
test-helper-yes = Yes, go on
test-helper-no = No, nobody is here
test-helper-none = Do this test when somebody is with you. It stays on your list.

## While it is timed.

test-chair-stand-sit = Sit down and cross your arms. Feet flat on the floor.
test-timed-up-and-go-sit = Sit down and lean back. Stand up when your helper says go.
test-stance-side-by-side = 1 of 4: feet side by side, close together.
test-stance-semi-tandem = 2 of 4: one foot half in front. Its inner side touches the big toe of the other.
test-stance-tandem = 3 of 4: one foot in front of the other, heel to toe.
test-stance-one-leg = 4 of 4: stand on one foot.
test-tap-start = Start
test-tap-go = Go
test-tap-still = I stand still
test-tap-stood = I am standing
test-tap-seated = Seated again
test-tap-moved = I moved
test-stop = Stop
test-get-ready = Get ready
test-go = Go.
test-seconds-left = { $n ->
    [one] so far. 1 second left.
   *[other] so far. { $n } seconds left.
}
test-seconds = seconds
test-seconds-to-go = seconds to go
test-end = That is the end. Sit down and rest.
test-stopped = Stopped. Sit down and rest. If you feel unwell or it hurts, ring your clinic.
test-lost-time = The device was asleep for a part of it, so it does not count.

## After.

test-result-chair-stand = { $n ->
    [one] You stood up once.
   *[other] You stood up { $n } times.
}
test-result-arms = You pushed with your arms.
test-result-timed-up-and-go = It took { $seconds } seconds.
test-held-side-by-side = Feet side by side: { $seconds } seconds.
test-held-semi-tandem = One foot half in front: { $seconds } seconds.
test-held-tandem = Heel to toe: { $seconds } seconds.
test-held-one-leg = On one foot: { $seconds } seconds.
test-right = Is that right?
test-stands = How many times you stood up
test-half-way = Were you more than halfway up at the end? Then count that too.
test-arms = I pushed with my arms
test-keep = Write it down
test-again = Do it again
test-leave = Do not write it down
test-back = Back to today
test-another-day = It is another day by now. Begin the test again. Nothing was written down.
test-written = It is written down. Your clinic will look at it with you.
test-nothing-written = Nothing was written down. The test stays on your list.

## In the terminal.

ask-test-helper = Is somebody beside you now, who can hold you? yes or no
ask-test-right = Is that right? yes to write it down, again to do it again, no to write nothing. After a chair test you can type the right number.
ask-test-arms = Did you push with your arms? yes or no
test-keys = Space bar or Enter: tap. q: stop.
test-none = No test from your clinic is asked for now.

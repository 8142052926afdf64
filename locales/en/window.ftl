### What several screens of the window say.

weeks-one = Week { $week }
weeks-this = Week { $week }, this week
weeks-opens = { $name }: opens { $day }

past-sessions = { $n ->
    [0] No session yet.
    [one] 1 session so far.
   *[other] { $n } sessions so far.
}
past-week-from = From { $day }
past-whole = A whole session.
past-part = A part of a session.
past-remembered = { $n ->
    [one] 1 exercise without the program, from memory.
   *[other] { $n } exercises without the program, from memory.
}
past-none = No record.
past-ahead = Still to come.
past-pain-before = before a session, at rest
past-pain-during = during a session
past-pain-after = after a session
past-pain-next-morning = the next morning

position-supine = lying on your back
position-hook-lying = lying on your back, knees bent
position-side-lying = lying on your side; the side that you exercise is on top
position-side-lying-under = lying on your side; the side that you exercise is underneath
position-prone = lying face down
position-seated = sitting
position-standing = standing
position-bent-over = standing, bent forward, supported
position-kneeling = kneeling
position-hands-and-knees = on hands and knees
position-unknown = position not known

prop-chair = a steady chair
prop-rail = something to hold on to
prop-towel = a towel
prop-roll = a rolled-up towel
prop-strap = a strap or belt
prop-step = a step
prop-band = your exercise band
prop-cuff = your weight cuff
prop-pillow = a pillow
prop-stick = a stick
prop-walking-aid = your walking aid
prop-table = a table
prop-wall = a wall or a door frame
prop-helper = someone to help you

care-done-of = { $done } of { $times } done today.
care-done = { $done ->
    [0] None done today.
   *[other] { $done } done today.
}

language-name = English
# ltr, or rtl for what is written from right to left.
language-direction = ltr

window-no-screen = There is no screen here to draw on.
window-pick-title = Open the plan from your clinic
window-pick-kind = Sendaluna plan
window-failed = Something in this window failed: { $what } What was written down is safe.
window-failed-do = Close Sendaluna and open it again. If it stays so, use your plan on paper, or ring your clinic.
problem-emergency = In an emergency, ring your local emergency number. The number of your clinic stands on its letter.
past-before-plan = Before this plan.

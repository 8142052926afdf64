### The clinic's command line.

clinic-passphrase = Passphrase:
clinic-passphrase-again = The same again:
clinic-written = Written: { $path }
clinic-lift-without-right = Mind: { $who } is not allowed to lift precautions. This lift will have no effect, and the patient will read so.
clinic-lift-no-effect = No effect: { $by } is not allowed to lift the precaution { $id }. { $who ->
    [none] It is not known who set it.
   *[other] Set by { $who }.
}
clinic-unknown-family = Mind: no exercise of the library belongs to the family { $id }. This precaution shuts nothing, unless an exercise of your own has it.
clinic-check-clean = Checked: nothing in this plan contradicts a precaution, on any day.
clinic-check-contradictions = { $n ->
    [one] 1 contradiction. This plan cannot be signed.
   *[other] { $n } contradictions. This plan cannot be signed.
}
clinic-check-problems = { $n ->
    [one] 1 problem. Mend it first; then every day is checked.
   *[other] { $n } problems. Mend them first; then every day is checked.
}

contradiction = { $item } ({ $movement }) is asked for in stage { $stage } from { $from } through { $through }. { $reason }
contradiction-undated = { $item } ({ $movement }) is asked for in stage { $stage }, whose day 0 is not known. { $reason }
contradiction-precaution = Precaution { $precaution }, set by { $who }: { $why }
near-limit = Close to a limit: { $item } ({ $movement }), precaution { $precaution }. { $measured }
measured = { $side }, { $what } reaches { $reaches }; allowed { $until }: { $allowed }.
measured-moment = moment of { $what }
measured-weight = weight
on-the-left = On the left
on-the-right = On the right
joint-motion = { $joint } { $motion }
joint-hip = hip
joint-knee = knee
joint-ankle = ankle
joint-shoulder = shoulder
joint-elbow = elbow
joint-trunk = trunk
motion-flexion = flexion
motion-extension = extension
motion-abduction = abduction
motion-adduction = adduction
motion-internal-rotation = internal rotation
motion-external-rotation = external rotation
motion-dorsiflexion = dorsiflexion
motion-plantarflexion = plantarflexion
motion-side-bending = side bending
motion-twisting = twisting

contradiction-would-pass = Would pass: { $movements }.
until-week = through week { $n }
until-day = through { $day }
until-lifted = until lifted
numbers-of = { $of } ({ $movement }; family { $family }): { $position }
numbers-range = { $side }, { $what }: { $from }° to { $to }°, { $drive }
numbers-action = { $side }, muscles of { $what }: { $drive }
numbers-moment = { $side }, moment of { $what }: { $moment } N·m/kg, { $drive } (gravity’s share, an estimate)
numbers-weight = Weight, in per cent of the body: left { $left }, right { $right }
numbers-bends-spine = bends the spine
numbers-twists-spine = twists the spine
numbers-resistance = outside resistance
drive-active = active
drive-isometric = isometric
drive-assisted = assisted
drive-passive = passive
seat-low = seat lower than the knee
seat-knee = seat level with the knee
seat-high = seat higher than the knee

show-plan = Plan { $plan }, revision { $revision }, for { $called }, from { $clinic }
show-days = Review by { $review }; last day { $last }
show-letter-code = Letter code: { $code }
show-signers = Signers list { $number }:
show-precautions = Precautions ({ $n }):
show-items = Exercises ({ $n }):
show-opens = opens { $day }
show-until-lifted = until lifted

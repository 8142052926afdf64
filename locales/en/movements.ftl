### What patients read and hear about each movement that ships. The side, the count and the length of a
### hold are said by the program, so they are not said here. Four messages for each movement, by its id:
### what it is called, how to get ready, how to do it, and what to keep to.

movement-abduction-slide-name = Leg slide to the side
movement-abduction-slide-set-up = Lie flat on your back with both legs straight. Point your toes to the ceiling.
movement-abduction-slide-how = Slide your leg out to the side. Keep your heel on the bed. Stop when it feels tight. Slide it back, but not past the middle.
movement-abduction-slide-faults = Keep your toes pointing to the ceiling.

movement-ankle-pump-name = Foot up and down
movement-ankle-pump-set-up = Lie on your back. Let your leg rest straight on the bed.
movement-ankle-pump-how = Point your toes away from you. Then pull your toes up toward your shin. Keep your leg resting on the bed.
movement-ankle-pump-faults = Keep it slow. Go all the way each time.

movement-bridge-name = Hip lift
movement-bridge-set-up = Lie on your back. Bend your knees and put your feet flat on the bed.
movement-bridge-how = Tighten your buttocks. Push through your feet and lift your hips. Stop when your shoulders, hips and knees make one line. Hold. Lower your hips slowly.
movement-bridge-faults = Keep your back straight. Let your buttocks do the lifting.

movement-calf-raise-name = Up on your toes
movement-calf-raise-set-up = Stand tall with your feet under your hips. Hold a rail or a firm counter with both hands.
movement-calf-raise-how = Push up onto your toes with both feet. Hold. Lower your heels slowly.
movement-calf-raise-faults = Keep your weight over your big toes. Keep both feet sharing the work.

movement-clam-name = Knee lift, lying on your side
movement-clam-set-up = Lie on your side with the leg on top. Bend your hips and knees. Put your feet in line with your back, one on the other. Put a pillow between your knees.
movement-clam-how = Keep your feet together. Lift your upper knee. Hold. Lower it slowly to the pillow.
movement-clam-faults = Keep your hips still, one above the other.

movement-glute-set-name = Buttock squeeze
movement-glute-set-set-up = Lie flat on your back with both legs straight.
movement-glute-set-how = Squeeze your buttocks together. Hold the squeeze. Keep your legs still. Let go slowly.
movement-glute-set-faults = Keep breathing while you squeeze.

movement-hands-and-knees-arch-name = Hollow and round your back
movement-hands-and-knees-arch-set-up = Put a folded towel on the floor. Kneel on it and lean on your hands. Put your hands under your shoulders and your knees under your hips.
movement-hands-and-knees-arch-how = Let your belly sink slowly, so your back hollows. Then round your back up toward the ceiling. Breathe as you move.
movement-hands-and-knees-arch-faults = Keep your hips right above your knees. Keep your arms straight.

movement-heel-prop-name = Knee stretch with your heel up
movement-heel-prop-set-up = Lie flat on your back. Rest your heel on a rolled towel. Keep the space under your knee empty.
movement-heel-prop-how = Let your leg go loose. Let your knee sink toward the bed. Stay like this until the time is up.
movement-heel-prop-faults = Keep your kneecap and your toes pointing to the ceiling.

movement-heel-slide-name = Heel slide
movement-heel-slide-set-up = Lie flat on your back with both legs straight. Wear a sock so your heel slides well.
movement-heel-slide-how = Slide your heel toward your buttock. Let your knee bend up. Stop when it feels tight. Slide your heel back until your leg is straight.
movement-heel-slide-faults = Keep your knee in line with your hip and your foot.

movement-heel-slide-strap-name = Heel slide with a strap
movement-heel-slide-strap-set-up = Lie flat on your back with both legs straight. Put the strap around your foot. Hold one end in each hand.
movement-heel-slide-strap-how = Pull the strap gently. Let your heel slide toward your buttock. Stop when it feels tight. Let the strap out slowly until your leg is straight.
movement-heel-slide-strap-faults = Keep your knee in line with your hip and your foot. Keep the pull gentle.

movement-hip-hinge-name = Bow from the hips
movement-hip-hinge-set-up = Stand tall with your feet under your hips. Hold a rail or a firm counter with both hands.
movement-hip-hinge-how = Bend your knees a little. Push your hips back and bow forward. Keep your back straight. Push your hips forward and stand tall.
movement-hip-hinge-faults = Keep your back straight from your head to your hips.

movement-knee-rolls-name = Knees side to side
movement-knee-rolls-set-up = Lie on your back. Bend your knees and put your feet flat on the bed. Keep your knees together.
movement-knee-rolls-how = Let both knees roll slowly to one side. Stop when it feels tight. Bring them back to the middle. Then roll them to the other side.
movement-knee-rolls-faults = Keep both shoulders on the bed.

movement-kneeling-weight-shift-name = Hips back and up, kneeling
movement-kneeling-weight-shift-set-up = Put a pillow on the floor. Put a firm chair in front of it. Kneel on both knees and hold the chair.
movement-kneeling-weight-shift-how = Move your hips back a little, toward your heels. Then come up until you kneel tall. Keep your hands on the chair.
movement-kneeling-weight-shift-faults = Keep your back straight. Keep the same weight on both knees.

movement-long-arc-quad-name = Knee straightening, sitting
movement-long-arc-quad-set-up = Sit well back on a firm chair. Put your feet flat on the floor.
movement-long-arc-quad-how = Lift your foot until your knee is straight. Hold. Lower your foot slowly to the floor.
movement-long-arc-quad-faults = Keep your back tall against the chair.

movement-long-arc-quad-band-name = Knee straightening with a band, sitting
movement-long-arc-quad-band-set-up = Tie the band to the back leg of a firm chair. Loop it around your ankle. Sit well back with your feet flat on the floor.
movement-long-arc-quad-band-how = Lift your foot against the band until your knee is straight. Hold. Lower your foot slowly to the floor.
movement-long-arc-quad-band-faults = Keep your back tall against the chair. Keep the way down as slow as the way up.

movement-marching-name = March on the spot
movement-marching-set-up = Stand tall. Hold a rail or a firm counter with both hands. Put your weight on the other leg.
movement-marching-how = Lift your knee in front of you. Let your lower leg hang. Put your foot down slowly.
movement-marching-faults = Keep your body tall, right above the standing foot.

movement-mini-squat-name = Small knee bend, standing
movement-mini-squat-set-up = Stand tall with your feet under your hips. Hold a rail or a firm counter with both hands.
movement-mini-squat-how = Bend your knees a little, as if to sit. Keep your heels on the floor. Push up until you stand tall.
movement-mini-squat-faults = Keep your knees pointing the same way as your toes.

movement-pelvic-tilt-name = Flatten your back
movement-pelvic-tilt-set-up = Lie on your back. Bend your knees and put your feet flat on the bed.
movement-pelvic-tilt-how = Tighten your lower belly. Press the small of your back into the bed. Hold. Let go slowly.
movement-pelvic-tilt-faults = Keep breathing while you hold.

movement-pendulum-name = Loose arm swing
movement-pendulum-set-up = Stand beside a firm table. Lean forward and rest your other hand on it. Let your arm hang down loose.
movement-pendulum-how = Sway your body gently forward and back. Let your arm swing along by itself. Let the swing die out before you stand up.
movement-pendulum-faults = Keep your arm loose. Let your body make the swing.

movement-prone-press-up-name = Chest lift, face down
movement-prone-press-up-set-up = Lie face down on the bed. Put your hands flat beside your shoulders.
movement-prone-press-up-how = Push with your arms and lift your chest. Keep your hips on the bed. Let your back go loose. Lower your chest slowly.
movement-prone-press-up-faults = Keep your shoulders low, away from your ears.

movement-quad-set-name = Thigh squeeze
movement-quad-set-set-up = Lie flat on your back. Keep your leg straight and your toes pointing to the ceiling.
movement-quad-set-how = Tighten the front of your thigh. Press the back of your knee into the bed. Hold. Let go slowly.
movement-quad-set-faults = Keep breathing while you hold.

movement-seated-knee-bend-name = Foot slide back, sitting
movement-seated-knee-bend-set-up = Sit on a firm chair. Put your foot flat, a little in front of you.
movement-seated-knee-bend-how = Slide your foot back under the chair. Stop when your knee feels tight. Hold. Slide your foot forward again.
movement-seated-knee-bend-faults = Keep both buttocks on the seat.

movement-seated-knee-bend-assisted-name = Foot slide back with help, sitting
movement-seated-knee-bend-assisted-set-up = Sit on a firm chair. Put your foot flat, a little in front of you. Cross your other ankle in front of it.
movement-seated-knee-bend-assisted-how = Slide your foot back under the chair. Push it gently with the other foot. Stop when your knee feels tight. Hold. Slide both feet forward again.
movement-seated-knee-bend-assisted-faults = Keep both buttocks on the seat. Keep the push gentle.

movement-seated-knee-spread-name = Knee out to the side, sitting
movement-seated-knee-spread-set-up = Sit tall on a firm chair. Put your feet flat under your knees.
movement-seated-knee-spread-how = Move your knee out to the side. Let your foot slide out with it. Bring both back, but not past the middle.
movement-seated-knee-spread-faults = Keep your body tall, with the same weight on both buttocks.

movement-seated-march-name = March, sitting
movement-seated-march-set-up = Sit tall on a firm chair. Put your feet flat under your knees.
movement-seated-march-how = Lift your knee a little. Keep your foot under your knee. Lower your foot slowly to the floor.
movement-seated-march-faults = Keep your body tall, without leaning back.

movement-seated-march-low-name = March, on a low seat
movement-seated-march-low-set-up = Sit tall on a low, firm seat. Put your feet flat under your knees.
movement-seated-march-low-how = Lift your knee a little. Keep your foot under your knee. Lower your foot slowly to the floor.
movement-seated-march-low-faults = Keep your body tall, without leaning back.

movement-short-arc-quad-name = Knee straightening over a roll
movement-short-arc-quad-set-up = Lie flat on your back. Put the roll under your knee. Let your heel rest on the bed.
movement-short-arc-quad-how = Lift your heel until your knee is straight. Hold. Lower your heel slowly to the bed.
movement-short-arc-quad-faults = Keep the back of your thigh on the roll.

movement-side-lying-abduction-name = Side leg lift, lying
movement-side-lying-abduction-set-up = Lie on your side with the leg on top. Bend your lower leg a little. Put a pillow between your legs.
movement-side-lying-abduction-how = Lift your upper leg straight up. Keep your knee straight. Hold. Lower it slowly to the pillow.
movement-side-lying-abduction-faults = Keep one hip right above the other. Keep your toes pointing forward.

movement-single-knee-to-chest-name = One knee to your chest
movement-single-knee-to-chest-set-up = Lie flat on your back with both legs straight.
movement-single-knee-to-chest-how = Slide your heel toward your buttock. Take hold behind your thigh with both hands. Pull your knee gently toward your chest. Hold. Let your leg down slowly.
movement-single-knee-to-chest-faults = Keep the pull gentle. Keep your other leg flat on the bed.

movement-sit-to-stand-name = Stand up from a chair
movement-sit-to-stand-set-up = Put a firm, high chair against a wall. Sit near the front edge. Put your feet flat, a little back. Rest your hands on your thighs.
movement-sit-to-stand-how = Lean forward a little. Push through both feet and stand up. Stand tall. Bend your knees and sit down slowly.
movement-sit-to-stand-faults = Keep the same weight on both feet.

movement-sit-to-stand-arms-name = Stand up with your hands
movement-sit-to-stand-arms-set-up = Put a firm, high chair with arms against a wall. Sit near the front edge. Put your feet flat, a little back. Put your hands on the arms of the chair.
movement-sit-to-stand-arms-how = Lean forward a little. Push with your hands and both feet. Stand tall. Reach back for the chair and sit down slowly.
movement-sit-to-stand-arms-faults = Keep the same weight on both feet.

movement-standing-abduction-name = Side leg lift, standing
movement-standing-abduction-set-up = Stand tall. Hold a rail or a firm counter with both hands. Put your weight on the other leg.
movement-standing-abduction-how = Lift your leg out to the side. Keep your knee straight. Hold. Lower it slowly.
movement-standing-abduction-faults = Keep your body tall. Keep your toes pointing forward.

movement-standing-extension-name = Leg back, standing
movement-standing-extension-set-up = Stand tall. Hold a rail or a firm counter with both hands. Put your weight on the other leg.
movement-standing-extension-how = Move your leg straight back. Keep your knee straight. Hold. Bring your leg back under you slowly.
movement-standing-extension-faults = Keep your body tall and your back still.

movement-standing-knee-curl-name = Heel up behind, standing
movement-standing-knee-curl-set-up = Stand tall. Hold a rail or a firm counter with both hands. Put your weight on the other leg.
movement-standing-knee-curl-how = Bend your knee and lift your heel behind you. Keep your thigh pointing down. Hold. Lower your foot slowly.
movement-standing-knee-curl-faults = Keep your hips straight and your knees side by side.

movement-standing-straight-hip-flexion-name = Straight leg forward, standing
movement-standing-straight-hip-flexion-set-up = Stand tall. Hold a rail or a firm counter with both hands. Put your weight on the other leg.
movement-standing-straight-hip-flexion-how = Lift your leg straight out in front of you. Keep your knee straight. Hold. Lower it slowly.
movement-standing-straight-hip-flexion-faults = Keep your body tall, without leaning back.

movement-step-up-name = Step up
movement-step-up-set-up = Stand facing a low, firm step. Hold the rail. Put your whole foot on the step.
movement-step-up-how = Push through the foot on the step. Stand up tall. Bring your other foot up beside it. Step down slowly, your other foot first.
movement-step-up-faults = Keep the work in the leg on the step.

movement-stick-flexion-name = Arms up with a stick
movement-stick-flexion-set-up = Lie flat on your back. Hold the stick in both hands, down on your thighs.
movement-stick-flexion-how = Keep your elbows straight. Lift the stick up toward your head. Let your other arm do the lifting. Stop when it feels tight. Lower the stick slowly.
movement-stick-flexion-faults = Keep your back flat on the bed.

movement-straight-leg-raise-name = Straight leg lift
movement-straight-leg-raise-set-up = Lie flat on your back with both legs straight.
movement-straight-leg-raise-how = Tighten the front of your thigh first. Lift your leg with the knee straight. Hold. Lower your leg slowly to the bed.
movement-straight-leg-raise-faults = Keep your knee straight from start to finish.

movement-straight-leg-raise-cuff-name = Straight leg lift with a weight
movement-straight-leg-raise-cuff-set-up = Fasten the weight just above your ankle. Lie flat on your back with both legs straight.
movement-straight-leg-raise-cuff-how = Tighten the front of your thigh first. Lift your leg with the knee straight. Hold. Lower your leg slowly to the bed.
movement-straight-leg-raise-cuff-faults = Keep your knee straight from start to finish.

movement-table-slide-name = Arm slide on a table
movement-table-slide-set-up = Sit at a table on a firm chair. Rest your hand on a folded towel on the table.
movement-table-slide-how = Slide your hand forward along the table. Let your body lean along. Stop when it feels tight. Slide your hand back slowly.
movement-table-slide-faults = Keep your shoulder low, away from your ear.

movement-tandem-stance-name = One foot in front of the other
movement-tandem-stance-set-up = Stand tall beside a rail or a firm counter. Hold it. Put your foot right in front of the other, heel to toe.
movement-tandem-stance-how = Stand still. Put the same weight on both feet. Hold on as lightly as is safe. Stay until the time is up.
movement-tandem-stance-faults = Keep your eyes on something straight ahead.

movement-walking-name = Walk
movement-walking-set-up = Put on firm shoes. Take your walking aid, if you were given one.
movement-walking-how = Walk on level ground at an easy pace. Take short, even steps. Put your heel down first. Turn back before you are tired.
movement-walking-faults = Keep enough strength for the way back.

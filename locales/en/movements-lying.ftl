### What patients read and hear about each movement of who lies. The side, the count and the length of a hold are
### said by the program, so they are not said here. Five messages for each movement, by its id: what it is
### called, how to get ready, how to do it, what one feels, and what to keep to.

movement-abdominal-brace-name = Firm up your belly
movement-abdominal-brace-set-up = Lie on your back. Bend your knees and put your feet flat on the bed. Rest your hands on your lower belly.
movement-abdominal-brace-how = Tighten your lower belly gently. Keep your back still. Hold and keep breathing. Let go slowly.
movement-abdominal-brace-feel = You feel your lower belly grow firm under your hands.
movement-abdominal-brace-faults = Keep breathing as you always do. Keep the squeeze gentle.

movement-abdominal-brace-marching-name = Firm belly and foot lift
movement-abdominal-brace-marching-set-up = Lie on your back. Bend your knees and put your feet flat on the bed. Rest your hands on your lower belly.
movement-abdominal-brace-marching-how = Tighten your lower belly gently. Keep it firm and keep breathing. Lift one foot a little off the bed. Put it down slowly. Let your belly go loose.
movement-abdominal-brace-marching-feel = You feel your lower belly stay firm. You feel the front of your hip work a little.
movement-abdominal-brace-marching-faults = Keep your back and your hips still while your foot moves.

movement-abduction-slide-name = Leg slide to the side
movement-abduction-slide-set-up = Lie flat on your back with both legs straight. Point your toes to the ceiling.
movement-abduction-slide-how = Slide your leg out to the side. Keep your heel on the bed. Stop when it feels tight. Slide it back, but not past the middle.
movement-abduction-slide-feel = You feel the outer side of your hip work. You feel a gentle stretch on the inner side of your thigh.
movement-abduction-slide-faults = Keep your toes pointing to the ceiling.

movement-ankle-pump-name = Foot up and down
movement-ankle-pump-set-up = Lie on your back. Let your leg rest straight on the bed.
movement-ankle-pump-how = Point your toes away from you. Then pull your toes up toward your shin. Keep your leg resting on the bed.
movement-ankle-pump-feel = You feel the back and then the front of your lower leg work.
movement-ankle-pump-faults = Keep it slow. Go all the way each time.

movement-ankle-pump-band-name = Push your foot against a band
movement-ankle-pump-band-set-up = Lie on your back with your leg straight. Loop the band around the ball of your foot. Hold one end in each hand.
movement-ankle-pump-band-how = Push your foot away from you against the band. Let the band bring your foot back slowly. Keep your leg resting on the bed.
movement-ankle-pump-band-feel = You feel your calf work, at the back of your lower leg.
movement-ankle-pump-band-faults = Keep the way back as slow as the push.

movement-bridge-name = Hip lift
movement-bridge-set-up = Lie on your back. Bend your knees and put your feet flat on the bed.
movement-bridge-how = Tighten your buttocks. Push through your feet and lift your hips. Stop when your shoulders, hips and knees make one line. Hold. Lower your hips slowly.
movement-bridge-feel = You feel your buttocks and the back of your thighs work.
movement-bridge-faults = Keep your back straight. Let your buttocks do the lifting.

movement-bridge-one-leg-name = Hip lift with one foot
movement-bridge-one-leg-set-up = Lie on your back. Bend your knees and put your feet flat on the bed. Lift your other foot a little, with the knee bent.
movement-bridge-one-leg-how = Tighten your buttocks. Push through the foot on the bed. Lift your hips until your body is straight. Hold. Lower your hips slowly.
movement-bridge-one-leg-feel = You feel your buttock work, and the back of the thigh that pushes.
movement-bridge-one-leg-faults = Keep your hips level. Let your buttock do the lifting.

movement-clam-name = Knee lift, lying on your side
movement-clam-set-up = Lie on your side. The leg that you exercise is on top. Bend your hips and knees. Put your feet in line with your back, one on the other. Put a pillow between your knees.
movement-clam-how = Keep your feet together. Lift your upper knee. Hold. Lower it slowly to the pillow.
movement-clam-feel = You feel the outer side of your upper hip and your buttock work.
movement-clam-faults = Keep your hips still, one above the other.

movement-clam-band-name = Knee lift with a band, lying
movement-clam-band-set-up = Put the band around both thighs, just above your knees. Lie on your side. The leg that you exercise is on top. Bend your hips and knees. Put a pillow between your knees.
movement-clam-band-how = Keep your feet together, in line with your back. Lift your upper knee against the band. Hold. Lower it slowly to the pillow.
movement-clam-band-feel = You feel the outer side of your upper hip and your buttock work.
movement-clam-band-faults = Keep your hips still, one above the other. Keep the way down slow.

movement-double-knee-to-chest-name = Both knees to your chest
movement-double-knee-to-chest-set-up = Lie flat on your back. Bend your knees and put your feet flat on the bed.
movement-double-knee-to-chest-how = Hold behind one thigh and bring that knee up. Then bring up the other knee the same way. Pull both knees gently toward your chest. Stop when it feels tight. Hold. Lower one foot to the bed, then the other.
movement-double-knee-to-chest-feel = You feel a gentle stretch in your buttocks and your low back. Your arms do the pulling.
movement-double-knee-to-chest-faults = Keep the pull gentle. Keep your head resting on the bed.

movement-glute-set-name = Buttock squeeze
movement-glute-set-set-up = Lie flat on your back with both legs straight.
movement-glute-set-how = Squeeze your buttocks together. Hold the squeeze. Keep your legs still. Let go slowly.
movement-glute-set-feel = You feel both buttocks grow firm.
movement-glute-set-faults = Keep breathing while you squeeze.

movement-heel-prop-name = Knee stretch with your heel up
movement-heel-prop-set-up = Lie flat on your back. Rest your heel on a rolled towel. Keep the space under your knee empty.
movement-heel-prop-how = Let your leg go loose. Let your knee sink toward the bed. Stay like this until the time is up.
movement-heel-prop-feel = You feel a gentle stretch behind your knee.
movement-heel-prop-faults = Keep your kneecap and your toes pointing to the ceiling.

movement-heel-slide-name = Heel slide
movement-heel-slide-set-up = Lie flat on your back with both legs straight. Wear a sock so your heel slides well.
movement-heel-slide-how = Slide your heel toward your buttock. Let your knee bend up. Stop when it feels tight. Slide your heel back until your leg is straight.
movement-heel-slide-feel = You feel a gentle stretch at the front of your knee. You feel the back of your thigh work a little.
movement-heel-slide-faults = Keep your knee in line with your hip and your foot.

movement-heel-slide-strap-name = Heel slide with a strap
movement-heel-slide-strap-set-up = Lie flat on your back with both legs straight. Put the strap around your foot. Hold one end in each hand.
movement-heel-slide-strap-how = Pull the strap gently. Let your heel slide toward your buttock. Stop when it feels tight. Let the strap out slowly until your leg is straight.
movement-heel-slide-strap-feel = You feel a gentle stretch at the front of your knee. Your arms do the pulling.
movement-heel-slide-strap-faults = Keep your knee in line with your hip and your foot. Keep the pull gentle.

movement-hip-abduction-press-name = Press your knees into a strap
movement-hip-abduction-press-set-up = Fasten the strap around both thighs, just above your knees. Lie on your back. Bend your knees and put your feet flat on the bed.
movement-hip-abduction-press-how = Press both knees outward into the strap. The strap keeps them from moving. Hold. Let go slowly.
movement-hip-abduction-press-feel = You feel the outer sides of your hips work.
movement-hip-abduction-press-faults = Keep breathing while you press. Keep the same push on both sides.

movement-knee-rolls-name = Knees side to side
movement-knee-rolls-set-up = Lie on your back. Bend your knees and put your feet flat on the bed. Keep your knees together.
movement-knee-rolls-how = Let both knees roll slowly to one side. Stop when it feels tight. Bring them back to the middle. Then roll them to the other side.
movement-knee-rolls-feel = You feel a gentle stretch in your low back and the side of your hip.
movement-knee-rolls-faults = Keep both shoulders on the bed.

movement-passive-straight-leg-raise-name = Straight leg lift by a helper
movement-passive-straight-leg-raise-set-up = Lie flat on your back with both legs straight. Your helper stands beside the bed. Your helper puts one hand under your heel and the other under your knee.
movement-passive-straight-leg-raise-how = Let your leg go loose and heavy. Your helper lifts it slowly, with the knee straight. Say stop when it feels tight. Your helper lowers it slowly to the bed.
movement-passive-straight-leg-raise-feel = You feel a gentle stretch behind your thigh. Your leg does no work.
movement-passive-straight-leg-raise-faults = Keep your leg heavy. Let your helper do all the lifting.

movement-pelvic-tilt-name = Flatten your back
movement-pelvic-tilt-set-up = Lie on your back. Bend your knees and put your feet flat on the bed.
movement-pelvic-tilt-how = Tighten your lower belly. Press the small of your back into the bed. Hold. Let go slowly.
movement-pelvic-tilt-feel = You feel your lower belly work. You feel the small of your back press into the bed.
movement-pelvic-tilt-faults = Keep breathing while you hold.

movement-press-up-on-elbows-name = Chest lift on your forearms
movement-press-up-on-elbows-set-up = Lie face down on the bed. Bend your elbows and put your forearms flat beside your head.
movement-press-up-on-elbows-how = Lift your chest and rest on your forearms. Bring your elbows under your shoulders. Keep your hips on the bed. Let your back go loose. Lower your chest slowly.
movement-press-up-on-elbows-feel = You feel your arms carry you. You feel a gentle stretch in your belly and your low back.
movement-press-up-on-elbows-faults = Keep your shoulders low, away from your ears.

movement-prone-knee-bend-name = Knee bend, face down
movement-prone-knee-bend-set-up = Lie face down on the bed with both legs straight.
movement-prone-knee-bend-how = Bend your knee. Bring your heel toward your buttock. Stop when it feels tight. Lower your foot slowly to the bed.
movement-prone-knee-bend-feel = You feel the back of your thigh work. You feel a gentle stretch at the front of your thigh.
movement-prone-knee-bend-faults = Keep your hips on the bed. Keep your knees side by side.

movement-prone-press-up-name = Chest lift, face down
movement-prone-press-up-set-up = Lie face down on the bed. Put your hands flat beside your shoulders.
movement-prone-press-up-how = Push with your arms and lift your chest. Keep your hips on the bed. Let your back go loose. Lower your chest slowly.
movement-prone-press-up-feel = You feel your arms do the work. You feel a gentle stretch in your belly and your low back.
movement-prone-press-up-faults = Keep your shoulders low, away from your ears.

movement-quad-set-name = Thigh squeeze
movement-quad-set-set-up = Lie flat on your back. Keep your leg straight and your toes pointing to the ceiling.
movement-quad-set-how = Tighten the front of your thigh. Press the back of your knee into the bed. Hold. Let go slowly.
movement-quad-set-feel = You feel the front of your thigh work, just above your knee.
movement-quad-set-faults = Keep breathing while you hold.

movement-quad-set-towel-name = Thigh squeeze over a towel
movement-quad-set-towel-set-up = Lie flat on your back with your leg straight. Put a rolled towel under your knee. Point your toes to the ceiling.
movement-quad-set-towel-how = Tighten the front of your thigh. Press the back of your knee into the towel. Hold. Let go slowly.
movement-quad-set-towel-feel = You feel the front of your thigh work, just above your knee.
movement-quad-set-towel-faults = Keep breathing while you hold. Keep your kneecap pointing to the ceiling.

movement-short-arc-quad-name = Knee straightening over a roll
movement-short-arc-quad-set-up = Lie flat on your back. Put the roll under your knee. Let your heel rest on the bed.
movement-short-arc-quad-how = Lift your heel until your knee is straight. Hold. Lower your heel slowly to the bed.
movement-short-arc-quad-feel = You feel the front of your thigh work, just above your knee.
movement-short-arc-quad-faults = Keep the back of your thigh on the roll.

movement-short-arc-quad-cuff-name = Weighted knee straightening over a roll
movement-short-arc-quad-cuff-set-up = Fasten the weight just above your ankle. Lie flat on your back with the roll under your knee. Let your heel rest on the bed.
movement-short-arc-quad-cuff-how = Lift your heel until your knee is straight. Hold. Lower your heel slowly to the bed.
movement-short-arc-quad-cuff-feel = You feel the front of your thigh work against the weight, just above your knee.
movement-short-arc-quad-cuff-faults = Keep the back of your thigh on the roll. Keep the way down slow.

movement-side-lying-abduction-name = Side leg lift, lying
movement-side-lying-abduction-set-up = Lie on your side. The leg that you exercise is on top. Bend the leg underneath a little. Put a pillow between your legs.
movement-side-lying-abduction-how = Lift the leg on top straight up. Keep your knee straight. Hold. Lower it slowly to the pillow.
movement-side-lying-abduction-feel = You feel the outer side of your upper hip work.
movement-side-lying-abduction-faults = Keep one hip right above the other. Keep your toes pointing forward.

movement-side-lying-abduction-cuff-name = Side leg lift with weight, lying
movement-side-lying-abduction-cuff-set-up = Fasten the weight just above your ankle. Lie on your side. The leg with the weight is on top. Bend the leg underneath a little. Put a pillow between your legs.
movement-side-lying-abduction-cuff-how = Lift the leg on top straight up. Keep your knee straight. Hold. Lower it slowly to the pillow.
movement-side-lying-abduction-cuff-feel = You feel the outer side of your upper hip work against the weight.
movement-side-lying-abduction-cuff-faults = Keep one hip right above the other. Keep your toes pointing forward.

movement-single-knee-to-chest-name = One knee to your chest
movement-single-knee-to-chest-set-up = Lie flat on your back with both legs straight.
movement-single-knee-to-chest-how = Slide your heel toward your buttock. Take hold behind your thigh with both hands. Pull your knee gently toward your chest. Hold. Let your leg down slowly.
movement-single-knee-to-chest-feel = You feel a gentle stretch in your buttock and your low back. Your arms do the pulling.
movement-single-knee-to-chest-faults = Keep the pull gentle. Keep your other leg flat on the bed.

movement-straight-leg-raise-name = Straight leg lift
movement-straight-leg-raise-set-up = Lie flat on your back with both legs straight.
movement-straight-leg-raise-how = Tighten the front of your thigh first. Lift your leg with the knee straight. Hold. Lower your leg slowly to the bed.
movement-straight-leg-raise-feel = You feel the front of your thigh and hip work.
movement-straight-leg-raise-faults = Keep your knee straight from start to finish.

movement-straight-leg-raise-cuff-name = Straight leg lift with a weight
movement-straight-leg-raise-cuff-set-up = Fasten the weight just above your ankle. Lie flat on your back with both legs straight.
movement-straight-leg-raise-cuff-how = Tighten the front of your thigh first. Lift your leg with the knee straight. Hold. Lower your leg slowly to the bed.
movement-straight-leg-raise-cuff-feel = You feel the front of your thigh and hip work against the weight.
movement-straight-leg-raise-cuff-faults = Keep your knee straight from start to finish.

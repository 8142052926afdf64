### What patients read and hear about each movement of who stands or kneels. The side, the count and the length of a hold are
### said by the program, so they are not said here. Five messages for each movement, by its id: what it is
### called, how to get ready, how to do it, what one feels, and what to keep to.

movement-calf-raise-name = Up on your toes
movement-calf-raise-set-up = Stand tall with your feet under your hips. Hold a rail or a firm counter with both hands.
movement-calf-raise-how = Push up onto your toes with both feet. Hold. Lower your heels slowly.
movement-calf-raise-feel = You feel your calves work, at the back of your lower legs.
movement-calf-raise-faults = Keep your weight over your big toes. Keep both feet sharing the work.

movement-calf-raise-one-leg-name = Up on your toes, one foot
movement-calf-raise-one-leg-set-up = Stand tall. Hold a rail or a firm counter with both hands. Lift your other foot off the floor.
movement-calf-raise-one-leg-how = Push up onto your toes. Hold. Lower your heel slowly. Keep your other foot off the floor.
movement-calf-raise-one-leg-feel = You feel your calf work, at the back of your lower leg.
movement-calf-raise-one-leg-faults = Keep your weight over your big toe. Keep your knee straight.

movement-hands-and-knees-arch-name = Hollow and round your back
movement-hands-and-knees-arch-set-up = Put a folded towel on the floor. Kneel on it and lean on your hands. Put your hands under your shoulders and your knees under your hips.
movement-hands-and-knees-arch-how = Let your belly sink slowly, so your back hollows. Then round your back up toward the ceiling. Breathe as you move.
movement-hands-and-knees-arch-feel = You feel a gentle stretch in your belly, then along your back.
movement-hands-and-knees-arch-faults = Keep your hips right above your knees. Keep your arms straight.

movement-hip-hinge-name = Bow from the hips
movement-hip-hinge-set-up = Stand tall with your feet under your hips. Hold a rail or a firm counter with both hands.
movement-hip-hinge-how = Bend your knees a little. Push your hips back and bow forward. Keep your back straight. Push your hips forward and stand tall.
movement-hip-hinge-feel = You feel your buttocks work. You feel a gentle stretch behind your thighs.
movement-hip-hinge-faults = Keep your back straight from your head to your hips.

movement-hip-hinge-shallow-name = Small bow from the hips
movement-hip-hinge-shallow-set-up = Stand tall with your feet under your hips. Hold a rail or a firm counter with both hands.
movement-hip-hinge-shallow-how = Bend your knees a little. Push your hips back and bow forward only a little. Keep your back straight. Push your hips forward and stand tall.
movement-hip-hinge-shallow-feel = You feel your buttocks and your low back work a little.
movement-hip-hinge-shallow-faults = Keep the bow small. Keep your back straight from your head to your hips.

movement-hip-hinge-stick-name = Bow with a stick behind you
movement-hip-hinge-stick-set-up = Stand tall, with a rail or a firm counter within reach. Hold the stick along your back, your hand behind your waist and the other behind your neck. Let the stick touch your head, your upper back and your tailbone.
movement-hip-hinge-stick-how = Bend your knees a little. Push your hips back and bow forward. Keep the stick on your head, upper back and tailbone. Push your hips forward and stand tall.
movement-hip-hinge-stick-feel = You feel your buttocks and your back work. You feel a gentle stretch behind your thighs.
movement-hip-hinge-stick-faults = Keep the stick touching all the way. Bow less if it comes away.

movement-kneeling-weight-shift-name = Hips back and up, kneeling
movement-kneeling-weight-shift-set-up = Put a pillow on the floor. Put a firm chair in front of it. Kneel on both knees and hold the chair.
movement-kneeling-weight-shift-how = Move your hips back a little, toward your heels. Then come up until you kneel tall. Keep your hands on the chair.
movement-kneeling-weight-shift-feel = You feel a gentle stretch at the front of your knees. You feel your thighs and your buttocks work as you come up.
movement-kneeling-weight-shift-faults = Keep your back straight. Keep the same weight on both knees.

movement-marching-name = March on the spot
movement-marching-set-up = Stand tall. Hold a rail or a firm counter with both hands. Put your weight on the other leg.
movement-marching-how = Lift your knee in front of you. Let your lower leg hang. Put your foot down slowly.
movement-marching-feel = You feel the front of your hip work. You feel your standing leg keep you steady.
movement-marching-faults = Keep your body tall, right above the standing foot.

movement-marching-high-name = High march on the spot
movement-marching-high-set-up = Stand tall. Hold a rail or a firm counter with both hands. Put your weight on the other leg.
movement-marching-high-how = Lift your knee in front of you, higher than your hip. Let your lower leg hang. Put your foot down slowly.
movement-marching-high-feel = You feel the front of your hip and thigh work.
movement-marching-high-faults = Keep your body tall, without leaning back.

movement-marching-low-name = Low march on the spot
movement-marching-low-set-up = Stand tall. Hold a rail or a firm counter with both hands. Put your weight on the other leg.
movement-marching-low-how = Lift your knee just a little in front of you. Let your lower leg hang. Put your foot down slowly.
movement-marching-low-feel = You feel the front of your hip work a little.
movement-marching-low-faults = Keep your body tall, straight above the standing foot.

movement-mini-squat-name = Small knee bend, standing
movement-mini-squat-set-up = Stand tall with your feet under your hips. Hold a rail or a firm counter with both hands.
movement-mini-squat-how = Bend your knees a little, as if to sit. Keep your heels on the floor. Push up until you stand tall.
movement-mini-squat-feel = You feel the front of your thighs work.
movement-mini-squat-faults = Keep your knees pointing the same way as your toes.

movement-mini-squat-deeper-name = Deeper knee bend, standing
movement-mini-squat-deeper-set-up = Stand tall, facing a rail or a firm counter. Put your feet under your hips. Hold on with both hands.
movement-mini-squat-deeper-how = Push your hips back. Bend your knees well, as if to sit. Keep your heels on the floor. Push up until you stand tall.
movement-mini-squat-deeper-feel = You feel the front of your thighs and your buttocks work.
movement-mini-squat-deeper-faults = Keep your knees pointing the same way as your toes. Keep the same weight on both feet.

movement-one-leg-stance-name = Stand on one leg
movement-one-leg-stance-set-up = Stand tall. Hold a rail or a firm counter with both hands. Keep it within reach all the time.
movement-one-leg-stance-how = Move your weight over your foot. Lift your other foot a little off the floor. Stand still. Hold on as lightly as is safe. Stay until the time is up.
movement-one-leg-stance-feel = You feel your foot and ankle make small moves to keep you steady. You feel the side of your hip work.
movement-one-leg-stance-faults = Keep your body tall and your hips level. Keep your eyes on something straight ahead.

movement-semi-tandem-stance-name = One foot a little ahead
movement-semi-tandem-stance-set-up = Stand tall. Hold a rail or a firm counter and keep it within reach. Put your feet together, then move your foot half its length ahead.
movement-semi-tandem-stance-how = Stand still. Put the same weight on both feet. Hold on as lightly as is safe. Stay until the time is up.
movement-semi-tandem-stance-feel = You feel your feet and ankles make small moves to keep you steady.
movement-semi-tandem-stance-faults = Keep your body tall. Keep your eyes on something straight ahead.

movement-sit-to-stand-name = Stand up from a chair
movement-sit-to-stand-set-up = Put a firm, high chair against a wall. Sit near the front edge. Put your feet flat, a little back. Rest your hands on your thighs.
movement-sit-to-stand-how = Lean forward a little. Push through both feet and stand up. Stand tall. Bend your knees and sit down slowly.
movement-sit-to-stand-feel = You feel the front of your thighs and your buttocks work.
movement-sit-to-stand-faults = Keep the same weight on both feet.

movement-sit-to-stand-arms-name = Stand up with your hands
movement-sit-to-stand-arms-set-up = Put a firm, high chair with arms against a wall. Sit near the front edge. Put your feet flat, a little back. Put your hands on the arms of the chair.
movement-sit-to-stand-arms-how = Lean forward a little. Push with your hands and both feet. Stand tall. Reach back for the chair and sit down slowly.
movement-sit-to-stand-arms-feel = You feel your thighs and your buttocks work. You feel your arms help.
movement-sit-to-stand-arms-faults = Keep the same weight on both feet.

movement-sit-to-stand-low-name = Stand up from a lower chair
movement-sit-to-stand-low-set-up = Put a lower, firm chair against a wall. Sit near the front edge with your hands on your thighs. Put your feet flat, a little back.
movement-sit-to-stand-low-how = Lean forward a little. Push through both feet and stand up. Stand tall. Bend your knees and sit down slowly.
movement-sit-to-stand-low-feel = You feel the front of your thighs and your buttocks work.
movement-sit-to-stand-low-faults = Keep the same weight on both feet. Keep the way down slow.

movement-standing-abduction-name = Side leg lift, standing
movement-standing-abduction-set-up = Stand tall. Hold a rail or a firm counter with both hands. Put your weight on the other leg.
movement-standing-abduction-how = Lift your leg out to the side. Keep your knee straight. Hold. Lower it slowly.
movement-standing-abduction-feel = You feel the outer side of your hip work.
movement-standing-abduction-faults = Keep your body tall. Keep your toes pointing forward.

movement-standing-abduction-band-name = Side leg lift with band, standing
movement-standing-abduction-band-set-up = Sit down and put the band around both ankles. Stand tall and hold a rail or a firm counter with both hands. Put your weight on the other leg.
movement-standing-abduction-band-how = Lift your leg out to the side against the band. Keep your knee straight. Hold. Lower it slowly.
movement-standing-abduction-band-feel = You feel the outer side of your hip work.
movement-standing-abduction-band-faults = Keep your body tall. Keep your toes pointing forward.

movement-standing-adduction-name = Leg across in front, standing
movement-standing-adduction-set-up = Stand tall beside a rail or a firm counter. Hold it with your other hand. Put your weight on the other leg.
movement-standing-adduction-how = Lift your toes just off the floor. Move your leg across in front of the other. Keep your knee straight. Hold. Bring your leg back slowly.
movement-standing-adduction-feel = You feel the inner side of your thigh work.
movement-standing-adduction-faults = Keep your body tall and your hips facing forward.

movement-standing-extension-name = Leg back, standing
movement-standing-extension-set-up = Stand tall. Hold a rail or a firm counter with both hands. Put your weight on the other leg.
movement-standing-extension-how = Move your leg straight back. Keep your knee straight. Hold. Bring your leg back under you slowly.
movement-standing-extension-feel = You feel your buttock work.
movement-standing-extension-faults = Keep your body tall and your back still.

movement-standing-extension-band-name = Leg back with a band, standing
movement-standing-extension-band-set-up = Sit down and put the band around both ankles. Stand tall and hold a rail or a firm counter with both hands. Put your weight on the other leg.
movement-standing-extension-band-how = Move your leg straight back against the band. Keep your knee straight. Hold. Bring your leg back under you slowly.
movement-standing-extension-band-feel = You feel your buttock work.
movement-standing-extension-band-faults = Keep your body tall and your back still.

movement-standing-knee-curl-name = Heel up behind, standing
movement-standing-knee-curl-set-up = Stand tall. Hold a rail or a firm counter with both hands. Put your weight on the other leg.
movement-standing-knee-curl-how = Bend your knee and lift your heel behind you. Keep your thigh pointing down. Hold. Lower your foot slowly.
movement-standing-knee-curl-feel = You feel the back of your thigh work.
movement-standing-knee-curl-faults = Keep your hips straight and your knees side by side.

movement-standing-knee-curl-cuff-name = Heel up behind with a weight
movement-standing-knee-curl-cuff-set-up = Sit down and fasten the ankle weight just above your ankle. Stand tall and hold a rail or a firm counter with both hands. Put your weight on the other leg.
movement-standing-knee-curl-cuff-how = Bend your knee and lift your heel behind you. Keep your thigh pointing down. Hold. Lower your foot slowly.
movement-standing-knee-curl-cuff-feel = You feel the back of your thigh work.
movement-standing-knee-curl-cuff-faults = Keep your hips straight and your knees side by side. Keep the way down as slow as the way up.

movement-standing-straight-hip-flexion-name = Straight leg forward, standing
movement-standing-straight-hip-flexion-set-up = Stand tall. Hold a rail or a firm counter with both hands. Put your weight on the other leg.
movement-standing-straight-hip-flexion-how = Lift your leg straight out in front of you. Keep your knee straight. Hold. Lower it slowly.
movement-standing-straight-hip-flexion-feel = You feel the front of your hip and thigh work.
movement-standing-straight-hip-flexion-faults = Keep your body tall, without leaning back.

movement-step-up-name = Step up
movement-step-up-set-up = Stand facing a low, firm step. Hold the rail. Put your whole foot on the step.
movement-step-up-how = Push through the foot on the step. Stand up tall. Bring your other foot up beside it. Step down slowly, your other foot first.
movement-step-up-feel = You feel the front of your thigh and your buttock work, in the leg on the step.
movement-step-up-faults = Keep the work in the leg on the step.

movement-step-up-high-name = Step up on a higher step
movement-step-up-high-set-up = Stand facing a higher, firm step. Hold the rail. Put your whole foot on the step.
movement-step-up-high-how = Push through the foot on the step. Stand up tall. Bring your other foot up beside it. Step down slowly, your other foot first.
movement-step-up-high-feel = You feel the front of your thigh and your buttock work, in the leg on the step.
movement-step-up-high-faults = Keep the work in the leg on the step. Keep your knee in line with your toes.

movement-step-up-low-name = Step up on a low step
movement-step-up-low-set-up = Stand facing your lowest firm step. Hold the rail. Put your whole foot on the step.
movement-step-up-low-how = Push through the foot on the step. Stand up tall. Bring your other foot up beside it. Step down slowly, your other foot first.
movement-step-up-low-feel = You feel the front of your thigh work, in the leg on the step.
movement-step-up-low-faults = Keep the work in the leg on the step.

movement-tandem-stance-name = One foot in front of the other
movement-tandem-stance-set-up = Stand tall beside a rail or a firm counter. Hold it. Put your foot right in front of the other, heel to toe.
movement-tandem-stance-how = Stand still. Put the same weight on both feet. Hold on as lightly as is safe. Stay until the time is up.
movement-tandem-stance-feel = You feel your feet and ankles make small moves to keep you steady.
movement-tandem-stance-faults = Keep your eyes on something straight ahead.

movement-walking-name = Walk
movement-walking-set-up = Put on firm shoes. Take your walking aid, if you were given one.
movement-walking-how = Walk on level ground at an easy pace. Take short, even steps. Put your heel down first. Turn back before you are tired.
movement-walking-feel = You feel your legs work and your breath come a little faster. You can still talk as you walk.
movement-walking-faults = Keep enough strength for the way back.

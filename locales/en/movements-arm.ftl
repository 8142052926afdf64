### What patients read and hear about each movement of the arm and the shoulder. The side, the count and the length of a hold are
### said by the program, so they are not said here. Five messages for each movement, by its id: what it is
### called, how to get ready, how to do it, what one feels, and what to keep to.

movement-elbow-bend-name = Bend and straighten your elbow
movement-elbow-bend-set-up = Sit tall on a firm chair. Let your arm hang at your side, palm facing forward. Rest your other hand on your thigh.
movement-elbow-bend-how = Bend your elbow and bring your hand toward your shoulder. Lower your hand slowly. Straighten your elbow all the way.
movement-elbow-bend-feel = You feel the front of your upper arm work.
movement-elbow-bend-faults = Keep your upper arm still, close to your side.

movement-isometric-rotation-name = Press your hand outward
movement-isometric-rotation-set-up = Stand tall with your arm beside a wall. Bend your elbow at your side, with a folded towel under your upper arm. Put the back of your hand against the wall.
movement-isometric-rotation-how = Press the back of your hand gently outward into the wall. Keep your arm still. Hold. Let go slowly.
movement-isometric-rotation-feel = You feel the back of your shoulder work gently.
movement-isometric-rotation-faults = Keep the towel in place under your arm. Keep the push gentle.

movement-isometric-rotation-inward-name = Press your hand inward
movement-isometric-rotation-inward-set-up = Stand tall, close to a door frame. Bend your elbow at your side, with a folded towel under your upper arm. Put your palm against the frame.
movement-isometric-rotation-inward-how = Press your palm gently inward against the frame. Keep your arm still. Hold. Let go slowly.
movement-isometric-rotation-inward-feel = You feel the front of your shoulder work gently.
movement-isometric-rotation-inward-faults = Keep the towel in place under your arm. Keep the push gentle.

movement-pendulum-name = Loose arm swing
movement-pendulum-set-up = Stand beside a firm table. Lean forward and rest your other hand on it. Let your arm hang down loose.
movement-pendulum-how = Sway your body gently forward and back. Let your arm swing along by itself. Let the swing die out before you stand up.
movement-pendulum-feel = You feel your arm hang loose and heavy. Your shoulder rests while your body sways.
movement-pendulum-faults = Keep your arm loose. Let your body make the swing.

movement-pendulum-sideways-name = Loose arm swing, side to side
movement-pendulum-sideways-set-up = Stand beside a firm table. Lean forward and rest your other hand on it. Let your arm hang down loose.
movement-pendulum-sideways-how = Sway your body gently from side to side. Let your arm swing along by itself. Let the swing die out before you stand up.
movement-pendulum-sideways-feel = You feel your arm hang loose and heavy. Your shoulder rests while your body sways.
movement-pendulum-sideways-faults = Keep your arm loose. Let your body make the swing.

movement-shoulder-blade-squeeze-name = Squeeze your shoulder blades together
movement-shoulder-blade-squeeze-set-up = Sit tall on a firm chair, a little away from its back. Bend your elbows and keep them close to your sides.
movement-shoulder-blade-squeeze-how = Draw your shoulder blades back and together. Let your elbows move back with them. Hold. Let go slowly.
movement-shoulder-blade-squeeze-feel = You feel the muscles between your shoulder blades work.
movement-shoulder-blade-squeeze-faults = Keep your shoulders low, away from your ears. Keep breathing while you hold.

movement-shoulder-blade-squeeze-band-name = Pull a band apart, sitting
movement-shoulder-blade-squeeze-band-set-up = Sit tall on a firm chair, a little away from its back. Bend your elbows and keep them at your sides. Hold the band in front of you with both hands.
movement-shoulder-blade-squeeze-band-how = Pull the band apart with both hands. Draw your shoulder blades back and together. Hold. Let the band come back slowly.
movement-shoulder-blade-squeeze-band-feel = You feel the muscles between your shoulder blades and behind your shoulders work.
movement-shoulder-blade-squeeze-band-faults = Keep your elbows at your sides. Keep your shoulders low, away from your ears.

movement-stick-external-rotation-name = Forearm out with a stick
movement-stick-external-rotation-set-up = Lie flat on your back. Keep your elbows bent and beside your body. Hold the stick in both hands above you.
movement-stick-external-rotation-how = Push the stick sideways with your other arm. Let it turn your forearm outward. Stop when it feels tight. Bring the stick back slowly.
movement-stick-external-rotation-feel = You feel a gentle stretch at the front of your shoulder. Your other arm does the work.
movement-stick-external-rotation-faults = Keep your elbow bent and close to your side.

movement-stick-flexion-name = Arms up with a stick
movement-stick-flexion-set-up = Lie flat on your back. Hold the stick in both hands, down on your thighs.
movement-stick-flexion-how = Keep your elbows straight. Lift the stick up toward your head. Let your other arm do the lifting. Stop when it feels tight. Lower the stick slowly.
movement-stick-flexion-feel = You feel a gentle stretch around your shoulder. Your other arm does the work.
movement-stick-flexion-faults = Keep your back flat on the bed.

movement-stick-flexion-sitting-name = Arms up with a stick, sitting
movement-stick-flexion-sitting-set-up = Sit tall on a firm chair with your feet flat on the floor. Hold the stick in both hands, down on your thighs.
movement-stick-flexion-sitting-how = Lift the stick forward and up. Let your other arm do the lifting. Stop just above your shoulders, or sooner when it feels tight. Lower the stick slowly.
movement-stick-flexion-sitting-feel = You feel a gentle stretch around your shoulder. Your other arm does the work.
movement-stick-flexion-sitting-faults = Keep your back tall, without leaning back. Keep your shoulder low, away from your ear.

movement-stick-flexion-to-90-name = Stick toward the ceiling
movement-stick-flexion-to-90-set-up = Lie flat on your back. Hold the stick in both hands, down on your thighs.
movement-stick-flexion-to-90-how = Lift the stick and let your elbows straighten. Let your other arm do the lifting. Stop when your arms point to the ceiling. Stop sooner if it feels tight. Lower the stick slowly.
movement-stick-flexion-to-90-feel = You feel a gentle stretch around your shoulder. Your other arm does the work.
movement-stick-flexion-to-90-faults = Keep your back flat on the bed. Keep your arm loose.

movement-table-slide-name = Arm slide on a table
movement-table-slide-set-up = Sit at a table on a firm chair. Rest your hand on a folded towel on the table.
movement-table-slide-how = Slide your hand forward along the table. Let your body lean along. Stop when it feels tight. Slide your hand back slowly.
movement-table-slide-feel = You feel a gentle stretch around your shoulder and under your arm.
movement-table-slide-faults = Keep your shoulder low, away from your ear.

movement-table-slide-incline-name = Arm slide up a slope
movement-table-slide-incline-set-up = Put a sloping board on a table, so that it cannot slip. Sit at the table on a firm chair. Rest your hand on a folded towel, low on the board.
movement-table-slide-incline-how = Slide your hand up the slope. Let your body lean along. Stop when it feels tight. Slide your hand back down slowly.
movement-table-slide-incline-feel = You feel a gentle stretch around your shoulder and under your arm.
movement-table-slide-incline-faults = Keep your shoulder low, away from your ear. Keep your hand resting on the towel.

### What patients read and hear about each movement of who sits. The side, the count and the length of a hold are
### said by the program, so they are not said here. Five messages for each movement, by its id: what it is
### called, how to get ready, how to do it, what one feels, and what to keep to.

movement-calf-raise-seated-name = Heels up, sitting
movement-calf-raise-seated-set-up = Sit tall on a firm chair. Put your feet flat under your knees.
movement-calf-raise-seated-how = Lift both heels. Keep your toes on the floor. Hold. Lower your heels slowly.
movement-calf-raise-seated-feel = You feel your calves work, at the back of your lower legs.
movement-calf-raise-seated-faults = Keep your weight over your big toes. Keep both feet sharing the work.

movement-long-arc-quad-name = Knee straightening, sitting
movement-long-arc-quad-set-up = Sit well back on a firm chair. Put your feet flat on the floor.
movement-long-arc-quad-how = Lift your foot until your knee is straight. Hold. Lower your foot slowly to the floor.
movement-long-arc-quad-feel = You feel the front of your thigh work.
movement-long-arc-quad-faults = Keep your back tall against the chair.

movement-long-arc-quad-band-name = Knee straightening with a band, sitting
movement-long-arc-quad-band-set-up = Tie the band to the back leg of a firm chair. Loop it around your ankle. Sit well back with your feet flat on the floor.
movement-long-arc-quad-band-how = Lift your foot against the band until your knee is straight. Hold. Lower your foot slowly to the floor.
movement-long-arc-quad-band-feel = You feel the front of your thigh work against the band.
movement-long-arc-quad-band-faults = Keep your back tall against the chair. Keep the way down as slow as the way up.

movement-long-arc-quad-cuff-name = Knee straightening with a weight, sitting
movement-long-arc-quad-cuff-set-up = Fasten the weight just above your ankle. Sit well back on a firm chair. Put your feet flat on the floor.
movement-long-arc-quad-cuff-how = Lift your foot until your knee is straight. Hold. Lower your foot slowly to the floor.
movement-long-arc-quad-cuff-feel = You feel the front of your thigh work against the weight.
movement-long-arc-quad-cuff-faults = Keep your back tall against the chair. Keep the way down as slow as the way up.

movement-long-arc-quad-partial-name = Half knee straightening, sitting
movement-long-arc-quad-partial-set-up = Sit well back on a firm chair. Put your feet flat on the floor.
movement-long-arc-quad-partial-how = Lift your foot about half way up. Hold. Lower your foot slowly to the floor.
movement-long-arc-quad-partial-feel = You feel the front of your thigh work a little.
movement-long-arc-quad-partial-faults = Keep your back tall against the chair. Keep your thigh on the seat.

movement-seated-arch-name = Round and arch your back, sitting
movement-seated-arch-set-up = Sit on a firm chair, without leaning on its back. Put your feet flat under your knees. Rest your hands on your thighs.
movement-seated-arch-how = Round your back slowly and look down. Then sit up tall. Arch your back a little. Stop when it feels tight.
movement-seated-arch-feel = You feel your back stretch gently as you round it. You feel it work a little as you arch.
movement-seated-arch-faults = Keep both buttocks on the seat. Keep the move slow and small.

movement-seated-heel-press-name = Heel press, sitting
movement-seated-heel-press-set-up = Sit well back on a firm chair. Put your feet flat on the floor.
movement-seated-heel-press-how = Press your heel down and back into the floor. Keep your foot where it is. Hold. Let go slowly.
movement-seated-heel-press-feel = You feel the back of your thigh work.
movement-seated-heel-press-faults = Keep breathing while you press. Keep your body tall.

movement-seated-knee-bend-name = Foot slide back, sitting
movement-seated-knee-bend-set-up = Sit on a firm chair. Put your foot flat, a little in front of you.
movement-seated-knee-bend-how = Slide your foot back under the chair. Stop when your knee feels tight. Hold. Slide your foot forward again.
movement-seated-knee-bend-feel = You feel a gentle stretch at the front of your knee and thigh.
movement-seated-knee-bend-faults = Keep both buttocks on the seat.

movement-seated-knee-bend-assisted-name = Foot slide back with help, sitting
movement-seated-knee-bend-assisted-set-up = Sit on a firm chair. Put your foot flat, a little in front of you. Cross your other ankle in front of it.
movement-seated-knee-bend-assisted-how = Slide your foot back under the chair. Push it gently with the other foot. Stop when your knee feels tight. Hold. Slide both feet forward again.
movement-seated-knee-bend-assisted-feel = You feel a gentle stretch at the front of your knee and thigh. Your other leg does the pushing.
movement-seated-knee-bend-assisted-faults = Keep both buttocks on the seat. Keep the push gentle.

movement-seated-knee-spread-name = Knee out to the side, sitting
movement-seated-knee-spread-set-up = Sit tall on a firm chair. Put your feet flat under your knees.
movement-seated-knee-spread-how = Move your knee out to the side. Let your foot slide out with it. Bring both back, but not past the middle.
movement-seated-knee-spread-feel = You feel the outer side of your hip work.
movement-seated-knee-spread-faults = Keep your body tall, with the same weight on both buttocks.

movement-seated-march-name = March, sitting
movement-seated-march-set-up = Sit tall on a firm chair. Put your feet flat under your knees.
movement-seated-march-how = Lift your knee a little. Keep your foot under your knee. Lower your foot slowly to the floor.
movement-seated-march-feel = You feel the front of your hip and thigh work.
movement-seated-march-faults = Keep your body tall, without leaning back.

movement-seated-march-cuff-name = March with a weight, sitting
movement-seated-march-cuff-set-up = Fasten the weight just above your ankle. Sit tall on a firm chair. Put your feet flat under your knees.
movement-seated-march-cuff-how = Lift your knee a little. Keep your foot under your knee. Lower your foot slowly to the floor.
movement-seated-march-cuff-feel = You feel the front of your hip and thigh work against the weight.
movement-seated-march-cuff-faults = Keep your body tall, without leaning back.

movement-seated-march-low-name = March, on a low seat
movement-seated-march-low-set-up = Sit tall on a low, firm seat. Put your feet flat under your knees.
movement-seated-march-low-how = Lift your knee a little. Keep your foot under your knee. Lower your foot slowly to the floor.
movement-seated-march-low-feel = You feel the front of your hip and thigh work.
movement-seated-march-low-faults = Keep your body tall, without leaning back.

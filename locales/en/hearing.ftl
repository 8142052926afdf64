### How a session is heard: the voice that speaks the count, and its tones.

hearing-voice = Voice: { $how ->
    [off] off
    [very-slow] on, very slow
    [slow] on, slow
    [little-slow] on, a little slow
    [fast] on, a little fast
   *[normal] on, normal
}
hearing-aloud = Speak the count aloud
hearing-yes = Yes
hearing-no = No
hearing-rate = How fast the voice speaks
hearing-rate-very-slow = Very slow
hearing-rate-slow = Slow
hearing-rate-little-slow = A little slow
hearing-rate-normal = Normal
hearing-rate-fast = A little fast
hearing-pitch = Pitch of the voice: { $how ->
    [lower] lower
    [higher] higher
   *[normal] normal
}
hearing-pitch-choose = Pitch of the voice
hearing-pitch-lower = Lower
hearing-pitch-normal = Normal
hearing-pitch-higher = Higher
hearing-tones = Tones: { $tones ->
    [on] on
   *[off] off
}
hearing-tones-choose = Sound tones with the count
hearing-try = Let me hear it
hearing-trying = Listen now.
hearing-heard = Did you hear it? If not, turn this device up.
hearing-pace = Count: { $pace ->
    [slower] slower
    [slowest] slowest
    [by-hand] by hand
   *[prescribed] as prescribed
}
hearing-pace-choose = How fast the count goes
hearing-pace-prescribed = As prescribed
hearing-pace-slower = Slower
hearing-pace-slowest = Slowest
hearing-pace-by-hand = By hand: each movement waits for me
hearing-pace-hold = A hold lasts longer then, too.

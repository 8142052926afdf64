### Wie eine Übungseinheit klingt: die Stimme, die vorzählt, und ihre Töne.

hearing-voice = Stimme: { $how ->
    [off] aus
    [very-slow] an, sehr langsam
    [slow] an, langsam
    [little-slow] an, etwas langsam
    [fast] an, etwas schnell
   *[normal] an, normal
}
hearing-aloud = Laut vorzählen
hearing-yes = Ja
hearing-no = Nein
hearing-rate = Wie schnell die Stimme spricht
hearing-rate-very-slow = Sehr langsam
hearing-rate-slow = Langsam
hearing-rate-little-slow = Etwas langsam
hearing-rate-normal = Normal
hearing-rate-fast = Etwas schnell
hearing-pitch = Höhe der Stimme: { $how ->
    [lower] tiefer
    [higher] höher
   *[normal] normal
}
hearing-pitch-choose = Höhe der Stimme
hearing-pitch-lower = Tiefer
hearing-pitch-normal = Normal
hearing-pitch-higher = Höher
hearing-tones = Töne: { $tones ->
    [on] an
   *[off] aus
}
hearing-tones-choose = Töne beim Zählen
hearing-try = Ich möchte es hören
hearing-trying = Hören Sie jetzt hin.
hearing-heard = Haben Sie es gehört? Wenn nicht, stellen Sie dieses Gerät lauter.
hearing-pace = Zählen: { $pace ->
    [slower] langsamer
    [slowest] am langsamsten
    [by-hand] von Hand
   *[prescribed] wie verordnet
}
hearing-pace-choose = Wie schnell gezählt wird
hearing-pace-prescribed = Wie verordnet
hearing-pace-slower = Langsamer
hearing-pace-slowest = Am langsamsten
hearing-pace-by-hand = Von Hand: jede Bewegung wartet auf mich
hearing-pace-hold = Auch das Halten dauert dann länger.

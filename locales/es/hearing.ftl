### Cómo se oye una sesión: la voz que dice la cuenta, y sus pitidos.

hearing-voice = Voz: { $how ->
    [off] no
    [very-slow] sí, muy lenta
    [slow] sí, lenta
    [little-slow] sí, algo lenta
    [fast] sí, algo rápida
   *[normal] sí, normal
}
hearing-aloud = Contar en voz alta
hearing-yes = Sí
hearing-no = No
hearing-rate = Velocidad de la voz
hearing-rate-very-slow = Muy lenta
hearing-rate-slow = Lenta
hearing-rate-little-slow = Algo lenta
hearing-rate-normal = Normal
hearing-rate-fast = Algo rápida
hearing-pitch = Tono de la voz: { $how ->
    [lower] más grave
    [higher] más agudo
   *[normal] normal
}
hearing-pitch-choose = Tono de la voz
hearing-pitch-lower = Más grave
hearing-pitch-normal = Normal
hearing-pitch-higher = Más agudo
hearing-tones = Pitidos: { $tones ->
    [on] sí
   *[off] no
}
hearing-tones-choose = Pitidos con la cuenta
hearing-try = Quiero oírlo
hearing-trying = Escuche ahora.
hearing-heard = ¿Lo ha oído? Si no, suba el volumen de este dispositivo.
hearing-pace = Velocidad de la cuenta: { $pace ->
    [slower] más lenta
    [slowest] la más lenta
    [by-hand] a mano
   *[prescribed] como pide el plan
}
hearing-pace-choose = Velocidad de la cuenta
hearing-pace-prescribed = Como pide el plan
hearing-pace-slower = Más lenta
hearing-pace-slowest = La más lenta
hearing-pace-by-hand = A mano: cada movimiento me espera
hearing-pace-hold = Mantener la postura también dura más entonces.

### Today on one page, for somebody beside the patient who counts and ticks.

today-title = Hoy, para { $called }
today-how = Para quien ayuda: vaya de arriba abajo. Cuente en voz alta. Tache una raya cada vez. Al terminar, marque la casilla.
today-not-yet-how = Hoy no intente estos ejercicios, ni siquiera con suavidad.
today-until-lifted = { $names }: hasta que su clínica lo permita
today-rests = Por hoy se deja, porque dolía: { $names }
today-done = Hecho por hoy: { $names }
today-left-out = No cabía más. Lo que falta está en Sendaluna.

today-signs = ¿Hay algo de esto nuevo o peor? Entonces pare
today-hurts = Si duele, pare sin más.
today-pain = Dolor de 0 a 10. Antes: { $rest } o más, no empiece y llame hoy. { $sharp ->
    [today] Durante: { $stop } o más, o { $rise } más que antes, deje este ejercicio. { $today } o más, o dolor agudo: pare por hoy y llame.
   *[exercise] Durante: { $stop } o más, { $rise } más que antes, o dolor agudo: deje este ejercicio. { $today } o más: pare por hoy y llame.
}

today-pain-before = Dolor antes
today-pain-after = Dolor después
today-words = Con sus palabras
today-note = Dolor: 0 nada, 10 lo peor. Esfuerzo: 0 { $least }, 10 { $most }. Después, anote en Sendaluna lo que se hizo.

today-choose = Dónde se guarda la hoja de hoy
today-written = El día de hoy en una hoja, para imprimir: { $path }

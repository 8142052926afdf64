### Las semanas del plan, en una línea.

weeks-title = Sus semanas
weeks-from-to = Semanas { $first } a { $last }
weeks-now = Esta semana
weeks-gates = { $n ->
    [one] Se abre 1 ejercicio
   *[other] Se abren { $n } ejercicios
}

### Hoy: qué toca, qué todavía no, qué reglas valen.

day-week = Semana { $week } después de: { $name }
day-week-unknown = Todavía no se sabe el día de la operación: { $name }
day-zero-estimated = { $day }, fecha estimada
day-zero-unknown = todavía no se sabe el día
day-now = Ahora: { $exercises ->
    [one] 1 ejercicio
   *[other] { $exercises } ejercicios
}, { $minutes ->
    [one] 1 minuto
   *[other] { $minutes } minutos
}.
day-nothing-now = Ahora no le toca nada. Descansar bien es hacerlo bien.
day-can-go-on = Hoy empezó una sesión. Puede seguir desde la última serie terminada.
day-not-yet = Todavía no
day-care = Cuídese
day-rules = Reglas para todos los días
day-lifts-ignored = No se ha abierto

times-today = { $times ->
    [one] Una vez hoy
   *[other] { $times } veces hoy
}, { $done ->
    [0] ninguna hecha todavía
    [one] 1 hecha
   *[other] { $done } hechas
}.
times-as-needed = Cuando lo necesite, { $most ->
    [one] una vez al día como máximo
   *[other] { $most } veces al día como máximo
}. { $done ->
    [0] Hoy no lo ha hecho ninguna vez.
    [one] Hoy lo ha hecho 1 vez.
   *[other] Hoy lo ha hecho { $done } veces.
}
times-again-from = Otra vez a partir de las { $time }.
times-rests-today = Por hoy se deja, porque le dolía.
times-not-today = Hoy no le toca.

gate-open = Puede hacer esto.
gate-open-from = Ahora no. Su plan lo pide a partir del { $day }.
gate-not-in-plan = Ahora no. Su plan no lo pide.
not-yet-opens = Todavía no. Se abre el { $day }.
not-yet-opens-after-weeks = Todavía no. Se abre el { $day }, { $weeks ->
    [one] 1 semana
   *[other] { $weeks } semanas
} después de la operación.
not-yet-open-ended = Todavía no. Seguirá así hasta que su clínica lo abra.

reason-precaution = { $why } Lo indicó: { $who }.
set-by = Lo indicó: { $who }.
reason-through = Hasta el { $day }, ese día incluido.
reason-until-lifted = Hasta que su clínica diga otra cosa.
reason-until-lifted-not-before = Hasta que su clínica diga otra cosa, y no antes del { $day }.
reason-day-zero-unknown = Todavía no se sabe el día de la operación.
reason-facts-differ = Este ejercicio no es el que revisó su clínica.
reason-movement-unknown = Esta versión de Sendaluna no conoce este ejercicio.
reason-movement-not-seen = Este ejercicio es propio de su clínica. La persona que indica sus precauciones todavía no lo ha visto.
reason-tightened = El { $day }, su clínica le dijo que dejara de hacer esto.
lift-ignored = No se ha abierto: { $why } { $by } no tiene permiso para retirar esta precaución. { $who ->
    [none] No se sabe quién la indicó.
   *[other] La indicó: { $who }.
}

reason-past-review = Ya pasó el día en que su clínica tenía que revisar su plan. No se abre nada nuevo hasta que lo revise. Llame a su clínica.
reason-set-back = Tuvo una caída o un contratiempo. No se abre nada nuevo hasta que su clínica lo diga. Llame a su clínica.
notice-must-ring = Sus últimas respuestas dicen: llame a la clínica. Cuando haya hablado con la clínica, dígalo aquí.
notice-clock = El reloj ha cambiado de golpe. Antes de la próxima sesión se le preguntará la fecha de hoy.
notice-restart = Estuvo unos días sin ejercicios. La primera sesión al volver es más ligera, como la escribió su clínica.
notice-steps-after-break = Algunos ejercicios habían subido de nivel. Ahora vuelven al nivel de inicio que fijó su clínica.
notice-ring-first = Estuvo mucho tiempo sin ejercicios. Llame a su clínica antes de empezar otra vez.
notice-plan-over = El último día de este plan ya pasó. Pregunte a su clínica qué viene después.

did-written = Anotado para el { $day }, de memoria.
did-against-gate = Esto todavía no está permitido. No vuelva a hacerlo por ahora. Llame a su clínica y cuéntelo.
tighten-done = Este ejercicio queda parado, como le dijo su clínica. No se le ofrecerá.
tighten-ended = Este ejercicio ya no está parado. Se le ofrece otra vez, si las reglas de su clínica lo permiten.
spoke-done = Bien. Queda anotado que ha hablado con la clínica.
settings-now = Idioma: { $lang }. Horas en que no duerme: de { $from } a { $to }.

day-later-or-done = Para más tarde, ya hechos o dejados por hoy
day-kind = Vaya a su ritmo. Una sesión más corta también cuenta.
day-care-done = Hecho
day-all-weeks = Muestra todas las semanas de su plan.
day-begin = Empezar
day-go-on = Seguir
day-begin-anew = Empezar desde el principio
day-back = Volver al día de hoy
day-elsewhere = Más
day-new-plan = Un archivo de plan nuevo
day-print = Imprimir el día de hoy

not-yet-caution = «Todavía no» quiere decir: pregunte a su clínica. No quiere decir: inténtelo con cuidado.
not-yet-back = Volver a los ejercicios de hoy
not-yet-why = Por qué, y quién lo dice
not-yet-did = Lo hice de todos modos
not-yet-day-zero-unknown = Todavía no. Aún no se sabe el día de la operación. Cuando se sepa, pida a su clínica un archivo de plan nuevo.

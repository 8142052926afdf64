### El informe de un paciente, en la clínica y cuando se hace.

hand-back-days = Días completos: { $whole } de { $due } en los que tocaba algo.
hand-back-files = Guardado en { $folder }: { $sealed }, que solo abre su clínica, { $pages }, lo mismo en dos páginas, { $table }, su registro como tabla, y { $fhir } para otros programas.
hand-back-words = { $n ->
    [0] No contiene ninguna palabra suya.
    [one] Contiene palabras suyas una vez.
   *[other] Contiene palabras suyas { $n } veces.
}
hand-back-only-clinic = No se ha enviado nada. Entregue el archivo sellado a su clínica en su visita. Antes no lo ve nadie de la clínica. Si algo va mal ahora, llame a la clínica.

hand-back-day = El { $from }.
hand-back-span = Del { $from } al { $through }.
hand-back-entries = { $n ->
    [one] 1 anotación
   *[other] { $n } anotaciones
}
hand-back-exercise = { $name }: { $done } de { $of ->
    [one] 1 serie
   *[other] { $of } series
}
hand-back-exercise-part = { $name }: { $done } de { $of ->
    [one] 1 serie
   *[other] { $of } series
}, y parte de una más
hand-back-pain = Dolor en reposo últimamente: normalmente { $median }, entre { $least } y { $most }.
hand-back-pain-same = Dolor en reposo últimamente: siempre { $median }.
hand-back-test = Una prueba, { $day }. { $result }
hand-back-choose = Dónde guardarlo para la clínica

break-written = Queda anotada una pausa del { $from } al { $through }. Lo que todavía no está permitido no se abre antes por eso.
break-ended = La pausa termina hoy. Sus ejercicios vuelven a estar previstos. Si la pausa la ordenó su clínica, pregunte antes allí.

report-title-day = { $called }, { $from }
report-title = { $called }, del { $from } al { $through }
report-vouched-for = Comprobado: la firma, el registro y todas las cifras son correctos.
report-not-vouched-for = No es de fiar tal como está:
report-figures-differ = Sus cifras no se deducen de su registro. Las cifras de abajo se han vuelto a calcular.
report-not-authentic = Quien lo hizo no tenía el secreto del plan.
report-does-not-extend = No continúa un informe anterior.
report-person-other = Es de otra persona que el informe anterior.
report-older = Es más antiguo que un informe que ya tenía.
report-clinic-not-compared = No se dio la lista de firmantes: no se ha comparado si sus planes son suyos.
report-device-new = No se dio ningún informe anterior: este dispositivo cuenta como nuevo.
report-words-withheld = El paciente se ha guardado palabras propias.
report-ring-today = Llamar hoy:
report-talk-about = Hablar de ello:
report-the-file = El archivo:
report-last-days = Últimos días: { $days }
report-days = Días en que tocaba: { $due }; completos { $whole }, en parte { $part }, parados como se dijo { $told }, sin registro { $none }. Sin las pausas del propio paciente: { $bare-whole } de { $bare-due } completos.
report-dose = Series: { $done } de { $of } ({ $percent } %); contadas { $counted }, contadas sin confirmar { $unconfirmed }, de memoria { $remembered }; de más { $beyond }.
report-pain = Dolor en reposo en la última semana con respuestas: mediana { $median }, de { $least } a { $most }.
report-worst = Lo menos hecho fue { $item }: { $done } de { $of } series; dejado { $left } veces con un motivo.
report-asks = El paciente pregunta: { $words }
report-exercises = Ejercicios:
report-exercise = { $item }: { $done } de { $of } series ({ $remembered } de memoria), dejado { $left } veces
report-as-needed = { $item }: { $needed } series según necesidad
report-not-asked = { $item }: { $beyond } series que no se pidieron
report-tests = Pruebas en casa:
report-test = { $day }, { $test }: { $said }
report-chair-stand = Levantarse de la silla en 30 segundos: { $n }.
report-chair-stand-arms = Levantarse de la silla en 30 segundos: { $n } con los brazos, lo que puntúa 0.
report-chair-stand-table = CDC STEADI con { $younger } o { $older } años (el plan dice el año de nacimiento, pero no si es hombre o mujer): hombres, { $men }; mujeres, { $women }.
report-timed-up-and-go = Levantarse y andar, con tiempo: { $seconds } s.
report-walk-risk = 12 s o más: riesgo de caída (CDC STEADI).
report-walk-no-risk = Menos de 12 s (CDC STEADI).
report-four-stage-balance = Equilibrio en cuatro posturas: { $held }.
report-stance-side-by-side = pies juntos { $seconds } s
report-stance-semi-tandem = semitándem { $seconds } s
report-stance-tandem = tándem { $seconds } s
report-stance-one-leg = una pierna { $seconds } s
report-tandem-risk = Tándem menos de 10 s: riesgo de caída (CDC STEADI).
report-tandem-no-risk = Tándem mantenido 10 s (CDC STEADI).
report-test-helper = Con alguien al lado.
report-test-alone = No había nadie al lado del paciente.
report-test-timed = Tal como se midió.
report-test-by-hand = A mano, o corregido.
report-test-against-gate = Ese día no estaba permitido.
norm-below-average = por debajo de la media (menos de { $below })
norm-not-below-average = no por debajo de la media ({ $below } o más)
norm-by-birthday = por debajo de la media o no, según el cumpleaños (límites { $below })
norm-no-norm = sin norma
report-caution = Los días sin registro no son ni hechos ni rechazados. Las cifras son del dispositivo del paciente.
flag-warning-sign = { $day }: una señal de alarma era nueva o peor
flag-pain-over-limit = { $day }: dolor { $level }, por encima del límite del plan
flag-fall = { $day }: una caída
flag-readmission = { $day }: una estancia en el hospital
flag-against-gate = { $day }: se hizo { $item } cuando no estaba permitido
flag-test-against-gate = { $day }: se hizo la prueba { $test } cuando no estaba permitida
flag-rising-pain = { $day }: el dolor en reposo subió { $change } puntos (solo se llama cambio a más de 2 puntos)
flag-skipped = { $day }: se dejó { $item } { $times } veces con un motivo
flag-overdone = { $day }: se hizo { $item } más de lo pedido en { $days } días
flag-lift-ignored = { $day }: un levantamiento no tuvo efecto: «{ $precaution }»
flag-clock = { $day }: el reloj saltó { $hours } horas, y se confirmó la fecha
flag-chain-broken = { $day }: el registro no se sigue desde el suceso { $seq }
mark-not-due = no tocaba nada
mark-whole = completo
mark-part = en parte
mark-stopped-as-told = parado como se dijo
mark-no-record = sin registro

### El informe en papel.

report-page-title = Informe de { $called }
report-page-span = { $from } a { $through }
report-page-day = { $day }
report-page-made = Hecho el { $day }. Versión { $revision } del plan.
report-page-foot = Informe de { $called }, { $day }
report-page-episode = { $name }, { $side }: semana { $week }, día { $day }
report-page-episode-unknown = { $name }, { $side }: día 0 sin conocer
report-page-weight = Carga de peso
report-page-gates = Todavía no
report-page-gates-n = { $n ->
    [0] Nada del plan está retenido.
    [one] 1 ejercicio está retenido.
   *[other] { $n } ejercicios están retenidos.
}
report-page-next = Lo próximo que se abre: { $name }, { $day }.
report-page-next-none = Ninguno tiene un día en que se abra.
report-page-review = El plan debía mirarse antes del { $day }. Hasta entonces no se abre nada nuevo.
report-page-ring = Llamar hoy
report-page-earlier = Anteriores, en el registro: { $n }
report-page-ring-none = Nada que pida una llamada hoy.
report-page-talk = Para hablar
report-page-file = El archivo
report-page-last = Últimos siete días
report-page-worst = Lo menos hecho
report-page-worst-of = { $item }: { $part }. { $reasons }
report-page-worst-none = No se hizo nada menos de lo pedido.
report-page-left = Dejado: { $reasons }.
report-page-left-times = { $reason } ({ $n })
report-page-pain = Dolor
report-page-pain-rest = En reposo, última semana con respuestas: { $levels }
report-page-pain-morning = A la mañana siguiente: { $levels }
report-page-pain-change = { $change ->
    [rose] En reposo subió { $points } de la primera semana a la última.
    [fell] En reposo bajó { $points } de la primera semana a la última.
   *[same] En reposo cambió { $points } de la primera semana a la última: 2 puntos o menos no se llaman cambio.
}
report-page-asks = El paciente pregunta
report-page-asks-none = No hay ninguna pregunta escrita.

report-page-weeks = Semana por semana
report-page-week = Semana
report-page-weeks-from = { $first }–{ $last }
report-page-all = Todo el periodo
report-page-bare = Sin pausas propias
report-page-due = Tocaba
report-page-whole = Entero
report-page-part = Parte
report-page-told = Parado como se indicó
report-page-none = Sin registro
report-page-dose = Series hechas
report-page-counted = Contadas
report-page-unconfirmed = Sin confirmar
report-page-remembered = De memoria
report-page-beyond = De más
report-page-needed = A demanda
report-page-breaks = { $n ->
    [0] Ninguna pausa propia se declaró después de haber empezado.
    [one] 1 día de una pausa propia se declaró después de haber empezado.
   *[other] { $n } días de pausas propias se declararon después de haber empezado.
}
report-page-bar = Barras: contado es lleno, sin confirmar es gris, de memoria es hueco.

report-page-exercises = Ejercicio por ejercicio
report-page-exercise = Ejercicio
report-page-also = Además
report-page-easier = { $n ->
    [one] Más fácil una vez.
   *[other] Más fácil { $n } veces.
}
report-page-against = { $n ->
    [one] Hecho 1 día sin estar permitido.
   *[other] Hecho { $n } días sin estar permitido.
}

report-page-feeling = Dolor y esfuerzo
report-page-rest = En reposo, antes
report-page-during = Durante
report-page-after = Después
report-page-morning = Mañana siguiente
report-page-effort = Esfuerzo
report-page-chart = Dolor en reposo por semana, de 0 a 10: { $said }
report-page-chart-week = semana { $week }: { $levels }
report-page-chart-key = Un punto es la mediana de la semana en reposo; la barra, su margen. Una cruz es la mediana durante una sesión.
report-page-no-pain = Nadie contestó sobre el dolor.

report-page-words = En palabras del paciente
report-page-words-none = No hay nada escrito.
report-page-words-more = { $n ->
    [one] 1 entrada anterior está en el registro.
   *[other] { $n } entradas anteriores están en el registro.
}
report-page-words-withheld = { $n ->
    [one] El paciente se reservó 1 entrada.
   *[other] El paciente se reservó { $n } entradas.
}
report-page-checked = Qué se comprobó
report-page-not-checked = Aún sin comprobar. El programa de la clínica comprueba el archivo sellado: firma, registro y cada cifra.
report-page-definitions = Qué significan las cifras
report-page-def-due = Tocaba es lo que pedía el plan vigente ese día. No tocaba: los días antes de recibir el plan, lo que aún no está permitido, las pausas que ordenó la clínica, los días en el hospital.
report-page-def-days = Un día es entero si se hizo todo lo que tocaba. Sin registro no es ni hecho ni rechazado.
report-page-def-dose = Series hechas sobre series pedidas. Un ejercicio cuenta como mucho lo que se pidió, para que hacer de más en uno no tape otro. Lo hecho de más es una cifra aparte.
report-page-def-how = Contadas: llevadas por la cuenta y alguien contestó. Sin confirmar: nadie contestó. De memoria: anotadas después. Los diarios suelen decir más de lo que se hizo (Nicolson 2018).
report-page-def-pain = Mediana, y del mínimo al máximo, de 0 a 10. Solo se llama cambio si pasa de 2 puntos (Farrar 2001; Childs 2005).
report-page-def-trend = Pendiente del dolor en reposo según Theil y Sen, con su intervalo del 95 %.
report-page-trend = { $slope } puntos por semana (de { $low } a { $high }; { $n } respuestas)
report-page-trend-none = Muy pocas respuestas para una pendiente.

report-part = { $done } de { $of } ({ $percent } %)
report-levels = { $median } ({ $least }–{ $most })
report-left-chose = no quiso
report-left-hurt = dolía
report-left-tired = cansancio
report-left-no-time = sin tiempo
report-left-unsure = no sabía cómo
report-left-no-helper = sin ayuda
report-left-nothing-at-hand = faltaba algo

### El informe de un paciente, en la clínica y cuando se hace.

hand-back-days = Días completos: { $whole } de { $due } en los que tocaba algo.
hand-back-files = Guardado en { $folder }: { $sealed }, que solo abre su clínica, y { $table }, su registro como tabla.
hand-back-words = { $n ->
    [0] No contiene ninguna palabra suya.
    [one] Contiene palabras suyas una vez.
   *[other] Contiene palabras suyas { $n } veces.
}
hand-back-only-clinic = No se ha enviado nada. Entregue el archivo cerrado a su clínica en su visita. Antes no lo ve nadie en la clínica. Si algo va mal ahora, llámeles.

hand-back-span = Del { $from } al { $through }.
hand-back-entries = { $n ->
    [one] 1 anotación
   *[other] { $n } anotaciones
}
hand-back-exercise = { $name }: { $done } de { $of } series
hand-back-pain = Dolor en reposo últimamente: { $median } en el medio, de { $least } a { $most }.
hand-back-test = Una prueba, { $day }: { $result }
hand-back-choose = Dónde guardarlo para la clínica

break-written = Queda anotada una pausa del { $from } al { $through }. Lo que todavía no está permitido no se abre antes por eso.

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
flag-lift-ignored = { $day }: levantar { $precaution } no tuvo efecto
flag-clock = { $day }: el reloj saltó { $hours } horas, y se confirmó la fecha
flag-chain-broken = { $day }: el registro no se sigue desde el suceso { $seq }
mark-not-due = no tocaba nada
mark-whole = completo
mark-part = en parte
mark-stopped-as-told = parado como se dijo
mark-no-record = sin registro

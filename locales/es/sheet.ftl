### El plan en papel.

sheet-title = Su plan
sheet-for = Para { $called }
sheet-by = De { $clinic }
sheet-revision = Versión { $revision } del { $day }
sheet-foot = Plan de { $called }, versión { $revision }
sheet-page = Página { $n } de { $of }
sheet-after = Después de: { $name }, { $side }. Día 0: { $day }.
sheet-side-left = lado izquierdo
sheet-side-right = lado derecho
sheet-side-both = los dos lados
sheet-side-neither = ningún lado
sheet-holds = Esta hoja vale hasta el { $day }. El plan acaba el { $last }.
sheet-newer = Si su clínica le da una versión más nueva, guarde esta aparte.
sheet-review = Después del { $day } no se abre nada nuevo hasta que su clínica vuelva a mirar su plan. Llame a su clínica.
sheet-review-week = solo si su clínica ha vuelto a mirar su plan

sheet-stop = Cuándo parar y a quién llamar
sheet-stop-emergency = Pare. Llame enseguida al { $phone }
sheet-stop-ring = Hoy, ningún ejercicio. Llame hoy a su clínica
sheet-stop-note = Anótelo y siga
sheet-whom = A quién llamar
sheet-whom-day = En horas de consulta
sheet-whom-night = Tardes, noches y fines de semana
sheet-whom-emergency = Emergencias

sheet-pain = Si le duele
sheet-pain-scale = Póngale un número: 0 es nada, 10 es lo peor que pueda imaginar.
sheet-pain-when = Lo que siente
sheet-pain-do = Qué hacer
sheet-pain-rest = En reposo, antes de empezar: { $level } o más
sheet-pain-rest-do = Hoy, ningún ejercicio. Llame a su clínica.
sheet-pain-during = Durante los ejercicios: { $level } o más
sheet-pain-slow-do = Siga con suavidad.
sheet-pain-easier-do = Hágalo de la manera más fácil, si la hay.
sheet-pain-stop-do = Deje este ejercicio por hoy.
sheet-pain-today-do = Pare por hoy. Llame a su clínica.
sheet-pain-rise = Durante los ejercicios: { $level } más que antes de empezar
sheet-pain-sharp = Un dolor agudo o punzante, aunque sea poco
sheet-pain-settle = Después: debe calmarse en { $minutes } minutos
sheet-pain-settle-do = Si no se calma, haga menos la próxima vez y dígaselo a su clínica.
sheet-pain-morning = A la mañana siguiente: { $level } más que antes de los ejercicios
sheet-pain-morning-do = Hoy haga menos. Dígaselo a su clínica.

sheet-rules = Reglas para todos los días
sheet-rule = La regla
sheet-until = Hasta cuándo
sheet-who = La puso
sheet-not-opened = No abierto

sheet-week = Semana
sheet-days = Días
sheet-what = Qué es
sheet-opens = Qué se abre
sheet-weeks-of = Sus semanas después de: { $name }
sheet-unknown-zero = Todavía no se sabe el día de la operación. Cuando se sepa, pida a su clínica una hoja nueva.

sheet-what-to-do = Qué hacer en cada semana
sheet-exercise = Ejercicio
sheet-how-often = Cada cuánto
sheet-how-much = Cuánto
sheet-stage-weeks = Semanas { $from } a { $through }
sheet-stage-week = Semana { $from }
sheet-stage-days = { $from } a { $through }
sheet-round = { $items }: una vuelta de cada uno por turno, { $rounds } veces. Descanse { $rest } segundos después de cada turno.
sheet-not-in-stage = Todavía en ninguna semana
sheet-not-in-stage-why = Su plan aún no los pide.

when-times-a-day = { $times ->
    [1] Una vez al día.
    [2] Dos veces al día.
   *[other] { $times } veces al día.
}
when-hours-between = { $hours ->
    [1] Con 1 hora por medio al menos.
   *[other] Con { $hours } horas por medio al menos.
}
when-every-hours = { $hours ->
    [one] Cada hora mientras esté despierto.
   *[other] Cada { $hours } horas mientras esté despierto.
}
when-weekdays = Los días: { $days }.
when-days-a-week = { $days ->
    [one] 1 día a la semana.
   *[other] { $days } días a la semana, nunca dos seguidos.
}
when-as-needed = Cuando lo necesite. { $most ->
    [one] Una vez al día como mucho.
   *[other] { $most } veces al día como mucho.
}
when-times-that-day = { $times ->
    [one] Una vez ese día.
   *[other] { $times } veces ese día.
}

sheet-exercises = Sus ejercicios, uno por uno
sheet-start = Inicio
sheet-end = Final
sheet-figure-still = { $name }: cómo se ve.
sheet-figure-start = { $name }: el inicio.
sheet-figure-end = { $name }: el final.
sheet-have-ready = Tenga a mano: { $things }.
sheet-beside = Solo con alguien a su lado.
sheet-brace = Déjese puesta la ortesis o el cabestrillo.
sheet-set-up = Prepárese
sheet-how = Cómo se hace
sheet-feel = Lo que siente
sheet-watch = Fíjese en esto
sheet-note = De su clínica
sheet-easier = Más fácil que { $of }: { $name }
sheet-easier-see = Más fácil que { $of }: { $name }. Vea el { $n }.
sheet-dose-elsewhere = En algunas semanas es más o menos: vea «{ $title }».
sheet-tempo = Cuente { $out } para ir, { $hold } para mantener, { $back } para volver y { $pause } para soltar.
sheet-tempo-no-hold = Cuente { $out } para ir, { $back } para volver y { $pause } para soltar.
sheet-breath = Tome aire mientras cuenta { $in }. Eche el aire mientras cuenta { $out }.
sheet-graded = Por niveles
sheet-graded-step = Nivel { $n } de { $of }: { $dose }
sheet-graded-start = Empieza en el nivel { $n }.
sheet-graded-now = Hoy está en el nivel { $step } de { $steps }.
sheet-graded-up = Un nivel más después de { $sessions } sesiones enteras seguidas, si el dolor fue { $pain } como mucho. Solo si quiere, y no después de una pausa.
sheet-graded-up-effort = Un nivel más después de { $sessions } sesiones enteras seguidas, si el dolor fue { $pain } y el esfuerzo { $effort } como mucho. Solo si quiere, y no después de una pausa.
sheet-graded-down = Un nivel menos enseguida si el dolor pasa de { $pain }.
sheet-ramp = { $grows ->
    [sets] { $start ->
        [one] Empiece con 1 serie.
       *[other] Empiece con { $start } series.
    } Añada { $step } { $days ->
        [one] cada día
       *[other] cada { $days } días
    }, hasta { $cap }.
    [repetitions] { $start ->
        [one] Empiece haciéndolo una vez.
       *[other] Empiece haciéndolo { $start } veces.
    } Añada { $step } { $days ->
        [one] cada día
       *[other] cada { $days } días
    }, hasta { $cap }.
    [hold] { $start ->
        [one] Empiece manteniendo 1 segundo.
       *[other] Empiece manteniendo { $start } segundos.
    } Añada { $step } { $days ->
        [one] cada día
       *[other] cada { $days } días
    }, hasta { $cap }.
   *[minutes] { $start ->
        [one] Empiece con 1 minuto.
       *[other] Empiece con { $start } minutos.
    } Añada { $step } { $days ->
        [one] cada día
       *[other] cada { $days } días
    }, hasta { $cap }.
}
sheet-ramp-yes = Solo si va bien, y no después de una pausa.

sheet-care = Cuídese
sheet-care-times = { $times ->
    [0] Como le dijo su clínica.
    [one] Una vez al día.
   *[other] { $times } veces al día.
}

sheet-return = Después de una pausa
sheet-return-start = Después de { $days } días o más sin ejercicios, haga menos la primera vez:
sheet-return-same = Después de { $days } días o más sin ejercicios, tenga cuidado la primera vez.
sheet-return-ring = Después de { $days } días o más, llame a su clínica antes de volver a empezar.

sheet-tests = Pruebas en casa
sheet-tests-helper = Solo con alguien a su lado que ayude, y solo si las reglas de su clínica lo permiten entonces. Si no se siente seguro, pare y siéntese.
sheet-test-chair-stand-count = Quien le ayuda cuenta cuántas veces se pone de pie y lo anota.
sheet-test-timed-up-and-go-time = Quien le ayuda mide el tiempo, desde «ya» hasta que se sienta otra vez, y lo anota.
sheet-test-four-stage-balance-time = Quien le ayuda mide el tiempo de cada una, hasta que mueva los pies o se agarre. No pase a la siguiente si no aguanta 10 segundos.
sheet-test-weeks = Desde la semana { $from }, { $every ->
    [one] cada semana.
   *[other] cada { $every } semanas.
}

sheet-cautions = Recuerde, por favor
sheet-tick = Mi semana
sheet-tick-how = Haga una raya por cada vez. Anote el dolor antes y después.
sheet-tick-pain = Dolor antes y después

sheet-written = Su plan para la nevera: { $path }

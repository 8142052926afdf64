### Palabras que se usan en muchos lugares.

date-day = { $weekday } { $day } de { $month }
date-short = { $day } de { $month }
date-day-and-year = { $weekday } { $day } de { $month } de { $year }

# Several things: “a, b and c”.
list-comma = {", "}
list-semicolon = {"; "}
list-last = { $first } y { $last }

side-left = lado izquierdo
side-right = lado derecho
side-both = los dos lados a la vez
side-one-after-the-other = un lado y después el otro
side-in-turn = un lado cada vez, alternando

dose-repetitions = { $n ->
    [one] Hágalo una vez.
   *[other] Hágalo { $n } veces.
}
dose-repetitions-range = Hágalo entre { $least } y { $most } veces.
dose-hold = { $n ->
    [one] Mantenga 1 segundo.
   *[other] Mantenga { $n } segundos.
}
dose-breaths = { $n ->
    [one] Respire 1 vez, despacio.
   *[other] Respire { $n } veces, despacio.
}
dose-minutes = { $n ->
    [one] Hágalo durante 1 minuto.
   *[other] Hágalo durante { $n } minutos.
}
dose-steps = { $n ->
    [one] Camine 1 paso con { $aid }.
   *[other] Camine { $n } pasos con { $aid }.
}
# La palabra es siempre "serie", en todos los archivos.
dose-sets = { $n ->
    [one] Es una sola serie.
   *[other] Haga { $n } series iguales.
}
dose-rest = { $n ->
    [one] Descanse 1 segundo entre series.
   *[other] Descanse { $n } segundos entre series.
}
dose-weight = Use un peso de { $kg } kg.
dose-band = Use { $band }.

ring-clinic = Llame a { $clinic }: { $phone }
ring-out-of-hours = Tardes, noches y fines de semana: { $night }
ring-emergency = Número de emergencias: { $emergency }

# Palabras que valen como respuesta, con un espacio entre ellas.
answers-yes = sí si s
answers-no = no n
answers-left = izquierdo izquierda izq izqdo izqda izdo izda i
answers-right = derecho derecha der dcho dcha d
answers-both = ambos ambas dos a
answers-neither = ninguno ninguna ningún ningun nada n
answers-again = otra o

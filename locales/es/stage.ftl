### Lo que una sesión muestra en letra grande, y dice.

stage-get-ready = Prepárese
stage-change-sides = Cambie de lado
stage-count-in = Atención
stage-out = Vamos
stage-hold = Mantenga
stage-back = Vuelva
stage-let-go = Suelte
stage-breathe-in = Inspire
stage-breathe-out = Espire
stage-keep-going = Siga
stage-walk = Camine
stage-rest = Descanse
stage-paused = En pausa
stage-done = Terminado
stage-of = de { $of }
stage-of-round = de { $of }, serie { $round } de { $rounds }
stage-round = serie { $round } de { $rounds }
stage-minutes = minutos por hacer
stage-steps = pasos
stage-minutes-left = { $n ->
    [0] Queda menos de un minuto
    [one] Queda 1 minuto
   *[other] Quedan { $n } minutos
}
stage-tally = { $done } de { $of } hechas.
stage-say-when-ready = Colóquese. Avise cuando pueda empezar.
stage-walk-steps = { $n ->
    [one] Camine 1 paso.
   *[other] Camine { $n } pasos.
} Avise cuando lo haya hecho.
stage-lost-time = En pausa, porque el dispositivo estaba dormido. Siga cuando quiera.
ended-none = Terminado. No se hizo nada que se pudiera anotar. Puede anotarlo a mano.

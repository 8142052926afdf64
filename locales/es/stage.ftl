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
stage-of-round = de { $of }, serie{"\u00A0"}{ $round }{"\u00A0"}de{"\u00A0"}{ $rounds }
stage-round = serie{"\u00A0"}{ $round }{"\u00A0"}de{"\u00A0"}{ $rounds }
stage-minutes = { $n ->
    [one] minuto por hacer
   *[other] minutos por hacer
}
stage-steps = pasos
stage-minutes-left = { $n ->
    [0] Queda menos de un minuto
    [one] Queda 1 minuto
   *[other] Quedan { $n } minutos
}
stage-tally = { $done } de { $of } hechas.
stage-say-when-ready = Colóquese. Después pulse «{ session-ready }».
stage-say-when-beside = Tenga a alguien a su lado. Luego pulse «{ session-beside-start }».
stage-walk-steps = { $n ->
    [one] Camine 1 paso.
   *[other] Camine { $n } pasos.
} Después pulse «{ session-walked }».
stage-lost-time = En pausa, porque el dispositivo estaba dormido. Siga cuando quiera.
ended-none = Terminado. No se hizo nada que se pudiera anotar. Puede anotarlo a mano.

# Lo que un escritorio muestra del programa que mantiene la pantalla encendida.
ears-why-awake = Hay una sesión en marcha.
ears-no-speech = Nada en este dispositivo puede hablar. Oirá pitidos y verá palabras grandes.
ears-no-voice = Este dispositivo no tiene voz en su idioma. Oirá pitidos y verá palabras grandes.
ears-no-tones = Este dispositivo no da sonido. Verá palabras grandes.

tray-open = Abrir Sendaluna
tray-close = Cerrar Sendaluna

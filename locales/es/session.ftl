### Una sesión: preguntas, avisos, respuestas.

ask-signs = ¿Algo de esto es nuevo, o está peor que la última vez?
# En la pregunta, "no" tiene que significar que no hay nada nuevo ni peor.
ask-signs-again = Una vez más: ¿hay algo nuevo o peor?
ask-signs-how = Escriba los números de lo que sea nuevo o esté peor. Pulse Enter si no hay nada.
ask-pain-now = ¿Cuánto le duele ahora, en reposo? De 0 (nada) a 10 (lo peor que pueda imaginar)
ask-go-on = Hoy empezó una sesión. ¿Seguir desde la última serie terminada? sí o no
ask-pain-how-much = ¿Cuánto le duele? De 0 (nada) a 10 (lo peor que pueda imaginar)
ask-pain-kind = ¿Qué tipo de dolor? 1 tirantez o cansancio, 2 agudo o punzante
ask-pain-place = ¿Dónde? 1 cadera, 2 muslo, 3 rodilla, 4 pantorrilla, 5 pie, 6 espalda, 7 hombro, 8 otro lugar
ask-how-many = ¿Hasta qué número llegó?
ask-effort = ¿Cuánto le costó? De 0 (como descansar) a 10 (todas sus fuerzas). Enter para no contestar.
ask-pain-after = ¿Cuánto le duele ahora? De 0 (nada) a 10 (lo peor que pueda imaginar). Enter para no contestar.
ask-words = ¿Quiere anotar algo? Enter para no contestar.

signs-noted = Anotado. Puede seguir. Cuénteselo a su clínica en la próxima visita.
signs-emergency = Llame ahora al número de emergencias si tiene
signs-ring-today = No haga ningún ejercicio, y llame hoy a la clínica, si tiene
sign-unwell = Se encuentra mal o tiene mareo.
signs-note = Cuénteselo a la clínica en la próxima visita si tiene

stop-emergency = Pare. Llame ahora al { $emergency }. Diga que tuvo una operación, y qué le pasa.
stop-ring-today = Pare por hoy. Llame ahora a { $clinic }: { $phone }. Fuera de horario, noches y fines de semana: { $night }.
stop-when-spoken = No empieza ninguna sesión hasta que haya hablado con la clínica. Después escriba: sendaluna spoke

hurts-go-on = Está bien. Seguimos.
hurts-gently = Siga con suavidad. Haga el movimiento más pequeño y más despacio.
hurts-easier = Hágalo de la forma más fácil.
hurts-stop-exercise = Deje este ejercicio por hoy.
hurts-stop-today = Pare por hoy, y llame a su clínica.

session-keys = Barra espaciadora: pausa o seguir. h: me duele. f: hice menos. e: forma más fácil. l: dejar este. Enter: seguir ya. u: me encuentro mal. q: parar.
session-paused = En pausa. Tómese su tiempo.

cue-if-it-hurts = Si le duele, pare sin más. Dígamelo después.
cue-hand-on-rail = Deje el teléfono en un lugar seguro. Agárrese a la barandilla.
cue-beside-you = Para este ejercicio, tenga a alguien a su lado.
cue-set-up = Siguiente: { $name }, { $side }.
cue-ready = Pulse la barra espaciadora cuando quiera empezar.
cue-change-side = Cambie de lado: { $side }.
cue-number = { $n }
cue-out = { $n }: vaya.
cue-hold = { $n ->
    [one] Mantenga 1 segundo.
   *[other] Mantenga { $n } segundos.
}
cue-back = Y vuelva.
cue-minutes-left = { $n ->
    [one] Queda 1 minuto.
   *[other] Quedan { $n } minutos.
}
cue-steps = { $n ->
    [one] Camine 1 paso.
   *[other] Camine { $n } pasos.
} Pulse la barra espaciadora cuando termine.
cue-set-done = { $n ->
    [one] Ha hecho 1.
   *[other] Ha hecho { $n }.
} Anotado.
cue-rest = { $n ->
    [one] Descanse 1 segundo.
   *[other] Descanse { $n } segundos.
}
cue-going-on = Seguimos. Prepárese.
cue-lost-time = En pausa, porque el aparato se había dormido. Pulse la barra espaciadora para seguir.
cue-end = Ese era el último.

ended-whole = Ha terminado la sesión entera.
ended-part = Terminado por ahora: una parte de la sesión. Lo que hizo queda anotado.
ended-stopped-as-told = Ha parado como se le dijo. Era lo correcto. Lo que hizo queda anotado.

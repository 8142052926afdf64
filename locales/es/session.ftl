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
signs-emergency = Llame ahora al número de emergencias si le pasa algo de esto
signs-ring-today = No haga ningún ejercicio, y llame hoy a la clínica, si le pasa algo de esto
sign-unwell = Se encuentra mal o tiene mareo.
signs-note = Cuéntelo en la clínica en la próxima visita si le pasa algo de esto

stop-emergency = Pare. Llame ahora al { $emergency }. Diga que tuvo una operación, y qué le pasa.
stop-ring-today = Pare por hoy. Llame ahora a { $clinic }: { $phone }. Tardes, noches y fines de semana: { $night }.
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
cue-lost-time = En pausa, porque el dispositivo se había dormido. Pulse la barra espaciadora para seguir.
cue-end = Ese era el último.

ended-whole = Ha terminado la sesión entera.
ended-part = Ha hecho una parte de la sesión. Queda anotada.
ended-stopped-as-told = Ha parado como se le dijo. Era lo correcto. Lo que hizo queda anotado.

## La ventana, antes de una sesión.

before-back = Volver
before-date = Hoy es { $day }. ¿Es correcto?
before-date-yes = Sí, es correcto
before-date-no = No
before-date-wrong = La fecha de este dispositivo no es correcta.
before-date-why = Su plan va por fechas. Por eso no hay sesión hasta que la fecha sea correcta. No se ha perdido nada.
before-date-do = Ponga bien la fecha en los ajustes de este dispositivo. Después vuelva y empiece de nuevo.
before-back-to-today = Volver al día de hoy
before-tap = Toque todo lo que le pase.
before-nothing = No hay nada nuevo ni peor
before-something = Sí, hay algo
before-go-on-with = Seguir con lo marcado
before-pain = ¿Cuánto le duele ahora, en reposo?
before-pain-go-on = Seguir
before-coming = Lo que viene ahora
before-going-on = Hoy empezó esta sesión. Sigue desde la última serie terminada.
before-minutes = { $n ->
    [one] Dura más o menos 1 minuto.
   *[other] Dura más o menos { $n } minutos.
}
before-have-ready = Tenga esto preparado:
before-beside-you = En una parte, tenga a alguien a su lado.
before-helper = Alguien me ayuda y contesta por mí
before-exercises = Los ejercicios, en este orden
before-begin = Empezar

## La ventana, durante una sesión.

session-none = nada
session-worst = lo peor que pueda imaginar
session-back = Volver
session-ready = Ya puedo empezar
session-walked = Ya los he caminado
session-beside-start = Hay alguien a mi lado. Empezar
session-beside-nobody = No hay nadie: dejar este
session-pause = Pausa
session-step-on = Siguiente
session-hurts = Me duele
session-fewer = Hice menos
session-easier = Forma más fácil
session-leave = Dejar este
session-go-on = Seguir
session-go-on-without = Seguir sin este ejercicio
session-go-on-now = Seguir ya
session-stop = Parar por hoy
session-unwell = Malestar o mareo
session-paused-phase = En pausa
session-take-your-time = Tómese su tiempo.
session-next = Siguiente
session-not-fewer = No cambiarlo
session-saving = Un momento.

## La ventana: me duele.

hurts-how-much = ¿Cuánto le duele?
hurts-still = Ha parado. Eso está bien. Descanse un momento sin moverse.
hurts-seen = No puede decir un número. Veo:
hurts-seen-none = Ningún malestar
hurts-seen-some = Algo de malestar
hurts-seen-much = Mucho malestar
hurts-kind = ¿Qué tipo de dolor es?
hurts-stretching = Tirantez o músculos cansados
hurts-sharp = Agudo o punzante
hurts-where = ¿Dónde le duele?
hurts-places = Partes del cuerpo
hurts-hip = Cadera
hurts-thigh = Muslo
hurts-knee = Rodilla
hurts-calf = Pantorrilla
hurts-foot = Pie
hurts-back = Espalda
hurts-shoulder = Hombro
hurts-elsewhere = Otro lugar
hurts-cannot-say = No sé decir dónde
hurts-go-on-with = Seguir con este lugar

## La ventana: un alto.

stop-call-emergency = Número de emer{"\u00AD"}gen{"\u00AD"}cias
stop-call-clinic = Llamar a { $clinic }
stop-call-night = Tardes, noches y fines de semana
stop-until-spoken = No empieza ningún ejercicio hasta que haya hablado con la clínica.
stop-spoke = Ya he hablado con la clínica
stop-spoke-sure = ¿De verdad ha hablado de esto con alguien de la clínica?
stop-spoke-yes = Sí, ya hemos hablado
stop-spoke-no = No, todavía no

## La ventana, después de una sesión.

after-effort = ¿Cuánto le costó?
after-effort-least = como descansar
after-effort-most = todas sus fuerzas
after-pain = ¿Cuánto le duele ahora?
after-words = ¿Quiere anotar algo?
after-words-label = Una línea para su próxima visita
after-skip = No contestar
after-go-on = Seguir
after-keep = Guardarlo
after-stopped = Ha parado. Era lo correcto.
after-nothing-asked = Ahora no se le pregunta nada más. Lo que hizo queda guardado.
after-busy = Se está anotando. Un momento.
ended-tally = Lo que hizo
ended-back = Volver al día de hoy

### Recibir un plan.

receive-title = Aquí está su plan.
receive-for = Para { $called }, año de nacimiento { $born }. De { $clinic }.
receive-episode = { $name }: { $day }.
receive-exercises = { $n ->
    [one] 1 ejercicio.
   *[other] { $n } ejercicios.
}
receive-not-yet = Todavía no está permitido:
receive-which-side = ¿Qué lado le trataron? ({ $name }) izquierdo, derecho, ambos o ninguno
receive-is-it-yours = ¿Está bien todo esto, y es este su plan? sí o no
receive-done = Este es ahora su plan. Versión { $revision }.
receive-same-again = Ya tiene este plan. No ha cambiado nada. Versión { $revision }.
ask-date = Hoy es { $day }. ¿Está bien? sí o no

# En la ventana.
receive-file-title = Abra su plan
receive-file-drop = Suelte aquí el archivo de su clínica, o ábralo.
receive-file-where = Puede estar en un correo de su clínica o en una memoria USB.
receive-open = Abrir el archivo
receive-open-another = Abrir otro archivo
receive-busy = Un momento, por favor.
receive-code-title = El código de su carta
receive-code-how = Mire la carta de su cita. Escriba aquí su código.
receive-code-label = 12 letras y números
receive-code-missing = { $n ->
    [one] Falta 1 letra o número. Después siga.
   *[other] Faltan { $n } letras o números. Después siga.
}
receive-code-go-on = Seguir
receive-who = Para quién es este plan
receive-name = Nombre
receive-born = Año de nacimiento
receive-clinic = Clínica
receive-day-zero = Día de la operación: { $day }
receive-check = Conteste primero, por favor
receive-check-why = Usted y su clínica tienen que hablar de lo mismo. Mire su carta si tiene dudas.
receive-side = { $name }: ¿qué lado le trataron?
receive-side-left = Izquierdo
receive-side-right = Derecho
receive-side-both = Los dos lados
receive-side-neither = Ningún lado
receive-side-needed = Diga primero qué lado le trataron.
receive-date = Hoy es { $day }. ¿Está bien?
receive-date-yes = Sí, está bien
receive-date-no = No, es otro día
receive-date-needed = Diga primero si la fecha está bien.
receive-date-wrong = Entonces este dispositivo tiene mal la fecha. No se ha aceptado nada. Corrija la fecha del dispositivo. Después abra otra vez el archivo.
receive-mine = Este es mi plan
receive-not-mine = Este no es mi plan
receive-not-mine-do = No se ha aceptado nada. Llame a la clínica de su carta y dígalo.
receive-new-title = Hay un plan nuevo para usted.
receive-new = Es la versión { $revision } de su plan. Ocupa el lugar del que tiene. Lo que usted anotó se queda.
receive-take-in = Aceptar el plan
receive-back-to-today = Volver a hoy
receive-refused-title = Este archivo no se ha usado.
receive-ring-letter = Llame a su clínica. El número está en su carta.
receive-code-first = Primeros cuatro del código
receive-code-middle = Cuatro del medio del código
receive-code-last = Últimos cuatro del código
receive-what = Qué contiene
receive-back = Volver
receive-same-again-title = No hay nada nuevo.
receive-open-again = Abrir otra vez el archivo

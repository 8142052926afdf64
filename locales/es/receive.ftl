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

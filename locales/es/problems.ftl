### Problemas en lo que escribe una clínica. El lugar va delante de cada uno.

problem-missing = Esto falta.
problem-out-of-bounds = { $value } no está entre { $least } y { $most }{ $unit }.
problem-too-long = { $value } entradas son demasiadas; se permiten { $most }.
problem-empty-text = El texto está vacío.
problem-hidden-characters = El texto tiene caracteres invisibles que podrían cambiar cómo se lee.
problem-language-missing = Falta el texto en { $lang }, un idioma de este plan.
problem-repeated-id = { $id } aparece dos veces.
problem-unknown-id = No existe { $id }.
problem-weeks-reversed = La última semana es anterior a la primera.
problem-dates-reversed = El último día es anterior al primero.
problem-one-amount = Indique solo una de estas cosas: repeticiones, respiraciones, minutos o pasos.
problem-tempo-missing = Las repeticiones y las respiraciones necesitan un ritmo (tempo).
problem-pain-order = Los niveles no van de menor a mayor.
problem-counts-reversed = El número mayor va antes que el menor.
problem-no-warning-signs = Un plan necesita señales de alarma.
problem-no-emergency-sign = Un plan necesita al menos una señal para el número de emergencias.
problem-no-conditions = Hay muy pocas entradas para que esto signifique algo.
problem-one-most = Indique solo uno de los dos: most_kg o most_percent.
problem-none-and-some = "Ninguna" (none) y las precauciones se contradicen.
problem-joint-motion = Esta articulación ({ $joint }) no tiene este movimiento: { $motion }.
problem-not-a-key = Esto no es una clave del tipo correcto.
problem-no-rights = Un firmante sin permisos no puede firmar nada.
problem-repeated-day = Un día aparece dos veces.
problem-zone-unknown = No existe la zona horaria { $zone }.
problem-episode-differs = El lado o el día 0 de { $id } no son como en las declaraciones.
problem-statement-none = No hay ninguna declaración de alguien que pueda indicar precauciones. "Ninguna" (none) también se firma.
problem-person-differs = Una declaración es para otra persona.
problem-other-format = Este programa escribe y lee el formato 1.
problem-precaution-changed = La precaución { $id } tiene otro contenido que antes. Déle un id nuevo.
problem-unknown-family = Ningún ejercicio es de la familia { $id }. Las que hay son: { $known }.
problem-not-a-number = Aquí no hay ningún número de teléfono.
problem-not-restated = La precaución { $id } del archivo anterior se firmó con una clave que ya no es de confianza. Haga que se declare otra vez, con el mismo id y el mismo contenido.

# Detrás del máximo: «entre 1 y 260 semanas».
unit-weeks = semanas
unit-days = días
unit-characters = caracteres
unit-body-weight = % del peso del cuerpo

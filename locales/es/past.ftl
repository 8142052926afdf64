### Lo que hizo el paciente.

past-title = Lo que hice
past-legend-whole = Una sesión entera
past-legend-part = Parte de una sesión
past-from-memory = Hueco: de memoria
past-no-record = Un día sin anotaciones
past-gap = Algunos días no tienen anotaciones. No pasa nada. Siga con el día de hoy.
past-press = Pulse una semana para leerla en palabras.
past-pain = Dolor
past-no-pain = Todavía no hay ningún dolor anotado.
past-pain-chart = Su dolor desde el { $first } hasta el { $last }, en una línea. La tabla dice lo mismo.
past-pain-table = El dolor en una tabla
past-effort = Cuánto costó
past-effort-chart = Cuánto costaron sus sesiones, del { $first } al { $last }, en una línea. La tabla dice lo mismo.
past-effort-table = Cuánto costó, en una tabla
past-clinic-sees = Lo que verá mi clínica
past-day = Día
past-level = 0 a 10

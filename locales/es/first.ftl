### Los dos primeros minutos.

first-leaf = Página { $n } de { $of }
first-language = Su idioma
first-what-title = Qué es esto
first-what = Sendaluna le muestra los ejercicios del plan de su clínica: qué hacer hoy y qué no debe hacer todavía.
first-stays = Lo que usted anota se queda en este dispositivo. No se envía nada.
first-always = Las señales de alarma y los teléfonos están siempre a un toque.
first-reading = Que se lea y se oiga bien
first-go-on = Seguir
first-done = Listo
first-later = Más tarde
first-back = Volver

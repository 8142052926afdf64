### Lo que dicen varias pantallas de la ventana.

weeks-one = Semana { $week }
weeks-this = Semana { $week }, esta semana
weeks-opens = { $name }: se abre el { $day }

past-sessions = { $n ->
    [0] Todavía ninguna sesión.
    [one] 1 sesión hasta ahora.
   *[other] { $n } sesiones hasta ahora.
}
past-week-from = Desde el { $day }
past-whole = Una sesión entera.
past-part = Una parte de una sesión.
past-remembered = { $n ->
    [one] 1 ejercicio sin el programa, de memoria.
   *[other] { $n } ejercicios sin el programa, de memoria.
}
past-none = Sin registro.
past-ahead = Aún por venir.
past-pain-before = antes de una sesión, en reposo
past-pain-during = durante una sesión
past-pain-after = después de una sesión
past-pain-next-morning = la mañana siguiente

position-supine = boca arriba
position-hook-lying = boca arriba, rodillas dobladas
position-side-lying = de lado; el lado que ejercita queda arriba
position-side-lying-under = de lado; el lado que ejercita queda abajo
position-prone = boca abajo
position-seated = en posición sentada
position-standing = de pie
position-bent-over = de pie, con el tronco inclinado hacia delante y apoyo
position-kneeling = de rodillas
position-hands-and-knees = a gatas
position-unknown = posición desconocida

prop-chair = una silla firme
prop-rail = algo a lo que agarrarse
prop-towel = una toalla
prop-roll = una toalla enrollada
prop-strap = una correa o un cinturón
prop-step = un escalón
prop-band = su banda elástica
prop-cuff = su tobillera con peso
prop-pillow = una almohada
prop-stick = un bastón
prop-walking-aid = su bastón, sus muletas o su andador
prop-table = una mesa
prop-wall = una pared o el marco de una puerta
prop-helper = alguien que le ayude

care-done-of = Hoy { $done } de { $times }.
care-done = { $done ->
    [0] Hoy ninguna vez.
   *[other] Hoy { $done }.
}

language-name = Español
# ltr, o rtl si se escribe de derecha a izquierda.
language-direction = ltr

window-no-screen = Aquí no hay ninguna pantalla donde dibujar.
window-pick-title = Abrir el plan de su clínica
window-pick-kind = Plan de Sendaluna
window-failed = Algo ha fallado en esta ventana: { $what } Lo que estaba anotado está a salvo.
window-failed-do = Cierre Sendaluna y ábralo otra vez. Si sigue así, use su plan en papel o llame a su clínica.
problem-emergency = En una emergencia, llame al número de emergencias de su zona. El número de su clínica está en su carta.
past-before-plan = Antes de este plan.

### La línea de órdenes de la clínica.

clinic-passphrase = Frase de contraseña:
clinic-passphrase-again = La misma otra vez:
clinic-written = Escrito: { $path }
clinic-lift-without-right = Atención: { $who } no tiene permiso para retirar precauciones. Esta retirada no tendrá efecto, y el paciente lo leerá así.
clinic-lift-no-effect = Sin efecto: { $by } no tiene permiso para retirar la precaución { $id }. { $who ->
    [none] No se sabe quién la indicó.
   *[other] La indicó: { $who }.
}
clinic-unknown-family = Atención: ningún ejercicio de la biblioteca es de la familia { $id }. Esta precaución no cierra nada, salvo que la tenga un ejercicio propio.
clinic-check-clean = Revisado: nada de este plan contradice ninguna precaución, en ningún día.
clinic-check-contradictions = { $n ->
    [one] 1 contradicción. Este plan no se puede firmar.
   *[other] { $n } contradicciones. Este plan no se puede firmar.
}
clinic-check-problems = { $n ->
    [one] 1 problema. Corríjalo primero; después se revisan todos los días.
   *[other] { $n } problemas. Corríjalos primero; después se revisan todos los días.
}

contradiction = { $item } ({ $movement }) se pide en la etapa { $stage } desde el { $from } hasta el { $through }, ese día incluido. { $reason }
contradiction-undated = { $item } ({ $movement }) se pide en la etapa { $stage }, cuyo día 0 no se sabe. { $reason }
contradiction-precaution = Precaución { $precaution }, indicada por { $who }: { $why }
near-limit = Cerca de un límite: { $item } ({ $movement }), precaución { $precaution }. { $measured }
measured = { $side }, { $what } llega a { $reaches }; permitido { $until }: { $allowed }.
measured-moment = el momento de { $what }
measured-weight = el peso
on-the-left = A la izquierda
on-the-right = A la derecha
joint-motion = { $motion } de { $joint }
joint-hip = cadera
joint-knee = rodilla
joint-ankle = tobillo
joint-shoulder = hombro
joint-elbow = codo
joint-trunk = tronco
motion-flexion = flexión
motion-extension = extensión
motion-abduction = abducción
motion-adduction = aducción
motion-internal-rotation = rotación interna
motion-external-rotation = rotación externa
motion-dorsiflexion = flexión dorsal
motion-plantarflexion = flexión plantar
motion-side-bending = inclinación lateral
motion-twisting = giro

contradiction-would-pass = Pasarían: { $movements }.
until-week = hasta la semana { $n } incluida
until-day = hasta el { $day } incluido
until-lifted = hasta que se levante
numbers-of = { $of } ({ $movement }; familia { $family }): { $position }
numbers-range = { $side }, { $what }: de { $from }° a { $to }°, { $drive }
numbers-action = { $side }, músculos de { $what }: { $drive }
numbers-moment = { $side }, momento de { $what }: { $moment } N·m/kg, { $drive } (parte de la gravedad, una estimación)
numbers-weight = Peso, en porcentaje del cuerpo: izquierda { $left }, derecha { $right }
numbers-bends-spine = dobla la columna
numbers-twists-spine = gira la columna
numbers-resistance = resistencia externa
drive-active = activo
drive-isometric = isométrico
drive-assisted = asistido
drive-passive = pasivo
seat-low = asiento más bajo que la rodilla
seat-knee = asiento a la altura de la rodilla
seat-high = asiento más alto que la rodilla

show-plan = Plan { $plan }, versión { $revision }, para { $called }, de { $clinic }
show-days = Revisar como tarde el { $review }; último día, el { $last }
show-letter-code = Código de la carta: { $code }
show-signers = Lista de firmantes { $number }:
show-precautions = Precauciones ({ $n }):
show-items = Ejercicios ({ $n }):
show-opens = se abre el { $day }
show-until-lifted = hasta que se retire

### Lo que leen y oyen los pacientes sobre cada movimiento. El lado, la cuenta y la duración los dice el
### programa, por eso no se dicen aquí. Cuatro mensajes por movimiento, según su id: cómo se llama, cómo
### prepararse, cómo hacerlo y qué mantener.

movement-abduction-slide-name = Deslizar la pierna hacia el lado
movement-abduction-slide-set-up = Acuéstese boca arriba, sin levantar el respaldo, con las dos piernas estiradas. Apunte los dedos del pie al techo.
movement-abduction-slide-how = Deslice la pierna hacia afuera. Mantenga el talón en la cama. Pare cuando la note tirante. Vuelva despacio, sin pasar del centro.
movement-abduction-slide-faults = Mantenga los dedos del pie apuntando al techo.

movement-ankle-pump-name = Pie arriba y abajo
movement-ankle-pump-set-up = Acuéstese boca arriba. Deje la pierna estirada y en reposo sobre la cama.
movement-ankle-pump-how = Lleve la punta del pie hacia abajo. Luego suba la punta del pie hacia usted. Deje la pierna en reposo sobre la cama.
movement-ankle-pump-faults = Hágalo despacio. Complete el movimiento cada vez.

movement-bridge-name = Levantar la cadera
movement-bridge-set-up = Acuéstese boca arriba. Doble las rodillas y apoye bien los pies en la cama.
movement-bridge-how = Apriete los glúteos. Empuje con los pies y levante la cadera. Pare cuando hombros, caderas y rodillas formen una línea. Mantenga la postura. Baje la cadera despacio.
movement-bridge-faults = Mantenga la espalda recta. Deje que los glúteos hagan el trabajo.

movement-calf-raise-name = Ponerse de puntillas
movement-calf-raise-set-up = Póngase de pie, con el cuerpo derecho y los pies debajo de las caderas. Agárrese con las dos manos a una barandilla o a un mueble firme.
movement-calf-raise-how = Suba sobre las puntas de los dos pies. Mantenga la postura. Baje los talones despacio.
movement-calf-raise-faults = Mantenga el peso sobre los dedos gordos. Reparta el trabajo entre los dos pies.

movement-clam-name = Levantar la rodilla, de lado
movement-clam-set-up = Acuéstese de lado, con la pierna arriba. Doble las caderas y las rodillas. Ponga los pies en línea con la espalda, uno sobre otro. Ponga una almohada entre las rodillas.
movement-clam-how = Mantenga los pies juntos. Levante la rodilla de arriba. Mantenga la postura. Bájela despacio hasta la almohada.
movement-clam-faults = Mantenga las caderas quietas, una encima de la otra.

movement-glute-set-name = Apretar los glúteos
movement-glute-set-set-up = Acuéstese boca arriba, sin levantar el respaldo, con las dos piernas estiradas.
movement-glute-set-how = Apriete los dos glúteos. Mantenga la fuerza. Deje las piernas quietas. Suelte despacio.
movement-glute-set-faults = Siga respirando mientras aprieta.

movement-hands-and-knees-arch-name = Hundir y redondear la espalda
movement-hands-and-knees-arch-set-up = Ponga una toalla doblada en el suelo. Arrodíllese encima y apoye las manos. Ponga las manos debajo de los hombros y las rodillas debajo de las caderas.
movement-hands-and-knees-arch-how = Deje bajar el vientre despacio, para hundir la espalda. Luego redondee la espalda hacia el techo. Respire mientras se mueve.
movement-hands-and-knees-arch-faults = Mantenga las caderas justo encima de las rodillas. Mantenga los brazos estirados.

movement-heel-prop-name = Estirar la rodilla con el talón en alto
movement-heel-prop-set-up = Acuéstese boca arriba, sin levantar el respaldo. Apoye el talón sobre una toalla enrollada. Deje libre el espacio debajo de la rodilla.
movement-heel-prop-how = Deje la pierna floja. Deje que la rodilla baje hacia la cama. Quédese así hasta que acabe el tiempo.
movement-heel-prop-faults = Mantenga la rótula y los dedos del pie apuntando al techo.

movement-heel-slide-name = Deslizar el talón
movement-heel-slide-set-up = Acuéstese boca arriba, sin levantar el respaldo, con las dos piernas estiradas. Póngase un calcetín para que el talón deslice bien.
movement-heel-slide-how = Deslice el talón hacia el glúteo. Deje que la rodilla se doble hacia arriba. Pare cuando la note tirante. Deslice el talón hasta estirar la pierna.
movement-heel-slide-faults = Mantenga la rodilla en línea con la cadera y el pie.

movement-heel-slide-strap-name = Deslizar el talón con una correa
movement-heel-slide-strap-set-up = Acuéstese boca arriba, sin levantar el respaldo, con las dos piernas estiradas. Pase la correa alrededor del pie. Sujete un extremo con cada mano.
movement-heel-slide-strap-how = Tire de la correa con suavidad. Deje que el talón deslice hacia el glúteo. Pare cuando note la rodilla tirante. Afloje la correa despacio hasta estirar la pierna.
movement-heel-slide-strap-faults = Mantenga la rodilla en línea con la cadera y el pie. Tire siempre con suavidad.

movement-hip-hinge-name = Inclinarse desde la cadera
movement-hip-hinge-set-up = Póngase de pie, con el cuerpo derecho y los pies debajo de las caderas. Agárrese con las dos manos a una barandilla o a un mueble firme.
movement-hip-hinge-how = Doble un poco las rodillas. Lleve la cadera hacia atrás e inclínese hacia delante. Mantenga la espalda recta. Lleve la cadera hacia delante y enderécese.
movement-hip-hinge-faults = Mantenga la espalda recta desde la cabeza hasta la cadera.

movement-knee-rolls-name = Rodillas de lado a lado
movement-knee-rolls-set-up = Acuéstese boca arriba. Doble las rodillas y apoye bien los pies en la cama. Mantenga las rodillas juntas.
movement-knee-rolls-how = Deje caer las dos rodillas despacio hacia un lado. Pare cuando note que tira. Vuelva con ellas al centro. Luego llévelas hacia el otro lado.
movement-knee-rolls-faults = Mantenga los dos hombros en la cama.

movement-kneeling-weight-shift-name = Cadera atrás y arriba, de rodillas
movement-kneeling-weight-shift-set-up = Ponga una almohada en el suelo. Ponga una silla firme delante. Arrodíllese con las dos rodillas y agárrese a la silla.
movement-kneeling-weight-shift-how = Lleve la cadera un poco hacia atrás, hacia los talones. Luego suba hasta que el cuerpo quede derecho. Deje las manos en la silla.
movement-kneeling-weight-shift-faults = Mantenga la espalda recta. Ponga el mismo peso en las dos rodillas.

movement-long-arc-quad-name = Estirar la rodilla, con silla
movement-long-arc-quad-set-up = Siéntese bien atrás en una silla firme. Apoye bien los pies en el suelo.
movement-long-arc-quad-how = Levante el pie hasta estirar la rodilla. Mantenga la postura. Baje el pie despacio hasta el suelo.
movement-long-arc-quad-faults = Mantenga la espalda derecha contra el respaldo.

movement-long-arc-quad-band-name = Estirar la rodilla con banda, con silla
movement-long-arc-quad-band-set-up = Ate la banda a una pata trasera de una silla firme. Pásela alrededor del tobillo. Siéntese bien atrás, con los pies bien apoyados en el suelo.
movement-long-arc-quad-band-how = Levante el pie contra la banda hasta estirar la rodilla. Mantenga la postura. Baje el pie despacio hasta el suelo.
movement-long-arc-quad-band-faults = Mantenga la espalda derecha contra el respaldo. Baje tan despacio como sube.

movement-marching-name = Marchar sin avanzar
movement-marching-set-up = Póngase de pie, con el cuerpo derecho. Agárrese con las dos manos a una barandilla o a un mueble firme. Apoye el peso en la otra pierna.
movement-marching-how = Levante la rodilla hacia delante. Deje colgar la parte baja de la pierna. Baje el pie despacio.
movement-marching-faults = Mantenga el cuerpo derecho, justo encima del pie de apoyo.

movement-mini-squat-name = Doblar un poco las rodillas, de pie
movement-mini-squat-set-up = Póngase de pie, con el cuerpo derecho y los pies debajo de las caderas. Agárrese con las dos manos a una barandilla o a un mueble firme.
movement-mini-squat-how = Doble un poco las rodillas, como para sentarse. Deje los talones en el suelo. Empuje hacia arriba hasta enderezarse del todo.
movement-mini-squat-faults = Mantenga las rodillas apuntando hacia donde apuntan los pies.

movement-pelvic-tilt-name = Aplanar la espalda
movement-pelvic-tilt-set-up = Acuéstese boca arriba. Doble las rodillas y apoye bien los pies en la cama.
movement-pelvic-tilt-how = Apriete la parte baja del vientre. Presione la cintura contra la cama. Mantenga la postura. Suelte despacio.
movement-pelvic-tilt-faults = Siga respirando mientras mantiene la postura.

movement-pendulum-name = Balancear el brazo suelto
movement-pendulum-set-up = Póngase de pie junto a una mesa firme. Inclínese hacia delante y apoye en ella la otra mano. Deje colgar el brazo, suelto.
movement-pendulum-how = Balancee el cuerpo con suavidad hacia delante y hacia atrás. Deje que el brazo se balancee solo. Espere a que se pare antes de enderezarse.
movement-pendulum-faults = Mantenga el brazo suelto. Deje que el cuerpo lo mueva.

movement-prone-press-up-name = Levantar el pecho, boca abajo
movement-prone-press-up-set-up = Acuéstese boca abajo en la cama. Apoye las manos al lado de los hombros.
movement-prone-press-up-how = Empuje con los brazos y levante el pecho. Deje la cadera en la cama. Deje la espalda floja. Baje el pecho despacio.
movement-prone-press-up-faults = Mantenga los hombros bajos, lejos de las orejas.

movement-quad-set-name = Apretar el muslo
movement-quad-set-set-up = Acuéstese boca arriba, sin levantar el respaldo. Mantenga la pierna estirada y los dedos del pie apuntando al techo.
movement-quad-set-how = Apriete la parte delantera del muslo. Presione la parte de atrás de la rodilla contra la cama. Mantenga la fuerza. Suelte despacio.
movement-quad-set-faults = Siga respirando mientras mantiene la fuerza.

movement-seated-knee-bend-name = Deslizar el pie hacia atrás, con silla
movement-seated-knee-bend-set-up = Siéntese en una silla firme. Apoye bien el pie en el suelo, un poco adelantado.
movement-seated-knee-bend-how = Deslice el pie hacia atrás, debajo de la silla. Pare cuando note la rodilla tirante. Mantenga la postura. Deslice el pie otra vez hacia delante.
movement-seated-knee-bend-faults = Mantenga los dos glúteos en el asiento.

movement-seated-knee-bend-assisted-name = Deslizar el pie hacia atrás con ayuda, con silla
movement-seated-knee-bend-assisted-set-up = Siéntese en una silla firme. Apoye bien el pie en el suelo, un poco adelantado. Cruce el otro tobillo por delante.
movement-seated-knee-bend-assisted-how = Deslice el pie hacia atrás, debajo de la silla. Empújelo con suavidad con el otro pie. Pare cuando note la rodilla tirante. Mantenga la postura. Deslice los dos pies otra vez hacia delante.
movement-seated-knee-bend-assisted-faults = Mantenga los dos glúteos en el asiento. Empuje siempre con suavidad.

movement-seated-knee-spread-name = Rodilla hacia el lado, con silla
movement-seated-knee-spread-set-up = Siéntese con la espalda derecha en una silla firme. Apoye bien los pies debajo de las rodillas.
movement-seated-knee-spread-how = Lleve la rodilla hacia afuera. Deje que el pie deslice con ella. Vuelva con los dos, sin pasar del centro.
movement-seated-knee-spread-faults = Mantenga el cuerpo derecho, con el mismo peso en los dos glúteos.

movement-seated-march-name = Marchar, con silla
movement-seated-march-set-up = Siéntese con la espalda derecha en una silla firme. Apoye bien los pies debajo de las rodillas.
movement-seated-march-how = Levante un poco la rodilla. Mantenga el pie debajo de la rodilla. Baje el pie despacio hasta el suelo.
movement-seated-march-faults = Mantenga el cuerpo derecho, sin echarse hacia atrás.

movement-seated-march-low-name = Marchar, con asiento bajo
movement-seated-march-low-set-up = Siéntese con la espalda derecha en un asiento bajo y firme. Apoye bien los pies debajo de las rodillas.
movement-seated-march-low-how = Levante un poco la rodilla. Mantenga el pie debajo de la rodilla. Baje el pie despacio hasta el suelo.
movement-seated-march-low-faults = Mantenga el cuerpo derecho, sin echarse hacia atrás.

movement-short-arc-quad-name = Estirar la rodilla sobre un rollo
movement-short-arc-quad-set-up = Acuéstese boca arriba, sin levantar el respaldo. Ponga el rollo debajo de la rodilla. Deje el talón apoyado en la cama.
movement-short-arc-quad-how = Levante el talón hasta estirar la rodilla. Mantenga la postura. Baje el talón despacio hasta la cama.
movement-short-arc-quad-faults = Mantenga la parte de atrás del muslo sobre el rollo.

movement-side-lying-abduction-name = Levantar la pierna hacia el lado, en la cama
movement-side-lying-abduction-set-up = Acuéstese de lado, con la pierna arriba. Doble un poco la pierna de abajo. Ponga una almohada entre las piernas.
movement-side-lying-abduction-how = Levante la pierna de arriba, bien recta. Mantenga la rodilla estirada. Mantenga la postura. Bájela despacio hasta la almohada.
movement-side-lying-abduction-faults = Mantenga una cadera justo encima de la otra. Mantenga los dedos del pie apuntando hacia delante.

movement-single-knee-to-chest-name = Una rodilla al pecho
movement-single-knee-to-chest-set-up = Acuéstese boca arriba, sin levantar el respaldo, con las dos piernas estiradas.
movement-single-knee-to-chest-how = Deslice el talón hacia el glúteo. Sujete el muslo por detrás con las dos manos. Acerque la rodilla al pecho con suavidad. Mantenga la postura. Baje la pierna despacio.
movement-single-knee-to-chest-faults = Tire siempre con suavidad. Mantenga la otra pierna estirada en la cama.

movement-sit-to-stand-name = Levantarse de la silla
movement-sit-to-stand-set-up = Ponga una silla firme y alta contra la pared. Siéntese cerca del borde. Apoye bien los pies, un poco hacia atrás. Descanse las manos en los muslos.
movement-sit-to-stand-how = Inclínese un poco hacia delante. Empuje con los dos pies y levántese. Enderécese del todo. Doble las rodillas y siéntese despacio.
movement-sit-to-stand-faults = Ponga el mismo peso en los dos pies.

movement-sit-to-stand-arms-name = Levantarse con ayuda de las manos
movement-sit-to-stand-arms-set-up = Ponga una silla firme y alta, con brazos, contra la pared. Siéntese cerca del borde. Apoye bien los pies, un poco hacia atrás. Ponga las manos en los brazos de la silla.
movement-sit-to-stand-arms-how = Inclínese un poco hacia delante. Empuje con las manos y con los dos pies. Enderécese del todo. Busque la silla con las manos y siéntese despacio.
movement-sit-to-stand-arms-faults = Ponga el mismo peso en los dos pies.

movement-standing-abduction-name = Levantar la pierna hacia el lado, de pie
movement-standing-abduction-set-up = Póngase de pie, con el cuerpo derecho. Agárrese con las dos manos a una barandilla o a un mueble firme. Apoye el peso en la otra pierna.
movement-standing-abduction-how = Levante la pierna hacia afuera. Mantenga la rodilla estirada. Mantenga la postura. Bájela despacio.
movement-standing-abduction-faults = Mantenga el cuerpo derecho. Mantenga los dedos del pie apuntando hacia delante.

movement-standing-extension-name = Pierna hacia atrás, de pie
movement-standing-extension-set-up = Póngase de pie, con el cuerpo derecho. Agárrese con las dos manos a una barandilla o a un mueble firme. Apoye el peso en la otra pierna.
movement-standing-extension-how = Lleve la pierna recta hacia atrás. Mantenga la rodilla estirada. Mantenga la postura. Vuelva despacio hasta quedar debajo del cuerpo.
movement-standing-extension-faults = Mantenga el cuerpo derecho y la espalda quieta.

movement-standing-knee-curl-name = Talón hacia atrás, de pie
movement-standing-knee-curl-set-up = Póngase de pie, con el cuerpo derecho. Agárrese con las dos manos a una barandilla o a un mueble firme. Apoye el peso en la otra pierna.
movement-standing-knee-curl-how = Doble la rodilla y levante el talón hacia atrás. Mantenga el muslo apuntando al suelo. Mantenga la postura. Baje el pie despacio.
movement-standing-knee-curl-faults = Mantenga la cadera recta y las rodillas una al lado de la otra.

movement-standing-straight-hip-flexion-name = Pierna recta hacia delante, de pie
movement-standing-straight-hip-flexion-set-up = Póngase de pie, con el cuerpo derecho. Agárrese con las dos manos a una barandilla o a un mueble firme. Apoye el peso en la otra pierna.
movement-standing-straight-hip-flexion-how = Levante la pierna recta hacia delante. Mantenga la rodilla estirada. Mantenga la postura. Bájela despacio.
movement-standing-straight-hip-flexion-faults = Mantenga el cuerpo derecho, sin echarse hacia atrás.

movement-step-up-name = Subir un escalón
movement-step-up-set-up = Póngase de pie frente a un escalón bajo y firme. Agárrese a la barandilla. Ponga el pie entero en el escalón.
movement-step-up-how = Empuje con el pie que está en el escalón. Suba y enderécese del todo. Suba el otro pie a su lado. Baje despacio, primero con el otro pie.
movement-step-up-faults = Deje que trabaje la pierna que está en el escalón.

movement-stick-flexion-name = Brazos arriba con un bastón
movement-stick-flexion-set-up = Acuéstese boca arriba, sin levantar el respaldo. Sujete el bastón con las dos manos, sobre los muslos.
movement-stick-flexion-how = Mantenga los codos estirados. Suba el bastón hacia la cabeza. Deje que el otro brazo haga la fuerza. Pare cuando note que tira. Baje el bastón despacio.
movement-stick-flexion-faults = Mantenga la espalda plana sobre la cama.

movement-straight-leg-raise-name = Levantar la pierna recta
movement-straight-leg-raise-set-up = Acuéstese boca arriba, sin levantar el respaldo, con las dos piernas estiradas.
movement-straight-leg-raise-how = Primero apriete la parte delantera del muslo. Levante la pierna con la rodilla estirada. Mantenga la postura. Baje la pierna despacio hasta la cama.
movement-straight-leg-raise-faults = Mantenga la rodilla estirada de principio a fin.

movement-straight-leg-raise-cuff-name = Levantar la pierna recta con peso
movement-straight-leg-raise-cuff-set-up = Sujete el peso justo por encima del tobillo. Acuéstese boca arriba, sin levantar el respaldo, con las dos piernas estiradas.
movement-straight-leg-raise-cuff-how = Primero apriete la parte delantera del muslo. Levante la pierna con la rodilla estirada. Mantenga la postura. Baje la pierna despacio hasta la cama.
movement-straight-leg-raise-cuff-faults = Mantenga la rodilla estirada de principio a fin.

movement-table-slide-name = Deslizar el brazo por la mesa
movement-table-slide-set-up = Siéntese a la mesa en una silla firme. Apoye la mano en una toalla doblada sobre la mesa.
movement-table-slide-how = Deslice la mano hacia delante por la mesa. Deje que el cuerpo se incline con ella. Pare cuando note que tira. Deslice la mano hacia atrás despacio.
movement-table-slide-faults = Mantenga el hombro bajo, lejos de la oreja.

movement-tandem-stance-name = Un pie delante del otro
movement-tandem-stance-set-up = Póngase de pie, con el cuerpo derecho, junto a una barandilla o un mueble firme. Agárrese. Ponga el pie justo delante del otro, el talón junto a los dedos.
movement-tandem-stance-how = No se mueva. Ponga el mismo peso en los dos pies. Agárrese lo menos que pueda sin peligro. Quédese así hasta que acabe el tiempo.
movement-tandem-stance-faults = Mantenga la vista en algo que esté enfrente.

movement-walking-name = Caminar
movement-walking-set-up = Póngase zapatos firmes. Tome su bastón, sus muletas o su andador, si se los dieron.
movement-walking-how = Camine por terreno llano, a paso cómodo. Dé pasos cortos e iguales. Apoye primero el talón. Dé la vuelta antes de cansarse.
movement-walking-faults = Guarde fuerzas para el camino de vuelta.

### What patients read and hear about each movement of who stands or kneels. The side, the count and the length of a hold are
### said by the program, so they are not said here. Five messages for each movement, by its id: what it is
### called, how to get ready, how to do it, what one feels, and what to keep to.

movement-calf-raise-name = Ponerse de puntillas
movement-calf-raise-set-up = Póngase de pie, con el cuerpo derecho y los pies debajo de las caderas. Agárrese con las dos manos a una barandilla o a un mueble firme.
movement-calf-raise-how = Suba sobre las puntas de los dos pies. Mantenga la postura. Baje los talones despacio.
movement-calf-raise-feel = Notará que trabajan las pantorrillas, en la parte de atrás de las piernas.
movement-calf-raise-faults = Mantenga el peso sobre los dedos gordos. Reparta el trabajo entre los dos pies.

movement-calf-raise-one-leg-name = Ponerse de puntillas con un pie
movement-calf-raise-one-leg-set-up = Póngase de pie, con el cuerpo derecho. Agárrese con las dos manos a una barandilla o a un mueble firme. Levante el otro pie del suelo.
movement-calf-raise-one-leg-how = Suba sobre la punta del pie. Mantenga la postura. Baje el talón despacio. Deje el otro pie levantado.
movement-calf-raise-one-leg-feel = Notará que trabaja la pantorrilla, en la parte de atrás de la pierna.
movement-calf-raise-one-leg-faults = Mantenga el peso sobre el dedo gordo. Mantenga la rodilla estirada.

movement-hands-and-knees-arch-name = Hundir y redondear la espalda
movement-hands-and-knees-arch-set-up = Ponga una toalla doblada en el suelo. Arrodíllese encima y apoye las manos. Ponga las manos debajo de los hombros y las rodillas debajo de las caderas.
movement-hands-and-knees-arch-how = Deje bajar el vientre despacio, para hundir la espalda. Luego redondee la espalda hacia el techo. Respire mientras se mueve.
movement-hands-and-knees-arch-feel = Notará que tira un poco el vientre y luego toda la espalda.
movement-hands-and-knees-arch-faults = Mantenga las caderas justo encima de las rodillas. Mantenga los brazos estirados.

movement-hip-hinge-name = Inclinarse desde la cadera
movement-hip-hinge-set-up = Póngase de pie, con el cuerpo derecho y los pies debajo de las caderas. Agárrese con las dos manos a una barandilla o a un mueble firme.
movement-hip-hinge-how = Doble un poco las rodillas. Lleve la cadera hacia atrás e inclínese hacia delante. Mantenga la espalda recta. Lleve la cadera hacia delante y enderécese.
movement-hip-hinge-feel = Notará que trabajan los glúteos. Notará que tira un poco detrás de los muslos.
movement-hip-hinge-faults = Mantenga la espalda recta desde la cabeza hasta la cadera.

movement-hip-hinge-shallow-name = Pequeña inclinación desde la cadera
movement-hip-hinge-shallow-set-up = Póngase de pie, con el cuerpo derecho y los pies debajo de las caderas. Agárrese con las dos manos a una barandilla o a un mueble firme.
movement-hip-hinge-shallow-how = Doble un poco las rodillas. Lleve la cadera atrás e inclínese solo un poco. Mantenga la espalda recta. Lleve la cadera hacia delante y enderécese.
movement-hip-hinge-shallow-feel = Notará que trabajan un poco los glúteos y la parte baja de la espalda.
movement-hip-hinge-shallow-faults = Inclínese solo un poco. Mantenga la espalda recta desde la cabeza hasta la cadera.

movement-hip-hinge-stick-name = Inclinarse con bastón en la espalda
movement-hip-hinge-stick-set-up = Póngase de pie, con el cuerpo derecho y una barandilla o un mueble firme a su alcance. Sujete el bastón a lo largo de la espalda, con la mano detrás de la cintura y la otra detrás del cuello. Deje que el bastón toque la cabeza, la parte alta de la espalda y la rabadilla.
movement-hip-hinge-stick-how = Doble un poco las rodillas. Lleve la cadera hacia atrás e inclínese hacia delante. Mantenga el bastón pegado a la cabeza, la espalda y la rabadilla. Lleve la cadera hacia delante y enderécese.
movement-hip-hinge-stick-feel = Notará que trabajan los glúteos y la espalda. Notará que tira un poco detrás de los muslos.
movement-hip-hinge-stick-faults = Mantenga el bastón pegado todo el tiempo. Inclínese menos si se separa.

movement-kneeling-weight-shift-name = Cadera atrás y arriba, de rodillas
movement-kneeling-weight-shift-set-up = Ponga una almohada en el suelo. Ponga una silla firme delante. Arrodíllese con las dos rodillas y agárrese a la silla.
movement-kneeling-weight-shift-how = Lleve la cadera un poco hacia atrás, hacia los talones. Luego suba hasta que el cuerpo quede derecho. Deje las manos en la silla.
movement-kneeling-weight-shift-feel = Notará que tira un poco la parte delantera de las rodillas. Notará que trabajan los muslos y los glúteos al subir.
movement-kneeling-weight-shift-faults = Mantenga la espalda recta. Ponga el mismo peso en las dos rodillas.

movement-marching-name = Marchar sin avanzar
movement-marching-set-up = Póngase de pie, con el cuerpo derecho. Agárrese con las dos manos a una barandilla o a un mueble firme. Apoye el peso en la otra pierna.
movement-marching-how = Levante la rodilla hacia delante. Deje colgar la parte baja de la pierna. Baje el pie despacio.
movement-marching-feel = Notará que trabaja la parte delantera de la cadera. Notará que la pierna de apoyo le sostiene.
movement-marching-faults = Mantenga el cuerpo derecho, justo encima del pie de apoyo.

movement-marching-high-name = Marchar con la rodilla alta
movement-marching-high-set-up = Póngase de pie, con el cuerpo derecho. Agárrese con las dos manos a una barandilla o a un mueble firme. Apoye el peso en la otra pierna.
movement-marching-high-how = Levante la rodilla hacia delante, más arriba que la cadera. Deje colgar la parte baja de la pierna. Baje el pie despacio.
movement-marching-high-feel = Notará que trabaja la parte delantera de la cadera y del muslo.
movement-marching-high-faults = Mantenga el cuerpo derecho, sin echarse hacia atrás.

movement-marching-low-name = Marchar con la rodilla baja
movement-marching-low-set-up = Póngase de pie, con el cuerpo derecho. Agárrese con las dos manos a una barandilla o a un mueble firme. Apoye el peso en la otra pierna.
movement-marching-low-how = Levante la rodilla solo un poco hacia delante. Deje colgar la parte baja de la pierna. Baje el pie despacio.
movement-marching-low-feel = Notará que trabaja un poco la parte delantera de la cadera.
movement-marching-low-faults = Mantenga el cuerpo derecho, justo encima del pie de apoyo.

movement-mini-squat-name = Doblar un poco las rodillas, de pie
movement-mini-squat-set-up = Póngase de pie, con el cuerpo derecho y los pies debajo de las caderas. Agárrese con las dos manos a una barandilla o a un mueble firme.
movement-mini-squat-how = Doble un poco las rodillas, como para sentarse. Deje los talones en el suelo. Empuje hacia arriba hasta enderezarse del todo.
movement-mini-squat-feel = Notará que trabaja la parte delantera de los muslos.
movement-mini-squat-faults = Mantenga las rodillas apuntando hacia donde apuntan los pies.

movement-mini-squat-deeper-name = Doblar más las rodillas, de pie
movement-mini-squat-deeper-set-up = Póngase de pie, con el cuerpo derecho, frente a una barandilla o un mueble firme. Ponga los pies debajo de las caderas. Agárrese con las dos manos.
movement-mini-squat-deeper-how = Lleve la cadera hacia atrás. Doble bastante las rodillas, como para sentarse. Deje los talones en el suelo. Empuje hacia arriba hasta enderezarse del todo.
movement-mini-squat-deeper-feel = Notará que trabajan la parte delantera de los muslos y los glúteos.
movement-mini-squat-deeper-faults = Mantenga las rodillas apuntando hacia donde apuntan los pies. Ponga el mismo peso en los dos pies.

movement-one-leg-stance-name = Mantenerse sobre una pierna
movement-one-leg-stance-set-up = Póngase de pie, con el cuerpo derecho. Agárrese con las dos manos a una barandilla o a un mueble firme. Téngalo siempre a su alcance.
movement-one-leg-stance-how = Lleve el peso sobre el pie. Levante un poco del suelo el otro pie. No se mueva. Agárrese lo menos que pueda sin peligro. Quédese así hasta que acabe el tiempo.
movement-one-leg-stance-feel = Notará que el pie y el tobillo se mueven un poco para guardar el equilibrio. Notará que trabaja el lado de la cadera.
movement-one-leg-stance-faults = Mantenga el cuerpo derecho y las caderas a la misma altura. Mantenga la vista en algo que esté enfrente.

movement-semi-tandem-stance-name = Un pie un poco adelantado
movement-semi-tandem-stance-set-up = Póngase de pie, con el cuerpo derecho. Agárrese a una barandilla o a un mueble firme y téngalo a su alcance. Junte los pies y luego adelante el pie la mitad de su largo.
movement-semi-tandem-stance-how = No se mueva. Ponga el mismo peso en los dos pies. Agárrese lo menos que pueda sin peligro. Quédese así hasta que acabe el tiempo.
movement-semi-tandem-stance-feel = Notará que los pies y los tobillos se mueven un poco para guardar el equilibrio.
movement-semi-tandem-stance-faults = Mantenga el cuerpo derecho. Mantenga la vista en algo que esté enfrente.

movement-sit-to-stand-name = Levantarse de la silla
movement-sit-to-stand-set-up = Ponga una silla firme y alta contra la pared. Siéntese cerca del borde. Apoye bien los pies, un poco hacia atrás. Descanse las manos en los muslos.
movement-sit-to-stand-how = Inclínese un poco hacia delante. Empuje con los dos pies y levántese. Enderécese del todo. Doble las rodillas y siéntese despacio.
movement-sit-to-stand-feel = Notará que trabajan la parte delantera de los muslos y los glúteos.
movement-sit-to-stand-faults = Ponga el mismo peso en los dos pies.

movement-sit-to-stand-arms-name = Levantarse con ayuda de las manos
movement-sit-to-stand-arms-set-up = Ponga una silla firme y alta, con brazos, contra la pared. Siéntese cerca del borde. Apoye bien los pies, un poco hacia atrás. Ponga las manos en los brazos de la silla.
movement-sit-to-stand-arms-how = Inclínese un poco hacia delante. Empuje con las manos y con los dos pies. Enderécese del todo. Busque la silla con las manos y siéntese despacio.
movement-sit-to-stand-arms-feel = Notará que trabajan los muslos y los glúteos. Notará que los brazos ayudan.
movement-sit-to-stand-arms-faults = Ponga el mismo peso en los dos pies.

movement-sit-to-stand-low-name = Levantarse de una silla más baja
movement-sit-to-stand-low-set-up = Ponga una silla más baja y firme contra la pared. Siéntese cerca del borde, con las manos en los muslos. Apoye bien los pies, un poco hacia atrás.
movement-sit-to-stand-low-how = Inclínese un poco hacia delante. Empuje con los dos pies y levántese. Enderécese del todo. Doble las rodillas y siéntese despacio.
movement-sit-to-stand-low-feel = Notará que trabajan la parte delantera de los muslos y los glúteos.
movement-sit-to-stand-low-faults = Ponga el mismo peso en los dos pies. Baje siempre despacio.

movement-standing-abduction-name = Levantar la pierna hacia el lado, de pie
movement-standing-abduction-set-up = Póngase de pie, con el cuerpo derecho. Agárrese con las dos manos a una barandilla o a un mueble firme. Apoye el peso en la otra pierna.
movement-standing-abduction-how = Levante la pierna hacia afuera. Mantenga la rodilla estirada. Mantenga la postura. Bájela despacio.
movement-standing-abduction-feel = Notará que trabaja la parte de afuera de la cadera.
movement-standing-abduction-faults = Mantenga el cuerpo derecho. Mantenga los dedos del pie apuntando hacia delante.

movement-standing-abduction-band-name = Pierna hacia el lado con banda
movement-standing-abduction-band-set-up = Siéntese y pase la banda alrededor de los dos tobillos. Póngase de pie, con el cuerpo derecho, y agárrese con las dos manos a una barandilla o a un mueble firme. Apoye el peso en la otra pierna.
movement-standing-abduction-band-how = Levante la pierna hacia afuera, contra la banda. Mantenga la rodilla estirada. Mantenga la postura. Bájela despacio.
movement-standing-abduction-band-feel = Notará que trabaja la parte de afuera de la cadera.
movement-standing-abduction-band-faults = Mantenga el cuerpo derecho. Mantenga los dedos del pie apuntando hacia delante.

movement-standing-adduction-name = Cruzar la pierna por delante
movement-standing-adduction-set-up = Póngase de pie, con el cuerpo derecho, junto a una barandilla o un mueble firme. Agárrese con la otra mano. Apoye el peso en la otra pierna.
movement-standing-adduction-how = Levante apenas del suelo la punta del pie. Cruce la pierna por delante de la otra. Mantenga la rodilla estirada. Mantenga la postura. Vuelva con la pierna despacio.
movement-standing-adduction-feel = Notará que trabaja la parte de adentro del muslo.
movement-standing-adduction-faults = Mantenga el cuerpo derecho y las caderas mirando hacia delante.

movement-standing-extension-name = Pierna hacia atrás, de pie
movement-standing-extension-set-up = Póngase de pie, con el cuerpo derecho. Agárrese con las dos manos a una barandilla o a un mueble firme. Apoye el peso en la otra pierna.
movement-standing-extension-how = Lleve la pierna recta hacia atrás. Mantenga la rodilla estirada. Mantenga la postura. Vuelva despacio hasta quedar debajo del cuerpo.
movement-standing-extension-feel = Notará que trabaja el glúteo.
movement-standing-extension-faults = Mantenga el cuerpo derecho y la espalda quieta.

movement-standing-extension-band-name = Pierna hacia atrás con banda
movement-standing-extension-band-set-up = Siéntese y pase la banda alrededor de los dos tobillos. Póngase de pie, con el cuerpo derecho, y agárrese con las dos manos a una barandilla o a un mueble firme. Apoye el peso en la otra pierna.
movement-standing-extension-band-how = Lleve la pierna recta hacia atrás, contra la banda. Mantenga la rodilla estirada. Mantenga la postura. Vuelva despacio hasta quedar debajo del cuerpo.
movement-standing-extension-band-feel = Notará que trabaja el glúteo.
movement-standing-extension-band-faults = Mantenga el cuerpo derecho y la espalda quieta.

movement-standing-knee-curl-name = Talón hacia atrás, de pie
movement-standing-knee-curl-set-up = Póngase de pie, con el cuerpo derecho. Agárrese con las dos manos a una barandilla o a un mueble firme. Apoye el peso en la otra pierna.
movement-standing-knee-curl-how = Doble la rodilla y levante el talón hacia atrás. Mantenga el muslo apuntando al suelo. Mantenga la postura. Baje el pie despacio.
movement-standing-knee-curl-feel = Notará que trabaja la parte de atrás del muslo.
movement-standing-knee-curl-faults = Mantenga la cadera recta y las rodillas una al lado de la otra.

movement-standing-knee-curl-cuff-name = Talón hacia atrás con peso
movement-standing-knee-curl-cuff-set-up = Siéntese y sujete el peso justo por encima del tobillo. Póngase de pie, con el cuerpo derecho, y agárrese con las dos manos a una barandilla o a un mueble firme. Apoye el peso del cuerpo en la otra pierna.
movement-standing-knee-curl-cuff-how = Doble la rodilla y levante el talón hacia atrás. Mantenga el muslo apuntando al suelo. Mantenga la postura. Baje el pie despacio.
movement-standing-knee-curl-cuff-feel = Notará que trabaja la parte de atrás del muslo.
movement-standing-knee-curl-cuff-faults = Mantenga la cadera recta y las rodillas una al lado de la otra. Baje tan despacio como sube.

movement-standing-straight-hip-flexion-name = Pierna recta hacia delante, de pie
movement-standing-straight-hip-flexion-set-up = Póngase de pie, con el cuerpo derecho. Agárrese con las dos manos a una barandilla o a un mueble firme. Apoye el peso en la otra pierna.
movement-standing-straight-hip-flexion-how = Levante la pierna recta hacia delante. Mantenga la rodilla estirada. Mantenga la postura. Bájela despacio.
movement-standing-straight-hip-flexion-feel = Notará que trabaja la parte delantera de la cadera y del muslo.
movement-standing-straight-hip-flexion-faults = Mantenga el cuerpo derecho, sin echarse hacia atrás.

movement-step-up-name = Subir un escalón
movement-step-up-set-up = Póngase de pie frente a un escalón bajo y firme. Agárrese a la barandilla. Ponga el pie entero en el escalón.
movement-step-up-how = Empuje con el pie que está en el escalón. Suba y enderécese del todo. Suba el otro pie a su lado. Baje despacio, primero con el otro pie.
movement-step-up-feel = Notará que trabajan la parte delantera del muslo y el glúteo, en la pierna que está en el escalón.
movement-step-up-faults = Deje que trabaje la pierna que está en el escalón.

movement-step-up-high-name = Subir un escalón más alto
movement-step-up-high-set-up = Póngase de pie frente a un escalón más alto y firme. Agárrese a la barandilla. Ponga el pie entero en el escalón.
movement-step-up-high-how = Empuje con el pie que está en el escalón. Suba y enderécese del todo. Suba el otro pie a su lado. Baje despacio, primero con el otro pie.
movement-step-up-high-feel = Notará que trabajan la parte delantera del muslo y el glúteo, en la pierna que está en el escalón.
movement-step-up-high-faults = Deje que trabaje la pierna que está en el escalón. Mantenga la rodilla en línea con los dedos del pie.

movement-step-up-low-name = Subir un escalón bajo
movement-step-up-low-set-up = Póngase de pie frente al escalón firme más bajo que tenga. Agárrese a la barandilla. Ponga el pie entero en el escalón.
movement-step-up-low-how = Empuje con el pie que está en el escalón. Suba y enderécese del todo. Suba el otro pie a su lado. Baje despacio, primero con el otro pie.
movement-step-up-low-feel = Notará que trabaja la parte delantera del muslo, en la pierna que está en el escalón.
movement-step-up-low-faults = Deje que trabaje la pierna que está en el escalón.

movement-tandem-stance-name = Un pie delante del otro
movement-tandem-stance-set-up = Póngase de pie, con el cuerpo derecho, junto a una barandilla o un mueble firme. Agárrese. Ponga el pie justo delante del otro, el talón junto a los dedos.
movement-tandem-stance-how = No se mueva. Ponga el mismo peso en los dos pies. Agárrese lo menos que pueda sin peligro. Quédese así hasta que acabe el tiempo.
movement-tandem-stance-feel = Notará que los pies y los tobillos se mueven un poco para guardar el equilibrio.
movement-tandem-stance-faults = Mantenga la vista en algo que esté enfrente.

movement-walking-name = Caminar
movement-walking-set-up = Póngase zapatos firmes. Tome su bastón, sus muletas o su andador, si se los dieron.
movement-walking-how = Camine por terreno llano, a paso cómodo. Dé pasos cortos e iguales. Apoye primero el talón. Dé la vuelta antes de cansarse.
movement-walking-feel = Notará que trabajan las piernas y que respira un poco más rápido. Puede seguir hablando mientras camina.
movement-walking-faults = Guarde fuerzas para el camino de vuelta.

### What patients read and hear about each movement of who lies. The side, the count and the length of a hold are
### said by the program, so they are not said here. Five messages for each movement, by its id: what it is
### called, how to get ready, how to do it, what one feels, and what to keep to.

movement-abdominal-brace-name = Poner firme el vientre
movement-abdominal-brace-set-up = Acuéstese boca arriba. Doble las rodillas y apoye bien los pies en la cama. Descanse las manos en la parte baja del vientre.
movement-abdominal-brace-how = Apriete con suavidad la parte baja del vientre. Deje la espalda quieta. Mantenga la fuerza y siga respirando. Suelte despacio.
movement-abdominal-brace-feel = Notará que la parte baja del vientre se pone firme debajo de las manos.
movement-abdominal-brace-faults = Siga respirando como siempre. Apriete siempre con suavidad.

movement-abdominal-brace-marching-name = Vientre firme y pie arriba
movement-abdominal-brace-marching-set-up = Acuéstese boca arriba. Doble las rodillas y apoye bien los pies en la cama. Descanse las manos en la parte baja del vientre.
movement-abdominal-brace-marching-how = Apriete con suavidad la parte baja del vientre. Manténgalo firme y siga respirando. Levante un pie un poco de la cama. Bájelo despacio. Afloje el vientre.
movement-abdominal-brace-marching-feel = Notará que la parte baja del vientre sigue firme. Notará que trabaja un poco la parte delantera de la cadera.
movement-abdominal-brace-marching-faults = Mantenga la espalda y la cadera quietas mientras mueve el pie.

movement-abduction-slide-name = Deslizar la pierna hacia el lado
movement-abduction-slide-set-up = Acuéstese boca arriba, sin levantar el respaldo, con las dos piernas estiradas. Apunte los dedos del pie al techo.
movement-abduction-slide-how = Deslice la pierna hacia afuera. Mantenga el talón en la cama. Pare cuando la note tirante. Vuelva despacio, sin pasar del centro.
movement-abduction-slide-feel = Notará que trabaja la parte de afuera de la cadera. Notará que tira un poco la parte de adentro del muslo.
movement-abduction-slide-faults = Mantenga los dedos del pie apuntando al techo.

movement-ankle-pump-name = Pie arriba y abajo
movement-ankle-pump-set-up = Acuéstese boca arriba. Deje la pierna estirada y en reposo sobre la cama.
movement-ankle-pump-how = Lleve la punta del pie hacia abajo. Luego suba la punta del pie hacia usted. Deje la pierna en reposo sobre la cama.
movement-ankle-pump-feel = Notará que trabaja la parte de atrás de la pierna y luego la de delante, debajo de la rodilla.
movement-ankle-pump-faults = Hágalo despacio. Complete el movimiento cada vez.

movement-ankle-pump-band-name = Empujar una banda con el pie
movement-ankle-pump-band-set-up = Acuéstese boca arriba, con la pierna estirada. Pase la banda por la planta del pie, debajo de los dedos. Sujete un extremo con cada mano.
movement-ankle-pump-band-how = Empuje con el pie hacia abajo, contra la banda. Deje que la banda traiga el pie despacio. Deje la pierna en reposo sobre la cama.
movement-ankle-pump-band-feel = Notará que trabaja la pantorrilla, en la parte de atrás de la pierna.
movement-ankle-pump-band-faults = Vuelva tan despacio como empuja.

movement-bridge-name = Levantar la cadera
movement-bridge-set-up = Acuéstese boca arriba. Doble las rodillas y apoye bien los pies en la cama.
movement-bridge-how = Apriete los glúteos. Empuje con los pies y levante la cadera. Pare cuando hombros, caderas y rodillas formen una línea. Mantenga la postura. Baje la cadera despacio.
movement-bridge-feel = Notará que trabajan los glúteos y la parte de atrás de los muslos.
movement-bridge-faults = Mantenga la espalda recta. Deje que los glúteos hagan el trabajo.

movement-bridge-one-leg-name = Levantar la cadera con un pie
movement-bridge-one-leg-set-up = Acuéstese boca arriba. Doble las rodillas y apoye bien los pies en la cama. Levante un poco el otro pie, con la rodilla doblada.
movement-bridge-one-leg-how = Apriete los glúteos. Empuje con el pie que está en la cama. Levante la cadera hasta que el cuerpo quede recto. Mantenga la postura. Baje la cadera despacio.
movement-bridge-one-leg-feel = Notará que trabajan el glúteo y la parte de atrás del muslo que empuja.
movement-bridge-one-leg-faults = Mantenga los dos lados de la cadera a la misma altura. Deje que el glúteo haga el trabajo.

movement-clam-name = Levantar la rodilla, de lado
movement-clam-set-up = Acuéstese de lado. La pierna con la que hace el ejercicio queda arriba. Doble las caderas y las rodillas. Ponga los pies en línea con la espalda, uno sobre otro. Ponga una almohada entre las rodillas.
movement-clam-how = Mantenga los pies juntos. Levante la rodilla de arriba. Mantenga la postura. Bájela despacio hasta la almohada.
movement-clam-feel = Notará que trabajan el glúteo y la parte de afuera de la cadera de arriba.
movement-clam-faults = Mantenga las caderas quietas, una encima de la otra.

movement-clam-band-name = Levantar la rodilla con banda
movement-clam-band-set-up = Ponga la banda alrededor de los dos muslos, justo por encima de las rodillas. Acuéstese de lado. La pierna con la que hace el ejercicio queda arriba. Doble las caderas y las rodillas. Ponga una almohada entre las rodillas.
movement-clam-band-how = Mantenga los pies juntos, en línea con la espalda. Levante la rodilla de arriba contra la banda. Mantenga la postura. Bájela despacio hasta la almohada.
movement-clam-band-feel = Notará que trabajan el glúteo y la parte de afuera de la cadera de arriba.
movement-clam-band-faults = Mantenga las caderas quietas, una encima de la otra. Baje siempre despacio.

movement-double-knee-to-chest-name = Las dos rodillas al pecho
movement-double-knee-to-chest-set-up = Acuéstese boca arriba, sin levantar el respaldo. Doble las rodillas y apoye bien los pies en la cama.
movement-double-knee-to-chest-how = Sujete un muslo por detrás y suba esa rodilla. Luego suba la otra rodilla de la misma manera. Acerque las dos rodillas al pecho con suavidad. Pare cuando note que tira. Mantenga la postura. Baje primero un pie a la cama y luego el otro.
movement-double-knee-to-chest-feel = Notará que tiran un poco los glúteos y la parte baja de la espalda. Los brazos son los que acercan las rodillas.
movement-double-knee-to-chest-faults = Tire siempre con suavidad. Mantenga la cabeza apoyada en la cama.

movement-glute-set-name = Apretar los glúteos
movement-glute-set-set-up = Acuéstese boca arriba, sin levantar el respaldo, con las dos piernas estiradas.
movement-glute-set-how = Apriete los dos glúteos. Mantenga la fuerza. Deje las piernas quietas. Suelte despacio.
movement-glute-set-feel = Notará que los dos glúteos se ponen firmes.
movement-glute-set-faults = Siga respirando mientras aprieta.

movement-heel-prop-name = Estirar la rodilla con el talón en alto
movement-heel-prop-set-up = Acuéstese boca arriba, sin levantar el respaldo. Apoye el talón sobre una toalla enrollada. Deje libre el espacio debajo de la rodilla.
movement-heel-prop-how = Deje la pierna floja. Deje que la rodilla baje hacia la cama. Quédese así hasta que acabe el tiempo.
movement-heel-prop-feel = Notará que tira un poco detrás de la rodilla.
movement-heel-prop-faults = Mantenga la rótula y los dedos del pie apuntando al techo.

movement-heel-slide-name = Deslizar el talón
movement-heel-slide-set-up = Acuéstese boca arriba, sin levantar el respaldo, con las dos piernas estiradas. Póngase un calcetín para que el talón se deslice bien.
movement-heel-slide-how = Deslice el talón hacia el glúteo. Deje que la rodilla se doble hacia arriba. Pare cuando la note tirante. Deslice el talón hasta estirar la pierna.
movement-heel-slide-feel = Notará que tira un poco la parte delantera de la rodilla. Notará que trabaja un poco la parte de atrás del muslo.
movement-heel-slide-faults = Mantenga la rodilla en línea con la cadera y el pie.

movement-heel-slide-strap-name = Deslizar el talón con una correa
movement-heel-slide-strap-set-up = Acuéstese boca arriba, sin levantar el respaldo, con las dos piernas estiradas. Pase la correa alrededor del pie. Sujete un extremo con cada mano.
movement-heel-slide-strap-how = Tire de la correa con suavidad. Deje que el talón se deslice hacia el glúteo. Pare cuando note la rodilla tirante. Afloje la correa despacio hasta estirar la pierna.
movement-heel-slide-strap-feel = Notará que tira un poco la parte delantera de la rodilla. Los brazos son los que tiran de la correa.
movement-heel-slide-strap-faults = Mantenga la rodilla en línea con la cadera y el pie. Tire siempre con suavidad.

movement-hip-abduction-press-name = Empujar una correa con las rodillas
movement-hip-abduction-press-set-up = Sujete la correa alrededor de los dos muslos, justo por encima de las rodillas. Acuéstese boca arriba. Doble las rodillas y apoye bien los pies en la cama.
movement-hip-abduction-press-how = Empuje las dos rodillas hacia afuera, contra la correa. La correa no las deja moverse. Mantenga la fuerza. Suelte despacio.
movement-hip-abduction-press-feel = Notará que trabaja la parte de afuera de las dos caderas.
movement-hip-abduction-press-faults = Siga respirando mientras empuja. Empuje igual con las dos rodillas.

movement-knee-rolls-name = Rodillas de lado a lado
movement-knee-rolls-set-up = Acuéstese boca arriba. Doble las rodillas y apoye bien los pies en la cama. Mantenga las rodillas juntas.
movement-knee-rolls-how = Deje caer las dos rodillas despacio hacia un lado. Pare cuando note que tira. Vuelva con ellas al centro. Luego llévelas hacia el otro lado.
movement-knee-rolls-feel = Notará que tiran un poco la parte baja de la espalda y el lado de la cadera.
movement-knee-rolls-faults = Mantenga los dos hombros en la cama.

movement-passive-straight-leg-raise-name = Pierna recta arriba, con ayuda
movement-passive-straight-leg-raise-set-up = Acuéstese boca arriba, sin levantar el respaldo, con las dos piernas estiradas. Quien le ayuda se pone de pie junto a la cama. Le pone una mano debajo del talón y la otra debajo de la rodilla.
movement-passive-straight-leg-raise-how = Deje la pierna floja y pesada. Quien le ayuda la levanta despacio, con la rodilla estirada. Avise cuando la note tirante, para que pare. Quien le ayuda la baja despacio hasta la cama.
movement-passive-straight-leg-raise-feel = Notará que tira un poco detrás del muslo. La pierna no hace fuerza.
movement-passive-straight-leg-raise-faults = Mantenga la pierna pesada. Deje que quien le ayuda haga todo el trabajo.

movement-pelvic-tilt-name = Aplanar la espalda
movement-pelvic-tilt-set-up = Acuéstese boca arriba. Doble las rodillas y apoye bien los pies en la cama.
movement-pelvic-tilt-how = Apriete la parte baja del vientre. Presione la cintura contra la cama. Mantenga la postura. Suelte despacio.
movement-pelvic-tilt-feel = Notará que trabaja la parte baja del vientre. Notará que la cintura presiona contra la cama.
movement-pelvic-tilt-faults = Siga respirando mientras mantiene la postura.

movement-press-up-on-elbows-name = Levantar el pecho sobre los antebrazos
movement-press-up-on-elbows-set-up = Acuéstese boca abajo en la cama. Doble los codos y apoye los antebrazos a los lados de la cabeza.
movement-press-up-on-elbows-how = Levante el pecho y apóyese en los antebrazos. Ponga los codos debajo de los hombros. Deje la cadera en la cama. Deje la espalda floja. Baje el pecho despacio.
movement-press-up-on-elbows-feel = Notará que los brazos le sostienen. Notará que tiran un poco el vientre y la parte baja de la espalda.
movement-press-up-on-elbows-faults = Mantenga los hombros bajos, lejos de las orejas.

movement-prone-knee-bend-name = Doblar la rodilla, boca abajo
movement-prone-knee-bend-set-up = Acuéstese boca abajo en la cama, con las dos piernas estiradas.
movement-prone-knee-bend-how = Doble la rodilla. Lleve el talón hacia el glúteo. Pare cuando la note tirante. Baje el pie despacio hasta la cama.
movement-prone-knee-bend-feel = Notará que trabaja la parte de atrás del muslo. Notará que tira un poco la parte delantera.
movement-prone-knee-bend-faults = Mantenga la cadera en la cama. Mantenga las rodillas una al lado de la otra.

movement-prone-press-up-name = Levantar el pecho, boca abajo
movement-prone-press-up-set-up = Acuéstese boca abajo en la cama. Apoye las manos al lado de los hombros.
movement-prone-press-up-how = Empuje con los brazos y levante el pecho. Deje la cadera en la cama. Deje la espalda floja. Baje el pecho despacio.
movement-prone-press-up-feel = Notará que los brazos hacen el trabajo. Notará que tiran un poco el vientre y la parte baja de la espalda.
movement-prone-press-up-faults = Mantenga los hombros bajos, lejos de las orejas.

movement-quad-set-name = Apretar el muslo
movement-quad-set-set-up = Acuéstese boca arriba, sin levantar el respaldo. Mantenga la pierna estirada y los dedos del pie apuntando al techo.
movement-quad-set-how = Apriete la parte delantera del muslo. Presione la parte de atrás de la rodilla contra la cama. Mantenga la fuerza. Suelte despacio.
movement-quad-set-feel = Notará que trabaja la parte delantera del muslo, justo por encima de la rodilla.
movement-quad-set-faults = Siga respirando mientras mantiene la fuerza.

movement-quad-set-towel-name = Apretar el muslo sobre una toalla
movement-quad-set-towel-set-up = Acuéstese boca arriba, sin levantar el respaldo, con la pierna estirada. Ponga una toalla enrollada debajo de la rodilla. Apunte los dedos del pie al techo.
movement-quad-set-towel-how = Apriete la parte delantera del muslo. Presione la parte de atrás de la rodilla contra la toalla. Mantenga la fuerza. Suelte despacio.
movement-quad-set-towel-feel = Notará que trabaja la parte delantera del muslo, justo por encima de la rodilla.
movement-quad-set-towel-faults = Siga respirando mientras mantiene la fuerza. Mantenga la rótula apuntando al techo.

movement-short-arc-quad-name = Estirar la rodilla sobre un rollo
movement-short-arc-quad-set-up = Acuéstese boca arriba, sin levantar el respaldo. Ponga el rollo debajo de la rodilla. Deje el talón apoyado en la cama.
movement-short-arc-quad-how = Levante el talón hasta estirar la rodilla. Mantenga la postura. Baje el talón despacio hasta la cama.
movement-short-arc-quad-feel = Notará que trabaja la parte delantera del muslo, justo por encima de la rodilla.
movement-short-arc-quad-faults = Mantenga la parte de atrás del muslo sobre el rollo.

movement-short-arc-quad-cuff-name = Rodilla sobre un rollo, con peso
movement-short-arc-quad-cuff-set-up = Sujete el peso justo por encima del tobillo. Acuéstese boca arriba, sin levantar el respaldo, con el rollo debajo de la rodilla. Deje el talón apoyado en la cama.
movement-short-arc-quad-cuff-how = Levante el talón hasta estirar la rodilla. Mantenga la postura. Baje el talón despacio hasta la cama.
movement-short-arc-quad-cuff-feel = Notará que la parte delantera del muslo trabaja contra el peso, justo por encima de la rodilla.
movement-short-arc-quad-cuff-faults = Mantenga la parte de atrás del muslo sobre el rollo. Baje siempre despacio.

movement-side-lying-abduction-name = Levantar la pierna hacia el lado, en la cama
movement-side-lying-abduction-set-up = Acuéstese de lado. La pierna con la que hace el ejercicio queda arriba. Doble un poco la pierna de abajo. Ponga una almohada entre las piernas.
movement-side-lying-abduction-how = Levante la pierna de arriba, bien recta. Mantenga la rodilla estirada. Mantenga la postura. Bájela despacio hasta la almohada.
movement-side-lying-abduction-feel = Notará que trabaja la parte de afuera de la cadera de arriba.
movement-side-lying-abduction-faults = Mantenga una cadera justo encima de la otra. Mantenga los dedos del pie apuntando hacia delante.

movement-side-lying-abduction-cuff-name = Pierna arriba, de lado, con peso
movement-side-lying-abduction-cuff-set-up = Sujete el peso justo por encima del tobillo. Acuéstese de lado. La pierna del peso queda arriba. Doble un poco la pierna de abajo. Ponga una almohada entre las piernas.
movement-side-lying-abduction-cuff-how = Levante la pierna de arriba, bien recta. Mantenga la rodilla estirada. Mantenga la postura. Bájela despacio hasta la almohada.
movement-side-lying-abduction-cuff-feel = Notará que la parte de afuera de la cadera de arriba trabaja contra el peso.
movement-side-lying-abduction-cuff-faults = Mantenga una cadera justo encima de la otra. Mantenga los dedos del pie apuntando hacia delante.

movement-single-knee-to-chest-name = Una rodilla al pecho
movement-single-knee-to-chest-set-up = Acuéstese boca arriba, sin levantar el respaldo, con las dos piernas estiradas.
movement-single-knee-to-chest-how = Deslice el talón hacia el glúteo. Sujete el muslo por detrás con las dos manos. Acerque la rodilla al pecho con suavidad. Mantenga la postura. Baje la pierna despacio.
movement-single-knee-to-chest-feel = Notará que tiran un poco el glúteo y la parte baja de la espalda. Los brazos son los que acercan la rodilla.
movement-single-knee-to-chest-faults = Tire siempre con suavidad. Mantenga la otra pierna estirada en la cama.

movement-straight-leg-raise-name = Levantar la pierna recta
movement-straight-leg-raise-set-up = Acuéstese boca arriba, sin levantar el respaldo, con las dos piernas estiradas.
movement-straight-leg-raise-how = Primero apriete la parte delantera del muslo. Levante la pierna con la rodilla estirada. Mantenga la postura. Baje la pierna despacio hasta la cama.
movement-straight-leg-raise-feel = Notará que trabaja la parte delantera del muslo y de la cadera.
movement-straight-leg-raise-faults = Mantenga la rodilla estirada de principio a fin.

movement-straight-leg-raise-cuff-name = Levantar la pierna recta con peso
movement-straight-leg-raise-cuff-set-up = Sujete el peso justo por encima del tobillo. Acuéstese boca arriba, sin levantar el respaldo, con las dos piernas estiradas.
movement-straight-leg-raise-cuff-how = Primero apriete la parte delantera del muslo. Levante la pierna con la rodilla estirada. Mantenga la postura. Baje la pierna despacio hasta la cama.
movement-straight-leg-raise-cuff-feel = Notará que la parte delantera del muslo y de la cadera trabaja contra el peso.
movement-straight-leg-raise-cuff-faults = Mantenga la rodilla estirada de principio a fin.

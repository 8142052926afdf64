### What patients read and hear about each movement of who sits. The side, the count and the length of a hold are
### said by the program, so they are not said here. Five messages for each movement, by its id: what it is
### called, how to get ready, how to do it, what one feels, and what to keep to.

movement-calf-raise-seated-name = Levantar los talones, con silla
movement-calf-raise-seated-set-up = Siéntese con la espalda recta en una silla firme. Apoye bien los pies debajo de las rodillas.
movement-calf-raise-seated-how = Levante los dos talones. Deje los dedos de los pies en el suelo. Mantenga la postura. Baje los talones despacio.
movement-calf-raise-seated-feel = Notará que trabajan las pantorrillas, en la parte de atrás de las piernas.
movement-calf-raise-seated-faults = Mantenga el peso sobre los dedos gordos. Reparta el trabajo entre los dos pies.

movement-long-arc-quad-name = Estirar la rodilla, con silla
movement-long-arc-quad-set-up = Siéntese bien atrás en una silla firme. Apoye bien los pies en el suelo.
movement-long-arc-quad-how = Levante el pie hasta estirar la rodilla. Mantenga la postura. Baje el pie despacio hasta el suelo.
movement-long-arc-quad-feel = Notará que trabaja la parte delantera del muslo.
movement-long-arc-quad-faults = Mantenga la espalda recta contra el respaldo.

movement-long-arc-quad-band-name = Estirar la rodilla con banda, con silla
movement-long-arc-quad-band-set-up = Ate la banda a una pata trasera de una silla firme. Pásela alrededor del tobillo. Siéntese bien atrás, con los pies bien apoyados en el suelo.
movement-long-arc-quad-band-how = Levante el pie contra la banda hasta estirar la rodilla. Mantenga la postura. Baje el pie despacio hasta el suelo.
movement-long-arc-quad-band-feel = Notará que la parte delantera del muslo trabaja contra la banda.
movement-long-arc-quad-band-faults = Mantenga la espalda recta contra el respaldo. Baje tan despacio como sube.

movement-long-arc-quad-cuff-name = Estirar la rodilla contra un peso
movement-long-arc-quad-cuff-set-up = Sujete el peso justo por encima del tobillo. Siéntese bien atrás en una silla firme. Apoye bien los pies en el suelo.
movement-long-arc-quad-cuff-how = Levante el pie hasta estirar la rodilla. Mantenga la postura. Baje el pie despacio hasta el suelo.
movement-long-arc-quad-cuff-feel = Notará que la parte delantera del muslo trabaja contra el peso.
movement-long-arc-quad-cuff-faults = Mantenga la espalda recta contra el respaldo. Baje tan despacio como sube.

movement-long-arc-quad-partial-name = Estirar a medias la rodilla
movement-long-arc-quad-partial-set-up = Siéntese bien atrás en una silla firme. Apoye bien los pies en el suelo.
movement-long-arc-quad-partial-how = Levante el pie más o menos hasta la mitad. Mantenga la postura. Baje el pie despacio hasta el suelo.
movement-long-arc-quad-partial-feel = Notará que trabaja un poco la parte delantera del muslo.
movement-long-arc-quad-partial-faults = Mantenga la espalda recta contra el respaldo. Mantenga el muslo en el asiento.

movement-seated-arch-name = Redondear y arquear la espalda
movement-seated-arch-set-up = Siéntese en una silla firme, sin apoyar la espalda. Apoye bien los pies debajo de las rodillas. Descanse las manos en los muslos.
movement-seated-arch-how = Redondee la espalda despacio y mire hacia abajo. Luego enderécese del todo. Arquee un poco la espalda. Pare cuando note que tira.
movement-seated-arch-feel = Notará que la espalda tira un poco al redondearla. Notará que trabaja un poco al arquearla.
movement-seated-arch-faults = Mantenga los dos glúteos en el asiento. Haga un movimiento lento y pequeño.

movement-seated-heel-press-name = Empujar con el talón, con silla
movement-seated-heel-press-set-up = Siéntese bien atrás en una silla firme. Apoye bien los pies en el suelo.
movement-seated-heel-press-how = Empuje el talón contra el suelo, hacia abajo y hacia atrás. Deje el pie en su sitio. Mantenga la fuerza. Suelte despacio.
movement-seated-heel-press-feel = Notará que trabaja la parte de atrás del muslo.
movement-seated-heel-press-faults = Siga respirando mientras empuja. Mantenga el cuerpo derecho.

movement-seated-knee-bend-name = Deslizar el pie hacia atrás, con silla
movement-seated-knee-bend-set-up = Siéntese en una silla firme. Apoye bien el pie en el suelo, un poco adelantado.
movement-seated-knee-bend-how = Deslice el pie hacia atrás, debajo de la silla. Pare cuando note la rodilla tirante. Mantenga la postura. Deslice el pie otra vez hacia delante.
movement-seated-knee-bend-feel = Notará que tira un poco la parte delantera de la rodilla y del muslo.
movement-seated-knee-bend-faults = Mantenga los dos glúteos en el asiento.

movement-seated-knee-bend-assisted-name = Deslizar el pie hacia atrás con ayuda, con silla
movement-seated-knee-bend-assisted-set-up = Siéntese en una silla firme. Apoye bien el pie en el suelo, un poco adelantado. Cruce el otro tobillo por delante.
movement-seated-knee-bend-assisted-how = Deslice el pie hacia atrás, debajo de la silla. Empújelo con suavidad con el otro pie. Pare cuando note la rodilla tirante. Mantenga la postura. Deslice los dos pies otra vez hacia delante.
movement-seated-knee-bend-assisted-feel = Notará que tira un poco la parte delantera de la rodilla y del muslo. La otra pierna es la que empuja.
movement-seated-knee-bend-assisted-faults = Mantenga los dos glúteos en el asiento. Empuje siempre con suavidad.

movement-seated-knee-spread-name = Rodilla hacia el lado, con silla
movement-seated-knee-spread-set-up = Siéntese con la espalda recta en una silla firme. Apoye bien los pies debajo de las rodillas.
movement-seated-knee-spread-how = Lleve la rodilla hacia afuera. Deje que el pie se deslice con ella. Vuelva con los dos, sin pasar del centro.
movement-seated-knee-spread-feel = Notará que trabaja la parte de afuera de la cadera.
movement-seated-knee-spread-faults = Mantenga el cuerpo derecho, con el mismo peso en los dos glúteos.

movement-seated-march-name = Marchar, con silla
movement-seated-march-set-up = Siéntese con la espalda recta en una silla firme. Apoye bien los pies debajo de las rodillas.
movement-seated-march-how = Levante un poco la rodilla. Mantenga el pie debajo de la rodilla. Baje el pie despacio hasta el suelo.
movement-seated-march-feel = Notará que trabaja la parte delantera de la cadera y del muslo.
movement-seated-march-faults = Mantenga el cuerpo derecho, sin echarse hacia atrás.

movement-seated-march-cuff-name = Marchar con peso, con silla
movement-seated-march-cuff-set-up = Sujete el peso justo por encima del tobillo. Siéntese con la espalda recta en una silla firme. Apoye bien los pies debajo de las rodillas.
movement-seated-march-cuff-how = Levante un poco la rodilla. Mantenga el pie debajo de la rodilla. Baje el pie despacio hasta el suelo.
movement-seated-march-cuff-feel = Notará que la parte delantera de la cadera y del muslo trabaja contra el peso.
movement-seated-march-cuff-faults = Mantenga el cuerpo derecho, sin echarse hacia atrás.

movement-seated-march-low-name = Marchar, con asiento bajo
movement-seated-march-low-set-up = Siéntese con la espalda recta en un asiento bajo y firme. Apoye bien los pies debajo de las rodillas.
movement-seated-march-low-how = Levante un poco la rodilla. Mantenga el pie debajo de la rodilla. Baje el pie despacio hasta el suelo.
movement-seated-march-low-feel = Notará que trabaja la parte delantera de la cadera y del muslo.
movement-seated-march-low-faults = Mantenga el cuerpo derecho, sin echarse hacia atrás.

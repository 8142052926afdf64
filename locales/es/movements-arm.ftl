### What patients read and hear about each movement of the arm and the shoulder. The side, the count and the length of a hold are
### said by the program, so they are not said here. Five messages for each movement, by its id: what it is
### called, how to get ready, how to do it, what one feels, and what to keep to.

movement-elbow-bend-name = Doblar y estirar el codo
movement-elbow-bend-set-up = Siéntese con la espalda recta en una silla firme. Deje colgar el brazo al lado del cuerpo, con la palma hacia delante. Descanse la otra mano en el muslo.
movement-elbow-bend-how = Doble el codo y lleve la mano hacia el hombro. Baje la mano despacio. Estire el codo del todo.
movement-elbow-bend-feel = Notará que trabaja la parte delantera del brazo, por encima del codo.
movement-elbow-bend-faults = Mantenga quieta la parte alta del brazo, pegada al cuerpo.

movement-isometric-rotation-name = Empujar con la mano hacia afuera
movement-isometric-rotation-set-up = Póngase de pie, con el cuerpo derecho y el brazo junto a una pared. Doble el codo pegado al cuerpo, con una toalla doblada debajo del brazo. Apoye el dorso de la mano en la pared.
movement-isometric-rotation-how = Empuje con suavidad la pared con el dorso de la mano. Mantenga el brazo quieto. Mantenga la fuerza. Suelte despacio.
movement-isometric-rotation-feel = Notará que trabaja con suavidad la parte de atrás del hombro.
movement-isometric-rotation-faults = Mantenga la toalla en su sitio, debajo del brazo. Empuje siempre con suavidad.

movement-isometric-rotation-inward-name = Empujar con la mano hacia adentro
movement-isometric-rotation-inward-set-up = Póngase de pie, con el cuerpo derecho, cerca del marco de una puerta. Doble el codo pegado al cuerpo, con una toalla doblada debajo del brazo. Apoye la palma en el marco.
movement-isometric-rotation-inward-how = Empuje el marco con la palma hacia adentro, con suavidad. Mantenga el brazo quieto. Mantenga la fuerza. Suelte despacio.
movement-isometric-rotation-inward-feel = Notará que trabaja con suavidad la parte delantera del hombro.
movement-isometric-rotation-inward-faults = Mantenga la toalla en su sitio, debajo del brazo. Empuje siempre con suavidad.

movement-pendulum-name = Balancear el brazo suelto
movement-pendulum-set-up = Póngase de pie junto a una mesa firme. Inclínese hacia delante y apoye en ella la otra mano. Deje colgar el brazo, suelto.
movement-pendulum-how = Balancee el cuerpo con suavidad hacia delante y hacia atrás. Deje que el brazo se balancee solo. Espere a que se pare antes de enderezarse.
movement-pendulum-feel = Notará que el brazo cuelga suelto y pesado. El hombro descansa mientras el cuerpo se balancea.
movement-pendulum-faults = Mantenga el brazo suelto. Deje que el cuerpo lo mueva.

movement-pendulum-sideways-name = Balancear el brazo hacia los lados
movement-pendulum-sideways-set-up = Póngase de pie junto a una mesa firme. Inclínese hacia delante y apoye en ella la otra mano. Deje colgar el brazo, suelto.
movement-pendulum-sideways-how = Balancee el cuerpo con suavidad de lado a lado. Deje que el brazo se balancee solo. Espere a que se pare antes de enderezarse.
movement-pendulum-sideways-feel = Notará que el brazo cuelga suelto y pesado. El hombro descansa mientras el cuerpo se balancea.
movement-pendulum-sideways-faults = Mantenga el brazo suelto. Deje que el cuerpo lo mueva.

movement-shoulder-blade-squeeze-name = Juntar los omóplatos
movement-shoulder-blade-squeeze-set-up = Siéntese con la espalda recta en una silla firme, sin apoyarse en el respaldo. Doble los codos y déjelos pegados al cuerpo.
movement-shoulder-blade-squeeze-how = Lleve los omóplatos hacia atrás y júntelos. Deje que los codos vayan hacia atrás con ellos. Mantenga la fuerza. Suelte despacio.
movement-shoulder-blade-squeeze-feel = Notará que trabajan los músculos entre los omóplatos.
movement-shoulder-blade-squeeze-faults = Mantenga los hombros bajos, lejos de las orejas. Siga respirando mientras mantiene la fuerza.

movement-shoulder-blade-squeeze-band-name = Separar una banda, con silla
movement-shoulder-blade-squeeze-band-set-up = Siéntese con la espalda recta en una silla firme, sin apoyarse en el respaldo. Doble los codos y déjelos pegados al cuerpo. Sujete la banda delante de usted con las dos manos.
movement-shoulder-blade-squeeze-band-how = Estire la banda separando las dos manos. Lleve los omóplatos hacia atrás y júntelos. Mantenga la postura. Deje que la banda vuelva despacio.
movement-shoulder-blade-squeeze-band-feel = Notará que trabajan los músculos entre los omóplatos y detrás de los hombros.
movement-shoulder-blade-squeeze-band-faults = Mantenga los codos pegados al cuerpo. Mantenga los hombros bajos, lejos de las orejas.

movement-stick-external-rotation-name = Antebrazo hacia afuera con bastón
movement-stick-external-rotation-set-up = Acuéstese boca arriba, sin levantar el respaldo. Deje los codos doblados y pegados al cuerpo. Sujete el bastón con las dos manos, por encima del cuerpo.
movement-stick-external-rotation-how = Empuje el bastón hacia el lado con el otro brazo. Deje que el bastón gire el antebrazo hacia afuera. Pare cuando note que tira. Vuelva con el bastón despacio.
movement-stick-external-rotation-feel = Notará que tira un poco la parte delantera del hombro. El otro brazo hace el trabajo.
movement-stick-external-rotation-faults = Mantenga el codo doblado y pegado al cuerpo.

movement-stick-flexion-name = Brazos arriba con un bastón
movement-stick-flexion-set-up = Acuéstese boca arriba, sin levantar el respaldo. Sujete el bastón con las dos manos, sobre los muslos.
movement-stick-flexion-how = Mantenga los codos estirados. Suba el bastón hacia la cabeza. Deje que el otro brazo haga la fuerza. Pare cuando note que tira. Baje el bastón despacio.
movement-stick-flexion-feel = Notará que tira un poco alrededor del hombro. El otro brazo hace el trabajo.
movement-stick-flexion-faults = Mantenga la espalda plana sobre la cama.

movement-stick-flexion-sitting-name = Brazos arriba, con bastón y silla
movement-stick-flexion-sitting-set-up = Siéntese con la espalda recta en una silla firme, con los pies bien apoyados en el suelo. Sujete el bastón con las dos manos, sobre los muslos.
movement-stick-flexion-sitting-how = Suba el bastón hacia delante y hacia arriba. Deje que el otro brazo haga la fuerza. Pare algo por encima de los hombros, o antes si tira. Baje el bastón despacio.
movement-stick-flexion-sitting-feel = Notará que tira un poco alrededor del hombro. El otro brazo hace el trabajo.
movement-stick-flexion-sitting-faults = Mantenga la espalda recta, sin echarse hacia atrás. Mantenga el hombro bajo, lejos de la oreja.

movement-stick-flexion-to-90-name = Bastón hacia el techo
movement-stick-flexion-to-90-set-up = Acuéstese boca arriba, sin levantar el respaldo. Sujete el bastón con las dos manos, sobre los muslos.
movement-stick-flexion-to-90-how = Suba el bastón y deje que los codos se estiren. Deje que el otro brazo haga la fuerza. Pare cuando los brazos apunten al techo. Pare antes si nota que tira. Baje el bastón despacio.
movement-stick-flexion-to-90-feel = Notará que tira un poco alrededor del hombro. El otro brazo hace el trabajo.
movement-stick-flexion-to-90-faults = Mantenga la espalda plana sobre la cama. Mantenga el brazo suelto.

movement-table-slide-name = Deslizar el brazo por la mesa
movement-table-slide-set-up = Siéntese a la mesa en una silla firme. Apoye la mano en una toalla doblada sobre la mesa.
movement-table-slide-how = Deslice la mano hacia delante por la mesa. Deje que el cuerpo se incline con ella. Pare cuando note que tira. Deslice la mano hacia atrás despacio.
movement-table-slide-feel = Notará que tira un poco alrededor del hombro y debajo del brazo.
movement-table-slide-faults = Mantenga el hombro bajo, lejos de la oreja.

movement-table-slide-incline-name = Deslizar el brazo cuesta arriba
movement-table-slide-incline-set-up = Ponga una tabla inclinada sobre la mesa, de modo que no resbale. Siéntese a la mesa en una silla firme. Apoye la mano en una toalla doblada, en la parte baja de la tabla.
movement-table-slide-incline-how = Deslice la mano cuesta arriba por la tabla. Deje que el cuerpo se incline con ella. Pare cuando note que tira. Deslice la mano hacia abajo despacio.
movement-table-slide-incline-feel = Notará que tira un poco alrededor del hombro y debajo del brazo.
movement-table-slide-incline-faults = Mantenga el hombro bajo, lejos de la oreja. Deje la mano apoyada en la toalla.

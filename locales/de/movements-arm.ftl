### Was man zu jeder Bewegung von Arm und Schulter liest und hört. Die Seite, die Anzahl und die Dauer des Haltens
### sagt das Programm, darum stehen sie hier nicht. Fünf Texte zu jeder Bewegung, nach ihrer Id: wie sie
### heißt, wie man sich vorbereitet, wie sie geht, was man spürt und worauf man achtet.

movement-elbow-bend-name = Ellbogen beugen und strecken
movement-elbow-bend-set-up = Setzen Sie sich aufrecht auf einen festen Stuhl. Lassen Sie den Arm neben dem Körper hängen, die Handfläche nach vorn. Legen Sie die andere Hand auf den Oberschenkel.
movement-elbow-bend-how = Beugen Sie den Ellbogen und führen Sie die Hand zur Schulter. Senken Sie die Hand langsam. Strecken Sie den Ellbogen ganz.
movement-elbow-bend-feel = Sie spüren, wie der Oberarm vorn arbeitet.
movement-elbow-bend-faults = Halten Sie den Oberarm ruhig, nah am Körper.

movement-isometric-rotation-name = Hand nach außen drücken
movement-isometric-rotation-set-up = Stehen Sie aufrecht, den Arm neben einer Wand. Beugen Sie den Ellbogen am Körper. Klemmen Sie ein gefaltetes Handtuch unter den Oberarm. Legen Sie den Handrücken an die Wand.
movement-isometric-rotation-how = Drücken Sie den Handrücken sanft nach außen gegen die Wand. Der Arm bewegt sich nicht. Halten Sie. Lassen Sie langsam locker.
movement-isometric-rotation-feel = Sie spüren, wie die Schulter hinten sanft arbeitet.
movement-isometric-rotation-faults = Das Handtuch bleibt unter dem Arm. Drücken Sie nur sanft.

movement-isometric-rotation-inward-name = Hand nach innen drücken
movement-isometric-rotation-inward-set-up = Stehen Sie aufrecht, nah an einem Türrahmen. Beugen Sie den Ellbogen am Körper. Klemmen Sie ein gefaltetes Handtuch unter den Oberarm. Legen Sie die Handfläche an den Rahmen.
movement-isometric-rotation-inward-how = Drücken Sie die Handfläche sanft nach innen gegen den Rahmen. Der Arm bewegt sich nicht. Halten Sie. Lassen Sie langsam locker.
movement-isometric-rotation-inward-feel = Sie spüren, wie die Schulter vorn sanft arbeitet.
movement-isometric-rotation-inward-faults = Das Handtuch bleibt unter dem Arm. Drücken Sie nur sanft.

movement-pendulum-name = Arm locker schwingen
movement-pendulum-set-up = Stellen Sie sich neben einen festen Tisch. Beugen Sie sich vor, und stützen Sie die andere Hand darauf. Lassen Sie den Arm locker hängen.
movement-pendulum-how = Wiegen Sie den Körper sanft vor und zurück. Der Arm schwingt von selbst mit. Lassen Sie ihn ausschwingen, bevor Sie sich aufrichten.
movement-pendulum-feel = Sie spüren, wie der Arm locker und schwer hängt. Die Schulter ruht, während der Körper sich wiegt.
movement-pendulum-faults = Der Arm bleibt locker. Der Körper macht den Schwung.

movement-pendulum-sideways-name = Arm locker schwingen, zur Seite
movement-pendulum-sideways-set-up = Stellen Sie sich neben einen festen Tisch. Beugen Sie sich vor, und stützen Sie die andere Hand darauf. Lassen Sie den Arm locker hängen.
movement-pendulum-sideways-how = Wiegen Sie den Körper sanft von einer Seite zur anderen. Der Arm schwingt von selbst mit. Lassen Sie ihn ausschwingen, bevor Sie sich aufrichten.
movement-pendulum-sideways-feel = Sie spüren, wie der Arm locker und schwer hängt. Die Schulter ruht, während der Körper sich wiegt.
movement-pendulum-sideways-faults = Der Arm bleibt locker. Der Körper macht den Schwung.

movement-shoulder-blade-squeeze-name = Schulterblätter zusammenziehen
movement-shoulder-blade-squeeze-set-up = Setzen Sie sich aufrecht auf einen festen Stuhl, ein wenig vor der Lehne. Beugen Sie die Ellbogen. Die Ellbogen bleiben nah am Körper.
movement-shoulder-blade-squeeze-how = Ziehen Sie die Schulterblätter nach hinten und zusammen. Die Ellbogen gehen mit nach hinten. Halten Sie. Lassen Sie langsam locker.
movement-shoulder-blade-squeeze-feel = Sie spüren, wie die Muskeln zwischen den Schulterblättern arbeiten.
movement-shoulder-blade-squeeze-faults = Die Schultern bleiben unten, weg von den Ohren. Atmen Sie weiter, während Sie halten.

movement-shoulder-blade-squeeze-band-name = Band auseinanderziehen, im Sitzen
movement-shoulder-blade-squeeze-band-set-up = Setzen Sie sich aufrecht auf einen festen Stuhl, ein wenig vor der Lehne. Beugen Sie die Ellbogen. Die Ellbogen bleiben am Körper. Halten Sie das Band mit beiden Händen vor sich.
movement-shoulder-blade-squeeze-band-how = Ziehen Sie das Band mit beiden Händen auseinander. Ziehen Sie die Schulterblätter nach hinten und zusammen. Halten Sie. Lassen Sie das Band langsam zurückkommen.
movement-shoulder-blade-squeeze-band-feel = Sie spüren, wie die Muskeln zwischen den Schulterblättern und hinten an den Schultern arbeiten.
movement-shoulder-blade-squeeze-band-faults = Die Ellbogen bleiben am Körper. Die Schultern bleiben unten, weg von den Ohren.

movement-stick-external-rotation-name = Unterarm nach außen mit dem Stab
movement-stick-external-rotation-set-up = Legen Sie sich flach auf den Rücken. Die Ellbogen sind gebeugt und neben dem Körper. Halten Sie den Stab mit beiden Händen über sich.
movement-stick-external-rotation-how = Schieben Sie den Stab mit dem anderen Arm zur Seite. Der Stab dreht den Unterarm nach außen. Gehen Sie nur so weit, bis es spannt. Holen Sie den Stab langsam zurück.
movement-stick-external-rotation-feel = Sie spüren eine sanfte Dehnung vorn an der Schulter. Der andere Arm macht die Arbeit.
movement-stick-external-rotation-faults = Der Ellbogen bleibt gebeugt und nah am Körper.

movement-stick-flexion-name = Arme hoch mit dem Stab
movement-stick-flexion-set-up = Legen Sie sich flach auf den Rücken. Halten Sie den Stab mit beiden Händen unten auf den Oberschenkeln.
movement-stick-flexion-how = Die Ellbogen bleiben gestreckt. Heben Sie den Stab hoch, in Richtung Kopf. Der andere Arm hebt. Gehen Sie nur so weit, bis es spannt. Senken Sie den Stab langsam.
movement-stick-flexion-feel = Sie spüren eine sanfte Dehnung rund um die Schulter. Der andere Arm macht die Arbeit.
movement-stick-flexion-faults = Der Rücken bleibt flach auf dem Bett.

movement-stick-flexion-sitting-name = Arme hoch mit dem Stab, im Sitzen
movement-stick-flexion-sitting-set-up = Setzen Sie sich aufrecht auf einen festen Stuhl. Die Füße stehen flach auf dem Boden. Halten Sie den Stab mit beiden Händen unten auf den Oberschenkeln.
movement-stick-flexion-sitting-how = Heben Sie den Stab nach vorn und hoch. Der andere Arm hebt. Gehen Sie nur bis knapp über die Schultern. Spannt es früher, dann gehen Sie nur bis dahin. Senken Sie den Stab langsam.
movement-stick-flexion-sitting-feel = Sie spüren eine sanfte Dehnung rund um die Schulter. Der andere Arm macht die Arbeit.
movement-stick-flexion-sitting-faults = Der Rücken bleibt aufrecht. Lehnen Sie sich nicht zurück. Die Schulter bleibt unten, weg vom Ohr.

movement-stick-flexion-to-90-name = Stab nach oben, im Liegen
movement-stick-flexion-to-90-set-up = Legen Sie sich flach auf den Rücken. Halten Sie den Stab mit beiden Händen unten auf den Oberschenkeln.
movement-stick-flexion-to-90-how = Heben Sie den Stab, und strecken Sie dabei die Ellbogen. Der andere Arm hebt. Gehen Sie nur so weit, bis die Arme senkrecht nach oben zeigen. Spannt es früher, dann gehen Sie nur bis dahin. Senken Sie den Stab langsam.
movement-stick-flexion-to-90-feel = Sie spüren eine sanfte Dehnung rund um die Schulter. Der andere Arm macht die Arbeit.
movement-stick-flexion-to-90-faults = Der Rücken bleibt flach auf dem Bett. Der Arm bleibt locker.

movement-table-slide-name = Arm auf dem Tisch schieben
movement-table-slide-set-up = Setzen Sie sich auf einen festen Stuhl an einen Tisch. Legen Sie die Hand auf ein gefaltetes Handtuch auf dem Tisch.
movement-table-slide-how = Schieben Sie die Hand auf dem Tisch nach vorn. Der Körper neigt sich mit. Gehen Sie nur so weit, bis es spannt. Ziehen Sie die Hand langsam zurück.
movement-table-slide-feel = Sie spüren eine sanfte Dehnung rund um die Schulter und unter dem Arm.
movement-table-slide-faults = Die Schulter bleibt unten, weg vom Ohr.

movement-table-slide-incline-name = Arm eine Schräge hoch schieben
movement-table-slide-incline-set-up = Legen Sie ein schräges Brett auf einen Tisch, so dass es nicht rutscht. Setzen Sie sich auf einen festen Stuhl an den Tisch. Legen Sie die Hand auf ein gefaltetes Handtuch, unten auf dem Brett.
movement-table-slide-incline-how = Schieben Sie die Hand die Schräge hoch. Der Körper neigt sich mit. Gehen Sie nur so weit, bis es spannt. Ziehen Sie die Hand langsam wieder nach unten.
movement-table-slide-incline-feel = Sie spüren eine sanfte Dehnung rund um die Schulter und unter dem Arm.
movement-table-slide-incline-faults = Die Schulter bleibt unten, weg vom Ohr. Die Hand bleibt auf dem Handtuch liegen.

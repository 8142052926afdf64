### Was man zu jeder Bewegung im Sitzen liest und hört. Die Seite, die Anzahl und die Dauer des Haltens
### sagt das Programm, darum stehen sie hier nicht. Fünf Texte zu jeder Bewegung, nach ihrer Id: wie sie
### heißt, wie man sich vorbereitet, wie sie geht, was man spürt und worauf man achtet.

movement-calf-raise-seated-name = Fersen hoch, im Sitzen
movement-calf-raise-seated-set-up = Setzen Sie sich aufrecht auf einen festen Stuhl. Stellen Sie die Füße flach unter die Knie.
movement-calf-raise-seated-how = Heben Sie beide Fersen. Die Zehen bleiben am Boden. Halten Sie. Senken Sie die Fersen langsam.
movement-calf-raise-seated-feel = Sie spüren, wie die Waden arbeiten, hinten an den Unterschenkeln.
movement-calf-raise-seated-faults = Das Gewicht bleibt über den großen Zehen. Beide Füße arbeiten gleich viel.

movement-long-arc-quad-name = Knie strecken, im Sitzen
movement-long-arc-quad-set-up = Setzen Sie sich weit hinten auf einen festen Stuhl. Stellen Sie die Füße flach auf den Boden.
movement-long-arc-quad-how = Heben Sie den Fuß, bis das Knie gestreckt ist. Halten Sie. Senken Sie den Fuß langsam auf den Boden.
movement-long-arc-quad-feel = Sie spüren, wie der Oberschenkel vorn arbeitet.
movement-long-arc-quad-faults = Der Rücken bleibt aufrecht an der Lehne.

movement-long-arc-quad-band-name = Knie strecken mit Band, im Sitzen
movement-long-arc-quad-band-set-up = Binden Sie das Band an das hintere Bein eines festen Stuhls. Legen Sie die Schlaufe um den Knöchel. Setzen Sie sich weit nach hinten. Die Füße stehen flach auf dem Boden.
movement-long-arc-quad-band-how = Heben Sie den Fuß gegen das Band, bis das Knie gestreckt ist. Halten Sie. Senken Sie den Fuß langsam auf den Boden.
movement-long-arc-quad-band-feel = Sie spüren, wie der Oberschenkel vorn gegen das Band arbeitet.
movement-long-arc-quad-band-faults = Der Rücken bleibt aufrecht an der Lehne. Der Weg nach unten ist so langsam wie der Weg nach oben.

movement-long-arc-quad-cuff-name = Knie strecken mit Gewicht, im Sitzen
movement-long-arc-quad-cuff-set-up = Befestigen Sie das Gewicht knapp über dem Knöchel. Setzen Sie sich weit hinten auf einen festen Stuhl. Stellen Sie die Füße flach auf den Boden.
movement-long-arc-quad-cuff-how = Heben Sie den Fuß, bis das Knie gestreckt ist. Halten Sie. Senken Sie den Fuß langsam auf den Boden.
movement-long-arc-quad-cuff-feel = Sie spüren, wie der Oberschenkel vorn gegen das Gewicht arbeitet.
movement-long-arc-quad-cuff-faults = Der Rücken bleibt aufrecht an der Lehne. Der Weg nach unten ist so langsam wie der Weg nach oben.

movement-long-arc-quad-partial-name = Knie halb strecken, im Sitzen
movement-long-arc-quad-partial-set-up = Setzen Sie sich weit hinten auf einen festen Stuhl. Stellen Sie die Füße flach auf den Boden.
movement-long-arc-quad-partial-how = Heben Sie den Fuß etwa bis zur Hälfte. Halten Sie. Senken Sie den Fuß langsam auf den Boden.
movement-long-arc-quad-partial-feel = Sie spüren, wie der Oberschenkel vorn ein wenig arbeitet.
movement-long-arc-quad-partial-faults = Der Rücken bleibt aufrecht an der Lehne. Der Oberschenkel bleibt auf dem Sitz.

movement-seated-arch-name = Rücken runden und strecken, im Sitzen
movement-seated-arch-set-up = Setzen Sie sich auf einen festen Stuhl, ohne sich anzulehnen. Stellen Sie die Füße flach unter die Knie. Legen Sie die Hände auf die Oberschenkel.
movement-seated-arch-how = Machen Sie den Rücken langsam rund, und schauen Sie nach unten. Setzen Sie sich dann aufrecht. Gehen Sie ein wenig ins Hohlkreuz. Gehen Sie nur so weit, bis es spannt.
movement-seated-arch-feel = Beim Runden spüren Sie eine sanfte Dehnung im Rücken. Beim Hohlkreuz spüren Sie, wie der Rücken ein wenig arbeitet.
movement-seated-arch-faults = Beide Gesäßhälften bleiben auf dem Sitz. Die Bewegung bleibt langsam und klein.

movement-seated-heel-press-name = Ferse drücken, im Sitzen
movement-seated-heel-press-set-up = Setzen Sie sich weit hinten auf einen festen Stuhl. Stellen Sie die Füße flach auf den Boden.
movement-seated-heel-press-how = Drücken Sie die Ferse nach unten und nach hinten in den Boden. Der Fuß bleibt, wo er ist. Halten Sie. Lassen Sie langsam locker.
movement-seated-heel-press-feel = Sie spüren, wie der Oberschenkel hinten arbeitet.
movement-seated-heel-press-faults = Atmen Sie weiter, während Sie drücken. Der Körper bleibt aufrecht.

movement-seated-knee-bend-name = Fuß zurückschieben, im Sitzen
movement-seated-knee-bend-set-up = Setzen Sie sich auf einen festen Stuhl. Stellen Sie den Fuß flach ein wenig vor sich.
movement-seated-knee-bend-how = Schieben Sie den Fuß nach hinten unter den Stuhl. Gehen Sie nur so weit, bis es im Knie spannt. Halten Sie. Schieben Sie den Fuß wieder nach vorn.
movement-seated-knee-bend-feel = Sie spüren eine sanfte Dehnung vorn am Knie und am Oberschenkel.
movement-seated-knee-bend-faults = Beide Gesäßhälften bleiben auf dem Sitz.

movement-seated-knee-bend-assisted-name = Fuß zurückschieben mit Hilfe, im Sitzen
movement-seated-knee-bend-assisted-set-up = Setzen Sie sich auf einen festen Stuhl. Stellen Sie den Fuß flach ein wenig vor sich. Kreuzen Sie den anderen Knöchel davor.
movement-seated-knee-bend-assisted-how = Schieben Sie den Fuß nach hinten unter den Stuhl. Drücken Sie sanft mit dem anderen Fuß nach. Gehen Sie nur so weit, bis es im Knie spannt. Halten Sie. Schieben Sie beide Füße wieder nach vorn.
movement-seated-knee-bend-assisted-feel = Sie spüren eine sanfte Dehnung vorn am Knie und am Oberschenkel. Das andere Bein drückt.
movement-seated-knee-bend-assisted-faults = Beide Gesäßhälften bleiben auf dem Sitz. Drücken Sie nur sanft.

movement-seated-knee-spread-name = Knie zur Seite, im Sitzen
movement-seated-knee-spread-set-up = Setzen Sie sich aufrecht auf einen festen Stuhl. Stellen Sie die Füße flach unter die Knie.
movement-seated-knee-spread-how = Führen Sie das Knie nach außen zur Seite. Der Fuß rutscht mit. Holen Sie beide zurück, aber nicht über die Mitte.
movement-seated-knee-spread-feel = Sie spüren, wie die Hüfte außen arbeitet.
movement-seated-knee-spread-faults = Der Körper bleibt aufrecht, mit gleich viel Gewicht auf beiden Gesäßhälften.

movement-seated-march-name = Gehen auf der Stelle, im Sitzen
movement-seated-march-set-up = Setzen Sie sich aufrecht auf einen festen Stuhl. Stellen Sie die Füße flach unter die Knie.
movement-seated-march-how = Heben Sie das Knie ein wenig. Der Fuß bleibt unter dem Knie. Senken Sie den Fuß langsam auf den Boden.
movement-seated-march-feel = Sie spüren, wie Hüfte und Oberschenkel vorn arbeiten.
movement-seated-march-faults = Der Körper bleibt aufrecht. Lehnen Sie sich nicht zurück.

movement-seated-march-cuff-name = Gehen auf der Stelle mit Gewicht, im Sitzen
movement-seated-march-cuff-set-up = Befestigen Sie das Gewicht knapp über dem Knöchel. Setzen Sie sich aufrecht auf einen festen Stuhl. Stellen Sie die Füße flach unter die Knie.
movement-seated-march-cuff-how = Heben Sie das Knie ein wenig. Der Fuß bleibt unter dem Knie. Senken Sie den Fuß langsam auf den Boden.
movement-seated-march-cuff-feel = Sie spüren, wie Hüfte und Oberschenkel vorn gegen das Gewicht arbeiten.
movement-seated-march-cuff-faults = Der Körper bleibt aufrecht. Lehnen Sie sich nicht zurück.

movement-seated-march-low-name = Gehen auf der Stelle, auf niedrigem Sitz
movement-seated-march-low-set-up = Setzen Sie sich aufrecht auf einen niedrigen, festen Sitz. Stellen Sie die Füße flach unter die Knie.
movement-seated-march-low-how = Heben Sie das Knie ein wenig. Der Fuß bleibt unter dem Knie. Senken Sie den Fuß langsam auf den Boden.
movement-seated-march-low-feel = Sie spüren, wie Hüfte und Oberschenkel vorn arbeiten.
movement-seated-march-low-faults = Der Körper bleibt aufrecht. Lehnen Sie sich nicht zurück.

### Was man zu jeder Bewegung im Liegen liest und hört. Die Seite, die Anzahl und die Dauer des Haltens
### sagt das Programm, darum stehen sie hier nicht. Fünf Texte zu jeder Bewegung, nach ihrer Id: wie sie
### heißt, wie man sich vorbereitet, wie sie geht, was man spürt und worauf man achtet.

movement-abdominal-brace-name = Bauch fest machen
movement-abdominal-brace-set-up = Legen Sie sich auf den Rücken. Beugen Sie die Knie, und stellen Sie die Füße flach auf das Bett. Legen Sie die Hände auf den Unterbauch.
movement-abdominal-brace-how = Spannen Sie den Unterbauch sanft an. Der Rücken bleibt ruhig. Halten Sie, und atmen Sie weiter. Lassen Sie langsam locker.
movement-abdominal-brace-feel = Sie spüren, wie der Unterbauch unter den Händen fest wird.
movement-abdominal-brace-faults = Atmen Sie weiter wie immer. Spannen Sie nur sanft an.

movement-abdominal-brace-marching-name = Bauch fest machen und Fuß heben
movement-abdominal-brace-marching-set-up = Legen Sie sich auf den Rücken. Beugen Sie die Knie, und stellen Sie die Füße flach auf das Bett. Legen Sie die Hände auf den Unterbauch.
movement-abdominal-brace-marching-how = Spannen Sie den Unterbauch sanft an. Er bleibt fest, und Sie atmen weiter. Heben Sie einen Fuß ein wenig vom Bett. Stellen Sie ihn langsam ab. Lassen Sie den Bauch locker.
movement-abdominal-brace-marching-feel = Sie spüren, wie der Unterbauch fest bleibt. Sie spüren, wie die Hüfte vorn ein wenig arbeitet.
movement-abdominal-brace-marching-faults = Rücken und Becken bleiben ruhig, während der Fuß sich bewegt.

movement-abduction-slide-name = Bein zur Seite schieben
movement-abduction-slide-set-up = Legen Sie sich flach auf den Rücken, beide Beine gestreckt. Die Zehen zeigen nach oben.
movement-abduction-slide-how = Schieben Sie das Bein nach außen zur Seite. Die Ferse bleibt auf dem Bett. Gehen Sie nur so weit, bis es spannt. Schieben Sie es zurück, aber nicht über die Mitte.
movement-abduction-slide-feel = Sie spüren, wie die Hüfte außen arbeitet. Sie spüren eine sanfte Dehnung innen am Oberschenkel.
movement-abduction-slide-faults = Die Zehen zeigen weiter nach oben.

movement-ankle-pump-name = Fuß auf und ab
movement-ankle-pump-set-up = Legen Sie sich auf den Rücken. Das Bein liegt gestreckt auf dem Bett.
movement-ankle-pump-how = Strecken Sie die Zehen von sich weg. Ziehen Sie die Zehen dann hoch, in Richtung Schienbein. Das Bein bleibt auf dem Bett liegen.
movement-ankle-pump-feel = Sie spüren, wie der Unterschenkel erst hinten und dann vorn arbeitet.
movement-ankle-pump-faults = Machen Sie es langsam. Machen Sie die Bewegung jedes Mal ganz.

movement-ankle-pump-band-name = Fuß gegen ein Band drücken
movement-ankle-pump-band-set-up = Legen Sie sich auf den Rücken, das Bein gestreckt. Legen Sie das Band um den Fußballen. Halten Sie in jeder Hand ein Ende.
movement-ankle-pump-band-how = Drücken Sie den Fuß gegen das Band von sich weg. Lassen Sie das Band den Fuß langsam zurückziehen. Das Bein bleibt auf dem Bett liegen.
movement-ankle-pump-band-feel = Sie spüren, wie die Wade arbeitet, hinten am Unterschenkel.
movement-ankle-pump-band-faults = Der Weg zurück ist so langsam wie das Drücken.

movement-bridge-name = Becken heben
movement-bridge-set-up = Legen Sie sich auf den Rücken. Beugen Sie die Knie, und stellen Sie die Füße flach auf das Bett.
movement-bridge-how = Spannen Sie das Gesäß an. Drücken Sie die Füße in das Bett, und heben Sie das Becken. Gehen Sie nur so weit, bis Schultern, Hüften und Knie eine Linie bilden. Halten Sie. Senken Sie das Becken langsam.
movement-bridge-feel = Sie spüren, wie das Gesäß und die Oberschenkel hinten arbeiten.
movement-bridge-faults = Der Rücken bleibt gerade. Das Gesäß macht die Arbeit.

movement-bridge-one-leg-name = Becken heben mit einem Fuß
movement-bridge-one-leg-set-up = Legen Sie sich auf den Rücken. Beugen Sie die Knie, und stellen Sie die Füße flach auf das Bett. Heben Sie den anderen Fuß ein wenig, das Knie bleibt gebeugt.
movement-bridge-one-leg-how = Spannen Sie das Gesäß an. Drücken Sie den Fuß, der steht, in das Bett. Heben Sie das Becken, bis der Körper gerade ist. Halten Sie. Senken Sie das Becken langsam.
movement-bridge-one-leg-feel = Sie spüren, wie das Gesäß arbeitet. Sie spüren es auch hinten am Oberschenkel, der drückt.
movement-bridge-one-leg-faults = Beide Hüften bleiben gleich hoch. Das Gesäß macht die Arbeit.

movement-clam-name = Knie heben, auf der Seite liegend
movement-clam-set-up = Legen Sie sich auf die Seite. Das Bein, mit dem Sie üben, liegt oben. Beugen Sie Hüften und Knie. Legen Sie die Füße aufeinander, in einer Linie mit dem Rücken. Legen Sie ein Kissen zwischen die Knie.
movement-clam-how = Die Füße bleiben zusammen. Heben Sie das obere Knie. Halten Sie. Senken Sie es langsam auf das Kissen.
movement-clam-feel = Sie spüren, wie die obere Hüfte außen und das Gesäß arbeiten.
movement-clam-faults = Die Hüften bleiben ruhig, eine über der anderen.

movement-clam-band-name = Knie heben mit Band, im Liegen
movement-clam-band-set-up = Legen Sie das Band um beide Oberschenkel, knapp über den Knien. Legen Sie sich auf die Seite. Das Bein, mit dem Sie üben, liegt oben. Hüften und Knie sind gebeugt. Legen Sie ein Kissen zwischen die Knie.
movement-clam-band-how = Die Füße bleiben zusammen, in einer Linie mit dem Rücken. Heben Sie das obere Knie gegen das Band. Halten Sie. Senken Sie es langsam auf das Kissen.
movement-clam-band-feel = Sie spüren, wie die obere Hüfte außen und das Gesäß arbeiten.
movement-clam-band-faults = Die Hüften bleiben ruhig, eine über der anderen. Der Weg nach unten bleibt langsam.

movement-double-knee-to-chest-name = Beide Knie zur Brust
movement-double-knee-to-chest-set-up = Legen Sie sich flach auf den Rücken. Beugen Sie die Knie, und stellen Sie die Füße flach auf das Bett.
movement-double-knee-to-chest-how = Fassen Sie hinter einen Oberschenkel, und holen Sie dieses Knie hoch. Holen Sie dann das andere Knie genauso hoch. Ziehen Sie beide Knie sanft zur Brust. Gehen Sie nur so weit, bis es spannt. Halten Sie. Stellen Sie erst einen Fuß auf das Bett, dann den anderen.
movement-double-knee-to-chest-feel = Sie spüren eine sanfte Dehnung im Gesäß und im unteren Rücken. Die Arme ziehen.
movement-double-knee-to-chest-faults = Ziehen Sie nur sanft. Der Kopf bleibt auf dem Bett liegen.

movement-glute-set-name = Gesäß anspannen
movement-glute-set-set-up = Legen Sie sich flach auf den Rücken, beide Beine gestreckt.
movement-glute-set-how = Kneifen Sie das Gesäß zusammen. Halten Sie die Spannung. Die Beine bleiben ruhig. Lassen Sie langsam locker.
movement-glute-set-feel = Sie spüren, wie beide Gesäßhälften fest werden.
movement-glute-set-faults = Atmen Sie weiter, während Sie anspannen.

movement-heel-prop-name = Knie dehnen, Ferse hoch gelagert
movement-heel-prop-set-up = Legen Sie sich flach auf den Rücken. Legen Sie die Ferse auf ein gerolltes Handtuch. Der Platz unter dem Knie bleibt leer.
movement-heel-prop-how = Lassen Sie das Bein locker. Lassen Sie das Knie in Richtung Bett sinken. Bleiben Sie so, bis die Zeit um ist.
movement-heel-prop-feel = Sie spüren eine sanfte Dehnung hinten am Knie.
movement-heel-prop-faults = Kniescheibe und Zehen zeigen weiter nach oben.

movement-heel-slide-name = Ferse schieben
movement-heel-slide-set-up = Legen Sie sich flach auf den Rücken, beide Beine gestreckt. Ziehen Sie eine Socke an, damit die Ferse gut gleitet.
movement-heel-slide-how = Schieben Sie die Ferse zum Gesäß. Das Knie beugt sich dabei nach oben. Gehen Sie nur so weit, bis es spannt. Schieben Sie die Ferse zurück, bis das Bein gestreckt ist.
movement-heel-slide-feel = Sie spüren eine sanfte Dehnung vorn am Knie. Sie spüren, wie der Oberschenkel hinten ein wenig arbeitet.
movement-heel-slide-faults = Das Knie bleibt in einer Linie mit Hüfte und Fuß.

movement-heel-slide-strap-name = Ferse schieben mit Gurt
movement-heel-slide-strap-set-up = Legen Sie sich flach auf den Rücken, beide Beine gestreckt. Legen Sie den Gurt um den Fuß. Halten Sie in jeder Hand ein Ende.
movement-heel-slide-strap-how = Ziehen Sie sanft am Gurt. Lassen Sie die Ferse zum Gesäß gleiten. Gehen Sie nur so weit, bis es spannt. Lassen Sie den Gurt langsam nach, bis das Bein gestreckt ist.
movement-heel-slide-strap-feel = Sie spüren eine sanfte Dehnung vorn am Knie. Die Arme ziehen.
movement-heel-slide-strap-faults = Das Knie bleibt in einer Linie mit Hüfte und Fuß. Ziehen Sie nur sanft.

movement-hip-abduction-press-name = Knie gegen einen Gurt drücken
movement-hip-abduction-press-set-up = Schnallen Sie den Gurt um beide Oberschenkel, knapp über den Knien. Legen Sie sich auf den Rücken. Beugen Sie die Knie, und stellen Sie die Füße flach auf das Bett.
movement-hip-abduction-press-how = Drücken Sie beide Knie nach außen gegen den Gurt. Der Gurt hält sie fest. Halten Sie. Lassen Sie langsam locker.
movement-hip-abduction-press-feel = Sie spüren, wie die Hüften außen arbeiten.
movement-hip-abduction-press-faults = Atmen Sie weiter, während Sie drücken. Drücken Sie auf beiden Seiten gleich stark.

movement-knee-rolls-name = Knie von Seite zu Seite
movement-knee-rolls-set-up = Legen Sie sich auf den Rücken. Beugen Sie die Knie, und stellen Sie die Füße flach auf das Bett. Die Knie bleiben zusammen.
movement-knee-rolls-how = Lassen Sie beide Knie langsam zu einer Seite sinken. Gehen Sie nur so weit, bis es spannt. Holen Sie die Knie zurück zur Mitte. Lassen Sie sie dann zur anderen Seite sinken.
movement-knee-rolls-feel = Sie spüren eine sanfte Dehnung im unteren Rücken und seitlich an der Hüfte.
movement-knee-rolls-faults = Beide Schultern bleiben auf dem Bett.

movement-passive-straight-leg-raise-name = Gestrecktes Bein heben lassen
movement-passive-straight-leg-raise-set-up = Legen Sie sich flach auf den Rücken, beide Beine gestreckt. Ihre Hilfsperson steht neben dem Bett. Ihre Hilfsperson legt eine Hand unter die Ferse und die andere unter das Knie.
movement-passive-straight-leg-raise-how = Lassen Sie das Bein locker und schwer werden. Ihre Hilfsperson hebt es langsam, das Knie gestreckt. Sagen Sie „Stopp“, wenn es spannt. Ihre Hilfsperson senkt es langsam auf das Bett.
movement-passive-straight-leg-raise-feel = Sie spüren eine sanfte Dehnung hinten am Oberschenkel. Ihr Bein arbeitet nicht.
movement-passive-straight-leg-raise-faults = Das Bein bleibt schwer. Nur Ihre Hilfsperson hebt.

movement-pelvic-tilt-name = Rücken flach machen
movement-pelvic-tilt-set-up = Legen Sie sich auf den Rücken. Beugen Sie die Knie, und stellen Sie die Füße flach auf das Bett.
movement-pelvic-tilt-how = Spannen Sie den Unterbauch an. Drücken Sie den unteren Rücken in das Bett. Halten Sie. Lassen Sie langsam locker.
movement-pelvic-tilt-feel = Sie spüren, wie der Unterbauch arbeitet. Sie spüren, wie der untere Rücken in das Bett drückt.
movement-pelvic-tilt-faults = Atmen Sie weiter, während Sie halten.

movement-press-up-on-elbows-name = Brust heben, auf den Unterarmen
movement-press-up-on-elbows-set-up = Legen Sie sich auf den Bauch. Beugen Sie die Ellbogen, und legen Sie die Unterarme flach neben den Kopf.
movement-press-up-on-elbows-how = Heben Sie die Brust, und stützen Sie sich auf die Unterarme. Die Ellbogen kommen unter die Schultern. Das Becken bleibt auf dem Bett. Lassen Sie den Rücken locker. Senken Sie die Brust langsam.
movement-press-up-on-elbows-feel = Sie spüren, wie die Arme Sie tragen. Sie spüren eine sanfte Dehnung im Bauch und im unteren Rücken.
movement-press-up-on-elbows-faults = Die Schultern bleiben unten, weg von den Ohren.

movement-prone-knee-bend-name = Knie beugen, auf dem Bauch
movement-prone-knee-bend-set-up = Legen Sie sich auf den Bauch, beide Beine gestreckt auf dem Bett.
movement-prone-knee-bend-how = Beugen Sie das Knie. Führen Sie die Ferse zum Gesäß. Gehen Sie nur so weit, bis es spannt. Senken Sie den Fuß langsam auf das Bett.
movement-prone-knee-bend-feel = Sie spüren, wie der Oberschenkel hinten arbeitet. Sie spüren eine sanfte Dehnung vorn am Oberschenkel.
movement-prone-knee-bend-faults = Das Becken bleibt auf dem Bett. Die Knie bleiben nebeneinander.

movement-prone-press-up-name = Brust heben, auf dem Bauch
movement-prone-press-up-set-up = Legen Sie sich auf den Bauch. Legen Sie die Hände flach neben die Schultern auf das Bett.
movement-prone-press-up-how = Drücken Sie mit den Armen, und heben Sie die Brust. Das Becken bleibt auf dem Bett. Lassen Sie den Rücken locker. Senken Sie die Brust langsam.
movement-prone-press-up-feel = Sie spüren, wie die Arme arbeiten. Sie spüren eine sanfte Dehnung im Bauch und im unteren Rücken.
movement-prone-press-up-faults = Die Schultern bleiben unten, weg von den Ohren.

movement-quad-set-name = Oberschenkel anspannen
movement-quad-set-set-up = Legen Sie sich flach auf den Rücken. Das Bein ist gestreckt, und die Zehen zeigen nach oben.
movement-quad-set-how = Spannen Sie den Oberschenkel vorn an. Drücken Sie die Kniekehle in das Bett. Halten Sie. Lassen Sie langsam locker.
movement-quad-set-feel = Sie spüren, wie der Oberschenkel vorn arbeitet, knapp über dem Knie.
movement-quad-set-faults = Atmen Sie weiter, während Sie halten.

movement-quad-set-towel-name = Oberschenkel anspannen über einem Handtuch
movement-quad-set-towel-set-up = Legen Sie sich flach auf den Rücken, das Bein gestreckt. Legen Sie ein gerolltes Handtuch unter das Knie. Die Zehen zeigen nach oben.
movement-quad-set-towel-how = Spannen Sie den Oberschenkel vorn an. Drücken Sie die Kniekehle in das Handtuch. Halten Sie. Lassen Sie langsam locker.
movement-quad-set-towel-feel = Sie spüren, wie der Oberschenkel vorn arbeitet, knapp über dem Knie.
movement-quad-set-towel-faults = Atmen Sie weiter, während Sie halten. Die Kniescheibe zeigt weiter nach oben.

movement-short-arc-quad-name = Knie strecken über einer Rolle
movement-short-arc-quad-set-up = Legen Sie sich flach auf den Rücken. Legen Sie die Rolle unter das Knie. Die Ferse liegt auf dem Bett.
movement-short-arc-quad-how = Heben Sie die Ferse, bis das Knie gestreckt ist. Halten Sie. Senken Sie die Ferse langsam auf das Bett.
movement-short-arc-quad-feel = Sie spüren, wie der Oberschenkel vorn arbeitet, knapp über dem Knie.
movement-short-arc-quad-faults = Der Oberschenkel bleibt hinten auf der Rolle.

movement-short-arc-quad-cuff-name = Knie strecken über einer Rolle, mit Gewicht
movement-short-arc-quad-cuff-set-up = Befestigen Sie das Gewicht knapp über dem Knöchel. Legen Sie sich flach auf den Rücken, die Rolle unter dem Knie. Die Ferse liegt auf dem Bett.
movement-short-arc-quad-cuff-how = Heben Sie die Ferse, bis das Knie gestreckt ist. Halten Sie. Senken Sie die Ferse langsam auf das Bett.
movement-short-arc-quad-cuff-feel = Sie spüren, wie der Oberschenkel vorn gegen das Gewicht arbeitet, knapp über dem Knie.
movement-short-arc-quad-cuff-faults = Der Oberschenkel bleibt hinten auf der Rolle. Der Weg nach unten bleibt langsam.

movement-side-lying-abduction-name = Bein zur Seite heben, im Liegen
movement-side-lying-abduction-set-up = Legen Sie sich auf die Seite. Das Bein, mit dem Sie üben, liegt oben. Beugen Sie das untere Bein ein wenig. Legen Sie ein Kissen zwischen die Beine.
movement-side-lying-abduction-how = Heben Sie das obere Bein gerade hoch. Das Knie bleibt gestreckt. Halten Sie. Senken Sie es langsam auf das Kissen.
movement-side-lying-abduction-feel = Sie spüren, wie die obere Hüfte außen arbeitet.
movement-side-lying-abduction-faults = Eine Hüfte bleibt genau über der anderen. Die Zehen zeigen weiter nach vorn.

movement-side-lying-abduction-cuff-name = Bein zur Seite heben mit Gewicht, im Liegen
movement-side-lying-abduction-cuff-set-up = Befestigen Sie das Gewicht knapp über dem Knöchel. Legen Sie sich auf die Seite. Das Bein mit dem Gewicht liegt oben. Das untere Bein ist ein wenig gebeugt. Legen Sie ein Kissen zwischen die Beine.
movement-side-lying-abduction-cuff-how = Heben Sie das obere Bein gerade hoch. Das Knie bleibt gestreckt. Halten Sie. Senken Sie es langsam auf das Kissen.
movement-side-lying-abduction-cuff-feel = Sie spüren, wie die obere Hüfte außen gegen das Gewicht arbeitet.
movement-side-lying-abduction-cuff-faults = Eine Hüfte bleibt genau über der anderen. Die Zehen zeigen weiter nach vorn.

movement-single-knee-to-chest-name = Ein Knie zur Brust
movement-single-knee-to-chest-set-up = Legen Sie sich flach auf den Rücken, beide Beine gestreckt.
movement-single-knee-to-chest-how = Schieben Sie die Ferse zum Gesäß. Fassen Sie mit beiden Händen hinter den Oberschenkel. Ziehen Sie das Knie sanft zur Brust. Halten Sie. Legen Sie das Bein langsam ab.
movement-single-knee-to-chest-feel = Sie spüren eine sanfte Dehnung im Gesäß und im unteren Rücken. Die Arme ziehen.
movement-single-knee-to-chest-faults = Ziehen Sie nur sanft. Das andere Bein bleibt flach auf dem Bett.

movement-straight-leg-raise-name = Gestrecktes Bein heben
movement-straight-leg-raise-set-up = Legen Sie sich flach auf den Rücken, beide Beine gestreckt.
movement-straight-leg-raise-how = Spannen Sie zuerst den Oberschenkel vorn an. Heben Sie das Bein, das Knie gestreckt. Halten Sie. Senken Sie das Bein langsam auf das Bett.
movement-straight-leg-raise-feel = Sie spüren, wie Oberschenkel und Hüfte vorn arbeiten.
movement-straight-leg-raise-faults = Das Knie bleibt von Anfang bis Ende gestreckt.

movement-straight-leg-raise-cuff-name = Gestrecktes Bein heben mit Gewicht
movement-straight-leg-raise-cuff-set-up = Befestigen Sie das Gewicht knapp über dem Knöchel. Legen Sie sich flach auf den Rücken, beide Beine gestreckt.
movement-straight-leg-raise-cuff-how = Spannen Sie zuerst den Oberschenkel vorn an. Heben Sie das Bein, das Knie gestreckt. Halten Sie. Senken Sie das Bein langsam auf das Bett.
movement-straight-leg-raise-cuff-feel = Sie spüren, wie Oberschenkel und Hüfte vorn gegen das Gewicht arbeiten.
movement-straight-leg-raise-cuff-faults = Das Knie bleibt von Anfang bis Ende gestreckt.

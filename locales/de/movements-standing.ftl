### Was man zu jeder Bewegung im Stehen oder Knien liest und hört. Die Seite, die Anzahl und die Dauer des Haltens
### sagt das Programm, darum stehen sie hier nicht. Fünf Texte zu jeder Bewegung, nach ihrer Id: wie sie
### heißt, wie man sich vorbereitet, wie sie geht, was man spürt und worauf man achtet.

movement-calf-raise-name = Auf die Zehen hoch
movement-calf-raise-set-up = Stehen Sie aufrecht, die Füße unter den Hüften. Halten Sie sich mit beiden Händen fest, an einem Geländer oder einer festen Arbeitsplatte.
movement-calf-raise-how = Drücken Sie sich mit beiden Füßen auf die Zehen hoch. Halten Sie. Senken Sie die Fersen langsam.
movement-calf-raise-feel = Sie spüren, wie die Waden arbeiten, hinten an den Unterschenkeln.
movement-calf-raise-faults = Das Gewicht bleibt über den großen Zehen. Beide Füße arbeiten gleich viel.

movement-calf-raise-one-leg-name = Auf die Zehen hoch, ein Fuß
movement-calf-raise-one-leg-set-up = Stehen Sie aufrecht. Halten Sie sich mit beiden Händen fest, an einem Geländer oder einer festen Arbeitsplatte. Heben Sie den anderen Fuß vom Boden.
movement-calf-raise-one-leg-how = Drücken Sie sich auf die Zehen hoch. Halten Sie. Senken Sie die Ferse langsam. Der andere Fuß bleibt in der Luft.
movement-calf-raise-one-leg-feel = Sie spüren, wie die Wade arbeitet, hinten am Unterschenkel.
movement-calf-raise-one-leg-faults = Das Gewicht bleibt über der großen Zehe. Das Knie bleibt gestreckt.

movement-hands-and-knees-arch-name = Rücken hohl und rund machen
movement-hands-and-knees-arch-set-up = Legen Sie ein gefaltetes Handtuch auf den Boden. Knien Sie darauf, und stützen Sie sich auf die Hände. Die Hände sind unter den Schultern und die Knie unter den Hüften.
movement-hands-and-knees-arch-how = Lassen Sie den Bauch langsam sinken, so dass der Rücken hohl wird. Machen Sie den Rücken dann nach oben rund. Atmen Sie dabei.
movement-hands-and-knees-arch-feel = Sie spüren eine sanfte Dehnung im Bauch, dann entlang des Rückens.
movement-hands-and-knees-arch-faults = Die Hüften bleiben genau über den Knien. Die Arme bleiben gestreckt.

movement-hip-hinge-name = Verbeugung aus der Hüfte
movement-hip-hinge-set-up = Stehen Sie aufrecht, die Füße unter den Hüften. Halten Sie sich mit beiden Händen fest, an einem Geländer oder einer festen Arbeitsplatte.
movement-hip-hinge-how = Beugen Sie die Knie ein wenig. Schieben Sie die Hüften zurück, und verbeugen Sie sich nach vorn. Der Rücken bleibt gerade. Schieben Sie die Hüften vor, und stehen Sie aufrecht.
movement-hip-hinge-feel = Sie spüren, wie das Gesäß arbeitet. Sie spüren eine sanfte Dehnung hinten an den Oberschenkeln.
movement-hip-hinge-faults = Der Rücken bleibt gerade, vom Kopf bis zu den Hüften.

movement-hip-hinge-shallow-name = Kleine Verbeugung aus der Hüfte
movement-hip-hinge-shallow-set-up = Stehen Sie aufrecht, die Füße unter den Hüften. Halten Sie sich mit beiden Händen fest, an einem Geländer oder einer festen Arbeitsplatte.
movement-hip-hinge-shallow-how = Beugen Sie die Knie ein wenig. Schieben Sie die Hüften zurück, und verbeugen Sie sich nur ein wenig. Der Rücken bleibt gerade. Schieben Sie die Hüften vor, und stehen Sie aufrecht.
movement-hip-hinge-shallow-feel = Sie spüren, wie das Gesäß und der untere Rücken ein wenig arbeiten.
movement-hip-hinge-shallow-faults = Die Verbeugung bleibt klein. Der Rücken bleibt gerade, vom Kopf bis zu den Hüften.

movement-hip-hinge-stick-name = Verbeugung mit einem Stab am Rücken
movement-hip-hinge-stick-set-up = Stehen Sie aufrecht, ein Geländer oder eine feste Arbeitsplatte in Reichweite. Halten Sie den Stab am Rücken entlang. Die Hand ist hinter der Taille, die andere hinter dem Nacken. Der Stab berührt Kopf, oberen Rücken und Steißbein.
movement-hip-hinge-stick-how = Beugen Sie die Knie ein wenig. Schieben Sie die Hüften zurück, und verbeugen Sie sich nach vorn. Der Stab bleibt an Kopf, oberem Rücken und Steißbein. Schieben Sie die Hüften vor, und stehen Sie aufrecht.
movement-hip-hinge-stick-feel = Sie spüren, wie das Gesäß und der Rücken arbeiten. Sie spüren eine sanfte Dehnung hinten an den Oberschenkeln.
movement-hip-hinge-stick-faults = Der Stab berührt Sie auf dem ganzen Weg. Löst er sich, dann verbeugen Sie sich weniger.

movement-kneeling-weight-shift-name = Hüften zurück und hoch, im Knien
movement-kneeling-weight-shift-set-up = Legen Sie ein Kissen auf den Boden. Stellen Sie einen festen Stuhl davor. Knien Sie auf beiden Knien, und halten Sie sich am Stuhl fest.
movement-kneeling-weight-shift-how = Schieben Sie die Hüften ein wenig zurück, in Richtung Fersen. Kommen Sie dann hoch, bis Sie aufrecht knien. Die Hände bleiben am Stuhl.
movement-kneeling-weight-shift-feel = Sie spüren eine sanfte Dehnung vorn an den Knien. Beim Hochkommen spüren Sie, wie Oberschenkel und Gesäß arbeiten.
movement-kneeling-weight-shift-faults = Der Rücken bleibt gerade. Auf beiden Knien liegt gleich viel Gewicht.

movement-marching-name = Auf der Stelle gehen
movement-marching-set-up = Stehen Sie aufrecht. Halten Sie sich mit beiden Händen fest, an einem Geländer oder einer festen Arbeitsplatte. Verlagern Sie Ihr Gewicht auf das andere Bein.
movement-marching-how = Heben Sie das Knie vor sich. Der Unterschenkel hängt. Stellen Sie den Fuß langsam ab.
movement-marching-feel = Sie spüren, wie die Hüfte vorn arbeitet. Sie spüren, wie das Standbein Sie ruhig hält.
movement-marching-faults = Der Körper bleibt aufrecht, genau über dem Fuß, der steht.

movement-marching-high-name = Auf der Stelle gehen, Knie hoch
movement-marching-high-set-up = Stehen Sie aufrecht. Halten Sie sich mit beiden Händen fest, an einem Geländer oder einer festen Arbeitsplatte. Verlagern Sie Ihr Gewicht auf das andere Bein.
movement-marching-high-how = Heben Sie das Knie vor sich, höher als die Hüfte. Der Unterschenkel hängt. Stellen Sie den Fuß langsam ab.
movement-marching-high-feel = Sie spüren, wie Hüfte und Oberschenkel vorn arbeiten.
movement-marching-high-faults = Der Körper bleibt aufrecht. Lehnen Sie sich nicht zurück.

movement-marching-low-name = Auf der Stelle gehen, Knie niedrig
movement-marching-low-set-up = Stehen Sie aufrecht. Halten Sie sich mit beiden Händen fest, an einem Geländer oder einer festen Arbeitsplatte. Verlagern Sie Ihr Gewicht auf das andere Bein.
movement-marching-low-how = Heben Sie das Knie nur ein wenig vor sich. Der Unterschenkel hängt. Stellen Sie den Fuß langsam ab.
movement-marching-low-feel = Sie spüren, wie die Hüfte vorn ein wenig arbeitet.
movement-marching-low-faults = Der Körper bleibt aufrecht, gerade über dem Fuß, der steht.

movement-mini-squat-name = Kleine Kniebeuge, im Stehen
movement-mini-squat-set-up = Stehen Sie aufrecht, die Füße unter den Hüften. Halten Sie sich mit beiden Händen fest, an einem Geländer oder einer festen Arbeitsplatte.
movement-mini-squat-how = Beugen Sie die Knie ein wenig, als ob Sie sich setzen. Die Fersen bleiben am Boden. Drücken Sie sich hoch, bis Sie aufrecht stehen.
movement-mini-squat-feel = Sie spüren, wie die Oberschenkel vorn arbeiten.
movement-mini-squat-faults = Die Knie zeigen in dieselbe Richtung wie die Zehen.

movement-mini-squat-deeper-name = Tiefere Kniebeuge, im Stehen
movement-mini-squat-deeper-set-up = Stehen Sie aufrecht vor einem Geländer oder einer festen Arbeitsplatte. Stellen Sie die Füße unter die Hüften. Halten Sie sich mit beiden Händen fest.
movement-mini-squat-deeper-how = Schieben Sie die Hüften zurück. Beugen Sie die Knie deutlich, als ob Sie sich setzen. Die Fersen bleiben am Boden. Drücken Sie sich hoch, bis Sie aufrecht stehen.
movement-mini-squat-deeper-feel = Sie spüren, wie die Oberschenkel vorn und das Gesäß arbeiten.
movement-mini-squat-deeper-faults = Die Knie zeigen in dieselbe Richtung wie die Zehen. Auf beiden Füßen liegt gleich viel Gewicht.

movement-one-leg-stance-name = Auf einem Bein stehen
movement-one-leg-stance-set-up = Stehen Sie aufrecht. Halten Sie sich mit beiden Händen fest, an einem Geländer oder einer festen Arbeitsplatte. Dieser Halt bleibt die ganze Zeit in Reichweite.
movement-one-leg-stance-how = Verlagern Sie Ihr Gewicht auf den Fuß. Heben Sie den anderen Fuß ein wenig vom Boden. Stehen Sie still. Halten Sie sich nur so leicht fest, wie es sicher ist. Bleiben Sie so, bis die Zeit um ist.
movement-one-leg-stance-feel = Sie spüren, wie Fuß und Knöchel sich ein wenig bewegen. So bleiben Sie im Gleichgewicht. Sie spüren, wie die Hüfte seitlich arbeitet.
movement-one-leg-stance-faults = Der Körper bleibt aufrecht, und beide Hüften bleiben gleich hoch. Schauen Sie auf etwas gerade vor Ihnen.

movement-semi-tandem-stance-name = Ein Fuß ein wenig vorn
movement-semi-tandem-stance-set-up = Stehen Sie aufrecht. Halten Sie sich an einem Geländer oder einer festen Arbeitsplatte fest. Dieser Halt bleibt in Reichweite. Stellen Sie die Füße zusammen. Stellen Sie dann den Fuß um eine halbe Fußlänge vor.
movement-semi-tandem-stance-how = Stehen Sie still. Auf beiden Füßen liegt gleich viel Gewicht. Halten Sie sich nur so leicht fest, wie es sicher ist. Bleiben Sie so, bis die Zeit um ist.
movement-semi-tandem-stance-feel = Sie spüren, wie Füße und Knöchel sich ein wenig bewegen. So bleiben Sie im Gleichgewicht.
movement-semi-tandem-stance-faults = Der Körper bleibt aufrecht. Schauen Sie auf etwas gerade vor Ihnen.

movement-sit-to-stand-name = Vom Stuhl aufstehen
movement-sit-to-stand-set-up = Stellen Sie einen festen, hohen Stuhl an eine Wand. Setzen Sie sich nah an die Vorderkante. Stellen Sie die Füße flach, ein wenig nach hinten. Legen Sie die Hände auf die Oberschenkel.
movement-sit-to-stand-how = Beugen Sie sich ein wenig vor. Drücken Sie beide Füße in den Boden, und stehen Sie auf. Stehen Sie aufrecht. Beugen Sie die Knie, und setzen Sie sich langsam hin.
movement-sit-to-stand-feel = Sie spüren, wie die Oberschenkel vorn und das Gesäß arbeiten.
movement-sit-to-stand-faults = Auf beiden Füßen liegt gleich viel Gewicht.

movement-sit-to-stand-arms-name = Aufstehen mit den Händen
movement-sit-to-stand-arms-set-up = Stellen Sie einen festen, hohen Stuhl mit Armlehnen an eine Wand. Setzen Sie sich nah an die Vorderkante. Stellen Sie die Füße flach, ein wenig nach hinten. Legen Sie die Hände auf die Armlehnen.
movement-sit-to-stand-arms-how = Beugen Sie sich ein wenig vor. Drücken Sie sich mit den Händen und beiden Füßen hoch, bis Sie aufrecht stehen. Greifen Sie nach hinten zum Stuhl, und setzen Sie sich langsam hin.
movement-sit-to-stand-arms-feel = Sie spüren, wie Oberschenkel und Gesäß arbeiten. Sie spüren, wie die Arme helfen.
movement-sit-to-stand-arms-faults = Auf beiden Füßen liegt gleich viel Gewicht.

movement-sit-to-stand-low-name = Von einem niedrigeren Stuhl aufstehen
movement-sit-to-stand-low-set-up = Stellen Sie einen niedrigeren, festen Stuhl an eine Wand. Setzen Sie sich nah an die Vorderkante, die Hände auf den Oberschenkeln. Stellen Sie die Füße flach, ein wenig nach hinten.
movement-sit-to-stand-low-how = Beugen Sie sich ein wenig vor. Drücken Sie beide Füße in den Boden, und stehen Sie auf. Stehen Sie aufrecht. Beugen Sie die Knie, und setzen Sie sich langsam hin.
movement-sit-to-stand-low-feel = Sie spüren, wie die Oberschenkel vorn und das Gesäß arbeiten.
movement-sit-to-stand-low-faults = Auf beiden Füßen liegt gleich viel Gewicht. Der Weg nach unten bleibt langsam.

movement-standing-abduction-name = Bein zur Seite heben, im Stehen
movement-standing-abduction-set-up = Stehen Sie aufrecht. Halten Sie sich mit beiden Händen fest, an einem Geländer oder einer festen Arbeitsplatte. Verlagern Sie Ihr Gewicht auf das andere Bein.
movement-standing-abduction-how = Heben Sie das Bein nach außen zur Seite. Das Knie bleibt gestreckt. Halten Sie. Senken Sie es langsam.
movement-standing-abduction-feel = Sie spüren, wie die Hüfte außen arbeitet.
movement-standing-abduction-faults = Der Körper bleibt aufrecht. Die Zehen zeigen weiter nach vorn.

movement-standing-abduction-band-name = Bein zur Seite heben mit Band, im Stehen
movement-standing-abduction-band-set-up = Setzen Sie sich, und legen Sie das Band um beide Knöchel. Stellen Sie sich dann aufrecht hin. Halten Sie sich mit beiden Händen fest, an einem Geländer oder einer festen Arbeitsplatte. Verlagern Sie Ihr Gewicht auf das andere Bein.
movement-standing-abduction-band-how = Heben Sie das Bein gegen das Band nach außen zur Seite. Das Knie bleibt gestreckt. Halten Sie. Senken Sie es langsam.
movement-standing-abduction-band-feel = Sie spüren, wie die Hüfte außen arbeitet.
movement-standing-abduction-band-faults = Der Körper bleibt aufrecht. Die Zehen zeigen weiter nach vorn.

movement-standing-adduction-name = Bein vorn überkreuzen, im Stehen
movement-standing-adduction-set-up = Stehen Sie aufrecht neben einem Geländer oder einer festen Arbeitsplatte. Halten Sie sich mit der anderen Hand daran fest. Verlagern Sie Ihr Gewicht auf das andere Bein.
movement-standing-adduction-how = Heben Sie die Zehen knapp vom Boden. Führen Sie das Bein vor dem anderen vorbei. Das Knie bleibt gestreckt. Halten Sie. Holen Sie das Bein langsam zurück.
movement-standing-adduction-feel = Sie spüren, wie der Oberschenkel innen arbeitet.
movement-standing-adduction-faults = Der Körper bleibt aufrecht, und die Hüften zeigen nach vorn.

movement-standing-extension-name = Bein nach hinten, im Stehen
movement-standing-extension-set-up = Stehen Sie aufrecht. Halten Sie sich mit beiden Händen fest, an einem Geländer oder einer festen Arbeitsplatte. Verlagern Sie Ihr Gewicht auf das andere Bein.
movement-standing-extension-how = Führen Sie das Bein gerade nach hinten. Das Knie bleibt gestreckt. Halten Sie. Holen Sie das Bein langsam wieder unter sich.
movement-standing-extension-feel = Sie spüren, wie das Gesäß arbeitet.
movement-standing-extension-faults = Der Körper bleibt aufrecht, und der Rücken bleibt ruhig.

movement-standing-extension-band-name = Bein nach hinten mit Band, im Stehen
movement-standing-extension-band-set-up = Setzen Sie sich, und legen Sie das Band um beide Knöchel. Stellen Sie sich dann aufrecht hin. Halten Sie sich mit beiden Händen fest, an einem Geländer oder einer festen Arbeitsplatte. Verlagern Sie Ihr Gewicht auf das andere Bein.
movement-standing-extension-band-how = Führen Sie das Bein gegen das Band gerade nach hinten. Das Knie bleibt gestreckt. Halten Sie. Holen Sie das Bein langsam wieder unter sich.
movement-standing-extension-band-feel = Sie spüren, wie das Gesäß arbeitet.
movement-standing-extension-band-faults = Der Körper bleibt aufrecht, und der Rücken bleibt ruhig.

movement-standing-knee-curl-name = Ferse nach hinten hoch, im Stehen
movement-standing-knee-curl-set-up = Stehen Sie aufrecht. Halten Sie sich mit beiden Händen fest, an einem Geländer oder einer festen Arbeitsplatte. Verlagern Sie Ihr Gewicht auf das andere Bein.
movement-standing-knee-curl-how = Beugen Sie das Knie, und heben Sie die Ferse hinter sich. Der Oberschenkel zeigt weiter nach unten. Halten Sie. Senken Sie den Fuß langsam.
movement-standing-knee-curl-feel = Sie spüren, wie der Oberschenkel hinten arbeitet.
movement-standing-knee-curl-faults = Die Hüften bleiben gestreckt, und die Knie bleiben nebeneinander.

movement-standing-knee-curl-cuff-name = Ferse nach hinten hoch mit Gewicht
movement-standing-knee-curl-cuff-set-up = Setzen Sie sich, und befestigen Sie das Gewicht knapp über dem Knöchel. Stellen Sie sich dann aufrecht hin. Halten Sie sich mit beiden Händen fest, an einem Geländer oder einer festen Arbeitsplatte. Verlagern Sie Ihr Gewicht auf das andere Bein.
movement-standing-knee-curl-cuff-how = Beugen Sie das Knie, und heben Sie die Ferse hinter sich. Der Oberschenkel zeigt weiter nach unten. Halten Sie. Senken Sie den Fuß langsam.
movement-standing-knee-curl-cuff-feel = Sie spüren, wie der Oberschenkel hinten arbeitet.
movement-standing-knee-curl-cuff-faults = Die Hüften bleiben gestreckt, und die Knie bleiben nebeneinander. Der Weg nach unten ist so langsam wie der Weg nach oben.

movement-standing-straight-hip-flexion-name = Gestrecktes Bein nach vorn, im Stehen
movement-standing-straight-hip-flexion-set-up = Stehen Sie aufrecht. Halten Sie sich mit beiden Händen fest, an einem Geländer oder einer festen Arbeitsplatte. Verlagern Sie Ihr Gewicht auf das andere Bein.
movement-standing-straight-hip-flexion-how = Heben Sie das Bein gerade vor sich hoch. Das Knie bleibt gestreckt. Halten Sie. Senken Sie es langsam.
movement-standing-straight-hip-flexion-feel = Sie spüren, wie Hüfte und Oberschenkel vorn arbeiten.
movement-standing-straight-hip-flexion-faults = Der Körper bleibt aufrecht. Lehnen Sie sich nicht zurück.

movement-step-up-name = Auf eine Stufe steigen
movement-step-up-set-up = Stellen Sie sich vor eine niedrige, feste Stufe. Halten Sie sich am Geländer fest. Stellen Sie den ganzen Fuß auf die Stufe.
movement-step-up-how = Drücken Sie den Fuß auf die Stufe, und steigen Sie hoch. Stehen Sie aufrecht. Holen Sie den anderen Fuß daneben. Steigen Sie langsam hinunter, den anderen Fuß zuerst.
movement-step-up-feel = Sie spüren im Bein auf der Stufe, wie der Oberschenkel vorn und das Gesäß arbeiten.
movement-step-up-faults = Die Arbeit bleibt im Bein auf der Stufe.

movement-step-up-high-name = Auf eine höhere Stufe steigen
movement-step-up-high-set-up = Stellen Sie sich vor eine höhere, feste Stufe. Halten Sie sich am Geländer fest. Stellen Sie den ganzen Fuß auf die Stufe.
movement-step-up-high-how = Drücken Sie den Fuß auf die Stufe, und steigen Sie hoch. Stehen Sie aufrecht. Holen Sie den anderen Fuß daneben. Steigen Sie langsam hinunter, den anderen Fuß zuerst.
movement-step-up-high-feel = Sie spüren im Bein auf der Stufe, wie der Oberschenkel vorn und das Gesäß arbeiten.
movement-step-up-high-faults = Die Arbeit bleibt im Bein auf der Stufe. Das Knie bleibt in einer Linie mit den Zehen.

movement-step-up-low-name = Auf eine niedrige Stufe steigen
movement-step-up-low-set-up = Stellen Sie sich vor Ihre niedrigste feste Stufe. Halten Sie sich am Geländer fest. Stellen Sie den ganzen Fuß auf die Stufe.
movement-step-up-low-how = Drücken Sie den Fuß auf die Stufe, und steigen Sie hoch. Stehen Sie aufrecht. Holen Sie den anderen Fuß daneben. Steigen Sie langsam hinunter, den anderen Fuß zuerst.
movement-step-up-low-feel = Sie spüren im Bein auf der Stufe, wie der Oberschenkel vorn arbeitet.
movement-step-up-low-faults = Die Arbeit bleibt im Bein auf der Stufe.

movement-tandem-stance-name = Ein Fuß vor dem anderen
movement-tandem-stance-set-up = Stehen Sie aufrecht neben einem Geländer oder einer festen Arbeitsplatte. Halten Sie sich fest. Stellen Sie den Fuß genau vor den anderen, Ferse an Zehen.
movement-tandem-stance-how = Stehen Sie still. Auf beiden Füßen liegt gleich viel Gewicht. Halten Sie sich nur so leicht fest, wie es sicher ist. Bleiben Sie so, bis die Zeit um ist.
movement-tandem-stance-feel = Sie spüren, wie Füße und Knöchel sich ein wenig bewegen. So bleiben Sie im Gleichgewicht.
movement-tandem-stance-faults = Schauen Sie auf etwas gerade vor Ihnen.

movement-walking-name = Gehen
movement-walking-set-up = Ziehen Sie feste Schuhe an. Nehmen Sie Ihre Gehhilfe, wenn Sie eine bekommen haben.
movement-walking-how = Gehen Sie auf ebenem Boden in ruhigem Tempo. Machen Sie kurze, gleichmäßige Schritte. Setzen Sie die Ferse zuerst auf. Kehren Sie um, bevor Sie müde sind.
movement-walking-feel = Sie spüren, wie die Beine arbeiten und der Atem etwas schneller geht. Sie können beim Gehen noch sprechen.
movement-walking-faults = Behalten Sie genug Kraft für den Rückweg.

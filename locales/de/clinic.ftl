### Die Befehlszeile der Klinik.

clinic-passphrase = Passphrase:
clinic-passphrase-again = Noch einmal dieselbe:
clinic-written = Geschrieben: { $path }
clinic-lift-without-right = Achtung: { $who } darf Vorsichtsregeln nicht aufheben. Diese Aufhebung wird keine Wirkung haben, und so liest es auch die Patientin oder der Patient.
clinic-lift-no-effect = Keine Wirkung: { $by } darf die Vorsichtsregel { $id } nicht aufheben. { $who ->
    [none] Es ist nicht bekannt, wer sie festgelegt hat.
   *[other] Festgelegt von { $who }.
}
clinic-unknown-family = Achtung: Keine Übung der Bibliothek gehört zur Familie { $id }. Diese Vorsichtsregel hält nichts zurück, außer eine eigene Übung von Ihnen gehört dazu.
clinic-check-clean = Geprüft: Nichts in diesem Plan widerspricht einer Vorsichtsregel, an keinem Tag.
clinic-check-contradictions = { $n ->
    [one] 1 Widerspruch. Dieser Plan kann nicht signiert werden.
   *[other] { $n } Widersprüche. Dieser Plan kann nicht signiert werden.
}
clinic-check-problems = { $n ->
    [one] 1 Problem. Beheben Sie es zuerst; danach wird jeder Tag geprüft.
   *[other] { $n } Probleme. Beheben Sie sie zuerst; danach wird jeder Tag geprüft.
}

contradiction = { $item } ({ $movement }) ist in Phase { $stage } vorgesehen, von { $from } bis einschließlich { $through }. { $reason }
contradiction-undated = { $item } ({ $movement }) ist in Phase { $stage } vorgesehen, deren Tag 0 nicht bekannt ist. { $reason }
contradiction-precaution = Vorsichtsregel { $precaution }, festgelegt von { $who }: { $why }
near-limit = Nahe an einer Grenze: { $item } ({ $movement }), Vorsichtsregel { $precaution }. { $measured }
measured = { $side }: { $what } erreicht { $reaches }; erlaubt { $until }: { $allowed }.
measured-moment = Moment bei { $what }
measured-weight = Belastung
on-the-left = Links
on-the-right = Rechts
# Gelenk und Bewegung stehen ohne Artikel, damit sie in jeden Satz passen.
joint-motion = { $motion } ({ $joint })
joint-hip = Hüfte
joint-knee = Knie
joint-ankle = Sprunggelenk
joint-shoulder = Schulter
joint-elbow = Ellbogen
joint-trunk = Rumpf
motion-flexion = Flexion
motion-extension = Extension
motion-abduction = Abduktion
motion-adduction = Adduktion
motion-internal-rotation = Innenrotation
motion-external-rotation = Außenrotation
motion-dorsiflexion = Dorsalextension
motion-plantarflexion = Plantarflexion
motion-side-bending = Seitneigung
motion-twisting = Drehung

contradiction-would-pass = Zulässig wären: { $movements }.
until-week = bis einschließlich Woche { $n }
until-day = bis einschließlich { $day }
until-lifted = bis zur Aufhebung
numbers-of = { $of } ({ $movement }; Familie { $family }): { $position }
numbers-range = { $side }, { $what }: { $from }° bis { $to }°, { $drive }
numbers-action = { $side }, Muskeln für { $what }: { $drive }
numbers-moment = { $side }, Moment bei { $what }: { $moment } N·m/kg, { $drive } (Anteil der Schwerkraft, geschätzt)
numbers-weight = Gewicht, in Prozent des Körpers: links { $left }, rechts { $right }
numbers-bends-spine = beugt die Wirbelsäule
numbers-twists-spine = dreht die Wirbelsäule
numbers-resistance = äußerer Widerstand
drive-active = aktiv
drive-isometric = isometrisch
drive-assisted = assistiv
drive-passive = passiv
seat-low = Sitz tiefer als das Knie
seat-knee = Sitz auf Kniehöhe
seat-high = Sitz höher als das Knie

show-plan = Plan { $plan }, Version { $revision }, für { $called }, von: { $clinic }
show-days = Ansehen bis { $review }; letzter Tag { $last }
show-letter-code = Brief-Code: { $code }
show-signers = Liste der Unterzeichnenden { $number }:
show-precautions = Vorsichtsregeln ({ $n }):
show-items = Übungen ({ $n }):
show-opens = erlaubt ab { $day }
show-until-lifted = bis zur Aufhebung

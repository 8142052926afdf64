### Die Wochen des Plans als Linie.

weeks-title = Ihre Wochen
weeks-from-to = Wochen { $first } bis { $last }
weeks-now = Diese Woche
weeks-gates = { $n ->
    [one] 1 Übung neu erlaubt
   *[other] { $n } Übungen neu erlaubt
}

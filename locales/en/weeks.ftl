### The weeks of the plan as a line.

weeks-title = Your weeks
weeks-from-to = Weeks { $first } to { $last }
weeks-now = This week
weeks-gates = { $n ->
    [one] 1 exercise opens
   *[other] { $n } exercises open
}

### The weeks of the plan as a line.

weeks-title = Your weeks
weeks-from-to = Weeks { $first } to { $last }
weeks-now = This week

### One exercise; what was done of it without the program; stopping it.

item-set-up = Get ready
item-how = How to do it
item-feel = What you feel
item-watch = Keep an eye on this
item-note = From your clinic
item-begin = Begin this one

item-did = I did it without the program
item-rounds = How many rounds
item-each = How many in each round (times, breaths, minutes or steps)
item-fewer = One fewer
item-more = One more
item-when = When was it?
item-today = Today
item-yesterday = Yesterday
item-from-memory = It is marked as from memory.
item-write = Write it down

item-told-to-stop = My clinic told me to stop this
item-stop-sure = It will not be offered any more, until you say that your clinic allows it again.
item-stop-yes = Yes, stop it
item-stop-no = No, leave it as it is
item-take-up = My clinic allows this again
item-take-up-sure = It will be offered again, if your clinic's rules allow it.
item-take-up-yes = Yes, offer it again

### Un ejercicio; lo que se hizo de él sin el programa; dejarlo.

item-set-up = Prepárese
item-how = Cómo se hace
item-feel = Lo que siente
item-watch = Fíjese en esto
item-note = De su clínica
item-begin = Empezar este

item-did = Lo hice sin el programa
item-rounds = Cuántas series
item-each = Cuánto en cada serie (veces, respiraciones, minutos o pasos)
item-fewer = Uno menos
item-more = Uno más
item-when = ¿Cuándo fue?
item-today = Hoy
item-yesterday = Ayer
item-from-memory = Queda marcado como anotado de memoria.
item-write = Anotarlo

item-told-to-stop = Mi clínica me dijo que dejara esto
item-stop-sure = No se le ofrecerá más, hasta que usted diga que su clínica lo permite otra vez.
item-stop-yes = Sí, dejarlo
item-stop-no = No, que siga como está
item-take-up = Mi clínica lo permite otra vez
item-take-up-sure = Se le ofrecerá otra vez, si las reglas de su clínica lo permiten.
item-take-up-yes = Sí, ofrecerlo otra vez

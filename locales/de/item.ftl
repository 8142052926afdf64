### Eine Übung; was davon ohne das Programm gemacht wurde; sie beenden.

item-set-up = Vorbereitung
item-how = So geht es
item-feel = Was Sie spüren
item-watch = Achten Sie darauf
item-note = Von Ihrer Klinik
item-begin = Übung anfangen

item-did = Ich habe es ohne das Programm gemacht
item-rounds = Wie viele Runden
item-each = Wie viele in jeder Runde (Wieder{"\u00AD"}holungen, Atemzüge, Minuten oder Schritte)
item-fewer = Eins weniger
item-more = Eins mehr
item-when = Wann war das?
item-today = Heute
item-yesterday = Gestern
item-from-memory = Es wird vermerkt: aus dem Gedächtnis.
item-write = Auf{"\u00AD"}schreiben

item-told-to-stop = Meine Klinik sagt: nicht mehr machen
item-stop-sure = Das Programm bietet diese Übung nicht mehr an. Das gilt, bis Sie sagen, dass Ihre Klinik sie wieder erlaubt.
item-stop-yes = Ja, nicht mehr machen
item-stop-no = Nein, so lassen
item-take-up = Meine Klinik erlaubt das wieder
item-take-up-sure = Das Programm bietet diese Übung wieder an, wenn die Regeln Ihrer Klinik es erlauben.
item-take-up-yes = Ja, wieder anbieten

### Dosis que suben y bajan un nivel, dentro de lo que firmó la clínica.

steps-at = Nivel { $step } de { $steps }.
steps-at-after-break = Hoy más ligero, después de su pausa. Luego, nivel { $step } de { $steps }.
steps-offer = { $name }: su clínica permite subir un nivel. La próxima vez sería así: { $dose }
steps-ask = ¿Quiere subir un nivel?
steps-yes = Sí, subir un nivel
steps-not-now = Ahora no
steps-up-done = Bien, un nivel más. Desde la próxima vez, { $name }: { $dose }
steps-kept = De acuerdo. { $name } se queda como está: { $dose }
steps-down = Bajar un nivel
steps-down-sure = Puede bajar cuando quiera. Solo vuelve a subir según la regla de su clínica.
steps-down-yes = Sí, bajar un nivel
steps-down-no = No, dejarlo como está
steps-down-done = Un nivel menos. Desde la próxima vez, { $name }: { $dose }
steps-down-hurt = Dolió, así que baja un nivel. Desde la próxima vez, { $name }: { $dose }

ask-step = { $offer } ¿Quiere subir un nivel? sí o no
steps-how-up = Para subir un nivel, escriba: sendaluna step up { $item }

ask-pain-morning = ¿Cuánto le dolía esta mañana al despertar? 0 (nada) a 10 (lo peor que pueda imaginar)
before-morning = ¿Cuánto le dolía esta mañana al despertar?
morning-rose = Esta mañana le dolía más que ayer antes de los ejercicios. Dígaselo a su clínica.
morning-stepped = { $name } baja hoy un nivel: { $dose }

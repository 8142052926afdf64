### Dosis que suben y bajan un paso, dentro de lo que firmó la clínica.

steps-at = Paso { $step } de { $steps }.
steps-at-after-break = Hoy más ligero, después de su pausa. Después, paso { $step } de { $steps }.
steps-offer = { $name }: su clínica permite subir un paso. { $dose }
steps-ask = ¿Quiere hacerlo?
steps-yes = Sí, subir un paso
steps-not-now = Ahora no
steps-up-done = Bien, un paso más. Desde la próxima vez, { $name }: { $dose }
steps-kept = De acuerdo. { $name } se queda como está: { $dose }
steps-down = Bajar un paso
steps-down-sure = Puede bajar cuando quiera. Solo vuelve a subir según la regla de su clínica.
steps-down-yes = Sí, bajar un paso
steps-down-no = No, dejarlo como está
steps-down-done = Un paso menos. Desde la próxima vez, { $name }: { $dose }
steps-down-hurt = Dolió, así que baja un paso. Desde la próxima vez, { $name }: { $dose }

ask-step = { $offer } ¿Quiere hacerlo? sí o no
steps-how-up = Para subir un paso, escriba: sendaluna step up { $item }

ask-pain-morning = ¿Cuánto le dolía esta mañana al despertar? 0 (nada) a 10 (lo peor que pueda imaginar)
before-morning = ¿Cuánto le dolía esta mañana al despertar?
morning-rose = Esta mañana le dolía más que ayer antes de los ejercicios. Dígaselo a su clínica.
morning-stepped = { $name } baja hoy un paso: { $dose }

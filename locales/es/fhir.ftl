### El informe como documento FHIR: su título, sus encabezados y cómo se llama cada observación.

fhir-type = Informe sobre los ejercicios en casa
fhir-title = Ejercicios en casa: { $called }, del { $from } al { $through }
fhir-for = Para { $clinic }.
fhir-patient = { $called }, año de nacimiento { $born }
fhir-program = Programa que guía los ejercicios en casa
fhir-when = Cuándo
fhir-what = Qué

fhir-flags = Lo que pide una llamada o hablarlo
fhir-flags-none = Nada que pida una llamada ni hablarlo.

fhir-done = Días y ejercicios
fhir-days = Días, contando como debidas las pausas que declaró el paciente
fhir-days-without-breaks = Días, sin las pausas que declaró el paciente
fhir-exercise = { $name }: series hechas de series pedidas
fhir-prescribed = Pedidas
fhir-offered = Ofrecidas, a demanda

fhir-feeling = Dolor y esfuerzo, de 0 a 10
fhir-answer = Respuesta
fhir-pain-before = Dolor antes de los ejercicios, en reposo
fhir-pain-during = Dolor durante los ejercicios
fhir-pain-after = Dolor después de los ejercicios
fhir-pain-next-morning = Dolor a la mañana siguiente
fhir-during = Durante: { $name }
fhir-distress = Malestar visto por quien ayuda, preguntado en lugar de una cifra de dolor
fhir-distress-none = Ninguno
fhir-distress-some = Algo
fhir-distress-much = Mucho
fhir-helper = Alguien que ayuda en casa
fhir-effort = Cuánto costó la sesión: 0 como descansar, 10 todas sus fuerzas

fhir-tests = Pruebas en casa
fhir-test = Prueba
fhir-result = Resultado
fhir-verdict = Lo que dice la tabla
fhir-chair-stand = Levantarse de la silla en 30 segundos
fhir-chair-stand-arms = Levantarse de la silla en 30 segundos, empujando con los brazos
fhir-timed-up-and-go = Levantarse y andar, con tiempo
fhir-four-stage-balance = Equilibrio en cuatro posturas
fhir-men = Hombres
fhir-women = Mujeres
fhir-below-average = Menos de esto está por debajo de la media (CDC STEADI).
fhir-no-norm-with-arms = Sin norma: la tabla es para levantarse sin los brazos (CDC STEADI).
fhir-stance-side-by-side = Pies juntos
fhir-stance-semi-tandem = Un pie medio por delante del otro
fhir-stance-tandem = Talón con punta
fhir-stance-one-leg = Sobre una pierna
fhir-held = { $stance }: { $held }
fhir-not-tried = No se intentó

fhir-codes = Sobre los códigos
fhir-codes-text = Donde hay un código de LOINC junto a un texto, el texto es lo que se preguntó o se hizo, y el código puede decir menos. LOINC pide este aviso:
fhir-unit-score = de 0 a 10
fhir-unit-sets = series
fhir-unit-days = días
fhir-unit-stands = veces de pie en 30 segundos
fhir-unit-seconds = s

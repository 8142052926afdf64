### The report as a FHIR document: its title, its heads, and what each observation is called.

fhir-type = Report on exercises at home
fhir-title = Exercises at home: { $called }, { $from } to { $through }
fhir-for = For { $clinic }.
fhir-patient = { $called }, born { $born }
fhir-program = Program that leads exercises at home
fhir-when = When
fhir-what = What

fhir-flags = What needs a call or a talk
fhir-flags-none = Nothing that needs a call or a talk.

fhir-done = Days and exercises
fhir-days = Days, with breaks that the patient declared counted as due
fhir-days-without-breaks = Days, without breaks that the patient declared
fhir-exercise = { $name }: sets done of sets prescribed
fhir-prescribed = Prescribed
fhir-offered = Offered, as needed

fhir-feeling = Pain and effort, 0 to 10
fhir-answer = Answer
fhir-pain-before = Pain before the exercises, at rest
fhir-pain-during = Pain during the exercises
fhir-pain-after = Pain after the exercises
fhir-pain-next-morning = Pain the next morning
fhir-during = During: { $name }
fhir-distress = Distress seen by a helper, asked in place of a figure for pain
fhir-distress-none = None
fhir-distress-some = Some
fhir-distress-much = Much
fhir-helper = A helper at home
fhir-effort = How hard the session was: 0 like resting, 10 all you have

fhir-tests = Tests at home
fhir-test = Test
fhir-result = Result
fhir-verdict = What the table says
fhir-chair-stand = 30-second chair stand
fhir-chair-stand-arms = 30-second chair stand, pushing up with the arms
fhir-timed-up-and-go = Timed up and go
fhir-four-stage-balance = Four-stage balance
fhir-men = Men
fhir-women = Women
fhir-below-average = Fewer than this is below average (CDC STEADI).
fhir-no-norm-with-arms = No norm: the table is for standing up without the arms (CDC STEADI).
fhir-stance-side-by-side = Feet side by side
fhir-stance-semi-tandem = One foot half in front of the other
fhir-stance-tandem = Heel to toe
fhir-stance-one-leg = On one leg
fhir-held = { $stance }: { $held }
fhir-not-tried = Not tried

fhir-codes = About the codes
fhir-codes-text = Where a code of LOINC stands beside a text, the text is what was asked or done, and the code may say less. LOINC asks for this notice:
fhir-unit-score = 0 to 10
fhir-unit-sets = sets
fhir-unit-days = days
fhir-unit-stands = stands in 30 seconds
fhir-unit-seconds = s

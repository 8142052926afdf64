### Der Bericht als FHIR-Dokument: Titel, Überschriften und wie jede Beobachtung heißt.

fhir-type = Bericht über Übungen zu Hause
fhir-title = Übungen zu Hause: { $called }, { $from } bis { $through }
fhir-for = Für: { $clinic }.
fhir-patient = { $called }, geboren { $born }
fhir-program = Programm, das Übungen zu Hause anleitet
fhir-when = Wann
fhir-what = Was

fhir-flags = Was einen Anruf oder ein Gespräch braucht
fhir-flags-none = Nichts, was einen Anruf oder ein Gespräch braucht.

fhir-done = Tage und Übungen
fhir-days = Tage, selbst gemeldete Unterbrechungen als fällig gezählt
fhir-days-without-breaks = Tage, ohne selbst gemeldete Unterbrechungen
fhir-exercise = { $name }: gemachte von verordneten Sätzen
fhir-prescribed = Verordnet
fhir-offered = Angeboten, bei Bedarf

fhir-feeling = Schmerz und Anstrengung, 0 bis 10
fhir-answer = Antwort
fhir-pain-before = Schmerz vor den Übungen, in Ruhe
fhir-pain-during = Schmerz während der Übungen
fhir-pain-after = Schmerz nach den Übungen
fhir-pain-next-morning = Schmerz am Morgen danach
fhir-during = Während: { $name }
fhir-distress = Leiden, wie eine Hilfsperson es sieht, statt einer Schmerzzahl erfragt
fhir-distress-none = Keines
fhir-distress-some = Etwas
fhir-distress-much = Viel
fhir-helper = Eine Hilfsperson zu Hause
fhir-effort = Wie anstrengend die Übungseinheit war: 0 wie Ausruhen, 10 die ganze Kraft

fhir-tests = Tests zu Hause
fhir-test = Test
fhir-result = Ergebnis
fhir-verdict = Was die Tabelle sagt
fhir-chair-stand = 30-Sekunden-Aufstehtest
fhir-chair-stand-arms = 30-Sekunden-Aufstehtest, mit den Armen abgedrückt
fhir-timed-up-and-go = Timed-up-and-go-Test
fhir-four-stage-balance = Gleichgewichtstest in vier Stellungen
fhir-men = Männer
fhir-women = Frauen
fhir-below-average = Weniger als das liegt unter dem Durchschnitt (CDC STEADI).
fhir-no-norm-with-arms = Keine Norm: Die Tabelle gilt für das Aufstehen ohne Arme (CDC STEADI).
fhir-stance-side-by-side = Füße nebeneinander
fhir-stance-semi-tandem = Ein Fuß halb vor dem anderen
fhir-stance-tandem = Ferse an Zehen
fhir-stance-one-leg = Auf einem Bein
fhir-held = { $stance }: { $held }
fhir-not-tried = Nicht versucht

fhir-codes = Zu den Codes
fhir-codes-text = Wo ein LOINC-Code neben einem Text steht, sagt der Text, was gefragt oder getan wurde. Der Code sagt womöglich weniger. LOINC verlangt diesen Hinweis:
fhir-unit-score = 0 bis 10
fhir-unit-sets = Sätze
fhir-unit-days = Tage
fhir-unit-stands = Mal aufgestanden in 30 Sekunden
fhir-unit-seconds = s

### Mengen, die größer oder kleiner werden, so weit die Klinik es unterschrieben hat.

steps-at = Sie sind bei Menge { $step } von { $steps }.
steps-at-after-break = Heute weniger, nach Ihrer Unterbrechung. Danach sind Sie bei Menge { $step } von { $steps }.
steps-offer = { $name }: Ihre Klinik erlaubt jetzt etwas mehr. Insgesamt wäre das: { $dose }
steps-ask = Möchten Sie das?
steps-yes = Ja, etwas mehr
steps-not-now = Jetzt nicht
steps-up-done = Gut, etwas mehr. Ab dem nächsten Mal: { $name }. { $dose }
steps-kept = In Ordnung. Alles bleibt, wie es ist: { $name }. { $dose }
steps-down = Etwas weniger machen
steps-down-sure = Weniger machen dürfen Sie jederzeit. Mehr wird es erst wieder nach der Regel Ihrer Klinik.
steps-down-yes = Ja, etwas weniger
steps-down-no = Nein, so lassen
steps-down-done = Gut, etwas weniger. Ab dem nächsten Mal: { $name }. { $dose }
steps-down-hurt = Es hat wehgetan. Darum wird es etwas weniger. Ab dem nächsten Mal: { $name }. { $dose }

ask-step = { $offer } Möchten Sie das? ja oder nein
steps-how-up = Um etwas mehr zu machen, tippen Sie: sendaluna step up { $item }

ask-pain-morning = Wie stark waren die Schmerzen heute Morgen beim Aufwachen? 0 (keine) bis 10 (die schlimmsten, die Sie sich vorstellen können)
before-morning = Wie stark waren die Schmerzen heute Morgen beim Aufwachen?
morning-rose = Heute Morgen tat es mehr weh als gestern vor dem Üben. Sagen Sie es Ihrer Klinik.
morning-stepped = { $name }: heute etwas weniger. { $dose }

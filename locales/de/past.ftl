### Was die Patientin oder der Patient gemacht hat.

past-title = Was ich gemacht habe
past-legend-whole = Eine ganze Übungseinheit
past-legend-part = Ein Teil einer Übungseinheit
past-from-memory = Hohl: aus dem Gedächtnis
past-no-record = Ein Tag ohne Eintrag
past-gap = An manchen Tagen gibt es keinen Eintrag. Das ist in Ordnung. Machen Sie mit heute weiter.
past-press = Tippen Sie auf eine Woche, dann lesen Sie sie in Worten.
past-pain = Schmerzen
past-no-pain = Es sind noch keine Schmerzen aufgeschrieben.
past-pain-chart = Ihre Schmerzen von { $first } bis { $last }, als Linie. Die Tabelle sagt dasselbe.
past-pain-table = Schmerzen als Tabelle
past-effort = Wie anstrengend es war
past-effort-chart = Wie anstrengend Ihre Übungseinheiten waren, von { $first } bis { $last }, als Linie. Die Tabelle sagt dasselbe.
past-effort-table = Wie anstrengend es war, als Tabelle
past-clinic-sees = Was meine Klinik sehen wird
past-day = Tag
past-level = 0 bis 10

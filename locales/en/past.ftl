### What the patient did.

past-title = What I did
past-legend-whole = A whole session
past-legend-part = A part of a session
past-from-memory = Hollow: from memory
past-no-record = A day without a record
past-gap = Some days have no record. That is all right. Go on with today.
past-press = Press a week to read it in words.
past-pain = Pain
past-no-pain = No pain is written down yet.
past-pain-chart = Your pain from { $first } to { $last }, as a line. The table says the same.
past-pain-table = Pain as a table
past-effort = How hard it was
past-effort-chart = How hard your sessions were, from { $first } to { $last }, as a line. The table says the same.
past-effort-table = How hard it was, as a table
past-clinic-sees = What my clinic will see
past-day = Day
past-level = 0 to 10

### Problems in what a clinic writes. The place stands before each.

problem-missing = This is missing.
problem-out-of-bounds = { $value } is outside { $least } to { $most }{ $unit }.
problem-too-long = { $value } entries are too many; { $most } are allowed.
problem-empty-text = The text is empty.
problem-hidden-characters = The text holds invisible characters that could change how it is read.
problem-language-missing = The text is missing in { $lang }, a language of this plan.
problem-repeated-id = { $id } comes twice.
problem-unknown-id = There is no { $id }.
problem-weeks-reversed = The last week lies before the first.
problem-dates-reversed = The last day lies before the first.
problem-one-amount = Give exactly one of repetitions, breaths, minutes, steps.
problem-tempo-missing = Repetitions and breaths need a tempo.
problem-pain-order = The levels are not in rising order.
problem-counts-reversed = The greater number comes before the smaller.
problem-no-warning-signs = A plan needs warning signs.
problem-no-emergency-sign = A plan needs at least one sign for the emergency number.
problem-no-conditions = There are too few entries for this to mean something.
problem-one-most = Give exactly one of most_kg and most_percent.
problem-none-and-some = "None" and precautions contradict each other.
problem-joint-motion = The { $joint } has no { $motion }.
problem-not-a-key = This is not a key of the right kind.
problem-no-rights = A signer without rights can sign nothing.
problem-repeated-day = A day comes twice.
problem-zone-unknown = There is no time zone { $zone }.
problem-episode-differs = Side or day 0 of { $id } are not as in the statements.
problem-statement-none = No statement by someone who may set precautions. "None" is signed too.
problem-person-differs = A statement is for another person.
problem-other-format = This program writes and reads format 1.
problem-precaution-changed = The precaution { $id } has other content than before. Give it a new id.
problem-unknown-family = No exercise belongs to the family { $id }. There are: { $known }.
problem-not-a-number = This holds no telephone number.
problem-not-restated = The precaution { $id } of the file before was signed with a key that is no longer trusted. Have it stated again, under the same id and with the same content.

# After the most that is allowed: “outside 1 to 260 weeks”.
unit-weeks = weeks
unit-days = days
unit-characters = characters
unit-body-weight = % of body weight

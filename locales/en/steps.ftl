### Doses that step up and down, within what the clinic signed.

steps-at = Step { $step } of { $steps }.
steps-at-after-break = Smaller today, after your break. After that, step { $step } of { $steps }.
steps-offer = { $name }: your clinic allows one step up. { $dose }
steps-ask = Do you want that?
steps-yes = Yes, one step up
steps-not-now = Not now
steps-up-done = Good, one step up. From the next time, { $name }: { $dose }
steps-kept = All right. { $name } stays as it is: { $dose }
steps-down = One step down
steps-down-sure = You can make it smaller at any time. It goes up again only by your clinic's rule.
steps-down-yes = Yes, one step down
steps-down-no = No, leave it as it is
steps-down-done = One step down. From the next time, { $name }: { $dose }
steps-down-hurt = It hurt, so it goes one step down. From the next time, { $name }: { $dose }

ask-step = { $offer } Do you want that? yes or no
steps-how-up = To go one step up, type: sendaluna step up { $item }

ask-pain-morning = How much did it hurt this morning, when you woke up? 0 (none) to 10 (worst you can imagine)
before-morning = How much did it hurt this morning, when you woke up?
morning-rose = It hurt more this morning than before you exercised yesterday. Tell your clinic.
morning-stepped = { $name } goes one step down today: { $dose }

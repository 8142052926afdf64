### The first two minutes.

first-leaf = Page { $n } of { $of }
first-language = Your language
first-what-title = What this is
first-what = Sendaluna shows you the exercises in your clinic's plan: what to do today, and what you must not do yet.
first-stays = What you write down stays on this device. Nothing is sent.
first-always = The warning signs and the numbers to ring are always one tap away.
first-reading = Easy to read and to hear
first-go-on = Go on
first-done = Done
first-later = Later
first-back = Back

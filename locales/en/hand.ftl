### What goes back to the clinic, in the window.

hand-title = For your clinic
hand-intro = This is all that your clinic can read. Nothing is sent. You save it, and hand it over at your visit.
hand-figures = How it went
hand-exercises = Exercise by exercise
hand-own-words = Your own words
hand-no-words = You wrote nothing down in words.
hand-words-go = Let my own words go along
hand-record = Your whole record
hand-ask = What I want to ask my clinic
hand-save = Save for the clinic
hand-sealed = Only your clinic can open the sealed file. The pages, the table and the document beside it are open: anybody can read them.

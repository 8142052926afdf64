### Taking a plan in.

receive-title = Your plan is here.
receive-for = For { $called }, born { $born }. From { $clinic }.
receive-episode = { $name }: { $day }.
receive-exercises = { $n ->
    [one] 1 exercise.
   *[other] { $n } exercises.
}
receive-not-yet = Not allowed yet:
receive-which-side = Which side was treated? ({ $name }) left, right, both or neither
receive-is-it-yours = Is all of this right, and is it your plan? yes or no
receive-done = This is your plan now. Revision { $revision }.
receive-same-again = You have this plan already. Nothing changed. Revision { $revision }.
ask-date = Today is { $day }. Is that right? yes or no

# In the window.
receive-file-title = Open your plan
receive-file-drop = Drop the file from your clinic here, or open it.
receive-file-where = It may be in an e-mail from your clinic, or on a USB stick.
receive-open = Open the file
receive-open-another = Open another file
receive-busy = One moment, please.
receive-code-title = The code on your letter
receive-code-how = Look at your appointment letter. Type its code here.
receive-code-label = 12 letters and numbers
receive-code-missing = { $n ->
    [one] 1 more letter or number is needed. Then go on.
   *[other] { $n } more letters or numbers are needed. Then go on.
}
receive-code-go-on = Go on
receive-who = Who this plan is for
receive-name = Name
receive-born = Year of birth
receive-clinic = Clinic
receive-day-zero = Day of the operation: { $day }
receive-check = Please answer first
receive-check-why = You and your clinic must agree on this. Look at your letter if you are not sure.
receive-side = { $name }: which side was treated?
receive-side-left = Left
receive-side-right = Right
receive-side-both = Both sides
receive-side-neither = Neither side
receive-side-needed = Say first which side was treated.
receive-date = Today is { $day }. Is that right?
receive-date-yes = Yes, that is right
receive-date-no = No, it is another day
receive-date-needed = Say first if the date is right.
receive-date-wrong = Then this device has the wrong date. Nothing was taken in. Set the date of the device right. Then open the file again.
receive-mine = This is my plan
receive-not-mine = This is not my plan
receive-not-mine-do = Nothing was taken in. Ring the clinic on your letter and tell them.
receive-new-title = There is a new plan for you.
receive-new = This is revision { $revision } of your plan. It takes the place of the one you have. What you wrote down stays.
receive-take-in = Take it in
receive-back-to-today = Back to today
receive-refused-title = This file was not used.
receive-ring-letter = Ring your clinic. The number is on your letter.
receive-code-first = First four of the code
receive-code-middle = Middle four of the code
receive-code-last = Last four of the code
receive-what = What is in it
receive-back = Back
receive-same-again-title = Nothing is new.
receive-open-again = Open the file again

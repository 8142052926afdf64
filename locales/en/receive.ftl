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

### The letter with the letter code.

letter-title = Your exercise plan
letter-for = For { $called }
letter-from = From { $clinic }, { $phone }
letter-date = { $day }
letter-what = Your plan comes as a file. Sendaluna opens it on your computer or telephone. It counts with you, and it keeps what is not allowed yet for later.
letter-steps = How to begin
letter-step-open = Open Sendaluna. Let it open the plan file.
letter-step-code = It asks for the letter code. Type these twelve letters and numbers:
letter-step-side = It asks which side was treated. Answer for yourself.
letter-step-check = Look whether the name and the day are yours. If not, stop there and ring us.
letter-code = Your letter code
letter-code-why = The code shows that the plan comes from us. Type it from this letter. Do not take it from a message or a telephone call.
letter-code-forgives = Big or small letters do not matter. There is no letter O and no letter I: they are the numbers 0 and 1.
letter-pictures = Your plan, in pictures
letter-pictures-how = { $n ->
    [one] No plan file at hand? This picture holds your plan. Take a sharp photo of it, or scan it, and open it with Sendaluna.
   *[other] No plan file at hand? These { $n } pictures hold your plan. Take sharp photos of them, or scan them, and open them all together with Sendaluna.
}
letter-pictures-no-code = The letter code is not in the pictures. You still type it.
letter-too-large = This plan is too large for pictures on paper. Use the plan file.
letter-picture = Picture { $n } of { $of }
letter-picture-alt = Picture { $n } of { $of } of the plan, for a camera. Version { $revision }.
letter-foot = Letter for { $called }, version { $revision }

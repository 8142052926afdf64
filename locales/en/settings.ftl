### Settings, in sentences; and the page for a record that cannot be used.

settings-title = Settings
settings-back = Back
settings-language = Language: { $name }
settings-text = Text: { $size ->
    [100] normal
    [125] larger
    [150] much larger
   *[200] largest
}
settings-text-choose = How large the text is
settings-text-normal = Normal
settings-text-larger = Larger
settings-text-large = Much larger
settings-text-largest = Largest
settings-sample = Lift your knee. Hold for 5 seconds.
settings-theme = Paper: { $theme ->
    [light] light
    [dark] dark
   *[system] as this device
}
settings-theme-choose = Light or dark paper
settings-theme-system = As this device
settings-theme-light = Light paper
settings-theme-dark = Dark paper
settings-awake = Awake from { $from } to { $to }
settings-awake-from = You get up at { $time }
settings-awake-to = You go to bed at { $time }
settings-earlier = Earlier
settings-later = Later
settings-step = One press is 30 minutes.
settings-data = Your data stays on this device. Nothing is sent.

problem-try-again = Try again

### Einstellungen, in Sätzen; und die Seite, wenn die Einträge nicht zu lesen sind.

settings-title = Einstellungen
settings-back = Zurück
settings-language = Sprache: { $name }
settings-text = Schrift: { $size ->
    [100] normal
    [125] größer
    [150] viel größer
   *[200] am größten
}
settings-text-choose = Wie groß die Schrift ist
settings-text-normal = Normal
settings-text-larger = Größer
settings-text-large = Viel größer
settings-text-largest = Am größten
settings-sample = Heben Sie das Knie. Halten Sie 5 Sekunden.
settings-theme = Papier: { $theme ->
    [light] hell
    [dark] dunkel
   *[system] wie dieses Gerät
}
settings-theme-choose = Helles oder dunkles Papier
settings-theme-system = Wie dieses Gerät
settings-theme-light = Helles Papier
settings-theme-dark = Dunkles Papier
settings-awake = Wach von { $from } bis { $to } Uhr
settings-awake-from = Sie stehen um { $time } Uhr auf
settings-awake-to = Sie gehen um { $time } Uhr ins Bett
settings-earlier = Früher
settings-later = Später
settings-step = Einmal drücken sind 30 Minuten.
settings-data = Ihre Daten bleiben auf diesem Gerät. Nichts wird verschickt.

problem-try-again = Noch einmal versuchen

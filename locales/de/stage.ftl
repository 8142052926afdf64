### Was eine Übungseinheit groß zeigt und laut sagt.

stage-get-ready = Machen Sie sich bereit
stage-change-sides = Seite wechseln
stage-count-in = Gleich geht es los
stage-out = Los
stage-hold = Halten
stage-back = Zurück
stage-let-go = Locker lassen
stage-breathe-in = Einatmen
stage-breathe-out = Ausatmen
stage-keep-going = Weitermachen
stage-walk = Gehen
stage-rest = Erholung
stage-paused = Pause
stage-done = Fertig
stage-of = von { $of }
stage-of-round = von { $of }, Runde{"\u00A0"}{ $round }{"\u00A0"}von{"\u00A0"}{ $rounds }
stage-round = Runde{"\u00A0"}{ $round }{"\u00A0"}von{"\u00A0"}{ $rounds }
stage-minutes = { $n ->
    [one] Minute noch
   *[other] Minuten noch
}
stage-steps = Schritte
stage-minutes-left = { $n ->
    [0] Noch weniger als eine Minute
    [one] Noch 1 Minute
   *[other] Noch { $n } Minuten
}
stage-tally = { $done } von { $of } gemacht.
stage-say-when-ready = Machen Sie sich bereit. Drücken Sie dann „{ session-ready }“.
stage-say-when-beside = Holen Sie jemanden neben sich. Drücken Sie dann „{ session-beside-start }“.
stage-walk-steps = { $n ->
    [one] Gehen Sie 1 Schritt.
   *[other] Gehen Sie { $n } Schritte.
} Drücken Sie dann „{ session-walked }“.
stage-lost-time = Angehalten, weil das Gerät geschlafen hat. Machen Sie weiter, wann Sie möchten.
ended-none = Beendet. Es wurde nichts gemacht, was man aufschreiben kann. Sie können es von Hand aufschreiben.

# Was der Desktop von dem Programm zeigt, das den Bildschirm an lässt.
ears-why-awake = Eine Übungseinheit läuft.
ears-no-speech = Nichts auf diesem Gerät kann sprechen. Sie hören Töne und sehen große Wörter.
ears-no-voice = Dieses Gerät hat keine Stimme für Ihre Sprache. Sie hören Töne und sehen große Wörter.
ears-no-tones = Dieses Gerät gibt keinen Ton. Sie sehen große Wörter.

tray-open = Sendaluna öffnen
tray-close = Sendaluna beenden

### Die ersten zwei Minuten.

first-leaf = Seite { $n } von { $of }
first-language = Ihre Sprache
first-what-title = Was das hier ist
first-what = Sendaluna zeigt Ihnen die Übungen aus dem Plan Ihrer Klinik. Sie sehen, was heute zu tun ist. Und Sie sehen, was Sie noch nicht tun dürfen.
first-stays = Was Sie aufschreiben, bleibt auf diesem Gerät. Nichts wird verschickt.
first-always = Die Warnzeichen und die Telefonnummern finden Sie immer mit einem Tippen.
first-reading = Gut zu lesen und zu hören
first-go-on = Weiter
first-done = Fertig
first-later = Später
first-back = Zurück

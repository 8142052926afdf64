### Today on one page, for somebody beside the patient who counts and ticks.

today-title = Heute, für { $called }
today-how = Für alle, die helfen: Gehen Sie von oben nach unten. Zählen Sie laut. Streichen Sie jedes Mal einen Strich durch. Wenn es fertig ist, haken Sie das Kästchen ab.
today-not-yet-how = Versuchen Sie das heute nicht, auch nicht vorsichtig.
today-until-lifted = { $names }: erst wenn Ihre Klinik es erlaubt
today-rests = Heute nicht mehr, weil es wehgetan hat: { $names }
today-done = Für heute fertig: { $names }
today-left-out = Mehr hatte keinen Platz. Was noch fehlt, steht in Sendaluna.

today-signs = Ist etwas davon neu oder schlimmer? Dann hören Sie auf
today-hurts = Wenn es wehtut, hören Sie einfach auf.
today-pain = Schmerz von 0 bis 10. Vorher: ab { $rest } nicht anfangen, heute anrufen. { $sharp ->
    [today] Dabei: ab { $stop } oder { $rise } mehr als vorher diese Übung beenden. Ab { $today } oder bei stechendem Schmerz für heute aufhören und anrufen.
   *[exercise] Dabei: ab { $stop }, { $rise } mehr als vorher oder bei stechendem Schmerz diese Übung beenden. Ab { $today } für heute aufhören und anrufen.
}

today-pain-before = Schmerz vorher
today-pain-after = Schmerz nachher
today-words = In Ihren Worten
today-note = Schmerz: 0 keiner, 10 der schlimmste. Anstrengung: 0 { $least }, 10 { $most }. Tragen Sie später in Sendaluna ein, was gemacht wurde.

today-choose = Wohin die Seite für heute kommt
today-written = Heute auf einer Seite, zum Drucken: { $path }

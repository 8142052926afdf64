### Wann man aufhört und wen man anruft.

contacts-title = Wann aufhören und anrufen
contacts-whom = Wen Sie anrufen
contacts-ring-clinic = { $clinic } anrufen
contacts-ring-night = Abends, nachts, am Wochen{"\u00AD"}ende
contacts-ring-emergency = Notruf
contacts-remember = Bitte denken Sie daran
contacts-unwell = Mir ist unwohl oder schwindelig
contacts-happened = Ist etwas passiert?
contacts-fell = Ich bin gestürzt
contacts-hospital = Ich war im Krankenhaus
contacts-fell-means = Damit schreiben Sie auf, dass Sie gestürzt sind. Dann ist nichts Neues erlaubt, bis Ihre Klinik es sagt. Und es beginnt keine Übung, bis Sie mit der Klinik gesprochen haben.
contacts-hospital-means = Damit schreiben Sie auf, dass Sie im Krankenhaus waren. Dann ist nichts Neues erlaubt, bis Ihre Klinik es sagt. Und es beginnt keine Übung, bis Sie mit der Klinik gesprochen haben.
contacts-write-fell = Ja, ich bin gestürzt
contacts-write-hospital = Ja, ich war im Krankenhaus
contacts-not-so = Nein, zurück
contacts-back = Zurück

### Der Brief mit dem Brief-Code.

letter-title = Ihr Übungsplan
letter-for = Für { $called }
letter-from = Von: { $clinic }, { $phone }
letter-date = { $day }
letter-what = Ihr Plan kommt als Datei. Sendaluna öffnet sie auf Ihrem Computer oder Telefon. Das Programm zählt mit Ihnen. Was noch nicht erlaubt ist, hebt es für später auf.
letter-steps = So fangen Sie an
letter-step-open = Öffnen Sie Sendaluna. Lassen Sie es die Plan-Datei öffnen.
letter-step-code = Es fragt nach dem Brief-Code. Tippen Sie diese zwölf Buchstaben und Ziffern ein:
letter-step-side = Es fragt, welche Seite behandelt wurde. Antworten Sie selbst.
letter-step-check = Sehen Sie nach, ob Name und Tag Ihre eigenen sind. Wenn nicht, hören Sie dort auf und rufen Sie uns an.
letter-code = Ihr Brief-Code
letter-code-why = Der Code zeigt, dass der Plan von uns kommt. Tippen Sie ihn von diesem Brief ab. Nehmen Sie keinen Code aus einer Nachricht oder einem Anruf.
letter-code-forgives = Große oder kleine Buchstaben sind egal. Es gibt keinen Buchstaben O und keinen Buchstaben I. Das sind die Ziffern 0 und 1.
letter-pictures = Ihr Plan in Bildern
letter-pictures-how = { $n ->
    [one] Keine Plan-Datei da? In diesem Bild steckt Ihr Plan. Machen Sie ein scharfes Foto davon, oder scannen Sie es. Öffnen Sie es dann mit Sendaluna.
   *[other] Keine Plan-Datei da? In diesen { $n } Bildern steckt Ihr Plan. Machen Sie scharfe Fotos davon, oder scannen Sie sie. Öffnen Sie dann alle zusammen mit Sendaluna.
}
letter-pictures-no-code = Der Brief-Code steckt nicht in den Bildern. Sie tippen ihn trotzdem ein.
letter-too-large = Dieser Plan ist zu groß für Bilder auf Papier. Nehmen Sie die Plan-Datei.
letter-picture = Bild { $n } von { $of }
letter-picture-alt = Bild { $n } von { $of } des Plans, für eine Kamera. Version { $revision }.
letter-foot = Brief für { $called }, Version { $revision }

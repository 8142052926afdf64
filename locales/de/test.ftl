### Ein Test zu Hause: was zu tun ist, und die bloße Zahl. Was eine Tabelle dazu sagt, ist Sache der Klinik.

test-day = Tests von Ihrer Klinik
test-until = Einmal, bis { $day }.
test-chair-stand = Aufstehen und hinsetzen
test-timed-up-and-go = Aufstehen, gehen und zurückkommen
test-four-stage-balance = Auf vier Arten stehen

## Vorher. Nach CDC STEADI, aus dem Gedächtnis.

test-chair-stand-place = Stellen Sie einen festen Stuhl an eine Wand. Der Sitz ist so hoch wie Ihr Knie. Der Stuhl hat keine Rollen.
test-chair-stand-how = Setzen Sie sich auf die Mitte des Sitzes. Die Füße stehen flach auf dem Boden. Kreuzen Sie die Arme vor der Brust.
test-chair-stand-go = Stehen Sie ganz auf, und setzen Sie sich wieder hin. Machen Sie das 30 Sekunden lang.
test-chair-stand-helper = Ihre Hilfsperson tippt jedes Mal, wenn Sie aufrecht stehen.
test-timed-up-and-go-place = Stellen Sie einen festen Stuhl mit Armlehnen an eine Wand. Markieren Sie 3 Meter davor eine Linie.
test-timed-up-and-go-how = Tragen Sie Ihre gewohnten Schuhe. Benutzen Sie Ihren Gehstock oder Ihr Gehgestell, wenn Sie so etwas haben.
test-timed-up-and-go-go = Stehen Sie auf, und gehen Sie in gewohntem Tempo bis zur Linie. Drehen Sie mit kleinen Schritten um. Gehen Sie zurück, und setzen Sie sich hin.
test-timed-up-and-go-helper = Ihre Hilfsperson sagt „los“ und tippt. Wenn Sie wieder sitzen, tippt Ihre Hilfsperson noch einmal.
test-four-stage-balance-place = Stellen Sie sich neben etwas Festes, an dem Sie sich halten können. Das kann eine Arbeitsplatte in der Küche sein.
test-four-stage-balance-how = Sie stehen auf vier Arten. Jede ist schwerer als die vorige. Lassen Sie die Augen offen. Benutzen Sie keinen Gehstock und kein Gehgestell.
test-four-stage-balance-go = Ihre Hilfsperson hilft Ihnen in die Stellung. Lassen Sie dann los, und stehen Sie 10 Sekunden still.
test-four-stage-balance-helper = Ihre Hilfsperson tippt, wenn Sie still stehen. Bewegen sich Ihre Füße, oder halten Sie sich fest? Dann tippt Ihre Hilfsperson noch einmal.
test-close = Jemand muss so nah neben Ihnen bleiben, dass er Sie halten kann.
test-unsafe = Wenn Sie sich unsicher fühlen, hören Sie auf und setzen Sie sich hin.

test-mind = Das ist wichtig
test-ask-helper = Ist jetzt jemand neben Ihnen, der Sie halten kann?
test-helper-yes = Ja, weiter
test-helper-no = Nein, niemand ist hier
test-helper-none = Machen Sie diesen Test, wenn jemand bei Ihnen ist. Er bleibt auf Ihrer Liste.

## Während die Zeit läuft.

test-chair-stand-sit = Setzen Sie sich hin und kreuzen Sie die Arme. Die Füße stehen flach auf dem Boden.
test-timed-up-and-go-sit = Setzen Sie sich hin und lehnen Sie sich an. Stehen Sie auf, wenn Ihre Hilfsperson „los“ sagt.
test-stance-side-by-side = 1 von 4: Füße nebeneinander, eng zusammen.
test-stance-semi-tandem = 2 von 4: ein Fuß halb vorn. Seine Innenseite berührt die große Zehe des anderen.
test-stance-tandem = 3 von 4: ein Fuß vor dem anderen, Ferse an Zehen.
test-stance-one-leg = 4 von 4: Stehen Sie auf einem Fuß.
test-tap-start = Start
test-tap-go = Los
test-tap-still = Ich stehe still
test-tap-stood = Ich stehe aufrecht
test-tap-seated = Ich sitze wieder
test-tap-moved = Ich habe mich bewegt
test-stop = Aufhören
test-get-ready = Machen Sie sich bereit
test-go = Los.
test-seconds-left = { $n ->
    [one] Mal aufgestanden. Noch 1 Sekunde.
   *[other] Mal aufgestanden. Noch { $n } Sekunden.
}
test-seconds = Sekunden
test-seconds-to-go = Sekunden noch
test-end = Der Test ist zu Ende. Setzen Sie sich hin und ruhen Sie sich aus.
test-stopped = Sie haben aufgehört. Setzen Sie sich hin und ruhen Sie sich aus. Wenn Ihnen unwohl ist oder es wehtut, rufen Sie Ihre Klinik an.
test-lost-time = Das Gerät hat einen Teil der Zeit geschlafen. Darum zählt es nicht.

## Danach.

test-result-chair-stand = { $n ->
    [one] Sie sind einmal aufgestanden.
   *[other] Sie sind { $n } Mal aufgestanden.
}
test-result-arms = Sie haben sich mit den Armen abgestützt.
test-result-timed-up-and-go = Es hat { $seconds } Sekunden gedauert.
test-held-side-by-side = Füße nebeneinander: { $seconds } Sekunden.
test-held-semi-tandem = Ein Fuß halb vorn: { $seconds } Sekunden.
test-held-tandem = Ferse an Zehen: { $seconds } Sekunden.
test-held-one-leg = Auf einem Fuß: { $seconds } Sekunden.
test-right = Stimmt das?
test-stands = Wie oft Sie aufgestanden sind
test-half-way = Waren Sie am Ende mehr als halb aufgestanden? Dann zählt das auch.
test-arms = Ich habe mich mit den Armen abgestützt
test-keep = Auf{"\u00AD"}schreiben
test-again = Noch einmal machen
test-leave = Nicht auf{"\u00AD"}schreiben
test-back = Zurück zu heute
test-another-day = Inzwischen ist ein anderer Tag. Fangen Sie den Test neu an. Nichts wurde aufgeschrieben.
test-written = Es ist aufgeschrieben. Ihre Klinik sieht es mit Ihnen zusammen an.
test-nothing-written = Nichts wurde aufgeschrieben. Der Test bleibt auf Ihrer Liste.

## Im Terminal.

ask-test-helper = Ist jetzt jemand neben Ihnen, der Sie halten kann? ja oder nein
ask-test-right = Stimmt das? ja: aufschreiben. nochmal: den Test neu machen. nein: nichts aufschreiben. Nach einem Stuhl-Test können Sie die richtige Zahl eintippen.
ask-test-arms = Haben Sie sich mit den Armen abgestützt? ja oder nein
test-keys = Leertaste oder Eingabetaste: tippen. q: aufhören.
test-none = Jetzt ist kein Test von Ihrer Klinik vorgesehen.

### Una prueba en casa: qué hacer, y la cifra sola. Lo que diga una tabla es cosa de la clínica.

test-day = Una prueba de su clínica
test-until = Una vez, hasta el { $day }.
test-chair-stand = Levantarse y sentarse
test-timed-up-and-go = Levantarse, andar y volver
test-four-stage-balance = De pie en cuatro posturas

## Antes. Según CDC STEADI, de memoria.

test-chair-stand-place = Ponga una silla firme contra la pared. El asiento, a la altura de la rodilla. Sin ruedas.
test-chair-stand-how = Siéntese en el medio del asiento, con los pies planos en el suelo. Cruce los brazos sobre el pecho.
test-chair-stand-go = Levántese del todo y vuelva a sentarse. Siga durante 30 segundos.
test-chair-stand-helper = Quien le ayuda pulsa el botón cada vez que usted está de pie del todo.
test-timed-up-and-go-place = Ponga una silla firme con brazos contra la pared. Marque una línea 3 metros más adelante.
test-timed-up-and-go-how = Lleve sus zapatos de siempre. Use su bastón o andador si lo tiene.
test-timed-up-and-go-go = Levántese y ande hasta la línea a su paso de siempre. Dé la vuelta con pasos cortos, vuelva y siéntese.
test-timed-up-and-go-helper = Quien le ayuda dice «ya» y pulsa el botón. Lo pulsa otra vez cuando usted se sienta.
test-four-stage-balance-place = Póngase junto a algo firme a lo que agarrarse, como la encimera de la cocina.
test-four-stage-balance-how = Se pone de pie en cuatro posturas, cada una más difícil. Tenga los ojos abiertos. No use bastón ni andador.
test-four-stage-balance-go = Quien le ayuda le ayuda a colocarse. Después suéltese y no se mueva durante 10 segundos.
test-four-stage-balance-helper = Quien le ayuda pulsa el botón cuando usted ya no se mueve. Lo pulsa otra vez si usted mueve los pies o se agarra.
test-close = Alguien tiene que estar a su lado, lo bastante cerca para sujetarle.
test-unsafe = Si siente inseguridad, pare y siéntese.

test-mind = Tenga en cuenta
test-ask-helper = ¿Hay ahora alguien a su lado que pueda sujetarle?
test-helper-yes = Sí, seguir
test-helper-no = No, no hay nadie
test-helper-none = Haga esta prueba cuando haya alguien con usted. Sigue en su lista.

## Mientras se mide.

test-chair-stand-sit = Siéntese y cruce los brazos. Los pies planos en el suelo.
test-timed-up-and-go-sit = Siéntese y apoye la espalda. Levántese cuando le digan «ya».
test-stance-side-by-side = 1 de 4: los pies juntos, uno al lado del otro.
test-stance-semi-tandem = 2 de 4: un pie medio adelantado. Su lado interior toca el dedo gordo del otro.
test-stance-tandem = 3 de 4: un pie delante del otro, el talón con la punta.
test-stance-one-leg = 4 de 4: de pie sobre una sola pierna.
test-tap-start = Empezar
test-tap-go = Ya
test-tap-still = Ya no me muevo
test-tap-stood = Estoy de pie
test-tap-seated = Otra vez en la silla
test-tap-moved = Me he movido
test-stop = Parar
test-get-ready = Prepárese
test-go = Ya.
test-seconds-left = { $n ->
    [one] hasta ahora. Queda 1 segundo.
   *[other] hasta ahora. Quedan { $n } segundos.
}
test-seconds = segundos
test-seconds-to-go = segundos por delante
test-end = Ha terminado. Siéntese y descanse.
test-stopped = Ha parado. Siéntese y descanse. Si se encuentra mal o le duele, llame a su clínica.
test-lost-time = El dispositivo estuvo dormido una parte del tiempo, así que no cuenta.

## Después.

test-result-chair-stand = { $n ->
    [one] Se levantó una vez.
   *[other] Se levantó { $n } veces.
}
test-result-arms = Se ayudó con los brazos.
test-result-timed-up-and-go = Segundos que tardó: { $seconds }.
test-held-side-by-side = Segundos con los pies juntos: { $seconds }.
test-held-semi-tandem = Segundos con un pie medio adelantado: { $seconds }.
test-held-tandem = Segundos con un pie delante del otro, el talón con la punta: { $seconds }.
test-held-one-leg = Segundos sobre una pierna: { $seconds }.
test-right = ¿Es correcto?
test-stands = Cuántas veces se levantó
test-half-way = ¿Al final estaba a más de medio camino? Entonces cuente esa también.
test-arms = Me ayudé con los brazos
test-keep = Anotarlo
test-again = Hacerla otra vez
test-leave = No anotarlo
test-back = Volver al día de hoy
test-another-day = Ya es otro día. Empiece la prueba otra vez. No se ha anotado nada.
test-written = Queda anotado. Su clínica lo mirará con usted.
test-nothing-written = No se ha anotado nada. La prueba sigue en su lista.

## En la terminal.

ask-test-helper = ¿Hay ahora alguien a su lado que pueda sujetarle? sí o no
ask-test-right = ¿Es correcto? sí para anotarlo, otra para repetirla, no para no anotar nada. Tras la prueba de la silla puede escribir el número correcto.
ask-test-arms = ¿Se ayudó con los brazos? sí o no
test-keys = Barra espaciadora o Enter: como pulsar el botón. q: parar.
test-none = Ahora su clínica no pide ninguna prueba.

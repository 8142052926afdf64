### Los ajustes, en frases; y la página para cuando no se puede usar el registro.

settings-title = Ajustes
settings-back = Volver
settings-language = Idioma: { $name }
settings-text = Letra: { $size ->
    [100] normal
    [125] algo más grande
    [150] mucho más grande
   *[200] la más grande
}
settings-text-choose = El tamaño de la letra
settings-text-normal = Normal
settings-text-larger = Algo más grande
settings-text-large = Mucho más grande
settings-text-largest = La más grande
settings-sample = Levante la rodilla. Mantenga 5 segundos.
settings-theme = Papel: { $theme ->
    [light] claro
    [dark] oscuro
   *[system] como este dispositivo
}
settings-theme-choose = Papel claro u oscuro
settings-theme-system = Como este dispositivo
settings-theme-light = Papel claro
settings-theme-dark = Papel oscuro
settings-awake = Horas de vigilia: de { $from } a { $to }
settings-awake-from = Se levanta a las { $time }
settings-awake-to = Se acuesta a las { $time }
settings-earlier = Antes
settings-later = Después
settings-step = Cada toque son 30 minutos.
settings-data = Sus datos se quedan en este dispositivo. No se envía nada.

problem-try-again = Intentar otra vez

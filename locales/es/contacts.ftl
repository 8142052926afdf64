### Cuándo parar y a quién llamar.

contacts-title = Cuándo parar y llamar
contacts-whom = A quién llamar
contacts-ring-clinic = Llamar a { $clinic }
contacts-ring-night = Tardes, noches y fines de semana
contacts-ring-emergency = Emer{"\u00AD"}gen{"\u00AD"}cias
contacts-remember = Recuerde
contacts-unwell = Me siento mal o con mareo
contacts-happened = ¿Le ha pasado algo?
contacts-fell = Tuve una caída
contacts-hospital = Estuve en el hospital
contacts-fell-means = Se anota que usted tuvo una caída. A partir de ese momento no se abre nada nuevo hasta que su clínica lo diga. Tampoco empieza ningún ejercicio hasta que usted haya hablado con su clínica.
contacts-hospital-means = Se anota que usted estuvo en el hospital. A partir de ese momento no se abre nada nuevo hasta que su clínica lo diga. Tampoco empieza ningún ejercicio hasta que usted haya hablado con su clínica.
contacts-write-fell = Sí, tuve una caída
contacts-write-hospital = Sí, estuve en el hospital
contacts-not-so = No, volver
contacts-back = Volver

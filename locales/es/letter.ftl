### La carta con el código.

letter-title = Su plan de ejercicios
letter-for = Para { $called }
letter-from = De { $clinic }, { $phone }
letter-date = { $day }
letter-what = Su plan viene en un archivo. Sendaluna lo abre en su ordenador o teléfono. Lleva la cuenta con usted y guarda para más tarde lo que todavía no está permitido.
letter-steps = Cómo empezar
letter-step-open = Abra Sendaluna. Deje que abra el archivo del plan.
letter-step-code = Le pide el código de la carta. Escriba estas doce letras y números:
letter-step-side = Le pregunta qué lado le trataron. Conteste usted.
letter-step-check = Mire si el nombre y el día son los suyos. Si no, pare ahí y llámenos.
letter-code = El código de su carta
letter-code-why = El código muestra que el plan viene de nosotros. Escríbalo desde esta carta. No lo tome de un mensaje ni de una llamada.
letter-code-forgives = Da igual que las letras sean grandes o pequeñas. No hay letra O ni letra I: son los números 0 y 1.
letter-pictures = Su plan, en imágenes
letter-pictures-how = { $n ->
    [one] ¿No tiene el archivo? Esta imagen lleva su plan. Haga una foto nítida, o escanéela, y ábrala con Sendaluna.
   *[other] ¿No tiene el archivo? Estas { $n } imágenes llevan su plan. Haga fotos nítidas, o escanéelas, y ábralas todas juntas con Sendaluna.
}
letter-pictures-no-code = El código de la carta no está en las imágenes. Lo escribe usted.
letter-too-large = Este plan es demasiado grande para imágenes en papel. Use el archivo del plan.
letter-picture = Imagen { $n } de { $of }
letter-picture-alt = Imagen { $n } de { $of } del plan, para una cámara. Versión { $revision }.
letter-foot = Carta para { $called }, versión { $revision }

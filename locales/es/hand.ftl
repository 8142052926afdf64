### Lo que vuelve a la clínica, en la ventana.

hand-title = Para su clínica
hand-intro = Esto es todo lo que su clínica puede leer. No se envía nada. Usted lo guarda y lo entrega en su visita.
hand-figures = Cómo ha ido
hand-exercises = Ejercicio por ejercicio
hand-own-words = Sus propias palabras
hand-no-words = No ha escrito nada con palabras.
hand-words-go = Que vayan también mis palabras
hand-record = Todo su registro
hand-ask = Lo que quiero preguntar a mi clínica
hand-save = Guardar para la clínica
hand-sealed = Solo su clínica puede abrir el archivo sellado. Las páginas, la tabla y el documento de al lado están abiertos: cualquiera puede leerlos.

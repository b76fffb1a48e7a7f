# Handing on what is on the screen. Comes with the panel that does it.

hand-on-heading = Pasar a otro teléfono
hand-on-close = Cerrar
hand-on-code = Código del enlace; un toque lo muestra solo
hand-on-code-hint = Suba el brillo y ponga encima la cámara del otro teléfono. Un toque muestra solo el código.
hand-on-code-sleeps = Entretanto, esta pantalla puede apagarse.
hand-on-code-too-large = Sin código: { $characters } caracteres darían uno tan fino que una aplicación de cámara corriente no lo lee. El enlace de abajo lo lleva todo.
hand-on-learn = Con el cálculo desplegado
hand-on-learn-detail = para quien está aprendiendo
hand-on-calculation = Quien lo abra verá las mismas cifras, en sus unidades. Todo está en el enlace; no se envía nada a ningún sitio.
hand-on-job = Quien lo abra mira primero el trabajo; no se guarda nada antes de que lo diga. Quien tenga el enlace puede leer el trabajo.
hand-on-photos = { $count ->
    [one] Una foto no viaja
   *[other] { $count } fotos no viajan
} en un enlace, ni en el archivo de este trabajo; están en el archivo de todos los trabajos.
hand-on-link = El enlace, { $characters } caracteres
hand-on-copy = Copiar el enlace
hand-on-copied = Copiado.
hand-on-copy-refused = Este navegador no copia por sí mismo: el enlace está marcado, cópielo a mano.
hand-on-share = Enviar el enlace
hand-on-share-refused = El sistema no lo aceptó.
hand-on-no-share = Este navegador no tiene cómo enviar un enlace: cópielo.
hand-on-from-file = Esta página se abrió desde un archivo: ni el código ni el enlace se abren por sí solos en otro dispositivo. Pase también el archivo de la página y ponga allí lo que va desde #.
hand-on-file = Como archivo
hand-on-file-save = Guardar el archivo
hand-on-file-share = Enviar el archivo
hand-on-file-hint = Se abre en Trabajos, «Abrir un archivo».
hand-on-no-file-share = Este navegador no tiene cómo enviar un archivo: guárdelo y envíelo desde allí.

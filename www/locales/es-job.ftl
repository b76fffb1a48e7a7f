# El trabajo: sus etapas, sus uniones, lo pendiente. Llega con las pantallas del trabajo.

field-job = Trabajo
field-now = Ahora
field-stage = Etapa
field-after = Reloj después
field-at = Cuándo
field-before = Reloj antes
field-brazedCouplings = Manguitos soldados a lo largo de la línea
field-by = Quién responde
field-calibrated = Calibrado el
field-caliper = Calibre
field-caption = Qué muestra
field-clockChanges = Cambios del reloj
field-coresOut = Obuses quitados
field-created = Empezado
field-customer = Cliente
field-edited = Cambiado
field-equipment = Equipo
field-evacuation = Evacuación
field-gasLine = Línea de gas
field-gasValveOpened = Válvula de gas abierta
field-gauge = Manómetro
field-hold = Prueba
field-holdBegins = La prueba empieza aquí
field-id = Id
field-indoorPorts = Bocas de la unidad interior
field-instruments = Instrumentos
field-joints = Uniones
field-kind = Tipo
field-leakLook = Búsqueda de fugas
field-lines = Líneas
field-liquidValveOpened = Válvula de líquido abierta
field-looked = Revisada
field-made = Abocardada o soldada
field-mayHaveSlept = El dispositivo pudo dormirse
field-note = Nota
field-notes = Notas
field-oiled = Aceite en rosca y caras
field-order = Orden
field-outdoorPorts = Bocas de la unidad exterior
field-overrides = Hecho contra el orden
field-packed = En la furgoneta
field-photos = Fotos
field-plate = Placa
field-practice = Trabajo para practicar
field-pressureTest = Prueba de presión
field-pumpStarted = Bomba en marcha
field-reason = Motivo
field-release = Abrir y cargar
field-remade = Rehecha
field-removed = Quitada
field-resolution = Paso mínimo
field-role = Como
field-roomRule = Regla para el local
field-runCheck = Comprobación en marcha
field-scale = Báscula
field-scaleTorque = Par en la escala de la llave
field-signOffs = Firmas
field-site = Lugar
field-technician = Técnico
field-test = Prueba
field-thermometer = Termómetro
field-tightened = Apretada
field-uncertainty = Error posible
field-unions = Racores abocardados a lo largo de la línea
field-vacuumGauge = Vacuómetro
field-valvedOff = Bomba aislada
field-version = Versión del documento
field-words = Buscar
field-withAdapter = Con el adaptador
field-wrench = Llave dinamométrica

problem-newer-version = Este trabajo lo escribió una versión posterior de Coldwright (versión del documento { $found }, aquí se conoce { $known }). Actualice y ábralo de nuevo; no se cambió nada en él.

stage-plan = Plan
stage-flare = Abocardar
stage-tighten = Apretar
stage-pressure-test = Prueba de presión
stage-evacuate = Hacer vacío
stage-release-and-charge = Abrir y cargar
stage-run-check = Comprobar en marcha
stage-record = Informe

stage-state-not-begun = sin empezar
stage-state-under-way = en curso
stage-state-in-band = hecha, dentro de los límites
stage-state-cannot-tell = no se sabe
stage-state-out-of-band = fuera de los límites
stage-state-overridden = hecha contra el orden, con responsable

open-field = Sin introducir: { $field }
open-room = No hay local introducido: no se conoce la carga máxima
open-joints-to-make = Uniones sin hacer: { $count }
open-cones-to-measure = Conos sin medir: { $count }
open-joints-to-remake = Uniones por rehacer: { $count }
open-joints-to-oil = Uniones sin aceite: { $count }
open-joints-to-tighten = Uniones sin apretar: { $count }
open-torques-to-record = Uniones apretadas sin anotar el par: { $count }
open-joints-to-look-at = Uniones sin revisar a presión: { $count }
open-hold-on = La prueba debe seguir
open-test-pressure = La prueba quedó por debajo de su presión: súbala y empiece de nuevo
open-readings = La prueba necesita lecturas
open-pump-down = La bomba no ha funcionado
open-open-valves = No están abiertas las dos válvulas
open-caps-to-look-at = Tapones sin poner y revisar: { $count }
open-pressure-after-release = Falta leer la presión tras abrir
open-charge = La carga por báscula no está completa
open-run-readings = Falta leer el equipo en marcha
open-calibration = Instrumentos sin calibrar en el último año: { $count }
open-sign-off = No hay nombre bajo el informe
open-stages = Etapas con algo pendiente: { $count }

fact-total-charge = Carga total
fact-largest-charge = Máximo que admite el local
fact-length = Longitud de línea
fact-lift = Desnivel
fact-held = Mantenida
fact-pressure-difference = Frente a lo esperado
fact-vacuum-level = Nivel alcanzado
fact-charged-so-far = Según la báscula
fact-pressure-after-release = Presión tras abrir
fact-superheat = Recalentamiento
fact-subcooling = Subenfriamiento
fact-temperature-split = Salto térmico
fact-least-torque = desde
fact-most-torque = hasta
fact-nut = entre caras
fact-tube = tubo
fact-nitrogen-mass = nitrógeno
fact-nitrogen-free-gas = como gas libre
fact-cylinder-left = queda en el cilindro
fact-to-add = por añadir
fact-to-take-out = por sacar

rule-pressure-before-tightened = A presión de prueba con una unión sin apretar
rule-above-lowest-rating = Presión por encima de lo que soporta la parte más débil
rule-pump-before-tight = La bomba funcionó antes de que la prueba mostrara el circuito estanco
rule-release-before-tight = Refrigerante suelto antes de que la prueba mostrara el circuito estanco
rule-release-before-dry = Refrigerante suelto antes de pasar la prueba de vacío
rule-release-before-look = Refrigerante suelto con una unión que fuga, fuera de banda o sin revisar
rule-charge-above-room-limit = Más refrigerante del que admite el local
rule-gas-valve-first = Válvula de gas abierta antes que la de líquido

joint-kind-flare = Abocardada
joint-kind-brazed = Soldada
joint-kind-cap = Tapón
joint-line-liquid-line = Línea de líquido
joint-line-gas-line = Línea de gas
joint-place-indoor-port = boca interior
joint-place-indoor-adapter = adaptador en la boca interior
joint-place-indoor-junction = colector en la unidad interior
joint-place-union-indoor-side = racor, lado interior
joint-place-union-outdoor-side = racor, lado exterior
joint-place-coupling = manguito
joint-place-outdoor-junction = colector en la unidad exterior
joint-place-outdoor-adapter = adaptador en la boca exterior
joint-place-outdoor-port = boca exterior
joint-place-valve-cap = tapón de válvula
joint-place-service-port-cap = tapón de la toma de servicio
joint-place-own = unión añadida
joint-state-open = pendiente
joint-state-made = hecha
joint-state-tightened = apretada
joint-state-proven = sin fuga
joint-state-leaking = fuga
joint-state-out-of-band = fuera de banda
joint-state-removed = quitada
joint-step-make = hacerla
joint-step-measure-cone = medir el cono
joint-step-oil = poner aceite
joint-step-tighten = apretarla
joint-step-look-for-leaks = buscar fugas
joint-step-remake = rehacerla
leak-look-pass = sin fuga
leak-look-leak = fuga

clock-doubt-clock-went-back = El reloj de este dispositivo se atrasó con el trabajo cerrado. El tiempo transcurrido es dudoso.
clock-doubt-clock-jumped-ahead = El reloj de este dispositivo saltó adelante con el trabajo abierto: se ajustó, o el dispositivo se durmió. El tiempo transcurrido es dudoso.

bring-torque-wrench = Llave dinamométrica
bring-nut-wrench = Boca fija para ella y llave de sujeción
bring-hex-keys = Llaves hexagonales, 4 y 5 mm (5/32 y 3/16 in)
bring-service-port-adapter = Adaptador para toma de servicio de 5/16 in
bring-flaring-tool = Abocardador, cortatubos, desbarbador
bring-caliper = Calibre
bring-oil = Aceite para roscas y caras
bring-nitrogen = Nitrógeno seco
bring-regulator = Regulador con válvula de alivio
bring-leak-solution = Líquido detector de fugas
bring-gauges = Manómetro y termómetro
bring-vacuum-pump = Bomba de vacío y vacuómetro
bring-hoses = Mangueras anchas, extractores de obuses
bring-refrigerant-cylinder = Cilindro de refrigerante
bring-scale = Báscula
bring-recovery-cylinder = Cilindro de recuperación
bring-tube = Tubo
bring-insulation = Aislamiento
bring-brazing = Soplete y aporte; nitrógeno circulando al soldar
bring-protection = Protección ocular y guantes
bring-flammable-gear = Extintor y detector para refrigerante inflamable

job-absent = No hay tal trabajo en este teléfono.
job-unreadable-not-a-document = Lo guardado de este trabajo no es un trabajo.
job-unreadable-no-document = De este trabajo no hay nada guardado.
job-unreadable-bad-edit = No se puede leer un paso del historial de este trabajo.
job-unreadable-newer = Este trabajo lo escribió una versión más nueva de esta página. Actualice primero.
job-unreadable-out-of-reach = El almacenamiento no da este trabajo ahora.
job-next = Sigue: { $stage }
fact-told = { $fact } { $figure }
fact-uncertain = { $figure } ± { $uncertainty }
joint-named = { $line }, { $place }
joint-counted = { $place } { $count }

# The list of jobs, where they are kept, and as files.

intro-jobs = Un solo informe, de la placa a la firma. No se envía nada.
jobs-new = Trabajo nuevo
jobs-practice = Trabajo de práctica
jobs-unnamed = Trabajo sin nombre
jobs-empty = Aún no hay trabajos. Empiece uno, o eche un vistazo al de práctica: completo, inventado, con fallos que encontrar.
jobs-count = { $count ->
    [one] 1 trabajo
   *[other] { $count } trabajos
}, primero el último editado
jobs-found = { $count ->
    [0] Ningún trabajo tiene estas palabras en nombre, estado, lugar o cliente
    [one] 1 trabajo encontrado
   *[other] { $count } trabajos encontrados
}
jobs-more = Ver más ({ $count })
jobs-actions = Qué hacer con { $name }
jobs-duplicate = Duplicar como plantilla
jobs-duplicate-hint = La copia conserva placa, líneas, locales e instrumentos. No lleva lecturas, registros de uniones, notas, fotos ni firmas.
jobs-copy-named = Copia de { $name }
jobs-delete = Eliminar
jobs-deleted = Eliminado: { $name }
jobs-put-back = Reponer
jobs-removed = Trabajos eliminados ({ $count })
jobs-removed-hint = Se pueden reponer durante 30 días.
jobs-deleted-at = Eliminado { $at }
jobs-delete-for-good = Eliminar para siempre
jobs-delete-asked = Esto no se puede deshacer. ¿Eliminarlo con sus fotos?
jobs-delete-surely = Sí, eliminar para siempre
jobs-delete-not = No, dejarlo
jobs-unreadable-hint = No se pierde nada de él: guarde lo almacenado, se puede examinar.
jobs-save-raw = Guardar lo almacenado

jobs-kept-granted = Los trabajos están en este teléfono, y el navegador promete no borrarlos.
jobs-kept-not-asked = Los trabajos están en este teléfono.
jobs-kept-refused = Los trabajos están en este teléfono, pero el navegador puede borrarlos si necesita espacio. Ponga esta página en la pantalla de inicio y guarde una copia de vez en cuando.
jobs-kept-by-file = Esta página es un archivo: el navegador puede mostrar a otros archivos de este dispositivo lo que guarda para ella, y lo pierde si el archivo se mueve. Guarde los trabajos en un archivo al final del día.
jobs-in-memory-private = Esta ventana no guarda nada: los trabajos duran hasta cerrarla. Guárdelos en un archivo, o abra la página en una ventana normal.
jobs-in-memory-refused = Este navegador niega el almacenamiento: los trabajos duran hasta cerrar la página. Guárdelos en un archivo, o permita almacenar a esta página en los ajustes del navegador.
jobs-in-memory-blocked = Otra ventana tiene una versión anterior de esta página. Ciérrela o recárguela; hasta entonces los trabajos solo están en memoria.
jobs-in-memory-newer = Una versión más nueva de esta página ha guardado aquí. Recargue; hasta entonces los trabajos solo están en memoria.
jobs-in-memory-full = El almacenamiento del teléfono está lleno: lo nuevo solo está en memoria. Guárdelo en un archivo y haga sitio: elimine trabajos para siempre u otras cosas del teléfono.
jobs-in-memory-failed = El almacenamiento del teléfono no responde: los trabajos solo están en memoria. Guárdelos en un archivo. Se sigue intentando escribir.
jobs-unsaved = Aún no en este teléfono: { $count ->
    [one] 1 cambio
   *[other] { $count } cambios
}

files-heading = Copia de seguridad
files-hint = Todos los trabajos con sus fotos en un archivo, para guardarlo en otro sitio. Aquí se abre una copia, o el archivo de un trabajo; antes se muestra qué cambiaría.
files-backup = Guardar todos los trabajos en un archivo
files-open = Abrir un archivo
files-saved = Guardado. Búsquelo en las descargas.
files-taken = Tomado.
files-failed = No se pudo hacer el archivo. Pruebe otra vez; los trabajos siguen como están.
files-unreadable = No se puede leer este archivo.
files-not-a-backup = No es una copia ni un trabajo, o está cortado. No se cambió nada.
files-newer = Este archivo lo escribió una versión más nueva de esta página. Actualice primero. No se cambió nada.
files-made = Archivo del { $made }
files-no-jobs = No contiene ningún trabajo
files-count-new = nuevos: { $count }
files-count-removed = eliminados aquí: { $count }
files-count-differs = distintos: { $count }
files-count-same = iguales: { $count }
files-count-refused = ilegibles: { $count }
files-broken = Trabajos y fotos del archivo que no se pueden leer: { $count }. Se dejan como están.
files-more-new = y { $count } más que no están en este teléfono; también se toman
files-refused-newer = Este trabajo lo escribió una versión posterior de Coldwright. Actualice primero.
files-refused-broken = No se puede leer este trabajo.
files-standing-new = No está en este teléfono; editado { $edited }
files-standing-removed = Editado { $edited }
files-standing-differs = Editado { $edited }
files-standing-same = Igual
files-standing-refused = Editado { $edited }
files-standing-both-new = Editado { $edited }
files-standing-both-removed = Eliminado en este teléfono. En el archivo editado { $edited }, aquí { $mine }
files-standing-both-differs = En el archivo editado { $edited }, aquí { $mine }
files-standing-both-same = Igual
files-standing-both-refused = En el archivo editado { $edited }, aquí { $mine }
files-choice = Qué hacer
files-choice-leave = Dejar el mío
files-choice-take = Tomar el otro
files-choice-by-field = Elegir campo a campo
files-choice-take-new = Tomarlo
files-choice-leave-new = No incluirlo
files-mine = aquí
files-theirs = { $from ->
    [link] en el enlace
   *[file] en el archivo
}
files-added = se añade: aquí no hay nada
files-take = Tomar ({ $count })
files-leave = Dejar todo como está

place-within = { $outer }: { $inner }
place-number = n.º { $number }
place-item = entrada
member-text = Palabras
place-nothing = nada
place-entries = { $count ->
    [one] 1 entrada
   *[other] { $count } entradas
}
place-more = { $texts }; …

glance-stage = { $stage }: { $state }
glance-next = sigue: { $stage }
glance-all-done = todas las etapas hechas

# The head of a job.

job-undo = Deshacer
job-redo = Rehacer
step-places = { $place } y { $count } más
job-kept = Guardado en este teléfono
job-being-kept = Guardando …
job-unsaved = Aún no en este teléfono: { $count }
job-names = Nombre, lugar, personas
job-save-file = Guardar este trabajo en un archivo
job-save-file-hint = Un archivo, sin fotos. Ábralo en otro teléfono en Trabajos, Copia de seguridad.
clash-heading = Cambiado también en otra ventana
clash-mine = usted escribió
clash-theirs = la otra ventana escribió
clash-standing = ahora está
clash-take-mine = Tomar lo mío
clash-take-theirs = Tomar lo otro
clash-leave = Dejar lo que está

# What a new job begins with, in the settings.

defaults-heading = Un trabajo nuevo empieza con
defaults-hint = La llave y el adaptador de arriba, y esto. Cada trabajo puede tener lo suyo; un cambio aquí no cambia los que ya hay.
field-ownGaugeResolution = Paso mínimo de su manómetro
field-ownGaugeUncertainty = Error posible de su manómetro
field-ownThermometerUncertainty = Error posible de su termómetro
field-ownVacuumGaugeResolution = Paso mínimo de su vacuómetro
field-ownScaleResolution = Paso mínimo de su báscula
# The drawing of the circuit and the overview.

circuit-drawing = Dibujo del circuito. { $caption } { $joints } uniones: { $states }.
circuit-joint = Unión { $number }: { $joint }, { $state }
circuit-count = { $state }: { $count }
circuit-length = { $length } de línea
circuit-no-length = longitud sin introducir
circuit-no-lift = desnivel sin introducir
circuit-level = ambas unidades al mismo nivel
circuit-indoor-higher = unidad interior { $lift } más alta
circuit-outdoor-higher = unidad exterior { $lift } más alta
circuit-liquid = línea de líquido { $tube }
circuit-gas = línea de gas { $tube }
circuit-not-to-scale = El desnivel no está a escala.
stage-next = es la siguiente
stage-short-not-begun = sin empezar
stage-short-under-way = en curso
stage-short-in-band = dentro
stage-short-cannot-tell = no se sabe
stage-short-out-of-band = fuera
stage-short-overridden = con responsable
stage-more = { $count } más
still-open = Pendiente aún
job-previous = Atrás: { $stage }
job-problems-elsewhere = Estos se introducen en otras pantallas, o más arriba.
alarms = Contra el orden de trabajo
alarm-answer = Respondo yo
alarm-answered-for = Responde { $by }
alarm-answered = “{ $reason }”: responde { $by }, { $at }.
alarm-hint = Sigue avisando hasta que haya un motivo y un nombre.
alarm-withdraw = Retirar
note-add = Añadir una nota
note-take-out = Quitar esta nota
note-of = Nota, { $at }

# The usual cautions of each stage.

caution-plan = Deciden placa, normativa local y habilitación
caution-plan-licence = Las instrucciones del equipo y la normativa local mandan sobre toda cifra de aquí. Trabajo de personal habilitado y formado.
caution-plan-plate = Lea la placa en la propia unidad: una cifra de otro modelo puede hacer daño.
caution-plan-flammable = Las clases A2L, A2 y A3 arden: local, carga y focos de ignición se resuelven antes del primer taladro.
caution-plan-electricity = Partes con tensión: el corte y el cableado son de un electricista habilitado.
caution-flare = Ojos, bordes cortantes, nada a presión
caution-flare-licence = Las instrucciones del equipo y la normativa local van primero, y la práctica habilitada también.
caution-flare-eyes = Protección ocular: saltan virutas y rebabas. El tubo cortado corta.
caution-flare-nitrogen = Donde se suelda, por el tubo pasa nitrógeno seco de un regulador, nunca oxígeno ni aire comprimido; nada que arda cerca.
caution-flare-flammable = Nunca corte, abra ni caliente un circuito con refrigerante.
caution-tighten = Sujete el accesorio
caution-tighten-licence = El par de las instrucciones del equipo manda sobre toda tabla de aquí, y también la normativa local y la práctica habilitada.
caution-tighten-back-up = Sujete el accesorio con una segunda llave, o el tubo se retuerce y se rompe.
caution-tighten-torque = Aceite para este refrigerante en rosca y caras, si las instrucciones lo piden. Nunca aceite cerca de oxígeno.
caution-tighten-pressure = Nunca gire una tuerca en una unión a presión.
caution-pressure-test = Nitrógeno seco, regulador, válvula de alivio
caution-pressure-test-licence = Mandan la presión de prueba de la placa y las instrucciones del equipo, y también la normativa local y la práctica habilitada.
caution-pressure-test-nitrogen = Solo nitrógeno seco. Nunca oxígeno: con aceite explota. Nunca aire comprimido.
caution-pressure-test-regulator = Con regulador y válvula de alivio tarada a no más de lo que soporta la parte más débil.
caution-pressure-test-stages = Suba por escalones, mirando y escuchando en cada uno. Aísle lo que no está hecho para la presión.
caution-pressure-test-eyes = Con protección ocular, nadie sobre una unión. Nunca apriete lo que está a presión.
caution-pressure-test-release = Suéltelo despacio y a aire en movimiento: en un local pequeño el nitrógeno desplaza al aire.
caution-evacuate = Sin tensión; el compresor, parado
caution-evacuate-licence = Mandan las instrucciones del equipo, la normativa local y la práctica habilitada.
caution-evacuate-electricity = Equipo desconectado y bloqueado: su compresor nunca debe funcionar ni tener tensión en vacío.
caution-evacuate-pressure = Primero fuera el nitrógeno, despacio: bomba y vacuómetro no soportan presión.
caution-evacuate-flammable = Con refrigerante inflamable cerca: sin chispas y con una bomba adecuada.
caution-evacuate-oil-mist = La bomba expulsa niebla de aceite: que salga a aire en movimiento.
caution-release-and-charge = Quemaduras por frío, aire que respirar, nada que encienda
caution-release-and-charge-licence = Solo personal habilitado maneja refrigerante. Mandan las instrucciones del equipo y la normativa local.
caution-release-and-charge-cold = El refrigerante líquido congela piel y ojos: guantes, protección ocular.
caution-release-and-charge-flammable = Las clases A2L, A2 y A3 arden: sin llama, chispa ni superficie caliente; herramientas y cilindro adecuados; un detector en el suelo.
caution-release-and-charge-air = Ventile: el gas pesado se acumula abajo y desplaza al aire.
caution-release-and-charge-cylinder = Nunca caliente un cilindro con llama ni lo llene por encima del 80 % de su volumen.
caution-run-check = Partes con tensión, móviles y calientes
caution-run-check-licence = Mandan las instrucciones del equipo, la normativa local y la práctica habilitada.
caution-run-check-electricity = Las tapas quedan puestas si se puede: medir dentro es de un electricista habilitado.
caution-run-check-moving = Los ventiladores arrancan sin aviso: aparte manos, mangueras y mangas.
caution-run-check-hot = La línea de descarga quema la piel.
caution-record = Lo pendiente se dice al propietario
caution-record-licence = Este informe no sustituye ningún certificado que pida la normativa local.
caution-record-handover = Entregue lo que está pendiente y lo que debe revisarse otra vez.

# The plan.

plan-charge = Carga total
plan-to-add = por añadir
plan-to-take-out = por sacar
plan-empty = Introduzca la placa y las líneas: siguen carga, local y lista de lo que hay que llevar.
plan-room = Local
plan-room-open = sin local introducido, o sin carga
plan-limits = Frente a la placa
plan-limit-length = Longitud de línea, { $figure } de { $limit }
plan-limit-lift = Desnivel, { $figure } de { $limit }
plan-limit-liquidLine = La línea de líquido soporta { $figure }, se piden { $limit }
plan-limit-gasLine = La línea de gas soporta { $figure }, se piden { $limit }
plan-no-limits = La línea más larga, el desnivel máximo y la presión de diseño de la placa se comparan con las líneas cuando hay ambos.
plan-tube-temperature = Tubos a 66 °C (150 °F).
plan-more-plate = Más de la placa
plan-port = Boca
plan-port-numbered = Boca { $number }
plan-ports = Bocas de otra medida, o varias
plan-indoor-ports = Bocas de la unidad interior
plan-outdoor-ports = Bocas de la unidad exterior
plan-ports-hint = Déjelo vacío si cada unidad tiene una boca de la medida de la línea. Una boca de otra medida lleva adaptador; varias se reúnen en la línea.
plan-add-port = Añadir una boca
plan-take-out = Quitar { $what }
plan-add-room = Añadir un local
plan-room-numbered = Local { $number }
plan-add-accessory = Añadir un accesorio
plan-accessory-numbered = Accesorio { $number }
plan-air = Aire de alrededor: altitud o barómetro
plan-cards = En sus propias fichas, con estas cifras
plan-to-line-set = Líneas
plan-to-insulation = Aislamiento de la línea de gas
plan-name = El trabajo
plan-calibrated-hint = al año se considera vencido: práctica común, sin fuente
bring = Llevar
bring-packed = { $packed } de { $all } en la furgoneta
bring-practice = práctica común, sin fuente
bring-range = de { $low } a { $high }
bring-nitrogen-needs = Qué pide la cifra del nitrógeno
bring-print = Imprimir la lista
bring-empty = Introduzca tubos y refrigerante para ver cifras.
# Joint by joint: cones, nuts, the list, the look for leaks.


joints-none = Aquí no hay uniones: introduzca las líneas en el plan, o añada una unión abajo.
joints-progress = { $place } de { $count } · { $done } hechas
joints-not-here = No es de esta etapa
joint-kind-and-tube = { $kind }, { $tube }
joints-earlier = Atrás
joints-later = Sigue
joints-no-earlier = la primera
joints-no-later = la última
joints-cone = Cono, en el borde
joints-no-refrigerant = El cono depende del refrigerante: introdúzcalo en el plan.
joints-no-cone = Ninguna tabla tiene cono para este tubo: tómelo de las instrucciones del equipo.
joints-no-tube = El tubo de esta línea no está introducido.
joints-to-plan = Al plan
joints-not-told = no se sabe
joints-tool-open = ¿Qué abocardador?
joints-tool = Abocardador: { $tool }
joints-flare-more = Rosca, ángulo, cálculo
joints-braze = Suelde esta unión. Haga pasar nitrógeno seco por el tubo mientras está caliente, o se forma cascarilla dentro.
joints-cap-no-cone = Un tapón no tiene cono. Viene en la etapa Apretar.
joints-brazed-no-nut = Una unión soldada no tiene tuerca: aquí no hay nada que apretar.
joints-cap-on = Ponga el tapón con su junta limpia. Aquí no se conoce su par: las instrucciones del equipo pueden darlo.
joints-act-flared = Abocardada
joints-act-brazed = Soldada
joints-act-tightened = Apretada
joints-act-tightened-to = Apretada: { $torque }
joints-act-cap-on = Puesto
joints-flared-at = Abocardada, { $at }
joints-brazed-at = Soldada, { $at }
joints-tightened-at = Apretada, { $at }
joints-cap-on-at = Puesto, { $at }
joints-take-back = deshacer
joints-remake = Rehacerla
joints-must-remake = Hay que rehacerla
joints-act-remake = Rehacerla
joints-remake-keeps = Lo medido queda en el informe como intento anterior; la unión vuelve a estar pendiente.
joints-usual-reasons = Motivos usuales
joints-reason-narrow = Cono demasiado estrecho
joints-reason-wide = Cono demasiado ancho
joints-reason-cracked = Borde agrietado
joints-reason-scored = Cara rayada
joints-reason-leaks = Fugaba
joints-reason-over-torque = Apretada de más
joints-attempts = Intentos anteriores
joints-cone-then = cono { $cone }
joints-torque-then = par { $torque }
joints-at-nut = En la tuerca
joints-gives = da { $aim } en la tuerca
joints-straight = la tuerca recibe lo mismo
joints-no-torque = No se conoce par para este tubo: introduzca abajo el de la placa.
joints-no-lever = El adaptador cambia el ajuste: introduzca abajo su longitud y la de la llave.
joints-turn = gire la tuerca
joints-turn-nut = gire la tuerca, { $nut }
joints-two-wrenches = Dos llaves, vistas a lo largo del tubo: la de la tuerca gira a derechas hacia la otra, que sujeta el accesorio.
joints-torque-open = Sin registrar.
joints-nut-got = { $torque } en la tuerca
joints-wrench = Llave y adaptador
joints-whose-band = Qué banda, par según la placa
joints-list = Uniones por orden de trabajo
joints-remade = rehechas: { $count }
joints-still = falta: { $steps }
joints-change = Cambiar
joints-add = Añadir una unión
joints-add-after = Añadir una unión después de: { $joint }
joints-move-earlier = Antes
joints-move-later = Después
joints-take-out = Quitar
joints-put-back = Reponer
joints-caution-cutting = Protección ocular y guantes: el tubo cortado tiene bordes afilados. Que no entren virutas en el tubo.
leak-look-of = { $joint }: ¿fuga?
leak-look-short = ¿Fuga?
leak-look-open = sin revisar
leak-looked-at = Revisada { $at }
leak-remake = Fuga: quite la presión antes de tocar nada. Apriete dentro de la banda o rehágala.
leak-cap = Fuga: limpie la junta, ponga el tapón otra vez y revise de nuevo.
leak-to-joint = A la unión

# Photos.

photos-heading = Fotos
photos-take = Hacer una foto
photos-choose = Elegir imágenes
photos-take-out = Quitar esta foto
photos-unreadable = No es una imagen que se pueda leer: { $name }
photos-absent = Esta foto no está en este teléfono. Está donde se guardó primero el trabajo, o en su copia.
photos-unnamed = Foto sin título

# Release and charge.

release-before = Antes de abrir una válvula
release-not-yet = No abra aún ninguna válvula
release-opened-without = Se abrió una válvula sin esto
release-no-joints = No hay uniones introducidas: aún no hay nada que revisar
release-tight = Estanco: lo mostró la prueba { $at }
release-not-tight = Estanqueidad a presión sin mostrar
release-looked = Todas las uniones hechas, dentro de banda y revisadas
release-not-looked = { $count ->
    [one] { $count } unión con fuga, fuera de banda o sin revisar
   *[other] { $count } uniones con fuga, fuera de banda o sin revisar
}
release-dry = Seco: pasó la prueba de vacío { $at }
release-not-dry = Sequedad sin mostrar: ninguna prueba de vacío ha pasado
release-above-room = Más refrigerante del que admite el local
release-to-stage = A { $stage }
release-valves = Válvulas
release-valves-how = Primero la válvula de líquido, luego la de gas. Llave hexagonal, casi siempre de 4 o 5 mm (5/32 o 3/16 in): a izquierdas hasta el tope, sin forzar.
release-valves-note = Medidas de llave y orden: práctica común, sin fuente; mandan la placa y las instrucciones. Un cuarto de vuelta de la de líquido al principio deja subir la presión despacio.
release-open-liquid = Válvula de líquido abierta
release-open-gas = Válvula de gas abierta
release-opened-liquid = Válvula de líquido abierta { $at }
release-opened-gas = Válvula de gas abierta { $at }
release-after = Presión tras abrir
release-after-empty = Introduzca la temperatura del aire en torno a las unidades: sigue lo que debería marcar el manómetro.
release-ambient = Aire en torno a las unidades
release-ambient-hint = A la sombra, donde han estado las unidades.
release-gauge = Lectura del manómetro, equipo parado
release-from = debería marcar de
release-to = a
release-reads = el manómetro marca
release-not-read = Sin leer aún
release-expected = A { $temperature } el refrigerante está a { $band } mientras el equipo no haya funcionado.
release-too-low = Demasiado baja: una válvula no está abierta, falta refrigerante o el equipo está más frío que el aire.
release-too-high = Demasiado alta: hay aire o nitrógeno en el circuito, el equipo está más caliente que el aire o es otro refrigerante.
release-caps = Tapones
release-caps-how = Un tapón es un cierre: limpie, aceite, enrosque y busque fugas en cada uno.
release-charge = Carga por báscula
release-leaves-as = Sale del cilindro como
release-liquid-only = solo líquido
release-either = líquido o vapor
charge-remaining = Falta por pasar

# Run check.

run-check-readings = Lecturas del equipo en marcha
run-check-read = Leer ahora
run-check-read-at = Leído { $at }
run-check-more = Presión de descarga, bandas usuales
run-check-more-note = Manómetro y termómetro vienen de los instrumentos del trabajo, refrigerante y altitud de su plan.

# The record.

record-title = Informe de la tubería frigorífica
record-practice = · PRÁCTICA, datos inventados
record-edition = Coldwright { $build }, tablas { $core }; escrito { $at }.
record-schema = Esquema del documento: { $address }
record-schema-note = Para otros programas: qué contiene el archivo del trabajo, y en qué unidades, está escrito en
record-nothing-open = No queda nada pendiente
record-left-open = { $count ->
    [one] Pendiente o mal en una etapa
   *[other] Pendiente o mal en { $count } etapas
}
record-problems = { $count ->
    [one] Una entrada no se puede leer o no sirve.
   *[other] { $count } entradas no se pueden leer o no sirven.
}
record-unanswered = { $rule }; nadie responde
record-found = Resultado
record-entered = Introducido
record-place = Lugar y regla
record-lines = Líneas
record-lines-run = { $length }, desnivel { $lift }; líquido y gas { $tubes }
record-charge-sum = { $total }: fábrica { $factory }, línea { $line }
record-hold = Prueba con nitrógeno
record-hold-figure = { $duration }; marca { $measured }, estanco marcaría { $expected }: diferencia { $difference }
record-pumped = Bomba
record-pumped-for = { $time } desde { $at }
record-vacuum = Prueba de vacío
record-vacuum-figure = { $level } ± { $uncertainty } tras { $time }
record-pass = Su regla
record-pass-figure = { $level }, como mucho { $limit } en { $time }
record-not-opened = sin abrir
record-valves = líquido { $liquid }, gas { $gas }
record-after-release = { $pressure }; debe ser { $band } a { $temperature }
record-to-add = por añadir { $mass }
record-to-take-out = por sacar { $mass }
record-charged = han pasado { $mass }
record-remaining = faltan { $mass }
record-needs-target = sin juzgar: no hay objetivo introducido
record-should-be = debe ser { $band }
record-column-number = N.º
record-column-joint = Unión
record-column-tube = Tubo
record-column-cone = Cono
record-column-torque = Par en la tuerca
record-column-leaks = Fugas
record-margin-in-band = { $margin } dentro
record-margin-cannot-tell = a { $margin } del límite: no se sabe
record-margin-out-of-band = FUERA por { $margin }
record-not-done = sin hacer
record-cap-on = puesto
record-attempts = Rehechas, y notas de las uniones
record-attempt = Unión { $number }, { $at }: { $reason }
record-joint-note = Unión { $number }: { $note }
record-pressures = Lecturas de la prueba de presión: { $count }
record-vacuums = Lecturas de la evacuación: { $count }
record-readings-left = { $count } anteriores están en el archivo de lecturas.
record-no-time = sin hora
record-unreadable = ilegible
record-doubtful = reloj dudoso
record-air = aire { $temperature }
record-hold-begins = empieza la prueba
record-pump-on = bomba en marcha
record-valved-off = bomba aislada
record-vacuum-drawing = { $count } lecturas del vacuómetro en el tiempo, primero la bomba y luego la prueba, último nivel { $level }.
record-resolution = pasos de { $figure }
record-uncertainty = ± { $figure }
record-wrenchRange = { $figure }
record-wrenchAccuracy = ± { $figure }
record-adapterLength = adaptador { $figure }
record-calibrated = calibrado { $day }
record-not-calibrated = sin calibración introducida
record-notes = Contra el orden, reloj, notas
record-override = { $rule }: { $reason } ({ $by }, { $at })
record-note = { $stage }, { $at }: { $text }
record-disclaimer = Informe de lo introducido y de lo que resulta por las fuentes citadas en Coldwright. No sustituye las instrucciones del equipo, la normativa local ni la práctica habilitada.
record-names = Nombres bajo el informe
record-sign-name = Nombre
record-done-by = hecho por
record-received-by = recibido por
record-date = fecha
record-sign = Firmar ahora
record-signed = Firmado { $at }
record-add-name = Poner un nombre debajo
record-add-another = Un nombre más
record-take-out-name = Quitar este nombre
record-print = Imprimir el informe
record-save-json = Guardar este trabajo (JSON)
record-save-readings = Lecturas (CSV)
record-save-joints = Uniones (CSV)
# The drawing of the circuit and the overview.

# The holds: clocks, readings, what the phone can and cannot do.
clock-pressureClock = Prueba de presión
clock-pumpClock = Bomba
clock-vacuumClock = Prueba de vacío
clock-since = desde { $moment }
clock-to-go = Al menos { $lasts }: faltan { $remaining }, hasta el { $due }.
clock-over = Sus { $lasts } han pasado.
clock-pressure-ended = La prueba de presión ha terminado: después ha funcionado la bomba.
clock-vacuum-ended = La prueba de vacío ha terminado: después se abrió una válvula.
waking-awake = La pantalla sigue encendida mientras corre el reloj.
waking-asleep = La pantalla se mantiene encendida en cuanto se mira esta página.
waking-refused = El teléfono se niega a mantener la pantalla encendida, quizá por ahorrar batería. El reloj sigue bien.
waking-not-offered = Este navegador no puede mantener la pantalla encendida. El reloj sigue bien cuando se apaga.
ring-ask = Sonar cuando acabe
ring-granted = Suena, y muestra un aviso del teléfono.
ring-denied = Suena aquí; este navegador no permite avisos.
ring-default = Suena aquí; no se permitió ningún aviso.
ring-not-offered = Suena aquí; este navegador no tiene avisos.
ring-limits = Una página cerrada no suena, y un teléfono dormido puede sonar tarde. Para estar seguro ponga también una alarma: { $due }.
ring-over = El tiempo de la prueba ha pasado: lea el instrumento.
reading-next = Lectura siguiente
reading-gauge = Manómetro
reading-vacuum = Vacuómetro
reading-take = Leer ahora
reading-hint = Lo último leído está listo. Ponga lo que haya cambiado y pulse Leer ahora: la hora va con ello.
reading-kept = Guardado a las { $time }: { $texts }
reading-steps = { $field }, pasos
reading-begins-detail = Entró o salió gas, o se rehízo una unión
reading-valve = La bomba
reading-before-hold = antes de esta prueba
reading-rows = Lecturas { $from } a { $to }:
reading-row = Lectura { $row }, { $time }, { $pressure }:
reading-take-out = Quitar la lectura { $number }
valved-off-false = bomba en marcha
valved-off-true = aislada
readings-count = { $count ->
    [0] Aún no hay lecturas
    [one] Una lectura
   *[other] { $count } lecturas
}
readings-paste-hint = Una fila por línea: { $names }. La hora como 2026-11-25 18:40, o solo 18:40 para el último día. Entre ellos, punto y coma, tabuladores o espacios.
rows-paste-no-time = La línea { $line } no tiene una hora como 18:40: “{ $text }”
pressure-test-empty = Con la presión de diseño de la placa: la presión de prueba y cómo subir a ella. Con lecturas: tiempo atmosférico o fuga.
pressure-test-looks = Cada unión con jabón
pressure-test-looks-note = Enjabone todo alrededor, espere un minuto, mire por todos lados.
evacuate-pump = Bomba
evacuate-pump-now = La bomba aspira ahora
evacuate-pump-again = La bomba vuelve a aspirar, desde ahora
evacuate-cores-detail = Su paso es lo que más frena la bomba

## A link of a job that cannot be written or read

link-problem-not-a-link = Este enlace no contiene ningún trabajo. Pídalo de nuevo, o pida el archivo.
link-problem-damaged = Este enlace se cortó o cambió por el camino. Pídalo de nuevo, o pida el archivo.
link-problem-newer-version = Una versión más nueva de esta página ha escrito este enlace ({ $found }; esta página lee hasta la { $known }). Actualícela primero.
link-problem-too-large = { $characters } caracteres son más de los que puede tener un enlace ({ $most }). Envíe el archivo.
link-problem-beyond-bounds = Este documento es mayor que cualquier trabajo.
link-problem-not-a-document = Esto no es un documento de un trabajo.

## A job that was handed on by a link

handed-intro = Recibido por un enlace, para mirarlo. En este teléfono no cambia nada hasta que usted lo diga.
handed-nothing-kept = No se guardó nada.
handed-keep = Guardar este trabajo
handed-here = Este trabajo ya está en este teléfono.
handed-keep-copy = Guardarlo junto al mío
handed-compare = Comparar con
handed-compare-none = ninguno
handed-open-mine = Abrir el de aquí
handed-same = Los dos dicen lo mismo.
handed-differs = Difieren en { $count ->
    [one] un punto
   *[other] { $count } puntos
}. Lo que solo está en el enlace se añade; en lo demás queda lo de aquí, salvo que elija.
handed-merge = Incorporar ({ $count })

### Español neutro, para técnicos de España y América. Las instrucciones, de usted; los botones, en infinitivo.
###
### Términos, siempre los mismos:
###   tube tubo · line línea · flare abocardado · cone cono · flare nut tuerca de abocardado · bar barra
###   joint unión · union racor · torque par de apriete · wrench llave · adapter adaptador · caliper calibre
###   gauge manómetro · vacuum gauge vacuómetro · gauge pressure presión manométrica · plate placa
###   superheat recalentamiento · subcooling subenfriamiento · bubble burbuja · dew rocío · glide deslizamiento
###   pressure hold prueba de estanqueidad · pump-down evacuación · vacuum hold prueba de vacío · relief valve válvula de alivio
###   charge carga · scale (of charging) báscula · cylinder cilindro · recovery recuperación · leak fuga
###   coil serpentín · metering device dispositivo de expansión · airflow caudal de aire · room local
###   job trabajo · bench banco · card ficha · stage etapa · record informe · reading lectura · working cálculo

## Problems with an entry. $found is what stands there, $example and $accepted what would do.

problem-missing = Hace falta aquí, por ejemplo { $example }.
problem-not-a-number = No hay cifra en el lugar { $at }: “{ $found }”. Escríbala como { $example }.
problem-division-by-zero = Una fracción no puede tener 0 bajo la raya.
problem-ambiguous-number = “{ $found }” puede ser { $decimal }, con punto decimal, o { $thousands }. Escriba la que quiere decir.
point-is-decimal = “{ $found }” se lee con punto decimal, como { $decimal }.
problem-not-finite = Demasiado grande para ser una cifra.
problem-unit-missing = Añada la unidad: { $accepted }.
problem-unknown-unit = “{ $found }” no es una unidad conocida aquí. Lo son: { $accepted }.
problem-other-quantity = Eso es { $found }; aquí va { $quantity }, en { $accepted }.
problem-parts-out-of-order = Primero va la parte mayor, como en { $example }.
problem-out-of-range = Fuera de lo que hay en una obra: de { $low } a { $high }.
problem-not-a-choice = “{ $found }” no es ninguno de { $accepted }.
problem-wrong-type = Debe ser una cifra o un texto, como { $example }.
problem-outside-validity = Fuera de lo que vale para el método: de { $low } a { $high }.
problem-not-in-table = No está en la tabla, que tiene: { $accepted }.
problem-conflict = Contradice a “{ $with }”. Deje vacío uno de los dos.
problem-impossible = No puede ser, junto con “{ $with }”.
problem-unknown-field = No existe ese campo. { $accepted }
problem-not-an-object = Debe ser un objeto con campos con nombre.
problem-not-a-list = Debe ser una lista.
problem-too-few = Hacen falta { $needed }; hay { $found }.
problem-too-many = { $found } son más de los { $most } que se leen.
problem-out-of-order = Viene antes que “{ $with }” de la fila de arriba. Ponga las filas por orden de tiempo.
problem-unknown-calculation = Ningún cálculo se llama así. Hay: { $accepted }.
problem-not-json = No es JSON desde la columna { $at }.
problem-too-long = Más largo que los { $most } bytes que se leen.

## The page as such.

page-title = { $place } · Coldwright
title-bench = Banco

crash-title = Coldwright se ha detenido
crash-text = Falló algo que no debía fallar. Lo que escribió se conserva y está aquí y en la dirección.
crash-reload = Abrir de nuevo
crash-start-anew = Empezar con una página vacía
crash-same-place = Enlace a este lugar
crash-rescue = Guardar todos los trabajos en un archivo
crash-rescued = Guardados: búsquelos en las descargas
crash-not-rescued = No guardados: ahora no se pueden leer los trabajos

title-tubes = Tubos
title-convert = Convertir
title-settings = Ajustes

## The frame: header, navigation, what is kept on the phone.

frame-navigation = Lugares
keeping-fetching = Guardándose …
keeping-kept = Funciona sin señal
keeping-failed = Aún no guardado en este teléfono: ábralo otra vez con señal
keeping-one-file = Funciona sin señal
keeping-unsupported = Este navegador no guarda nada: hace falta señal
update-now = Hay una versión más nueva en este teléfono.
update-clock = Hay una versión más nueva en este teléfono. Se podrá abrir cuando no corra ninguna prueba ni la bomba.
update-unsaved = Hay una versión más nueva en este teléfono. Guarde antes los trabajos en un archivo: solo están en memoria.
update-take = Abrirla ya

hand-on = Pasar
hand-on-absent = Todavía no está en este teléfono: cuando la página haya tenido señal, funcionará sin ella.

## Words that stand at many places.

why = por qué
why-of = Por qué: { $figure }
learn-steps = Preguntar el porqué de cada paso
plus-minus = ±
unit-year = año
plus-minus-of = Cambiar el signo de { $field }
margin-inside = { $margin } dentro del límite, medido a ± { $uncertainty }
margin-on = a { $margin } del límite, medido a ± { $uncertainty }
margin-outside = { $margin } más allá del límite, medido a ± { $uncertainty }
margin-inside-exact = { $margin } dentro del límite
margin-on-exact = en el límite
margin-outside-exact = { $margin } más allá del límite

verdict-in-band = dentro
verdict-out-of-band = fuera
verdict-cannot-tell = no se sabe
verdict-open = pendiente

## Bench: torque.

bench-sizes = Medidas de tubo
torque-heading = Apriete una tuerca de abocardado de { $tube } a
torque-aim = objetivo { $aim }
torque-one-figure = la única cifra de la placa
torque-switch-unit = Cambiar a { $unit }
torque-withheld = No se muestra ningún par hasta que esto se corrija.
torque-bands-drawn = { $families }. La banda que vale es { $band }, el objetivo { $aim }.
torque-family-band = { $family } { $band }
torque-basis-plate = la cifra de la placa
torque-basis-family = solo { $family }
torque-basis-overlap = lo que admiten todas
torque-basis-overlap-one = la única familia con esta medida
torque-basis-change = cambiar
torque-family-choice = Qué banda vale
torque-family-all = Lo que admiten todas las familias
torque-unit-choice = Unidad del par
torque-plate-wins = La placa o las instrucciones del equipo mandan sobre toda familia: introduzca su cifra.
torque-caution-wrench = Sujete el accesorio con una segunda llave, o el tubo se retuerce.
torque-caution-code = Las instrucciones del equipo y la normativa local van primero. Los circuitos frigoríficos son trabajo de personal habilitado.

field-tube = Tubo
field-family = Familia
field-plateTorque = Par según la placa
field-adapterLength = Adaptador, cuadradillo a tuerca
field-adapterAngle = Ángulo del adaptador
field-wrenchLength = Llave, mano a cuadradillo
field-wrenchRange = Escala de la llave, de menor a mayor
field-wrenchAccuracy = Exactitud de la llave
field-flareClass = Clase
field-tool = Abocardador
field-measuredCone = Cono medido
field-caliperUncertainty = Error posible del calibre
field-series = Serie
field-wall = Pared
field-length = Longitud
field-temperature = Temperatura
field-designPressure = Presión de diseño (PS), manométrica
field-text = Cifra con su unidad
field-quantity = Magnitud
field-altitude = Altitud
field-barometer = Barómetro del lugar
field-input = Entrada
field-calculation = Cálculo
field-line = Línea

hint-plateTorque = 68–82, 75 ± 7 o una sola cifra
hint-adapterAngle = 0° recto, 90° en escuadra, 180° hacia atrás
hint-wrenchRange = por ejemplo 20–100
hint-wrenchAccuracy = sin dato: 4 %, hasta 10 N·m 6 %
hint-caliperUncertainty = sin dato: 0,05 mm
hint-measuredCone = en la parte más ancha del borde
hint-wrenchLength = del centro de la empuñadura al cuadradillo
hint-adapterLength = de centro a centro

choice-en-378-2 = EN 378-2
choice-jis-b-8607 = JIS B 8607
choice-common-practice = Práctica común
choice-plate = Placa
choice-family = Familia
choice-overlap = Coincidencia
choice-oil-on-thread-and-faces = Rosca y ambas caras del abocardado con aceite del sistema, como suponen estas cifras.
assumes-oil-on-thread-and-faces = rosca y caras con aceite

## Bench: flare.

flare-heading = Abocardado
flare-cone = Cono
flare-cone-of-class = Cono, { $class }
flare-nut = Tuerca y llave
flare-thread = Rosca
flare-thread-pitch = paso { $pitch }
flare-projection = Tubo sobre la barra
flare-projection-open = elija el abocardador
flare-angle = Ángulo del cono con el eje
flare-radius = Radio al pie
flare-no-cone = no en esta serie
flare-measured-open = Mida el cono terminado e introdúzcalo aquí.
flare-drawing = Sección a escala de un abocardado de { $tube }: tubo de { $diameter } exterior, cono de { $cone }, { $angle } con el eje.
flare-drawing-no-cone = Sección a escala de un tubo de { $tube }: { $diameter } exterior. La serie no tiene cono para él.
flare-drawing-projection = En la barra: { $projection } de tubo por encima.
flare-drawing-measured = El cono medido va a trazos: { $measured }.
flare-in-bar = en la barra
flare-finished = terminado
flare-steps = Corte a escuadra, quite la rebaba, primero la tuerca, aceite en las dos caras del cono.

choice-class-1 = Clase 1
choice-class-2 = Clase 2
class-short-class-1 = clase 1
class-short-class-2 = clase 2
class-use-class-1 = R-22, R-134a, R-407C
class-use-class-2 = R-410A, R-32 y similares
choice-eccentric-clutch = Cono excéntrico, embrague, para alta presión
choice-ordinary-clutch = Embrague, corriente
choice-wing-nut-bar = Barra y palomilla
choice-keep = Úselo.
choice-measure-again = Demasiado cerca de un límite para decidir. Mida otra vez, en otro diámetro o con un calibre más fino.
choice-more-above-bar = Demasiado pequeño. Córtelo y abocarde de nuevo con más tubo sobre la barra.
choice-less-above-bar = Demasiado ancho. Córtelo y abocarde de nuevo con menos tubo sobre la barra.
notice-no-cone-in-series = La serie no tiene cono ni tuerca para esta medida: tómelos de las instrucciones del equipo.
notice-largest-flared-tube = El tubo más grande que se abocarda; algunas normas piden soldar los mayores o todas las uniones. Consulte la local.
choice-no-cone-in-series = { notice-no-cone-in-series }
choice-largest-flared-tube = { notice-largest-flared-tube }

## Bench: wrench.

wrench-heading = Llave
wrench-set = Ajuste la llave a
wrench-set-adapter = Con el adaptador, ajuste
wrench-gives = { $aim } en la tuerca; la banda en la escala es { $band }
wrench-straight = Sin adaptador la escala muestra lo que recibe la tuerca.
wrench-withheld = No se muestra ningún ajuste hasta que se corrijan los datos.
wrench-angles = Ángulos usuales
wrench-drawing = Llave a escala, { $length } de mano a cuadradillo, adaptador de { $adapter } a { $angle }. Gire a derechas, visto desde el tubo; una segunda llave sujeta el accesorio.
wrench-hold-still = sujete el accesorio
wrench-fit-heading = ¿Sirve esta llave?
wrench-fit-open = Introduzca la escala de la llave para ver si sirve.
wrench-fit-in-band = Esta llave sirve.
wrench-fit-out-of-band = Esta llave no sirve.
wrench-fit-cannot-tell = No se sabe: demasiado cerca de un límite.
wrench-fit-on-scale = Ajuste { $figure } en la parte fiable { $band } de la escala; su quinta parte inferior no es fiable
wrench-fit-hits = En la tuerca, { $accuracy } de error a cada lado
wrench-fit-hits-open = La placa da una cifra sin tolerancia: no hay banda que acertar ni fallar.

## Tubes.

tubes-heading = Tubo de cobre
tubes-intro = Rollos recocidos. Toque una medida para ver lo que contiene y por qué.
tubes-metal-temperature = Temperatura del metal
tubes-size = Medida
tubes-bore = Interior
tubes-wall = Pared
tubes-mass = Cobre
tubes-volume = Cabe
tubes-rated = Admite
tubes-outside-diameter = Diámetro exterior
tubes-bore-area = Sección interior
tubes-mass-per-length = Masa del tubo
tubes-volume-per-metre = Un metro contiene
tubes-rated-pressure = Presión de trabajo admisible
tubes-allowable-stress = Tensión admisible a { $temperature }, recocido
tubes-brazed = La soldadura fuerte recuece el tubo duro: también le valen estas cifras.
tubes-length = Longitud de tubo
tubes-length-volume = Contiene
tubes-length-mass = Pesa
tubes-verdict-in-band = Soporta la presión de diseño
tubes-verdict-out-of-band = No soporta la presión de diseño
tubes-verdict-cannot-tell = En el límite de la presión de diseño
tubes-caution = La presión es solo la del tubo. Abocardados, válvulas y la placa del equipo pueden admitir menos; decide la normativa local.
choice-astm-b280 = Medidas en pulgadas, ASTM B280
choice-en-12735-1 = Medidas métricas, EN 12735-1

## Convert.

convert-heading = Convertir
convert-label = Escriba una cifra con su unidad
convert-examples = Ejemplos
convert-fraction = 1/64 más próximo: { $fraction } in
convert-fraction-off = sobra { $remainder }
convert-air = Aire: altitud o barómetro
convert-air-barometer = con los { $pressure } del barómetro alrededor
convert-air-altitude = con { $pressure } alrededor, el aire normal de esa altitud
convert-air-assumed-sea-level = con { $pressure } alrededor: se supone el nivel del mar
convert-empty = 140 psi, 5/8, −12 °F, 500 micras, 2 lb 6 oz, 12,5 bar: escríbalo como lo diría.
convert-working = Manométrica y absoluta

choice-barometer = Barómetro
choice-altitude = Altitud
choice-assumed-sea-level = Se supone el nivel del mar

quantity-gauge-pressure = presión manométrica
quantity-absolute-pressure = presión absoluta
quantity-vacuum = vacío bajo el aire
quantity-torque = par
quantity-length = longitud
quantity-temperature = temperatura
quantity-mass = masa
quantity-power = potencia
quantity-volume-flow = caudal
quantity-area = superficie
quantity-volume = volumen
quantity-mass-per-length = masa por longitud
quantity-density = densidad
quantity-mass-flow = caudal másico
quantity-force = fuerza
quantity-energy = energía
quantity-velocity = velocidad
quantity-specific-enthalpy = entalpía específica
quantity-specific-heat-capacity = calor específico
quantity-dynamic-viscosity = viscosidad dinámica
quantity-time = tiempo
quantity-angle = ángulo
quantity-ratio = relación
quantity-temperature-difference = diferencia de temperatura
quantity-pressure-difference = diferencia de presión
quantity-stress = tensión
quantity-altitude = altitud
quantity-pressure-rate = presión por tiempo
quantity-leak-rate = caudal de fuga
quantity-yearly-loss = pérdida anual
quantity-thermal-conductivity = conductividad térmica
quantity-heat-transfer-coefficient = coeficiente de transmisión
quantity-heat-flow-per-length = calor por longitud

## Settings.

settings-heading = Ajustes
settings-language = Idioma
settings-language-of-page = Frases, fechas y signo decimal
settings-language-browser = Como el teléfono
settings-language-missing = Aún no está en este teléfono: se usará en cuanto llegue.
settings-units = Unidades
settings-units-metric = Métricas
settings-units-customary = Pulgada, libra
settings-units-metric-detail = mm, bar, °C, g/m
settings-units-customary-detail = in, psi, °F, oz/ft
settings-system = Todo menos el par
settings-light = Luz
settings-torque-unit = Par, como en la llave
settings-look = Aspecto
settings-theme-system = Como el teléfono
settings-theme-day = Día
settings-theme-dark = Sótano oscuro
settings-theme-sunlight = Pleno sol
settings-hand = Mano que toca
settings-hand-right = Derecha
settings-hand-left = Izquierda
settings-learn = Cálculos
settings-learn-no = Plegados
settings-learn-yes = Abiertos, con preguntas para aprender
settings-kit = Abocardador y llave de la bolsa
settings-kit-hint = Valen para cada tuerca hasta que los cambie. Un enlace puede traer otros y no toca estos.
settings-cautions = Precauciones
settings-caution-plate = La placa y las instrucciones del equipo mandan sobre toda cifra de aquí, y también la normativa local.
settings-caution-licence = Los circuitos frigoríficos son trabajo de personas formadas y habilitadas. Esta página no sustituye ni lo uno ni lo otro.
settings-caution-pressure = Lleve protección ocular. Nunca abra una unión con presión. Nunca use oxígeno ni aire comprimido en un circuito.
settings-caution-sources = Una cifra marcada “de memoria” o “sin fuente” no se cotejó con su documento. Cotéjela con el suyo.
settings-edition = Esta edición
settings-edition-page = Página { $build }
settings-edition-core = Núcleo y tablas { $core }
settings-update-failed = No se pudo cargar entera una versión más nueva. Esta sigue como está; la próxima visita con señal lo intenta de nuevo.
settings-sources = Fuentes
settings-sources-intro = Cada cifra remite a una de estas.
settings-nothing-sent = Nada sale de este teléfono: ni cuenta, ni servidor, ni rastreo.

source-kind-standard = norma
source-kind-handbook = manual
source-kind-public-agency = organismo público
source-kind-reference-library = biblioteca de referencia
source-kind-common-practice = práctica común
standing-read = leído en la fuente
standing-second-hand = leído de segunda mano
standing-from-memory = de memoria, sin cotejar
standing-derived = deducido
standing-no-source = sin fuente
source-title-common-practice = Práctica común del oficio
source-title-plate = La placa o las instrucciones del propio equipo, como se introdujeron

## Working: what a step finds, and what its figures are.

step-aim-plate = Objetivo: el medio de la banda de la placa
step-aim-family = Objetivo: el medio de la banda de la familia
step-aim-overlap = Objetivo: el medio de lo que admiten todas las familias
step-wrench-setting = A cuánto ajustar la llave
step-least-cone = Cono mínimo
step-thread-pitch = Paso de la rosca
step-bore = Diámetro interior
step-bore-area = Sección interior
step-tube-mass = Masa del tubo
step-rated-pressure = Presión de trabajo admisible
step-gauge-to-absolute = De manométrica a absoluta
step-standard-pressure = Presión del aire normal

figure-least-torque = par mínimo
figure-most-torque = par máximo
figure-aim = par objetivo
figure-wrench-length = llave, mano a cuadradillo
figure-adapter-length = adaptador, cuadradillo a tuerca
figure-adapter-angle = ángulo del adaptador
figure-wrench-setting = ajuste de la llave
figure-largest-cone = cono máximo
figure-least-cone = cono mínimo
figure-cone-tolerance = tolerancia del cono
figure-threads-per-inch = hilos por pulgada
figure-thread-pitch = paso
figure-outside-diameter = diámetro exterior
figure-wall = pared
figure-bore = diámetro interior
figure-bore-area = sección interior
figure-copper-density = densidad del cobre
figure-mass-per-length = masa por longitud
figure-allowable-stress = tensión admisible
figure-least-wall = pared mínima con la tolerancia
figure-largest-diameter = diámetro máximo con la tolerancia
figure-rated-pressure = presión de trabajo admisible
figure-gauge-pressure = presión manométrica
figure-air-pressure = presión del aire
figure-absolute-pressure = presión absoluta
figure-altitude = altitud

## Fluids

problem-too-low = Por debajo de lo que vale para el método. El mínimo es { $limit }.
problem-too-high = Por encima de lo que vale para el método. El máximo es { $limit }.
problem-near-critical = Demasiado cerca del punto crítico, { $critical }, para una cifra fiable. El máximo es { $limit }.
problem-above-critical = En el punto crítico, { $critical }, o por encima: ahí nada hierve ni condensa.
problem-not-vapour = Más frío que la temperatura de rocío, { $limit }: una parte sería líquido.
problem-wrong-count = Rellene { $needed } de estos, no { $found }: { $accepted }.
problem-dependent = Dice casi lo mismo que “{ $with }”, y los dos no fijan nada. Introduzca otro dato.

field-refrigerant = Refrigerante
field-gaugePressure = Presión manométrica
field-absolutePressure = Presión absoluta
field-curvePoints = Puntos de la curva
field-curveFrom = Curva desde
field-curveTo = Curva hasta
field-tableStep = Paso de la tabla
field-tableRows = Filas de la tabla
field-dewTemperature = Temperatura de rocío
field-superheat = Recalentamiento
field-firstGaugePressure = Manómetro al inicio
field-firstAbsolutePressure = Presión absoluta al inicio
field-firstTemperature = Temperatura al inicio
field-secondTemperature = Temperatura ahora
field-secondGaugePressure = Manómetro ahora
field-secondBarometer = Barómetro ahora
field-dryBulb = Bulbo seco
field-wetBulb = Bulbo húmedo
field-dewPoint = Punto de rocío
field-relativeHumidity = Humedad relativa
field-humidityRatio = Humedad absoluta
field-enthalpy = Entalpía, por kilogramo de aire seco
field-bore = Diámetro interior
field-roughness = Rugosidad de la pared
field-density = Densidad
field-viscosity = Viscosidad
field-velocity = Velocidad
field-massFlow = Caudal másico
field-volumeFlow = Caudal
field-elbows90 = Codos de 90°
field-elbows45 = Codos de 45°
field-teeRuns = Tes, paso recto
field-teeBranches = Tes, por la rama

choice-alkylbenzene = Alquilbenceno
choice-mineral = Aceite mineral
choice-polyalkylene-glycol = Polialquilenglicol (PAG)
choice-polyolester = Poliolester (POE)
choice-ice = Hielo
choice-liquid = Líquido
choice-laminar = Laminar
choice-transition = Entre laminar y turbulento: el rozamiento es incierto
choice-turbulent = Turbulento
choice-saturated = Saturado
choice-superheated = Recalentado
choice-viscosity-of-the-library = Viscosidad de la biblioteca de referencia, al 5 % más o menos.
choice-viscosity-mixed-from-components = Viscosidad mezclada de los componentes: líquido al 10 %, en frío hasta el 22 %; vapor al 9 %, más o menos.

step-bubble-temperature = Temperatura de burbuja: desarrollo ajustado a la ecuación de estado
step-dew-temperature = Temperatura de rocío: desarrollo ajustado a la ecuación de estado
step-bubble-pressure = Presión de burbuja: desarrollo ajustado a la ecuación de estado
step-dew-pressure = Presión de rocío: desarrollo ajustado a la ecuación de estado
step-latent-heat = Calor latente
step-superheat = Recalentamiento
step-vapour-density = Densidad del vapor: desarrollo ajustado a la ecuación de estado
step-ideal-gas-hold = Como gas ideal
step-real-gas-hold = Como nitrógeno real a densidad constante
step-absolute-to-gauge = De absoluta a manométrica
step-boiling-point = Punto de ebullición del agua
step-boiling-pressure = Presión a la que hierve el agua
step-frost-point = Temperatura del hielo bajo este vapor
step-sublimation-pressure = Presión de vapor del hielo
step-humidity-ratio = Humedad absoluta
step-air-enthalpy = Entalpía del aire
step-air-density = Densidad del aire
step-reynolds = Número de Reynolds
step-friction-laminar = Factor de rozamiento, laminar
step-friction-transition = Factor de rozamiento entre laminar y turbulento
step-friction-turbulent = Factor de rozamiento, turbulento
step-friction-drop = Pérdida de presión por rozamiento

figure-critical-pressure = presión crítica
figure-critical-temperature = temperatura crítica
figure-bubble-temperature = temperatura de burbuja
figure-dew-temperature = temperatura de rocío
figure-bubble-pressure = presión de burbuja
figure-dew-pressure = presión de rocío
figure-saturation-temperature = temperatura
figure-vapour-enthalpy = entalpía del vapor
figure-liquid-enthalpy = entalpía del líquido
figure-latent-heat = calor latente
figure-vapour-temperature = temperatura del vapor
figure-superheat = recalentamiento
figure-density = densidad
figure-first-pressure = presión al inicio, absoluta
figure-first-temperature = temperatura al inicio
figure-second-temperature = temperatura ahora
figure-compressibility = factor de compresibilidad
figure-ideal-pressure = presión de un gas ideal
figure-expected-pressure = presión esperada, absoluta
figure-vapour-pressure = presión del vapor
figure-water-temperature = temperatura
figure-dry-bulb = bulbo seco
figure-relative-humidity = humedad relativa
figure-humidity-ratio = humedad absoluta
figure-air-enthalpy = entalpía por kilogramo de aire seco
figure-velocity = velocidad
figure-viscosity = viscosidad
figure-reynolds = número de Reynolds
figure-relative-roughness = rugosidad entre diámetro interior
figure-friction-factor = factor de rozamiento de Darcy
figure-equivalent-length = longitud con accesorios
figure-pressure-drop = pérdida de presión

## Cards: the list, and what the fluid cards say.

title-jobs = Trabajos
title-job = Trabajo
title-handed = Un trabajo recibido
title-cards = Fichas
title-saturation = Saturación
title-moist-air = Aire húmedo
title-water = Agua en vacío
cards-heading = Una pregunta en cada una
card-saturation = De la lectura del manómetro a burbuja y rocío, o al revés
card-moist-air = Dos cualesquiera de bulbo seco, bulbo húmedo, humedad y similares dan las demás
card-water = A qué vacío hierve el agua, y cuándo es hielo

saturation-heading = { $refrigerant } hierve y condensa a
saturation-empty = Escriba lo que marca el manómetro, o una temperatura.
saturation-withheld = No se muestra ninguna cifra hasta que esto se corrija.
saturation-bubble = burbuja
saturation-dew = rocío
saturation-both = hierve y condensa
saturation-bubble-counts = subenfriamiento desde aquí
saturation-dew-counts = recalentamiento desde aquí
saturation-both-counts = una sola sustancia: sin deslizamiento
saturation-glide = deslizamiento { $glide }
saturation-glide-at-dew = deslizamiento { $glide }, a la presión de rocío
saturation-uncertainty = ± { $temperature }, o ± { $pressure } de la presión absoluta
saturation-uncertainty-mixture = ± { $temperature }, o ± { $pressure } de la presión absoluta: R‑32 con R‑1234yf no se conoce mejor
saturation-properties = Líquido y vapor
saturation-absolute-pressure = Presión absoluta
saturation-bubble-pressure = Presión de burbuja, absoluta
saturation-dew-pressure = Presión de rocío, absoluta
saturation-liquid-density = Densidad del líquido
saturation-vapour-density = Densidad del vapor
saturation-latent-heat = Calor latente
saturation-caution-flammable = Arde: sin llama, chispa ni superficie caliente, con aire en movimiento y herramientas y recuperadora adecuadas.
saturation-caution-toxic = Tóxico, y arde: protección respiratoria a mano y otra persona cerca. Nunca en tubo de cobre.
saturation-caution-cold = El refrigerante líquido congela piel y ojos: guantes y protección ocular. En un local cerrado desplaza al aire.

curve-heading = { $refrigerant }, presión según temperatura
curve-drawing = Presión según temperatura de { $refrigerant }, a escala, de { $coldest } a { $hottest } y de { $least } a { $most } en el manómetro.
curve-hint = Arrastre la marca, toque la curva o use las flechas del teclado.
curve-bubble = burbuja
curve-dew = rocío
curve-both = burbuja y rocío
curve-value = { $reading }: burbuja { $bubble }, rocío { $dew }

facts-about = sobre { $refrigerant }
facts-summary = { $safetyClass }, { $fill }
facts-safety-class = Clase de seguridad
facts-class-A1 = toxicidad baja, sin propagación de llama
facts-class-A2L = toxicidad baja, arde despacio
facts-class-A3 = toxicidad baja, arde con facilidad
facts-class-B2L = tóxico, arde despacio
facts-charged = Sale del cilindro
facts-as-liquid = cargar en líquido
facts-as-either = cargar en líquido o vapor
facts-oils = Aceite
facts-composition = En masa
facts-flammability-limit = Arde en aire desde (LFL)
facts-concentration-limit = Máximo en local ocupado (RCL)
facts-flare-class = Abocardados
facts-warming-ar4 = PCA, 100 años, AR4
facts-warming-ar5 = PCA, 100 años, AR5
facts-warming-ar6 = PCA, 100 años, AR6
facts-critical-point = Punto crítico

table-heading = Tabla en torno a la lectura
table-caption = { $refrigerant }, saturación
table-altitude = Altitud { $altitude }: { $air }
table-gauge = Presión
table-bubble = Burbuja
table-dew = Rocío
table-gauge-unit = { $unit } man.
table-print = Imprimir esta tabla

convert-no-refrigerant = ninguno
convert-boiling = { $refrigerant } hierve y condensa
convert-to-saturation = Su saturación, con curva y tabla

moist-air-heading = Aire húmedo
moist-air-intro = Introduzca dos cualesquiera.
moist-air-others = Entonces también
moist-air-empty = Hacen falta dos datos, como bulbo seco y bulbo húmedo.
moist-air-withheld = No se muestra ninguna cifra hasta que esto se corrija.

water-heading = En vacío
water-pressure = Vacuómetro, absoluta
water-usual = Lecturas usuales
water-unit = El vacuómetro está graduado en
water-empty = Escriba lo que marca el vacuómetro, o una temperatura.
water-ice = el hielo pasa a vapor a
water-liquid = el agua hierve a
water-ice-pressure = presión de vapor del hielo
water-liquid-pressure = el agua hierve a
water-supercooled = Agua aún sin congelar
water-note = Si una lectura se mantiene con la bomba aislada y todo el tubo está más caliente que esta temperatura, no queda en él agua ni hielo. El aceite y el refrigerante que se evaporan también suben la lectura.

## What the cards of the job share.

cards-group-plan = Planificar
cards-group-prove = Comprobar la estanqueidad
cards-group-dry = Secar
cards-group-charge = Cargar
cards-group-run = Comprobar en marcha
cards-group-look-up = Consultar
choose = elegir
truth-true = sí
truth-false = no
example-show = Ver un ejemplo
example-shown = Un ejemplo: cambie lo que quiera.
bring-back = Volver a lo que había aquí
rows-add = Una fila más
rows-row = fila { $row }
rows-remove = Quitar la fila { $row }
rows-removed = La fila { $row } está quitada.
rows-put-back = Reponerla
rows-full = { $most } filas son el máximo que lleva un enlace.
rows-more = Este enlace tiene más de { $most } filas. Las siguientes no se leen.
rows-paste = Pegar muchas filas
rows-paste-hint = Una fila por línea: { $names }. Entre ellos, punto y coma, tabuladores o espacios.
rows-paste-take = Tomar estas filas
rows-paste-take-out = Quitarlas otra vez
rows-paste-taken = { $count ->
    [0] No se tomó ninguna fila.
    [1] Se tomó una fila.
   *[other] Se tomaron { $count } filas.
}
rows-paste-no-figure = La línea { $line } no tiene cifra: “{ $text }”
rows-paste-too-many-columns = La línea { $line } tiene más columnas que campos hay: “{ $text }”. Ponga punto y coma entre ellas.
rows-paste-no-room = La línea { $line } no cupo, { $most } filas son el máximo: “{ $text }”

## Friction in a tube

title-terms = Glosario
title-pipe-friction = Rozamiento en un tubo
card-terms = Qué significa una palabra, y sus otros nombres
card-pipe-friction = Cuánta presión cuesta un caudal en un tubo con sus accesorios
intro-pipe-friction = Una fase, líquido o vapor, a una densidad: cuánta presión cuesta el camino.
pipe-friction-empty = Introduzca diámetro interior, densidad, viscosidad y uno de los caudales; con una longitud sigue la pérdida.
pipe-friction-regime = Régimen
pipe-friction-fittings = Los accesorios cuentan como tubo de
hint-roughness = sin dato: tubo estirado, 1,5 µm

## The cards of the job's calculations; what else they say is in en-cards.ftl.

title-line-set = Líneas
card-line-set = Si llegan líquido, gas y aceite: pérdidas, desnivel, carga parcial, bocas y límites
title-standing-test = Prueba de estanqueidad
card-standing-test = Presión de prueba y escalones; si una caída es de la temperatura o de una fuga
title-pump-down = Evacuación
card-pump-down = Cuánto tarda la bomba hasta cada vacío, qué la frena, qué cambiar
title-vacuum-hold = Prueba de vacío
card-vacuum-hold = Bomba aislada: ¿seco y estanco, humedad o una fuga?
title-room-limit = Límite del local
card-room-limit = Carga máxima para un local, local mínimo para una carga
title-insulation = Aislamiento
card-insulation = Qué grueso debe tener para que una línea fría no gotee
title-charge = Carga
card-charge = Cuánto entra, dónde debe parar la báscula, qué admiten los cilindros
title-running = Comprobación en marcha
card-running = Recalentamiento, subenfriamiento y aire: como deben, o qué suele significar

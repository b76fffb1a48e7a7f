### Español, el glosario. `term-<id>`: nombres separados por punto y coma, primero el usual; tras una barra, grafías que
### se reconocen sin ofrecerse. Los plurales en -s y -es se reconocen solos. `says-<id>`: qué significa.

terms-find = Una palabra, por cualquiera de sus nombres
terms-count = { $count ->
    [0] Ninguno con ese nombre.
    [one] { $count } término
   *[other] { $count } términos
}
terms-others = También: { $names }
terms-all = Todos los términos
terms-close = Cerrar

## Líneas y accesorios.

term-gas-line = línea de gas; línea de aspiración; línea de vapor; línea de succión; línea gruesa
says-gas-line = El tubo más ancho y aislado entre las unidades. En frío lleva vapor frío al compresor; en calor lleva gas caliente: «aspiración» es solo media verdad.
term-liquid-line = línea de líquido; línea fina
says-liquid-line = El tubo más fino entre las unidades. Contiene la mayor parte del refrigerante que añade una línea.
term-line-set = juego de líneas; líneas frigoríficas; tubería de interconexión; líneas de interconexión
says-line-set = El par de tubos de unidad a unidad con su aislamiento.
term-service-valve = válvula de servicio; válvula de corte; válvula de paso; llave de paso
says-service-valve = La válvula de la unidad donde llega una línea. Cerrada, guarda la carga de fábrica. Ábrala solo cuando las líneas hayan pasado presión y vacío.
term-service-port = toma de servicio; toma de presión; puerto de servicio
says-service-port = Donde se conecta una manguera para medir, evacuar o cargar. El tapón sella; el obús solo puede rezumar.
term-valve-core = obús; válvula de obús; núcleo de válvula
says-valve-core = La pieza con muelle de una toma que abre al pulsarla. Frena el vacío: se saca para la bomba.
term-flare-nut = tuerca de abocardado; tuerca de unión; tuerca cónica; tuerca flare
says-flare-nut = La tuerca que aprieta el tubo abocardado contra el cono de un racor. Nunca afloje una bajo presión.
term-flare = abocardado; conexión abocardada; unión abocardada; avellanado
says-flare = El extremo de un tubo de cobre blando abierto en cono, que sella metal con metal. Debe ser parejo, sin rebaba ni grieta.
term-union = racor; racor de abocardado; unión macho
says-union = El accesorio con rosca exterior y cono contra el que se aprieta el abocardado.
term-burr = rebaba
says-burr = El labio que deja el cortatubos por dentro. Quítela con el extremo hacia abajo, para que no caiga viruta.
term-braze = soldadura fuerte; soldadura con varilla
says-braze = Unión con un metal de aporte que funde por encima de 450 °C. Mientras tanto fluye nitrógeno; dentro, ni presión ni refrigerante.
term-nitrogen-purge = barrido con nitrógeno; purga con nitrógeno; nitrógeno fluyente
says-nitrogen-purge = Un hilo de nitrógeno seco por el tubo mientras se suelda: no se forma cascarilla. El otro extremo abierto y el sitio ventilado.
term-oil-trap = trampa de aceite; sifón de aceite; sifón
says-oil-trap = Una curva al pie de una línea de gas ascendente donde se junta el aceite hasta que el gas lo sube. Solo donde lo pida la placa o el proyecto.
term-lift = desnivel; diferencia de altura; diferencia de cota
says-lift = Cuánto más alta está una unidad que la otra. La placa dice el máximo permitido.
term-riser = montante; tramo ascendente
says-riser = La parte de una línea que sube. El gas debe ir bastante deprisa para llevar el aceite.
term-equivalent-length = longitud equivalente; longitud efectiva
says-equivalent-length = El recorrido más, por cada accesorio, una longitud que costaría la misma presión.
term-insulation = aislamiento; coquilla
says-insulation = Espuma de célula cerrada que mantiene el exterior de una línea fría templado y seco. También los extremos y juntas van cerrados.
term-soft-copper = cobre recocido; cobre blando; tubo recocido
says-soft-copper = Cobre ablandado para curvarlo y abocardarlo. Viene en rollos, tapado para que siga seco y limpio.

## Herramientas.

term-torque-wrench = llave dinamométrica; llave de par; dinamométrica
says-torque-wrench = Una llave que avisa al alcanzar el par ajustado. Mejor a media escala, y aflojada tras el trabajo.
term-crow-foot = adaptador pata de cuervo; pata de cuervo; boca abierta intercambiable
says-crow-foot = Una boca abierta sobre el cuadradillo de la llave para alcanzar la tuerca. Hacia delante alarga el brazo: se ajusta menos.
term-backup-wrench = llave de apoyo; segunda llave; contrallave
says-backup-wrench = La llave que sujeta el racor mientras gira la tuerca. Sin ella el tubo se retuerce y agrieta.
term-torque = par de apriete; par; momento de apriete
says-torque = Fuerza por brazo. Representa el tiro en la rosca, que el rozamiento y el aceite cambian: siga la placa sobre el aceite.
term-eccentric-flaring = abocardador excéntrico; cono excéntrico
says-eccentric-flaring = Un abocardador cuyo cono rueda por el tubo: adelgaza menos el borde que un husillo simple.
term-manifold = puente de manómetros; colector; analizador
says-manifold = Manómetros, válvulas y mangueras en uno. Muchas juntas y pasos estrechos: malo para un vacío profundo.
term-regulator = regulador de presión; manorreductor; regulador
says-regulator = Baja la presión del cilindro a la ajustada. Nunca deje entrar nitrógeno sin él y sin un alivio detrás: un cilindro lleno puede reventar el sistema.
term-vacuum-gauge = vacuómetro; vacuómetro electrónico; vacuómetro de micras
says-vacuum-gauge = Mide lo que queda en un vacío profundo. Póngalo lejos de la bomba, tras una válvula, derecho y sin aceite.
term-core-tool = extractor de obuses; extractor de obús
says-core-tool = Una pequeña esclusa con válvula que saca y repone el obús sin abrir el sistema.
term-recovery-cylinder = cilindro de recuperación; botella de recuperación; envase de recuperación
says-recovery-cylinder = Un cilindro recargable para el refrigerante extraído. En fecha, pesado, de un solo gas y nunca sobre su límite.
term-recovery = recuperación; recogida de refrigerante
says-recovery = Sacar el refrigerante a un cilindro y no al aire, como exige la ley.
term-tare = tara; peso en vacío
says-tare = Lo que pesa el cilindro vacío, grabado en su collarín (TW).
term-water-capacity = capacidad de agua; WC
says-water-capacity = La masa de agua que llena el cilindro, grabada en él: da su volumen.

## Presión y pruebas.

term-gauge-pressure = presión manométrica; presión relativa
says-gauge-pressure = Presión por encima del aire exterior. Cero al aire libre, negativa en vacío.
term-absolute-pressure = presión absoluta
says-absolute-pressure = Presión desde el vacío perfecto: la manométrica más la del aire. Es la que piden las leyes de gases y la ebullición.
term-ps = PS; presión máxima admisible; presión de diseño; presión máxima de servicio
says-ps = Lo máximo que una parte puede soportar en servicio, según placa o proyecto. De ella sale la presión de prueba.
term-strength-test = prueba de resistencia; prueba de presión de resistencia
says-strength-test = Una prueba breve muy por encima de PS para ver que nada cede. Manténgase apartado.
term-standing-test = prueba de estanqueidad; prueba de hermeticidad; prueba con nitrógeno
says-standing-test = El sistema queda cerrado bajo nitrógeno durante horas; su presión, corregida por temperatura, no debe caer.
term-dry-nitrogen = nitrógeno seco; nitrógeno sin oxígeno; nitrógeno
says-dry-nitrogen = El gas para probar y soldar: inerte y seco. Asfixia: ventile. Nunca oxígeno, que explota con aceite, ni aire comprimido.
term-bubble-test = prueba de burbujas; prueba de jabón; agua jabonosa
says-bubble-test = Líquido jabonoso en cada unión bajo presión: las burbujas muestran la fuga. Límpielo después.
term-relief = válvula de alivio; válvula de seguridad; alivio
says-relief = Abre sola por encima de su presión. No se debe taponar.
term-rated-pressure = presión de trabajo nominal; presión nominal; presión de trabajo
says-rated-pressure = Lo que la parte más débil aguanta de continuo a su temperatura.
term-uncertainty = incertidumbre; incertidumbre de medida
says-uncertainty = Cuánto puede errar una cifra, por lo que se sabe.

## Vacío.

term-evacuation = evacuación; hacer vacío; secado por vacío; deshidratación
says-evacuation = Sacar aire y humedad con una bomba antes del refrigerante. No confundir con recoger el refrigerante en la unidad exterior.
term-deep-vacuum = vacío profundo; alto vacío
says-deep-vacuum = Por debajo de unas 500 micras (67 Pa): ahí el agua hierve hasta en frío. Práctica del oficio, sin fuente.
term-micron = micra; micrón; micra de mercurio; militorr
says-micron = Una presión de una milésima de milímetro de mercurio: 0,1333 Pa. Absoluta.
term-rise-test = prueba de vacío; prueba de subida; prueba de ascenso; prueba de caída de vacío
says-rise-test = Se aísla la bomba y se observa el vacuómetro. Si se estabiliza es humedad; si sube parejo, fuga.
term-plateau = meseta; estancamiento
says-plateau = Donde una presión que sube o baja se detiene. En vacío suele ser agua hirviendo.
term-triple-evacuation = triple evacuación; rotura con nitrógeno; rotura de vacío; triple vacío | roturas con nitrógeno
says-triple-evacuation = Evacuar, llenar de nitrógeno seco y evacuar otra vez: arrastra la humedad.
term-non-condensables = incondensables; gases no condensables; no condensables
says-non-condensables = Aire o nitrógeno que queda en el circuito. Se junta en el condensador y sube la presión.
term-gas-ballast = lastre de gas; gas ballast
says-gas-ballast = Una válvula de la bomba que deja entrar algo de aire para que el agua no condense en su aceite. Se cierra al final.
term-ultimate-pressure = presión límite; vacío límite; presión final
says-ultimate-pressure = Lo más bajo que alcanza la bomba sola, cerrada. El aceite viejo la empeora.

## Refrigerante y marcha.

term-superheat = recalentamiento; sobrecalentamiento
says-superheat = Cuánto está el vapor por encima de su temperatura de rocío. Muy poco: llega líquido al compresor.
term-subcooling = subenfriamiento; subenfriado
says-subcooling = Cuánto está el líquido por debajo de su temperatura de burbuja. Evita burbujas en la expansión.
term-saturation = temperatura de saturación; saturación
says-saturation = Donde líquido y vapor conviven a una presión.
term-bubble-point = temperatura de burbuja; punto de burbuja; línea de burbuja; líquido saturado
says-bubble-point = Donde un líquido empieza a hervir a su presión. De aquí cuenta el subenfriamiento.
term-dew-temperature = temperatura de rocío; línea de rocío; vapor saturado
says-dew-temperature = Donde ha hervido la última gota del refrigerante. De aquí cuenta el recalentamiento. El punto de rocío del aire es otra cosa.
term-dew-point = punto de rocío
says-dew-point = La temperatura a la que hay que enfriar el aire para que suelte agua.
term-glide = deslizamiento; deslizamiento de temperatura; glide
says-glide = La diferencia entre rocío y burbuja de una mezcla a una presión.
term-blend = mezcla; mezcla zeotrópica; zeótropo
says-blend = Un refrigerante de varias sustancias. Con deslizamiento, el vapor sale en otras proporciones: se carga en líquido.
term-expansion-device = dispositivo de expansión; válvula de expansión; elemento de expansión
says-expansion-device = Donde el líquido a alta presión pasa al evaporador: una válvula o un orificio fijo.
term-fixed-orifice = orificio fijo; pistón; tubo capilar; restrictor
says-fixed-orifice = Una expansión que no se ajusta: la carga se juzga por el recalentamiento.
term-flash-gas = gas de expansión; flash gas; burbujas en el líquido
says-flash-gas = Líquido que hierve antes de la expansión. Deja al evaporador sin alimento.
term-compression-ratio = relación de compresión; relación de presiones
says-compression-ratio = Presión alta entre baja, ambas absolutas.
term-wet-bulb = bulbo húmedo; temperatura de bulbo húmedo
says-wet-bulb = Lo que marca un termómetro con mecha mojada en aire en movimiento. Representa el calor del aire, humedad incluida.
term-dry-bulb = bulbo seco; temperatura de bulbo seco; temperatura del aire
says-dry-bulb = La temperatura ordinaria del aire.
term-temperature-split = salto térmico del aire; salto de temperatura; salto térmico
says-temperature-split = Cuánto más frío sale el aire de lo que entra.
term-sensible-heat = calor sensible; potencia sensible
says-sensible-heat = Calor que cambia la temperatura y no la humedad.
term-latent-heat = calor latente; calor de vaporización; potencia latente
says-latent-heat = Calor que vuelve vapor el líquido, o que vuelve al condensar.

## Carga y seguridad.

term-factory-charge = carga de fábrica; precarga; carga de placa
says-factory-charge = La que trae la unidad, suficiente para la longitud de la placa.
term-adder = suplemento; carga adicional; carga por metro
says-adder = Lo que pide la placa por cada metro más allá de la longitud de la carga de fábrica.
term-weigh-in = carga por peso; cargar por peso
says-weigh-in = Cargar por báscula: lo seguro donde la placa da una masa.
term-data-plate = placa; placa de características
says-data-plate = Lo que el fabricante fijó a la unidad. Manda sobre todo valor por defecto de esta página.
term-safety-class = clase de seguridad; grupo de seguridad
says-safety-class = Una letra por la toxicidad (A, B) y una cifra por la inflamabilidad (1, 2L, 2, 3): ISO 817, ANSI/ASHRAE 34.
term-a2l = A2L; ligeramente inflamable; baja inflamabilidad
says-a2l = Apenas tóxico, arde despacio y cuesta encender. Pero arde: ventile, sin chispas y con útiles adecuados.
term-a3 = A3; altamente inflamable; hidrocarburo
says-a3 = Apenas tóxico y arde con fuerza, como el propano. Límites estrictos de carga; solo para personal formado.
term-lfl = LII; límite inferior de inflamabilidad; LFL; límite inferior de explosividad
says-lfl = La menor proporción de un gas en aire que puede arder.
term-rcl = RCL; límite de concentración de refrigerante; límite práctico
says-rcl = El máximo de refrigerante en el aire de un local del que se puede salir sin daño.
term-gwp = PCA; potencial de calentamiento global; PCG; GWP
says-gwp = Cuánto calienta el clima un kilogramo frente a uno de dióxido de carbono, en cien años.
term-co2-equivalent = CO₂ equivalente; equivalente de CO₂; dióxido de carbono equivalente; CO2e | equivalente de CO2; CO2 equivalente
says-co2-equivalent = Carga por PCA: la masa de dióxido de carbono que calentaría igual.

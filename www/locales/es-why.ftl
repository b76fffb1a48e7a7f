### Español, la pregunta de cada paso de un cálculo y su respuesta: `why-<step>` y `because-<step>` de `step-<step>`.


## Abocardado y par.

why-aim-plate = ¿Por qué el centro de la banda de la placa?
because-aim-plate = El fabricante conoce la tuerca: la placa manda sobre toda tabla. El centro deja el mismo margen al error de la llave por arriba y por abajo.
why-aim-family = ¿Por qué cada familia de tuercas tiene su banda?
because-aim-family = Las tuercas de un mismo tubo difieren en altura, cono y clase de rosca, y así en la fuerza que da un par. Con poco fuga; con demasiado el abocardado se adelgaza o se agrieta.
why-aim-overlap = ¿Por qué solo lo que permiten todas las familias?
because-aim-overlap = Mientras no se sepa la familia, solo es seguro un par que valga para todas. Busque el de la placa: es el que manda.
why-wrench-setting = ¿Por qué se ajusta menos con un adaptador?
because-wrench-setting = La llave salta por el par en su cabeza, pero un adaptador hacia delante alarga el brazo hasta la tuerca: esta recibe más de lo que marca la escala. En ángulo recto el brazo apenas cambia. Tire del centro de la empuñadura, desde donde se mide.
why-least-cone = ¿Por qué no debe quedar pequeño el cono?
because-least-cone = Un cono pequeño ofrece poco cobre a la tuerca: sella mal y puede salirse. Demasiado ancho roza la rosca o el interior de la tuerca y no apoya donde debe.
why-thread-pitch = ¿Por qué miramos el paso?
because-thread-pitch = Roscas que parecen iguales pueden no serlo. Si una tuerca se agarrota en las primeras vueltas a mano, la rosca no es la suya o entró torcida: no la fuerce.

## Tubo.

why-bore = ¿Por qué dos veces la pared?
because-bore = El tubo se vende por su exterior y el refrigerante va por dentro. A cada lado del interior hay una pared.
why-bore-area = ¿Por qué la sección?
because-bore-area = Sección por longitud es lo que cabe en la línea, y caudal entre sección es la velocidad. Crece con el cuadrado del diámetro: un tamaño más cambia mucho.
why-tube-mass = ¿Para qué sirve la masa?
because-tube-mass = Para el transporte y los soportes, y como control: un rollo mucho más ligero tiene la pared más fina y aguanta menos presión.
why-rated-pressure = ¿Por qué un tubo pequeño aguanta más que uno grande?
because-rated-pressure = La presión tira de la pared en proporción al diámetro: la misma pared aguanta más en un tubo pequeño. Cuentan la pared mínima y el cobre recocido, porque soldar recuece. El cobre caliente aguanta menos.

## Presión del manómetro y del aire.

why-gauge-to-absolute = ¿Por qué sumamos la presión del aire?
because-gauge-to-absolute = Un manómetro marca cero al aire libre: solo muestra lo que está por encima. Los gases y la ebullición siguen la presión entera, desde el vacío perfecto.
why-absolute-to-gauge = ¿Por qué restamos otra vez la presión del aire?
because-absolute-to-gauge = Las leyes de los gases hablan de presión absoluta; el resultado se compara con un manómetro, que cuenta desde el aire que lo rodea.
why-standard-pressure = ¿Por qué importa la altitud?
because-standard-pressure = Más arriba hay menos aire encima y presiona menos: cerca de una décima parte menos a 900 m. La misma lectura es entonces una presión absoluta menor. Un barómetro leído en el sitio es aún mejor.

## Saturación.

why-bubble-temperature = ¿Qué es la temperatura de burbuja?
because-bubble-temperature = Aquella a la que un líquido a esta presión empieza a hervir. El líquido más frío está subenfriado: el subenfriamiento se cuenta desde aquí.
why-dew-temperature = ¿Qué es la temperatura de rocío?
because-dew-temperature = Aquella a la que ha hervido la última gota a esta presión. El vapor más caliente está recalentado: el recalentamiento se cuenta desde aquí. En mezclas queda por encima de la de burbuja; la diferencia es el deslizamiento.
why-bubble-pressure = ¿Por qué la presión del líquido depende solo de la temperatura?
because-bubble-pressure = Con líquido y vapor juntos y en reposo, la temperatura fija la presión, haya cuanto haya. Por eso la presión no dice lo lleno que está un cilindro. El líquido de una mezcla hierve en su línea de burbuja.
why-dew-pressure = ¿Por qué la presión del vapor es menor en una mezcla?
because-dew-pressure = A una misma temperatura, el vapor de una mezcla empieza a condensar a menor presión que a la que hierve su líquido. Cargue esas mezclas en líquido, o saldrán del cilindro en proporciones equivocadas.
why-latent-heat = ¿Por qué hervir mueve tanto calor?
because-latent-heat = Pasar de líquido a vapor pide mucho más calor que calentarse unos kelvin: para eso circula el refrigerante. El líquido sobre la piel hierve con las mismas ganas y la congela: guantes y gafas.
why-superheat = ¿Por qué medimos el recalentamiento?
because-superheat = Muestra que todo el líquido ha hervido antes del compresor: el líquido es lo que lo rompe. Mucho recalentamiento indica un evaporador mal alimentado.
why-vapour-density = ¿Por qué importa la densidad?
because-vapour-density = Un compresor aspira volumen y la masa lleva el calor. Un vapor poco denso significa menos masa por vuelta.

## Prueba con nitrógeno.

why-ideal-gas-hold = ¿Por qué corregimos por la temperatura?
because-ideal-gas-hold = Un gas encerrado en un volumen fijo pierde presión al enfriarse, en proporción a la temperatura absoluta: cerca del 0,3 % por kelvin a temperatura ambiente. Sin corregir, una noche fría parece una fuga y una mañana cálida la esconde.
why-real-gas-hold = ¿Por qué no se toma el nitrógeno como ideal?
because-real-gas-hold = A la presión de prueba sus moléculas se notan entre sí y la presión cambia algo más por kelvin. La diferencia es pequeña, pero también la caída que se busca.
why-hold-difference = ¿Por qué comparar con lo esperado y no con la primera lectura?
because-hold-difference = La primera se tomó a otra temperatura. Lo que queda tras descontar el tiempo es lo que puede haber hecho una fuga.
why-test-pressure = ¿Por qué probar por encima de la presión de trabajo?
because-test-pressure = Para que una unión débil se muestre cuando dentro solo hay nitrógeno. Suba por escalones con regulador y alivio, apártese y nunca use oxígeno ni aire comprimido. La placa y la norma local dicen cuánto.
why-nitrogen-need = ¿Por qué saber antes el nitrógeno?
because-nitrogen-need = Un cilindro solo da hasta la presión que se busca. Mejor saber si basta antes de subir al tejado.
why-pressure-loss-rate = ¿Por qué una recta por todas las lecturas?
because-pressure-loss-rate = Dos lecturas llevan todo el error de ambas. Una recta por muchas promedia el azar; una lectura desviada pesa poco.
why-loss-uncertainty = ¿Por qué el error no desaparece promediando?
because-loss-uncertainty = El azar mengua con más lecturas. Lo que se desvía siempre igual, como un termómetro mal puesto, queda por mucho que se lea.
why-upper-limit = ¿Por qué decir «no más de»?
because-upper-limit = Ninguna prueba muestra que no se pierde nada, solo que no se pierde más de lo que pudo escapársele. Eso sí se puede firmar.
why-least-detectable = ¿Por qué hay una pérdida mínima visible?
because-least-detectable = Una pérdida menor que la incertidumbre parece ninguna. Manómetros más finos, temperatura más estable y más tiempo bajan ese umbral.
why-hold-to-see = ¿Por qué una fuga pequeña pide más espera?
because-hold-to-see = La pérdida se acumula con el tiempo y el error del manómetro no. El doble de tiempo muestra la mitad de fuga.
why-leak-throughput = ¿Por qué interviene el volumen?
because-leak-throughput = La misma fuga hace caer deprisa un sistema pequeño y despacio uno grande. Volumen por velocidad de caída es el gas que sale.
why-refrigerant-loss = ¿Por qué es otra cifra para el refrigerante?
because-refrigerant-loss = Lo empuja otra presión y lo frena otra viscosidad. El canal se supone fino y liso: es un orden de magnitud, no una medida.

## Agua y vacío.

why-boiling-point = ¿Por qué hierve el agua en un sistema frío?
because-boiling-point = El agua hierve donde su presión de vapor iguala a la que la oprime. La bomba baja esa presión hasta que hierve incluso a temperatura ambiente, y el vapor se puede extraer.
why-boiling-pressure = ¿Por qué importa esta presión?
because-boiling-pressure = Mientras quede agua líquida el vacío apenas baja de ahí: el agua hierve y alimenta a la bomba. Los tubos calientes piden menos vacío.
why-frost-point = ¿Por qué es hielo?
because-frost-point = Por debajo de 611 Pa no hay agua líquida estable. El hielo pasa directo a vapor, mucho más despacio, pues el calor le llega mal.
why-sublimation-pressure = ¿Por qué evitar hielo en las líneas?
because-sublimation-pressure = El hielo suelta vapor tan despacio que el vacuómetro engaña con agua aún dentro. Rompa con nitrógeno seco, caliente el punto y vuelva a evacuar.
why-hose-conductance = ¿Por qué vale tanto una manguera corta y ancha?
because-hose-conductance = En vacío profundo pocas moléculas se empujan. El flujo va con la tercera o cuarta potencia del diámetro y cae con la longitud: una manguera fina ahoga la mejor bomba.
why-core-conductance = ¿Por qué sacar el obús?
because-core-conductance = El obús deja solo un anillo estrecho, a menudo lo más angosto del camino. Un extractor con llave lo saca sin dejar entrar aire.
why-effective-speed = ¿Por qué es menos que el caudal de la bomba?
because-effective-speed = Las resistencias en fila se suman y manda la mayor. Cerca de su presión límite también la bomba afloja.
why-water-stand = ¿Por qué se para el vacuómetro?
because-water-stand = El agua que hierve llena el sistema tan deprisa como la bomba lo vacía. La meseta acaba cuando se va el agua, no cuando lo dice el reloj.
why-water-gone = ¿Por qué tarda tanto una cucharada?
because-water-gone = En la meseta un gramo de agua da entre 60 y 200 litros de vapor, y todo debe pasar por la manguera y la bomba.
why-pump-down-time = ¿Por qué el tiempo no va en proporción?
because-pump-down-time = En cada lapso igual sale la misma parte del gas, no la misma cantidad. El último tramo hasta el vacío profundo dura tanto como el primero, o más.
why-residual = ¿Por qué romper el vacío con nitrógeno?
because-residual = Cada llenado diluye lo que quedaba, y el gas seco arrastra humedad. Dos vacíos modestos con una rotura valen más que uno no del todo profundo.
why-even-rise = ¿Por qué una subida pareja indica fuga?
because-even-rise = El aire entra al mismo ritmo mientras dentro esté casi vacío. No se estabiliza, como hace el agua.
why-levelling = ¿Por qué se estabiliza?
because-levelling = El agua, el aceite y las paredes sueltan vapor hasta alcanzar su propia presión; ahí se detiene. Una meseta alta es humedad; una baja, seco y estanco.
why-levelling-and-rise = ¿Por qué puede ser ambas cosas?
because-levelling-and-rise = La humedad curva el inicio y una fuga la hace seguir subiendo. Solo una espera más larga las separa.
why-cause = ¿Por qué una probabilidad?
because-cause = Varias leyes pueden encajar en pocas lecturas. Lo bien que encaja cada una dice cuánto creerla; más lecturas deciden.
why-leak-gas = ¿Por qué multiplicar por el volumen?
because-leak-gas = El vacuómetro muestra presión, no gas. La misma entrada sube antes un volumen pequeño.

## Aire.

why-dew-point = ¿Por qué importa el punto de rocío?
because-dew-point = Una superficie más fría que él saca agua del aire. Decide si una línea gotea y cuánto seca una batería.
why-humidity-ratio = ¿Por qué agua por aire seco?
because-humidity-ratio = El aire seco es el mismo a lo largo de la batería mientras el agua se va. Así se comparan ambos lados.
why-air-enthalpy = ¿Por qué no solo la temperatura?
because-air-enthalpy = El vapor del aire también lleva calor y lo cede al condensar en la batería. La entalpía cuenta ambos.
why-air-density = ¿Por qué la densidad?
because-air-density = Un ventilador mueve volumen y la masa lleva el calor. El aire caliente, húmedo o de altura es menos denso: el mismo caudal lleva menos.
why-dry-air-flow = ¿Por qué pasar a aire seco?
because-dry-air-flow = El calor y el agua se cuentan por kilogramo de aire seco: el caudal debe contarse igual.
why-sensible-capacity = ¿Qué es el calor sensible?
because-sensible-capacity = El que cambia la temperatura del aire y se nota. El resto del trabajo de la batería seca.
why-total-capacity = ¿Por qué el total supera al sensible?
because-total-capacity = El agua que condensa cede también su calor latente. En un día húmedo es buena parte de la potencia.

## Flujo y líneas.

why-equivalent-length = ¿Por qué contar un codo como longitud?
because-equivalent-length = Un codo revuelve el flujo y cuesta presión. Se pone como el tubo recto que costaría lo mismo.
why-mass-flow = ¿De dónde sale el caudal?
because-mass-flow = Cada kilogramo toma un calor conocido en el evaporador. Potencia entre ese calor es la masa que debe circular.
why-velocity = ¿Por qué mirar la velocidad?
because-velocity = Lenta deja aceite atrás; rápida hace ruido y cuesta presión. Entre ambas la línea es correcta.
why-reynolds = ¿Qué dice este número?
because-reynolds = Si el flujo va en capas o revuelto. Bajo es laminar, alto es turbulento, y el rozamiento sigue otras leyes.
why-friction-laminar = ¿Por qué aquí no importa la rugosidad?
because-friction-laminar = En flujo lento una capa quieta cubre la pared y el rozamiento viene de la viscosidad del fluido.
why-friction-transition = ¿Por qué es incierto aquí?
because-friction-transition = Entre laminar y turbulento el flujo salta de uno a otro. La cifra se traza entre ambos; no proyecte para ese caso.
why-friction-turbulent = ¿Por qué cuenta la rugosidad?
because-friction-turbulent = Los remolinos llegan a la pared y se enganchan. El cobre estirado limpio es liso; rebabas y cascarilla no: quite la rebaba del tubo.
why-friction-drop = ¿Por qué cuesta tanto un tubo pequeño?
because-friction-drop = En flujo turbulento la caída va con la quinta potencia inversa del diámetro: una décima menos son unos dos tercios más.
why-saturation-drop = ¿Por qué expresar la caída en kelvin?
because-saturation-drop = El compresor nota la caída como un evaporador más frío. En kelvin se compara entre refrigerantes.
why-static-head = ¿Por qué importa el desnivel en la línea de líquido?
because-static-head = El líquido pesa y cada metro de subida le quita presión; al bajar la recupera. El vapor pesa demasiado poco para contar.
why-flash-margin = ¿Por qué debe quedar subenfriamiento?
because-flash-margin = Donde la caída y la subida lo agotan, el líquido hierve en la línea. La expansión recibe burbujas y el evaporador pasa hambre.
why-oil-return = ¿Por qué debe subir tan deprisa el gas?
because-oil-return = El aceite sale del compresor con el gas y solo sube si este lo arrastra. Cuenta la carga mínima, con el gas más lento.
why-capacity-ratio = ¿Por qué una caída cuesta potencia?
because-capacity-ratio = El compresor aspira el mismo volumen, pero el gas llega menos denso. Menos masa mueve menos calor.
why-port-areas = ¿Por qué comparar las secciones?
because-port-areas = Varias bocas alimentan una línea. Mucho más estrecha que todas juntas, frena; mucho más ancha, deja aceite. Práctica del oficio, sin fuente.

## En marcha.

why-subcooling = ¿Por qué medimos el subenfriamiento?
because-subcooling = Muestra que a la expansión solo llega líquido. Poco puede ser falta de carga; mucho, exceso o una obstrucción. Primero el aire.
why-difference-uncertainty = ¿Por qué se elevan al cuadrado los errores?
because-difference-uncertainty = Errores independientes rara vez apuntan todos igual. La raíz de los cuadrados es lo habitual; el mayor manda: mejore ese.
why-compression-ratio = ¿Por qué una relación, y absoluta?
because-compression-ratio = El compresor multiplica la presión. Una relación alta calienta el gas y desgasta la máquina; con presiones manométricas sería falsa.
why-orifice-rule = ¿Por qué el objetivo cambia con el tiempo?
because-orifice-rule = Un orificio fijo no se adapta. El aire de retorno cálido y húmedo hace hervir más y un día caluroso empuja más: el recalentamiento correcto cambia. Manda la tabla de la placa.

## Carga y cilindros.

why-liquid-contents = ¿Por qué la línea pequeña contiene más?
because-liquid-contents = El líquido es de veinte a cien veces más denso que el vapor: la línea pequeña decide el suplemento.
why-vapour-contents = ¿Por qué contar también el vapor?
because-vapour-contents = Es poco, pero una línea ancha y larga suma. Muestra cuánto yerra una regla que solo mire la pequeña.
why-line-extra = ¿Por qué añadir por longitud?
because-line-extra = La carga de fábrica cubre una longitud dada. Cada metro más se llena de refrigerante que faltaría en otra parte. Manda la placa.
why-line-reduction = ¿Por qué quitar con una línea corta?
because-line-reduction = Menos línea contiene menos y lo que sobra llena el condensador. Solo si la placa lo dice: muchas no quitan nada.
why-total-charge = ¿Por qué importa el total y no solo lo añadido?
because-total-charge = Límites del local, etiquetas y registros cuentan todo lo que hay en el circuito.
why-stop-mark = ¿Por qué una marca en la báscula?
because-stop-mark = Nadie calcula bien con la válvula en la mano. Cierre un poco antes: la manguera aún contiene algo, y sacar es difícil.
why-charged-so-far = ¿Por qué pesar y no mirar la presión?
because-charged-so-far = La presión depende de la temperatura y dice poco de la masa. Lo que salió del cilindro es lo que entró.
why-cylinder-volume = ¿Por qué el volumen por una masa de agua?
because-cylinder-volume = Los cilindros llevan grabada el agua que admiten. La densidad del agua se conoce bien: la masa da el volumen.
why-fill-by-volume = ¿Por qué solo el 80 %?
because-fill-by-volume = El líquido crece al calentarse. Un cilindro lleno de líquido no tiene hueco: la presión sube varios bar por kelvin y puede reventar. Nunca más.
why-fill-when-hot = ¿Por qué mirarlo en caliente?
because-fill-when-hot = Unos refrigerantes crecen más que otros. Un cilindro en una furgoneta al sol puede llegar a 55 °C y ni así debe estar lleno de líquido.
why-part-full-when-hot = ¿Qué dice esta parte?
because-part-full-when-hot = Cuánto ocupa el líquido a 55 °C. Al 100 % puede reventar; lo que falta es lo que lo hace seguro.
why-largest-gross = ¿Por qué la masa bruta?
because-largest-gross = La báscula muestra cilindro y contenido juntos. La tara grabada más el llenado permitido dan la cifra en que parar.
why-warming-ar4 = ¿Por qué expresarlo en dióxido de carbono?
because-warming-ar4 = Hace comparables los gases: un kilogramo puede calentar como dos toneladas de CO₂. Las normas que citan este informe cuentan así.
why-warming-ar5 = ¿Por qué difieren los informes?
because-warming-ar5 = La vida y el efecto de cada gas se conocen mejor con el tiempo. Use el informe que cite la norma.
why-warming-ar6 = ¿Qué informe cuenta?
because-warming-ar6 = El último es el mejor conocido; la ley puede citar uno anterior. Aquí todos a cien años.

## Locales.

why-no-room-limit = ¿Por qué hay una carga sin límite?
because-no-room-limit = Tan poco gas, aun saliendo todo, queda muy por debajo de lo que arde en un local normal. Las precauciones de su clase siguen.
why-charge-cap = ¿Por qué un tope por grande que sea el local?
because-charge-cap = El gas no se reparte al momento y se acumula junto a la fuga. Pasado el tope, la norma exige más: detectores, ventilación, válvulas.
why-room-charge = ¿Por qué cuenta la altura de la unidad?
because-room-charge = Casi todos estos gases pesan más que el aire. Si salen arriba se mezclan al caer; a ras de suelo forman una capa que puede arder.
why-smallest-room = ¿Por qué pedir el local mínimo?
because-smallest-room = La carga se fija antes que los locales. Cuente solo el suelo abierto a la unidad: una puerta cerrada hace un local pequeño.
why-concentration-charge = ¿Por qué una concentración?
because-concentration-charge = Si escapa toda, se debe poder respirar y nada debe arder. Carga entre volumen del local debe quedar bajo ese límite.

## Aislamiento.

why-coefficient-still = ¿Por qué importa el aire quieto?
because-coefficient-still = El aire quieto da poco calor a la superficie: queda más fría y gotea antes. Así son patinillos y falsos techos.
why-coefficient-moving = ¿Por qué ayuda una corriente?
because-coefficient-moving = El aire en movimiento calienta la superficie y la mantiene sobre el rocío con menos aislamiento. No cuente con una corriente que puede parar.
why-insulation-thickness = ¿Por qué justo este grueso?
because-insulation-thickness = El calor que llega del aire sigue hasta la línea. Con este grueso el exterior queda justo en el rocío; tome el siguiente mayor.
why-surface-temperature = ¿Por qué mirar el exterior?
because-surface-temperature = El agua se forma donde la superficie está bajo el rocío, sea cual sea lo de dentro. Huecos y aplastados están más fríos que esta cifra.
why-heat-gain = ¿Por qué cuidar ese calor?
because-heat-gain = Lo que toma la línea no enfría nada y adelgaza el gas antes del compresor.

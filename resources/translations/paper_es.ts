<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es_ES" sourcelanguage="en">
<context>
    <name>paper</name>
    <message>
        <source>HOLD POINT: </source>
        <translation>PUNTO DE ESPERA: </translation>
    </message>
    <message>
        <source>Checked and may go on</source>
        <translation>Comprobado, sigue</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>Date, time</source>
        <translation>Fecha, hora</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
    <message>
        <source>Annual heat</source>
        <translation>Calor al año</translation>
    </message>
    <message>
        <source>Electricity a year</source>
        <translation>Electricidad al año</translation>
    </message>
    <message>
        <source>Seasonal factor</source>
        <translation>Rendimiento estacional</translation>
    </message>
    <message>
        <source>Cost a year</source>
        <translation>Coste al año</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>alto</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>atención</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>listo</translation>
    </message>
    <message>
        <source>begun</source>
        <translation>empezado</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>vacío</translation>
    </message>
    <message>
        <source>Fitting, tests, start and instruction</source>
        <translation>Montaje, pruebas, puesta en marcha e instrucción</translation>
    </message>
    <message>
        <source>Left for you to pay when all is granted</source>
        <translation>Le queda por pagar si todo se concede</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>unos %1</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (de %2 a %3)</translation>
    </message>
    <message>
        <source>Quote</source>
        <translation>Presupuesto</translation>
    </message>
    <message>
        <source>Install sheet</source>
        <translation>Hoja de montaje</translation>
    </message>
    <message>
        <source>Survey sheet</source>
        <translation>Hoja de visita</translation>
    </message>
    <message>
        <source>Workings</source>
        <translation>Cálculos</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Registro</translation>
    </message>
    <message>
        <source>Service sheet</source>
        <translation>Hoja de servicio</translation>
    </message>
    <message>
        <source>Hand-over booklet</source>
        <translation>Cuaderno de entrega</translation>
    </message>
    <message>
        <source>Cover letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>Order confirmation</source>
        <translation>Confirmación del pedido</translation>
    </message>
    <message>
        <source>Change order</source>
        <translation>Cambio del pedido</translation>
    </message>
    <message>
        <source>Parts list</source>
        <translation>Lista de piezas</translation>
    </message>
    <message>
        <source>Purchase list</source>
        <translation>Lista de compra</translation>
    </message>
    <message>
        <source>Purchase order</source>
        <translation>Pedido</translation>
    </message>
    <message>
        <source>%1, top %2</source>
        <translation>%1, cota superior %2</translation>
    </message>
    <message>
        <source>%1: no pipe</source>
        <translation>%1: sin tubería</translation>
    </message>
    <message>
        <source>through roof</source>
        <translation>por el tejado</translation>
    </message>
    <message>
        <source>through wall</source>
        <translation>por el muro</translation>
    </message>
    <message>
        <source>through floor</source>
        <translation>por el forjado</translation>
    </message>
    <message>
        <source>collector</source>
        <translation>captador</translation>
    </message>
    <message>
        <source>block on the cylinder</source>
        <translation>bloque sobre el acumulador</translation>
    </message>
    <message>
        <source>lift %1</source>
        <translation>sube %1</translation>
    </message>
    <message>
        <source>drop %1</source>
        <translation>baja %1</translation>
    </message>
    <message>
        <source>No run yet: place a collector and choose a spot for the cylinder</source>
        <translation>Aún sin trazado: coloque un captador y elija el sitio del acumulador</translation>
    </message>
    <message>
        <source>Run %1 one way, %2, %3, %4 %5</source>
        <translation>Trazado de %1 solo ida, %2, %3, %4 %5</translation>
    </message>
    <message>
        <source>1 bend</source>
        <translation>1 curva</translation>
    </message>
    <message>
        <source>%1 bends</source>
        <translation>%1 curvas</translation>
    </message>
    <message>
        <source>1 passage</source>
        <translation>1 paso</translation>
    </message>
    <message>
        <source>%1 passages</source>
        <translation>%1 pasos</translation>
    </message>
    <message>
        <source>lift</source>
        <translation>sube</translation>
    </message>
    <message>
        <source>drop</source>
        <translation>baja</translation>
    </message>
    <message>
        <source>Not to scale in depth; figures are true lengths</source>
        <translation>Sin escala en profundidad; las cifras son longitudes reales</translation>
    </message>
    <message>
        <source>suction</source>
        <translation>aspiración</translation>
    </message>
    <message>
        <source>connections</source>
        <translation>conexiones</translation>
    </message>
    <message>
        <source>liquid</source>
        <translation>líquido</translation>
    </message>
    <message>
        <source>connections left</source>
        <translation>conexiones a la izquierda</translation>
    </message>
    <message>
        <source>connections right</source>
        <translation>conexiones a la derecha</translation>
    </message>
    <message>
        <source>worst point %1: %2 %</source>
        <translation>punto más cargado %1: %2 %</translation>
    </message>
    <message>
        <source>start of the run</source>
        <translation>inicio del trazado</translation>
    </message>
    <message>
        <source>block</source>
        <translation>bloque</translation>
    </message>
    <message>
        <source>to %1, %2</source>
        <translation>hasta %1, %2</translation>
    </message>
    <message>
        <source>Dimensions in mm</source>
        <translation>Cotas en mm</translation>
    </message>
    <message>
        <source>; fixing points: number · distance from the dot</source>
        <translation>; puntos de fijación: número · distancia desde el punto</translation>
    </message>
    <message>
        <source>rafters</source>
        <translation>cabios</translation>
    </message>
    <message>
        <source>rafters every %1 mm</source>
        <translation>cabios cada %1 mm</translation>
    </message>
    <message>
        <source>keep out</source>
        <translation>zona libre</translation>
    </message>
    <message>
        <source>eaves</source>
        <translation>alero</translation>
    </message>
    <message>
        <source>ridge</source>
        <translation>cumbrera</translation>
    </message>
    <message>
        <source>top edge</source>
        <translation>borde superior</translation>
    </message>
    <message>
        <source>foot of the wall</source>
        <translation>pie del muro</translation>
    </message>
    <message>
        <source>not worked out</source>
        <translation>no calculado</translation>
    </message>
    <message>
        <source>Collectors</source>
        <translation>Captadores</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Heat pump</source>
        <translation>Bomba de calor</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Acumulador</translation>
    </message>
    <message>
        <source>Heat used in a year</source>
        <translation>Calor usado al año</translation>
    </message>
    <message>
        <source>Electricity in a year</source>
        <translation>Electricidad al año</translation>
    </message>
    <message>
        <source>Electricity cost in a year</source>
        <translation>Coste de electricidad al año</translation>
    </message>
    <message>
        <source>Over %1 years</source>
        <translation>En %1 años</translation>
    </message>
    <message>
        <source>Price with tax</source>
        <translation>Precio con impuestos</translation>
    </message>
    <message>
        <source>no price</source>
        <translation>sin precio</translation>
    </message>
    <message>
        <source>Your choices beside each other</source>
        <translation>Sus opciones una junto a otra</translation>
    </message>
    <message>
        <source>They do not differ in any of this.</source>
        <translation>No se diferencian en nada de esto.</translation>
    </message>
    <message>
        <source>They differ in: %1.</source>
        <translation>Se diferencian en: %1.</translation>
    </message>
    <message>
        <source>This quote is for “%1”. For another one, tell us: you get the same in writing.</source>
        <translation>Este presupuesto es para «%1». Si prefiere otra, díganoslo: recibirá lo mismo por escrito.</translation>
    </message>
    <message>
        <source>Not to be issued: %1 has a stop</source>
        <translation>No emitir: %1 tiene un impedimento</translation>
    </message>
    <message>
        <source>Something in this choice must be changed before it is offered.</source>
        <translation>Hay que cambiar algo en esta opción antes de ofrecerla.</translation>
    </message>
    <message>
        <source>Fill in on Visit</source>
        <translation>Complételo en la visita</translation>
    </message>
    <message>
        <source>Enter the value for the place from the national annex or map</source>
        <translation>Introduzca el valor del lugar según anexo o mapa nacional</translation>
    </message>
    <message>
        <source>The snow load on the ground is not entered; %1 kN/m2 is assumed</source>
        <translation>Falta la carga de nieve en el suelo; se suponen %1 kN/m²</translation>
    </message>
    <message>
        <source>The snow load on the ground is not entered; %1 kN/m2 is taken from the rule set's region for %2 m</source>
        <translation>Falta la carga de nieve en el suelo; se toman %1 kN/m² de la zona del reglamento para %2 m</translation>
    </message>
    <message>
        <source>The basic wind velocity is not entered; %1 m/s is assumed</source>
        <translation>Falta la velocidad básica del viento; se suponen %1 m/s</translation>
    </message>
    <message>
        <source>The plates have %1 m2 a face; the block is made for %2 to %3 m2</source>
        <translation>Los captadores tienen %1 m² por cara; el bloque es para %2 a %3 m²</translation>
    </message>
    <message>
        <source>Add a collector, or take a smaller block</source>
        <translation>Añada un captador o elija un bloque menor</translation>
    </message>
    <message>
        <source>The points lie almost in one line, which alone cannot keep the plate from tipping; feet %1 apart are assumed</source>
        <translation>Los puntos están casi en línea y solos no evitan el vuelco; se suponen pies a %1</translation>
    </message>
    <message>
        <source>Take a frame with feet at least %1 apart front to back</source>
        <translation>Tome un bastidor con pies a %1 o más de delante atrás</translation>
    </message>
    <message>
        <source>%1 has a GWP of %2. EU: split heat pumps up to 12 kW with any fluorinated gas may not be placed on the market from 2035-01-01 (self-contained ones from 2032-01-01); systems in place may go on running: verify with the maker how long spares will be had</source>
        <translation>El %1 tiene un PCA de %2. UE: las bombas de calor partidas de hasta 12 kW con gas fluorado no podrán comercializarse desde el 1-1-2035 (las compactas desde el 1-1-2032); las instaladas pueden seguir: confirme con el fabricante cuánto habrá recambios</translation>
    </message>
    <message>
        <source>%1 has a GWP of %2. EU: split systems with less than 3 kg of a listed fluorinated gas of GWP 750 or more may no longer be placed on the market from 2025-01-01; whether a plate and block joined on site count as one split system is for the maker to say: verify with the maker</source>
        <translation>El %1 tiene un PCA de %2. UE: los sistemas partidos con menos de 3 kg de un gas fluorado listado de PCA 750 o más no pueden comercializarse desde el 1-1-2025; si captador y bloque unidos en obra cuentan como un sistema partido lo dice el fabricante: confírmelo</translation>
    </message>
    <message>
        <source>Verify with the maker how the set is classed before offering it</source>
        <translation>Confirme con el fabricante cómo está clasificado el conjunto antes de ofrecerlo</translation>
    </message>
    <message>
        <source>Point %1 is used to %2 % (%3): pull %4 of %5 N, shear %6 of %7 N, under %8</source>
        <translation>El punto %1 está al %2 % (%3): tiro %4 de %5 N, corte %6 de %7 N, con %8</translation>
    </message>
    <message>
        <source>The frame is used to %1 % (%2) with %3 kg a point</source>
        <translation>El bastidor está al %1 % (%2) con %3 kg por punto</translation>
    </message>
    <message>
        <source>bracket</source>
        <translation>soporte</translation>
    </message>
    <message>
        <source>ballast, sliding</source>
        <translation>lastre, deslizamiento</translation>
    </message>
    <message>
        <source>ballast, tipping</source>
        <translation>lastre, vuelco</translation>
    </message>
    <message>
        <source>%1 wind suction</source>
        <translation>%1 succión de viento</translation>
    </message>
    <message>
        <source>%1 snow</source>
        <translation>%1 nieve</translation>
    </message>
    <message>
        <source>Take a collector with %1 points instead of %2, evenly spread (%3 %)</source>
        <translation>Tome un captador con %1 puntos en vez de %2, repartidos por igual (%3 %)</translation>
    </message>
    <message>
        <source>Choose "%1" (used to %2 %)</source>
        <translation>Elija «%1» (al %2 %)</translation>
    </message>
    <message>
        <source>No other method at hand, no place within 3 m and no number of points up to 10 a profile holds; choose another surface. Least used: move it %1 m up (%2 %)</source>
        <translation>No aguanta ningún otro método, ningún sitio a menos de 3 m ni hasta 10 puntos por perfil; elija otra superficie. Lo menos cargado: súbalo %1 m (%2 %)</translation>
    </message>
    <message>
        <source>Leave as it is only if wind, snow and rafters are confirmed</source>
        <translation>Déjelo así solo si viento, nieve y cabios están confirmados</translation>
    </message>
    <message>
        <source>Leave as it is only if wind and snow are confirmed</source>
        <translation>Déjelo así solo si viento y nieve están confirmados</translation>
    </message>
    <message>
        <source>The profiles bend out by %1 mm in a span of %2: %3 of what is allowed</source>
        <translation>Los perfiles flechan %1 mm en un vano de %2: %3 de lo admitido</translation>
    </message>
    <message>
        <source>Take a collector with more points a profile, or a place with less wind and snow</source>
        <translation>Tome un captador con más puntos por perfil, o un sitio con menos viento y nieve</translation>
    </message>
    <message>
        <source>Frame, plate and ballast put %1 kN/m2 on %2, which may carry %3 kN/m2 besides</source>
        <translation>Bastidor, captador y lastre ponen %1 kN/m² en %2, que admite %3 kN/m² además</translation>
    </message>
    <message>
        <source>Take an anchored frame, a deeper frame, or a place with less wind</source>
        <translation>Tome un bastidor anclado, uno más hondo, o un sitio con menos viento</translation>
    </message>
    <message>
        <source>The survey does not tell of the electrical supply: %1; nothing is assumed in its place</source>
        <translation>La visita no dice de la alimentación eléctrica: %1; no se supone nada</translation>
    </message>
    <message>
        <source>The survey does not tell of the water supply: %1; what depends on it is not worked out</source>
        <translation>La visita no dice del suministro de agua: %1; no se calcula lo que depende de ello</translation>
    </message>
    <message>
        <source>way from the distribution board</source>
        <translation>camino desde el cuadro</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>tensión</translation>
    </message>
    <message>
        <source>frequency</source>
        <translation>frecuencia</translation>
    </message>
    <message>
        <source>main fuse</source>
        <translation>fusible general</translation>
    </message>
    <message>
        <source>current of what runs at the same time</source>
        <translation>corriente de lo que funciona a la vez</translation>
    </message>
    <message>
        <source>earthing system</source>
        <translation>sistema de puesta a tierra</translation>
    </message>
    <message>
        <source>static pressure</source>
        <translation>presión estática</translation>
    </message>
    <message>
        <source>hardness</source>
        <translation>dureza</translation>
    </message>
    <message>
        <source>draw-off points</source>
        <translation>grifos</translation>
    </message>
    <message>
        <source>hot pipes to the taps</source>
        <translation>tubos calientes a los grifos</translation>
    </message>
    <message>
        <source>The hot pipe to %1 holds %2 l, more than 3 l</source>
        <translation>El tubo caliente a %1 contiene %2 l, más de 3 l</translation>
    </message>
    <message>
        <source>Take a recirculation loop or trace heating, a smaller bore, or a spot nearer to the tap</source>
        <translation>Ponga recirculación o cable calefactor, un tubo menor, o un sitio más cerca del grifo</translation>
    </message>
    <message>
        <source>On %1 m with a lift of %2 m the liquid loses %3 kPa, worth %4 K; it leaves the condenser only %5 K below boiling</source>
        <translation>En %1 m con %2 m de subida el líquido pierde %3 kPa, que son %4 K; sale del condensador solo %5 K por debajo de ebullición</translation>
    </message>
    <message>
        <source>Ask the maker whether the expansion device takes flash gas at this height, or bring collector and block nearer in height</source>
        <translation>Pregunte al fabricante si la válvula de expansión admite gas de flash a esta altura, o acerque captador y bloque en altura</translation>
    </message>
    <message>
        <source>The system holds %1 kg of flammable %2; a room of %3 m2 takes %4 kg when it leaves at %5 m</source>
        <translation>La instalación lleva %1 kg de %2 inflamable; un local de %3 m² admite %4 kg si sale a %5 m</translation>
    </message>
    <message>
        <source>The system holds %1 kg of flammable %2, and there is a source of ignition in the room</source>
        <translation>La instalación lleva %1 kg de %2 inflamable y hay un foco de ignición en el local</translation>
    </message>
    <message>
        <source>Remove the source (open flame, sparking switchgear), or choose another spot or refrigerant</source>
        <translation>Quite el foco (llama abierta, aparamenta que chispea), o elija otro sitio o refrigerante</translation>
    </message>
    <message>
        <source>Choose a room of %1 m2 or more, a shorter run, or a block with less charge; or openings that cannot be shut to a neighbouring room with which it makes up %2 m2, %3 cm2 at the floor and half as much again above 1.5 m (class A3: where the edition in force lets them count)</source>
        <translation>Elija un local de %1 m² o más, un trazado más corto o un bloque con menos carga; o aberturas que no se puedan cerrar a un local vecino con el que sume %2 m², %3 cm² a ras de suelo y la mitad además por encima de 1,5 m (clase A3: donde la edición vigente lo admita)</translation>
    </message>
    <message>
        <source>Filled, cylinder and block weigh %1 kg; the %2 kg of the floor are only assumed</source>
        <translation>Llenos, acumulador y bloque pesan %1 kg; los %2 kg del suelo solo se suponen</translation>
    </message>
    <message>
        <source>Find out what the floor carries</source>
        <translation>Averigüe lo que aguanta el suelo</translation>
    </message>
    <message>
        <source>Collector or lines come within %1 m of the lightning protection; %2 m are asked for in the usual class, %3 m in the severest</source>
        <translation>Captador o líneas quedan a %1 m del pararrayos; se piden %2 m en la clase usual, %3 m en la más severa</translation>
    </message>
    <message>
        <source>Move the collector, or have a lightning protection specialist join it in or move the conductor</source>
        <translation>Mueva el captador, o que un especialista en pararrayos lo una o mueva el conductor</translation>
    </message>
    <message>
        <source>The safety valve's discharge is %1 m long, more than the tables hold</source>
        <translation>La descarga de la válvula de seguridad mide %1 m, más de lo que dan las tablas</translation>
    </message>
    <message>
        <source>Bring a drain nearer to the cylinder, or choose another spot</source>
        <translation>Acerque un desagüe al acumulador o elija otro sitio</translation>
    </message>
    <message>
        <source>The method screws into rafters and none are surveyed on %1; points are drawn where the collector has them</source>
        <translation>El método atornilla en cabios y no hay ninguno medido en %1; los puntos se dibujan donde los tiene el captador</translation>
    </message>
    <message>
        <source>Measure the first rafter and the spacing</source>
        <translation>Mida el primer cabio y la separación</translation>
    </message>
    <message>
        <source>The collector reaches beyond the outline of %1</source>
        <translation>El captador sobresale del contorno de %1</translation>
    </message>
    <message>
        <source>lower</source>
        <translation>inferior</translation>
    </message>
    <message>
        <source>upper</source>
        <translation>superior</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierdo</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecho</translation>
    </message>
    <message>
        <source>lower (from corner %1)</source>
        <translation>inferior (desde la esquina %1)</translation>
    </message>
    <message>
        <source>upper (from corner %1)</source>
        <translation>superior (desde la esquina %1)</translation>
    </message>
    <message>
        <source>left (from corner %1)</source>
        <translation>izquierdo (desde la esquina %1)</translation>
    </message>
    <message>
        <source>right (from corner %1)</source>
        <translation>derecho (desde la esquina %1)</translation>
    </message>
    <message>
        <source>pipe run</source>
        <translation>trazado</translation>
    </message>
    <message>
        <source>Invented firm, for demonstration</source>
        <translation>Empresa inventada, para demostración</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Bastidor</translation>
    </message>
    <message>
        <source>bend</source>
        <translation>curva</translation>
    </message>
    <message>
        <source>roof passage</source>
        <translation>paso de tejado</translation>
    </message>
    <message>
        <source>wall passage</source>
        <translation>paso de muro</translation>
    </message>
    <message>
        <source>floor passage</source>
        <translation>paso de forjado</translation>
    </message>
    <message>
        <source>pressure hold, start</source>
        <translation>prueba de presión, inicio</translation>
    </message>
    <message>
        <source>pressure hold, end</source>
        <translation>prueba de presión, final</translation>
    </message>
    <message>
        <source>evacuation, level reached</source>
        <translation>vacío, nivel alcanzado</translation>
    </message>
    <message>
        <source>evacuation, level after closing the valve</source>
        <translation>vacío, nivel tras cerrar la válvula</translation>
    </message>
    <message>
        <source>charge added</source>
        <translation>carga añadida</translation>
    </message>
    <message>
        <source>suction temperature</source>
        <translation>temperatura de aspiración</translation>
    </message>
    <message>
        <source>discharge temperature</source>
        <translation>temperatura de descarga</translation>
    </message>
    <message>
        <source>suction gas</source>
        <translation>gas de aspiración</translation>
    </message>
    <message>
        <source>suction pressure</source>
        <translation>presión de aspiración</translation>
    </message>
    <message>
        <source>discharge gas</source>
        <translation>gas de descarga</translation>
    </message>
    <message>
        <source>discharge pressure</source>
        <translation>presión de descarga</translation>
    </message>
    <message>
        <source>supply current</source>
        <translation>corriente absorbida</translation>
    </message>
    <message>
        <source>water temperature</source>
        <translation>temperatura del agua</translation>
    </message>
    <message>
        <source>outdoor temperature</source>
        <translation>temperatura exterior</translation>
    </message>
    <message>
        <source>insulation resistance</source>
        <translation>resistencia de aislamiento</translation>
    </message>
    <message>
        <source>earth resistance</source>
        <translation>resistencia de tierra</translation>
    </message>
    <message>
        <source>residual-current device, trip time</source>
        <translation>diferencial, tiempo de disparo</translation>
    </message>
    <message>
        <source>first heating, start</source>
        <translation>primer calentamiento, inicio</translation>
    </message>
    <message>
        <source>first heating, end</source>
        <translation>primer calentamiento, final</translation>
    </message>
    <message>
        <source>condenser to cylinder wall, resistance</source>
        <translation>condensador a pared del acumulador, resistencia</translation>
    </message>
    <message>
        <source>protective conductor, continuity</source>
        <translation>conductor de protección, continuidad</translation>
    </message>
    <message>
        <source>loop impedance</source>
        <translation>impedancia de bucle</translation>
    </message>
    <message>
        <source>supply voltage</source>
        <translation>tensión de alimentación</translation>
    </message>
    <message>
        <source>cold water pressure</source>
        <translation>presión del agua fría</translation>
    </message>
    <message>
        <source>cylinder full, vented and tight</source>
        <translation>acumulador lleno, purgado y estanco</translation>
    </message>
    <message>
        <source>safety valve lifted by hand</source>
        <translation>válvula de seguridad accionada a mano</translation>
    </message>
    <message>
        <source>hot water at the tap</source>
        <translation>agua caliente en el grifo</translation>
    </message>
    <message>
        <source>set-point as set</source>
        <translation>consigna ajustada</translation>
    </message>
    <message>
        <source>hygiene run as set</source>
        <translation>ciclo de higiene ajustado</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>número de serie</translation>
    </message>
    <message>
        <source>pc</source>
        <translation>ud</translation>
    </message>
    <message>
        <source>collectors placed in the layout</source>
        <translation>captadores colocados en el plano</translation>
    </message>
    <message>
        <source>one a system</source>
        <translation>uno por instalación</translation>
    </message>
    <message>
        <source>1 fixing point on the set-out drawing</source>
        <translation>1 punto de fijación en el plano de replanteo</translation>
    </message>
    <message>
        <source>%1 fixing points on the set-out drawing</source>
        <translation>%1 puntos de fijación en el plano de replanteo</translation>
    </message>
    <message>
        <source>one for each collector on a frame</source>
        <translation>uno por cada captador sobre bastidor</translation>
    </message>
    <message>
        <source>liquid line: run of %1 m one way, cutting allowance included</source>
        <translation>línea de líquido: trazado de %1 m solo ida, con recortes</translation>
    </message>
    <message>
        <source>suction line: run of %1 m one way, cutting allowance included</source>
        <translation>línea de aspiración: trazado de %1 m solo ida, con recortes</translation>
    </message>
    <message>
        <source>small and suction line of %1 m each, 5 % for cutting; wall against condensation</source>
        <translation>línea fina y de aspiración de %1 m cada una, 5 % de recortes; espesor contra condensación</translation>
    </message>
    <message>
        <source>suction line of %1 m, 5 % for cutting; wall against condensation</source>
        <translation>línea de aspiración de %1 m, 5 % de recortes; espesor contra condensación</translation>
    </message>
    <message>
        <source>small line of %1 m, 5 % for cutting; wall against condensation</source>
        <translation>línea fina de %1 m, 5 % de recortes; espesor contra condensación</translation>
    </message>
    <message>
        <source>%1; sold by %2 m</source>
        <translation>%1; se vende por %2 m</translation>
    </message>
    <message>
        <source>%1; sold by %2 pc</source>
        <translation>%1; se vende por %2 ud</translation>
    </message>
    <message>
        <source>%1; sold by %2 kg</source>
        <translation>%1; se vende por %2 kg</translation>
    </message>
    <message>
        <source>one at the block and one at each collector</source>
        <translation>uno en el bloque y uno en cada captador</translation>
    </message>
    <message>
        <source>each collector after the first</source>
        <translation>cada captador después del primero</translation>
    </message>
    <message>
        <source>one every %1 m</source>
        <translation>una cada %1 m</translation>
    </message>
    <message>
        <source>%1; tube of this size is not bent by hand</source>
        <translation>%1; el tubo de esta medida no se curva a mano</translation>
    </message>
    <message>
        <source>brazing under nitrogen, flushing and pressure hold</source>
        <translation>soldadura con nitrógeno, barrido y prueba de presión</translation>
    </message>
    <message>
        <source>1 such passage on the route</source>
        <translation>1 paso de este tipo en el trazado</translation>
    </message>
    <message>
        <source>%1 such passages on the route</source>
        <translation>%1 pasos de este tipo en el trazado</translation>
    </message>
    <message>
        <source>run of %1 m is beyond the %2 m of the factory charge: %3 g for each further metre</source>
        <translation>el trazado de %1 m supera los %2 m de la carga de fábrica: %3 g por cada metro de más</translation>
    </message>
    <message>
        <source>%1 m one way to the supply; voltage drop %2 %</source>
        <translation>%1 m solo ida hasta la alimentación; caída de tensión %2 %</translation>
    </message>
    <message>
        <source>%1 m one way to the supply; voltage drop %2 %, carries %3 A as laid</source>
        <translation>%1 m solo ida hasta la alimentación; caída de tensión %2 %, admite %3 A así tendido</translation>
    </message>
    <message>
        <source>own circuit for the block, as its maker asks</source>
        <translation>circuito propio del bloque, como pide su fabricante</translation>
    </message>
    <message>
        <source>own circuit for the block</source>
        <translation>circuito propio del bloque</translation>
    </message>
    <message>
        <source>own circuit for the block, type %1</source>
        <translation>circuito propio del bloque, tipo %1</translation>
    </message>
    <message>
        <source>within reach of the block, for service</source>
        <translation>al alcance del bloque, para el servicio</translation>
    </message>
    <message>
        <source>cold, hot and shut-off at the cylinder</source>
        <translation>fría, caliente y corte en el acumulador</translation>
    </message>
    <message>
        <source>valve opens at %1 bar</source>
        <translation>la válvula abre a %1 bar</translation>
    </message>
    <message>
        <source>one a cylinder</source>
        <translation>uno por acumulador</translation>
    </message>
    <message>
        <source>keeps the cold water to %1 bar at the cylinder</source>
        <translation>mantiene el agua fría a %1 bar en el acumulador</translation>
    </message>
    <message>
        <source>takes up %1 l of expansion at a pre-charge of %2 bar</source>
        <translation>absorbe %1 l de dilatación con %2 bar de precarga</translation>
    </message>
    <message>
        <source>stored water is hotter than the tap may be</source>
        <translation>el agua acumulada está más caliente de lo que admite el grifo</translation>
    </message>
    <message>
        <source>discharge of the safety valve to the drain</source>
        <translation>descarga de la válvula de seguridad al desagüe</translation>
    </message>
    <message>
        <source>discharge of the safety valve to the drain: %1 mm to the tundish, %2 mm from there</source>
        <translation>descarga de la válvula de seguridad al desagüe: %1 mm hasta el embudo, %2 mm desde allí</translation>
    </message>
    <message>
        <source>to be made: %1</source>
        <translation>por hacer: %1</translation>
    </message>
    <message>
        <source>electrical supply, %1</source>
        <translation>alimentación eléctrica, %1</translation>
    </message>
    <message>
        <source>earth, %1</source>
        <translation>tierra, %1</translation>
    </message>
    <message>
        <source>cold water, %1</source>
        <translation>agua fría, %1</translation>
    </message>
    <message>
        <source>hot water, %1</source>
        <translation>agua caliente, %1</translation>
    </message>
    <message>
        <source>drain, %1</source>
        <translation>desagüe, %1</translation>
    </message>
    <message>
        <source>extra of this choice</source>
        <translation>extra de esta opción</translation>
    </message>
    <message>
        <source>not reached within 72 hours</source>
        <translation>no se alcanza en 72 horas</translation>
    </message>
    <message>
        <source>%1 with water at %2 deg C</source>
        <translation>%1 con el agua a %2 °C</translation>
    </message>
    <message>
        <source>evaporating temperature below the envelope</source>
        <translation>temperatura de evaporación por debajo del campo de trabajo</translation>
    </message>
    <message>
        <source>condensing temperature above the envelope</source>
        <translation>temperatura de condensación por encima del campo de trabajo</translation>
    </message>
    <message>
        <source>pressure ratio above the envelope</source>
        <translation>relación de presiones por encima del campo de trabajo</translation>
    </message>
    <message>
        <source>discharge temperature above the envelope</source>
        <translation>temperatura de descarga por encima del campo de trabajo</translation>
    </message>
    <message>
        <source>the compressor's data end before this operating point</source>
        <translation>los datos del compresor acaban antes de este punto</translation>
    </message>
    <message>
        <source>protective earth, %1</source>
        <translation>tierra de protección, %1</translation>
    </message>
    <message>
        <source>recirculation, %1</source>
        <translation>recirculación, %1</translation>
    </message>
    <message>
        <source>Collector %1, %2 m2</source>
        <translation>Captador %1, %2 m²</translation>
    </message>
    <message>
        <source>Collector %1, %2 m2, tested</source>
        <translation>Captador %1, %2 m², ensayado</translation>
    </message>
    <message>
        <source>Block %1, %2, with control</source>
        <translation>Bloque %1, %2, con regulación</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 l, stainless</source>
        <translation>Acumulador %1, %2 l, inoxidable</translation>
    </message>
    <message>
        <source>Cylinder %1, %2 l, enamelled</source>
        <translation>Acumulador %1, %2 l, esmaltado</translation>
    </message>
    <message>
        <source>Tile hook with two timber screws and clamp</source>
        <translation>Gancho de teja con dos tornillos de madera y grapa</translation>
    </message>
    <message>
        <source>Double-ended screw with sleeve, seals and clamp</source>
        <translation>Espárrago con casquillo, juntas y grapa</translation>
    </message>
    <message>
        <source>Wall bracket with sleeve anchor and mortar</source>
        <translation>Escuadra de muro con tamiz y mortero</translation>
    </message>
    <message>
        <source>Frame foot with anchor</source>
        <translation>Pie de bastidor con anclaje</translation>
    </message>
    <message>
        <source>Ballast tray with mat and slabs for one foot</source>
        <translation>Bandeja de lastre con manta y losas para un pie</translation>
    </message>
    <message>
        <source>Seam clamp with bolt</source>
        <translation>Grapa de junta alzada con perno</translation>
    </message>
    <message>
        <source>Frame for one collector on a level surface, tilt adjustable</source>
        <translation>Bastidor para un captador en superficie plana, inclinación ajustable</translation>
    </message>
    <message>
        <source>Copper tube %1 mm, EN 12735-1, coil</source>
        <translation>Tubo de cobre %1 mm, EN 12735-1, rollo</translation>
    </message>
    <message>
        <source>Copper tube %1 mm</source>
        <translation>Tubo de cobre %1 mm</translation>
    </message>
    <message>
        <source>Joint set for one pair of tube ends</source>
        <translation>Juego de unión para un par de tubos</translation>
    </message>
    <message>
        <source>Branch set to a further collector, liquid and suction</source>
        <translation>Juego de derivación a otro captador, líquido y aspiración</translation>
    </message>
    <message>
        <source>Insulated pipe clip</source>
        <translation>Abrazadera aislada</translation>
    </message>
    <message>
        <source>Brazing elbow %1 mm</source>
        <translation>Codo para soldar %1 mm</translation>
    </message>
    <message>
        <source>Closed-cell insulation %1 mm wall, weatherproof outdoors</source>
        <translation>Aislamiento de célula cerrada de %1 mm, resistente a la intemperie</translation>
    </message>
    <message>
        <source>Roof passage with flexible flashing</source>
        <translation>Paso de tejado con babero flexible</translation>
    </message>
    <message>
        <source>Wall sleeve with seals and cover</source>
        <translation>Pasamuros con juntas y tapa</translation>
    </message>
    <message>
        <source>Floor sleeve with fire and sound seal</source>
        <translation>Pasaforjados con sellado de fuego y ruido</translation>
    </message>
    <message>
        <source>Refrigerant %1, weighed in</source>
        <translation>Refrigerante %1, cargado por peso</translation>
    </message>
    <message>
        <source>Dry nitrogen for brazing, flushing and pressure hold, use of one bottle</source>
        <translation>Nitrógeno seco para soldar, barrer y prueba de presión, uso de una botella</translation>
    </message>
    <message>
        <source>Cable %1 mm2, copper</source>
        <translation>Cable %1 mm², cobre</translation>
    </message>
    <message>
        <source>Circuit breaker %1</source>
        <translation>Magnetotérmico %1</translation>
    </message>
    <message>
        <source>Residual-current device %1 mA</source>
        <translation>Diferencial %1 mA</translation>
    </message>
    <message>
        <source>Isolating switch beside the block</source>
        <translation>Interruptor de corte junto al bloque</translation>
    </message>
    <message>
        <source>Thermostatic mixing valve 3/4</source>
        <translation>Válvula mezcladora termostática 3/4</translation>
    </message>
    <message>
        <source>Safety group with valve, check valve and shut-off</source>
        <translation>Grupo de seguridad con válvula, antirretorno y corte</translation>
    </message>
    <message>
        <source>Pressure reducing valve with gauge and strainer 3/4</source>
        <translation>Válvula reductora con manómetro y filtro 3/4</translation>
    </message>
    <message>
        <source>Tundish, trap and discharge pipe to the drain</source>
        <translation>Embudo, sifón y tubo al desagüe</translation>
    </message>
    <message>
        <source>Expansion vessel for drinking water, %1 l</source>
        <translation>Vaso de expansión para agua potable, %1 l</translation>
    </message>
    <message>
        <source>Connection set cold, hot and shut-off</source>
        <translation>Juego de conexión fría, caliente y corte</translation>
    </message>
    <message>
        <source>Bringing a missing service to the spot</source>
        <translation>Llevar al sitio un servicio que falta</translation>
    </message>
    <message>
        <source>Drain pan under the cylinder</source>
        <translation>Bandeja de desagüe bajo el acumulador</translation>
    </message>
    <message>
        <source>Recirculation pump with timer</source>
        <translation>Bomba de recirculación con temporizador</translation>
    </message>
    <message>
        <source>Roof ladder and edge protection, hire and setting up</source>
        <translation>Escalera de tejado y protección de borde, alquiler y montaje</translation>
    </message>
    <message>
        <source>Taking away and recycling the old cylinder</source>
        <translation>Retirar y reciclar el acumulador viejo</translation>
    </message>
    <message>
        <source>Electrician's certificate for the new circuit</source>
        <translation>Boletín eléctrico del circuito nuevo</translation>
    </message>
    <message>
        <source>electric immersion heater</source>
        <translation>resistencia eléctrica</translation>
    </message>
    <message>
        <source>natural gas</source>
        <translation>gas natural</translation>
    </message>
    <message>
        <source>liquefied petroleum gas</source>
        <translation>gas licuado de petróleo</translation>
    </message>
    <message>
        <source>heating oil</source>
        <translation>gasóleo</translation>
    </message>
    <message>
        <source>wood</source>
        <translation>leña</translation>
    </message>
    <message>
        <source>Survey on site and set-out drawing</source>
        <translation>Toma de medidas y plano de replanteo</translation>
    </message>
    <message>
        <source>Set out and fix points</source>
        <translation>Replantear y fijar puntos</translation>
    </message>
    <message>
        <source>Lift, hang and secure collectors</source>
        <translation>Subir, colgar y asegurar los captadores</translation>
    </message>
    <message>
        <source>Lay, bend, clip and insulate the run</source>
        <translation>Tender, curvar, sujetar y aislar las líneas</translation>
    </message>
    <message>
        <source>Set cylinder and block, connect water side</source>
        <translation>Colocar acumulador y bloque, conectar el agua</translation>
    </message>
    <message>
        <source>Pressure hold, evacuation, charge</source>
        <translation>Prueba de presión, vacío, carga</translation>
    </message>
    <message>
        <source>Supply, protection, connection and tests</source>
        <translation>Alimentación, protección, conexión y pruebas</translation>
    </message>
    <message>
        <source>First heating, settings, instruction, papers</source>
        <translation>Primer calentamiento, ajustes, instrucción, papeles</translation>
    </message>
    <message>
        <source>Travel, distance</source>
        <translation>Desplazamiento, distancia</translation>
    </message>
    <message>
        <source>Travel, time</source>
        <translation>Desplazamiento, tiempo</translation>
    </message>
    <message>
        <source>Tax</source>
        <translation>Impuestos</translation>
    </message>
    <message>
        <source>Standard rate (assumed)</source>
        <translation>Tipo general (supuesto)</translation>
    </message>
    <message>
        <source>Reduced rate (assumed)</source>
        <translation>Tipo reducido (supuesto)</translation>
    </message>
    <message>
        <source>Standard rate %1 % (assumed)</source>
        <translation>Tipo general %1 % (supuesto)</translation>
    </message>
    <message>
        <source>Reduced rate %1 % (assumed)</source>
        <translation>Tipo reducido %1 % (supuesto)</translation>
    </message>
    <message>
        <source>eight in ten of %1 made years of the climate, and two runs of the year with plate to refrigerant %2, compressor %3, condenser %4, draw-off %5 together (sizes assumed)</source>
        <translation>ocho de cada diez entre %1 años generados del clima, y dos cálculos del año con captador a refrigerante %2, compresor %3, condensador %4 y consumo %5 a la vez (valores supuestos)</translation>
    </message>
    <message>
        <source>two further runs of the year: light %1, plate to refrigerant %2, compressor %3, condenser %4, draw-off %5 together (sizes assumed)</source>
        <translation>otros dos cálculos del año: luz %1, captador a refrigerante %2, compresor %3, condensador %4 y consumo %5 a la vez (valores supuestos)</translation>
    </message>
    <message>
        <source>not worked out yet</source>
        <translation>aún sin calcular</translation>
    </message>
    <message>
        <source>At the highest tap %1 bar are left while hot water flows, %2 bar are wanted</source>
        <translation>En el grifo más alto quedan %1 bar mientras corre agua caliente; se piden %2 bar</translation>
    </message>
    <message>
        <source>Set the reducing valve higher, take a larger hot pipe, or plan a booster</source>
        <translation>Suba la válvula reductora, tome un tubo de caliente mayor o prevea un grupo de presión</translation>
    </message>
    <message>
        <source>The reducing valve lets %1 stand at the cylinder; the safety valve of %2 asks for %3 at most</source>
        <translation>La válvula reductora deja %1 en el acumulador; la válvula de seguridad de %2 pide %3 como máximo</translation>
    </message>
    <message>
        <source>Set it to %1 or less</source>
        <translation>Ajústela a %1 o menos</translation>
    </message>
    <message>
        <source>The house has recirculation and the cylinder no port for it</source>
        <translation>La casa tiene recirculación y el acumulador no tiene toma para ella</translation>
    </message>
    <message>
        <source>Choose a cylinder with a recirculation port, or join it to the cold inlet as its maker allows</source>
        <translation>Elija un acumulador con toma de recirculación, o únala a la entrada de fría si su fabricante lo permite</translation>
    </message>
    <message>
        <source>The house has a recirculation loop and the cylinder no connection for it</source>
        <translation>La casa tiene anillo de recirculación y el acumulador no tiene conexión para él</translation>
    </message>
    <message>
        <source>Choose a cylinder with a recirculation connection, or return through the cold inlet as its maker allows</source>
        <translation>Elija un acumulador con conexión de recirculación, o vuelva por la entrada de fría si su fabricante lo permite</translation>
    </message>
    <message>
        <source>The store is kept at %1 deg C; legionella grow between 20 and 45 deg C and die slowly below 55</source>
        <translation>El acumulador se mantiene a %1 deg C; la legionela crece entre 20 y 45 deg C y muere despacio por debajo de 55</translation>
    </message>
    <message>
        <source>Raise the set-point to 60 deg C, or have the immersion heater lift the whole store to 60 deg C at times that local rules ask for</source>
        <translation>Suba la consigna a 60 deg C, o haga que la resistencia lleve todo el acumulador a 60 deg C cuando lo pida el reglamento local</translation>
    </message>
    <message>
        <source>The store stands lukewarm in holidays and no hygiene run comes before the return</source>
        <translation>En vacaciones el acumulador queda tibio y no hay tratamiento térmico antes de la vuelta</translation>
    </message>
    <message>
        <source>Switch on the hygiene run before return</source>
        <translation>Active el tratamiento térmico antes de la vuelta</translation>
    </message>
    <message>
        <source>The cylinder may hold water of %1 deg C; %2 deg C burns in about %3 s. A thermostatic mixing valve is in the list</source>
        <translation>El acumulador puede tener agua a %1 °C; a %2 °C quema en unos %3 s. Se incluye una válvula mezcladora termostática</translation>
    </message>
    <message>
        <source>%1 of %2 hygiene runs end after %3 hours without %4 deg C for %5 minutes: the sources are too weak for it, or draws come in between</source>
        <translation>%1 de %2 ciclos de higiene acaban tras %3 horas sin %4 °C durante %5 minutos: las fuentes son débiles para ello, o se consume agua entretanto</translation>
    </message>
    <message>
        <source>Fit a stronger immersion heater, begin earlier in the night, or take another cylinder or block</source>
        <translation>Ponga una resistencia más potente, empiece antes en la noche, o tome otro acumulador u otro bloque</translation>
    </message>
    <message>
        <source>%1 of %2 hygiene runs hold %3 deg C for %4 minutes only above the immersion heater; the %5 l below it are no hotter than the heat pump makes them</source>
        <translation>%1 de %2 ciclos de higiene mantienen %3 °C durante %4 minutos solo por encima de la resistencia; los %5 l de debajo no pasan de lo que da la bomba de calor</translation>
    </message>
    <message>
        <source>Choose a target within the heat pump's envelope, a lower immersion heater, or a circulating pump for the run</source>
        <translation>Elija un objetivo dentro del alcance de la bomba de calor, una resistencia más baja, o una bomba de circulación para el ciclo</translation>
    </message>
    <message>
        <source>The condenser lies in drinking water with a single wall between it and refrigerant with oil</source>
        <translation>El condensador está en el agua potable con una sola pared entre ella y el refrigerante con aceite</translation>
    </message>
    <message>
        <source>Choose a block with a double-walled or wrapped condenser, or have the maker confirm that it is allowed where it is fitted</source>
        <translation>Elija un bloque con condensador de doble pared o envolvente, o que el fabricante confirme que se permite donde se instala</translation>
    </message>
    <message>
        <source>The water has %1 mmol/l of hardness and is heated to %2 deg C: lime settles on heater and condenser</source>
        <translation>El agua tiene una dureza de %1 mmol/l y se calienta a %2 deg C: la cal se deposita en resistencia y condensador</translation>
    </message>
    <message>
        <source>Keep to 60 deg C, or plan softening or lime protection and yearly descaling</source>
        <translation>No pase de 60 deg C, o prevea descalcificador o protección antical y limpieza anual</translation>
    </message>
    <message>
        <source>Only %1 are left over the cylinder</source>
        <translation>Sobre el acumulador solo quedan %1</translation>
    </message>
    <message>
        <source>Check that anode and connections can be reached, or take a lower cylinder</source>
        <translation>Compruebe que se llega al ánodo y a las conexiones, o tome un acumulador más bajo</translation>
    </message>
    <message>
        <source>Only %1 are left beside the cylinder</source>
        <translation>Junto al acumulador solo quedan %1</translation>
    </message>
    <message>
        <source>Check that it can be brought in and its connections reached</source>
        <translation>Compruebe que se puede meter y que se llega a sus conexiones</translation>
    </message>
    <message>
        <source>While the block starts the voltage falls by %1 % over %2 m; lamps flicker and the start may fail</source>
        <translation>Al arrancar el bloque la tensión cae un %1 % en %2 m; las luces parpadean y el arranque puede fallar</translation>
    </message>
    <message>
        <source>Bring the supply nearer, or ask the maker for a soft starter</source>
        <translation>Acerque la alimentación, o pida al fabricante un arrancador suave</translation>
    </message>
    <message>
        <source>Starting takes %1 A; a breaker %2 may trip from %3 A</source>
        <translation>El arranque toma %1 A; un interruptor %2 puede saltar desde %3 A</translation>
    </message>
    <message>
        <source>Take the next slower curve or the next larger rating that the cable carries</source>
        <translation>Tome la curva más lenta siguiente o el calibre mayor que aguante el cable</translation>
    </message>
    <message>
        <source>The block's data ask for a residual-current device of %1 mA</source>
        <translation>Los datos del bloque piden un diferencial de %1 mA</translation>
    </message>
    <message>
        <source>Check the national rule: 30 mA is usual where people touch water and metal</source>
        <translation>Compruebe el reglamento: 30 mA es lo usual donde se tocan agua y metal</translation>
    </message>
    <message>
        <source>The house has an IT supply: how a fault is found and cut is not worked out here</source>
        <translation>La casa tiene esquema IT: aquí no se calcula cómo se detecta y corta un defecto</translation>
    </message>
    <message>
        <source>Have an electrician plan insulation monitoring and the second fault</source>
        <translation>Que un electricista proyecte la vigilancia del aislamiento y el segundo defecto</translation>
    </message>
    <message>
        <source>The cable alone takes %1 ohm of the fault loop; a breaker %2 switches off at once up to %3 ohm</source>
        <translation>Solo el cable toma %1 ohm del bucle de defecto; un interruptor %2 corta al instante hasta %3 ohm</translation>
    </message>
    <message>
        <source>Let the residual-current device serve, or take a larger section or a quicker curve</source>
        <translation>Que actúe el diferencial, o tome mayor sección o una curva más rápida</translation>
    </message>
    <message>
        <source>The house has lightning protection; the distance from collector and lines to its nearest conductor is not told</source>
        <translation>La casa tiene pararrayos; no se indica la distancia de captador y líneas a su conductor más cercano</translation>
    </message>
    <message>
        <source>Measure it and fill it in on Visit; %1 m is enough in every class</source>
        <translation>Mídala y anótela en la visita; %1 m bastan en todas las clases</translation>
    </message>
    <message>
        <source>Have a lightning protection specialist confirm the class and the distance</source>
        <translation>Que un especialista en pararrayos confirme la clase y la distancia</translation>
    </message>
    <message>
        <source>No surge protection is in the distribution board, and the house has lightning protection</source>
        <translation>El cuadro no tiene protección contra sobretensiones y la casa tiene pararrayos</translation>
    </message>
    <message>
        <source>Have devices of type 1 and 2 fitted with the circuit</source>
        <translation>Haga montar dispositivos de tipo 1 y 2 con el circuito</translation>
    </message>
    <message>
        <source>The circuit's breaker of %1 A is not below the main fuse of %2 A: a fault there may put the house in the dark</source>
        <translation>El interruptor del circuito, de %1 A, no es menor que el fusible general de %2 A: un defecto allí puede dejar la casa a oscuras</translation>
    </message>
    <message>
        <source>Have an electrician check selectivity</source>
        <translation>Que un electricista compruebe la selectividad</translation>
    </message>
    <message>
        <source>%1 collectors share one circuit; even flow through them is not worked out here</source>
        <translation>%1 captadores comparten un circuito; aquí no se calcula el reparto entre ellos</translation>
    </message>
    <message>
        <source>Ask the block's maker how they are to be joined</source>
        <translation>Pregunte al fabricante del bloque cómo unirlos</translation>
    </message>
    <message>
        <source>Take away a collector, or take a larger block</source>
        <translation>Quite un captador o elija un bloque mayor</translation>
    </message>
    <message>
        <source>Shade takes %1 % of the year's light</source>
        <translation>La sombra quita el %1 % de la luz del año</translation>
    </message>
    <message>
        <source>Shade takes %1 % of the year's light, most of it by %2</source>
        <translation>La sombra quita el %1 % de la luz del año, la mayor parte por %2</translation>
    </message>
    <message>
        <source>Move the collector; the shade map shows where it is lighter</source>
        <translation>Mueva el captador; el mapa de sombras muestra dónde hay más luz</translation>
    </message>
    <message>
        <source>%1 % of the heat asked for is not there at %2 deg C (%3 kWh in a year, 1 draw)</source>
        <translation>Falta el %1 % del calor pedido a %2 deg C (%3 kWh al año, 1 consumo)</translation>
    </message>
    <message>
        <source>%1 % of the heat asked for is not there at %2 deg C (%3 kWh in a year, %4 draws)</source>
        <translation>Falta el %1 % del calor pedido a %2 deg C (%3 kWh al año, %4 consumos)</translation>
    </message>
    <message>
        <source>Take a larger cylinder, more collector area or a higher set-point</source>
        <translation>Tome un acumulador mayor, más superficie de captador o una consigna más alta</translation>
    </message>
    <message>
        <source>In %1 hours of the year heat is wanted where the compressor's data say nothing; the pump is taken to be off then and the immersion heater serves</source>
        <translation>En %1 horas del año se pide calor donde los datos del compresor no dicen nada; se supone la bomba parada y sirve la resistencia</translation>
    </message>
    <message>
        <source>Ask the maker for coefficients over a wider range, or choose a block whose data reach further</source>
        <translation>Pida al fabricante coeficientes de un campo mayor, o elija un bloque cuyos datos lleguen más lejos</translation>
    </message>
    <message>
        <source>The immersion heater uses %1 % of the electricity</source>
        <translation>La resistencia gasta el %1 % de la electricidad</translation>
    </message>
    <message>
        <source>Take a larger block or more collector area</source>
        <translation>Tome un bloque mayor o más superficie de captador</translation>
    </message>
    <message>
        <source>The weather year is from a place %1 km away</source>
        <translation>El año meteorológico es de un lugar a %1 km</translation>
    </message>
    <message>
        <source>Plan with a nearer file if there is one</source>
        <translation>Calcule con un archivo más cercano si lo hay</translation>
    </message>
    <message>
        <source>The weather year is from %1 m, the site lies at %2 m; air temperature is not corrected for it</source>
        <translation>El año meteorológico es de %1 m de altitud y el lugar está a %2 m; la temperatura del aire no se corrige</translation>
    </message>
    <message>
        <source>Plan with a file from a similar height</source>
        <translation>Calcule con un archivo de altitud parecida</translation>
    </message>
    <message>
        <source>Scale 1:%1 on %2 printed at full size. Check the bar with a rule before measuring.</source>
        <translation>Escala 1:%1 en %2 a tamaño real. Compruebe la barra con una regla antes de medir.</translation>
    </message>
    <message>
        <source>%1 has no outline that can be drawn yet: measure it and enter its corners.</source>
        <translation>%1 aún no tiene contorno que dibujar: mídalo e introduzca sus esquinas.</translation>
    </message>
    <message>
        <source>%1 is too large to be drawn to scale on one sheet.</source>
        <translation>%1 es demasiado grande para dibujarlo a escala en una hoja.</translation>
    </message>
    <message>
        <source>, seen face-on</source>
        <translation>, visto de frente</translation>
    </message>
    <message>
        <source>The points close up</source>
        <translation>Los puntos de cerca</translation>
    </message>
    <message>
        <source>, points close up</source>
        <translation>, puntos de cerca</translation>
    </message>
    <message>
        <source>Site in plan</source>
        <translation>Planta del lugar</translation>
    </message>
    <message>
        <source>Nothing is sketched yet: draw the house, its surfaces and the cylinder's place.</source>
        <translation>Aún no hay croquis: dibuje la casa, sus superficies y el sitio del acumulador.</translation>
    </message>
    <message>
        <source>The site is too large to be drawn to scale on one sheet.</source>
        <translation>El lugar es demasiado grande para dibujarlo a escala en una hoja.</translation>
    </message>
    <message>
        <source>Pipe run, not to scale</source>
        <translation>Trazado de tuberías, sin escala</translation>
    </message>
    <message>
        <source>"%1" (in English)</source>
        <translation>«%1» (en inglés)</translation>
    </message>
    <message>
        <source> on </source>
        <translation> en </translation>
    </message>
    <message>
        <source>, tilt %1°, looks to %2</source>
        <translation>, inclinación %1°, orientado a %2</translation>
    </message>
    <message>
        <source>Job %1, revision %2, mark %3</source>
        <translation>Obra %1, revisión %2, marca %3</translation>
    </message>
    <message>
        <source>Before work: scan this, or type the mark, under Fitting, 'Code of a print'. It tells whether this print is still the plan. Do not build from an outdated one.</source>
        <translation>Antes de trabajar: escanea esto o escribe la marca en «Fitting», «Code of a print». Dice si esta copia sigue siendo el plan. No montes con una copia anticuada.</translation>
    </message>
    <message>
        <source>The job</source>
        <translation>La obra</translation>
    </message>
    <message>
        <source>%1 × %2, %3 × %4, %5 each</source>
        <translation>%1 × %2, %3 × %4, %5 cada uno</translation>
    </message>
    <message>
        <source>Client</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>Access</source>
        <translation>Acceso</translation>
    </message>
    <message>
        <source>Scaffold</source>
        <translation>Andamio</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>necesario</translation>
    </message>
    <message>
        <source>not foreseen: decide on the place</source>
        <translation>no previsto: decidir en obra</translation>
    </message>
    <message>
        <source>Roof condition</source>
        <translation>Estado del tejado</translation>
    </message>
    <message>
        <source>Collector</source>
        <translation>Captador</translation>
    </message>
    <message>
        <source>Fixing</source>
        <translation>Fijación</translation>
    </message>
    <message>
        <source>%1, %2 (%3), factory charge %4</source>
        <translation>%1, %2 (%3), carga de fábrica %4</translation>
    </message>
    <message>
        <source>%1, %2, %3 filled</source>
        <translation>%1, %2, %3 lleno</translation>
    </message>
    <message>
        <source>Before you start: hazards and checks</source>
        <translation>Antes de empezar: peligros y comprobaciones</translation>
    </message>
    <message>
        <source>Mind besides</source>
        <translation>Además, tener en cuenta</translation>
    </message>
    <message>
        <source>Set-out: </source>
        <translation>Replanteo: </translation>
    </message>
    <message>
        <source>No collector is placed in this choice.</source>
        <translation>No hay captador colocado en esta opción.</translation>
    </message>
    <message>
        <source>Pipe run</source>
        <translation>Trazado de tuberías</translation>
    </message>
    <message>
        <source>Lengths run along the centre line from collector to block. Both tubes have the same legs. Cut when the place is measured, not from this list alone.</source>
        <translation>Las longitudes van por el eje del tubo del captador al bloque. Los dos tubos tienen los mismos tramos. Corte cuando haya medido en obra, no solo con esta lista.</translation>
    </message>
    <message>
        <source>The work in order</source>
        <translation>El trabajo por orden</translation>
    </message>
    <message>
        <source>Tick each step when it is done. At a hold point the work stops until it is signed.</source>
        <translation>Marque cada paso al terminarlo. En un punto de espera el trabajo se para hasta que se firme.</translation>
    </message>
    <message>
        <source>Not to be issued: has a stop</source>
        <translation>No entregar: tiene un alto</translation>
    </message>
    <message>
        <source>Do not build from this sheet. What must be changed is named below.</source>
        <translation>No monte con esta hoja. Lo que hay que cambiar está abajo.</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Entrega</translation>
    </message>
    <message>
        <source>The system was fitted and tested as on this sheet; deviations are written on it.</source>
        <translation>La instalación se montó y probó según esta hoja; las diferencias están anotadas en ella.</translation>
    </message>
    <message>
        <source>Fitter</source>
        <translation>Instalador</translation>
    </message>
    <message>
        <source>Electrician</source>
        <translation>Electricista</translation>
    </message>
    <message>
        <source>not reached: </source>
        <translation>no se alcanza: </translation>
    </message>
    <message>
        <source> to </source>
        <translation> a </translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Esperado</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Leído</translation>
    </message>
    <message>
        <source>Instrument, time</source>
        <translation>Instrumento, hora</translation>
    </message>
    <message>
        <source>Usual day in %1: air %2, light on the plate %3, wind %4</source>
        <translation>Día normal de %1: aire %2, luz sobre el captador %3, viento %4</translation>
    </message>
    <message>
        <source>First heating, %1 to %2</source>
        <translation>Primer calentamiento, de %1 a %2</translation>
    </message>
    <message>
        <source>Readings on the day</source>
        <translation>Lecturas del día</translation>
    </message>
    <message>
        <source>as in step %1</source>
        <translation>como en el paso %1</translation>
    </message>
    <message>
        <source>Pressure hold, start: bar and °C</source>
        <translation>Prueba de presión, inicio: bar y °C</translation>
    </message>
    <message>
        <source>Pressure hold, end: bar and °C</source>
        <translation>Prueba de presión, final: bar y °C</translation>
    </message>
    <message>
        <source>as start, corrected for temperature</source>
        <translation>como al inicio, corregida por temperatura</translation>
    </message>
    <message>
        <source>Vacuum at the end: Pa and °C</source>
        <translation>Vacío al final: Pa y °C</translation>
    </message>
    <message>
        <source>Vacuum after shut-off: Pa and °C</source>
        <translation>Vacío tras cerrar: Pa y °C</translation>
    </message>
    <message>
        <source>Extra charge weighed in</source>
        <translation>Carga añadida según báscula</translation>
    </message>
    <message>
        <source>none</source>
        <translation>no hay</translation>
    </message>
    <message>
        <source>Insulation resistance</source>
        <translation>Resistencia de aislamiento</translation>
    </message>
    <message>
        <source>1 MΩ or more at 500 V</source>
        <translation>1 MΩ o más a 500 V</translation>
    </message>
    <message>
        <source>Earth resistance</source>
        <translation>Resistencia de tierra</translation>
    </message>
    <message>
        <source>as the local rule asks</source>
        <translation>como pide la norma local</translation>
    </message>
    <message>
        <source>Residual current device, trip time</source>
        <translation>Diferencial, tiempo de disparo</translation>
    </message>
    <message>
        <source>300 ms or less at rated residual current</source>
        <translation>300 ms o menos a su sensibilidad nominal</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>hasta %1</translation>
    </message>
    <message>
        <source>Supply current, running</source>
        <translation>Corriente absorbida en marcha</translation>
    </message>
    <message>
        <source>Suction temperature</source>
        <translation>Temperatura de aspiración</translation>
    </message>
    <message>
        <source>below the plate's surroundings</source>
        <translation>por debajo del entorno del captador</translation>
    </message>
    <message>
        <source>Discharge temperature</source>
        <translation>Temperatura de descarga</translation>
    </message>
    <message>
        <source>Outdoor temperature</source>
        <translation>Temperatura exterior</translation>
    </message>
    <message>
        <source>note it</source>
        <translation>anotarla</translation>
    </message>
    <message>
        <source>Water temperature, set-point</source>
        <translation>Temperatura del agua, consigna</translation>
    </message>
    <message>
        <source>From cold to set-point without draw-off</source>
        <translation>De frío a consigna sin consumo</translation>
    </message>
    <message>
        <source>Good light: 800 W/m², 20 °C</source>
        <translation>Buena luz: 800 W/m², 20 °C</translation>
    </message>
    <message>
        <source>Fair light: 400 W/m², 15 °C</source>
        <translation>Luz media: 400 W/m², 15 °C</translation>
    </message>
    <message>
        <source>Poor: night, 2 °C</source>
        <translation>Mala: noche, 2 °C</translation>
    </message>
    <message>
        <source>Shown or given to the client</source>
        <translation>Mostrado o entregado al cliente</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Where to switch off: breaker, isolator, control</source>
        <translation>Dónde se apaga: magnetotérmico, seccionador, mando</translation>
    </message>
    <message>
        <source>Mixing valve: what it is for, set to, °C</source>
        <translation>Válvula mezcladora: para qué sirve, ajustada a, °C</translation>
    </message>
    <message>
        <source>Safety valve: lifted, drips while heating, never shut or plugged</source>
        <translation>Válvula de seguridad: accionada, gotea al calentar, nunca cerrar ni tapar</translation>
    </message>
    <message>
        <source>Papers handed over: booklet, record, makers' sheets</source>
        <translation>Papeles entregados: cuaderno, registro, hojas de los fabricantes</translation>
    </message>
    <message>
        <source>Whom to call: name, telephone</source>
        <translation>A quién llamar: nombre, teléfono</translation>
    </message>
    <message>
        <source>Next service: month and year</source>
        <translation>Próximo mantenimiento: mes y año</translation>
    </message>
    <message>
        <source>Hand-over to the client</source>
        <translation>Entrega al cliente</translation>
    </message>
    <message>
        <source>%1 wall</source>
        <translation>%1 de espesor</translation>
    </message>
    <message>
        <source>%1 wall on the suction tube</source>
        <translation>%1 de espesor en el tubo de aspiración</translation>
    </message>
    <message>
        <source>%1 wall on the suction tube, %2 on the small one</source>
        <translation>%1 de espesor en el tubo de aspiración, %2 en el fino</translation>
    </message>
    <message>
        <source>, %1 wide</source>
        <translation>, de %1</translation>
    </message>
    <message>
        <source>, %1 wide and %2 deep</source>
        <translation>, de %1 y %2 de profundidad</translation>
    </message>
    <message>
        <source>, to the torque its maker names</source>
        <translation>, al par que indique su fabricante</translation>
    </message>
    <message>
        <source>, to %1</source>
        <translation>, a %1</translation>
    </message>
    <message>
        <source>to the fitting maker's torque</source>
        <translation>al par del fabricante del racor</translation>
    </message>
    <message>
        <source>long side</source>
        <translation>lado largo</translation>
    </message>
    <message>
        <source>short side</source>
        <translation>lado corto</translation>
    </message>
    <message>
        <source>lower side</source>
        <translation>lado inferior</translation>
    </message>
    <message>
        <source>Two persons</source>
        <translation>Entre dos</translation>
    </message>
    <message>
        <source>Certified for refrigerants</source>
        <translation>Frigorista habilitado</translation>
    </message>
    <message>
        <source>Licensed electrician</source>
        <translation>Electricista autorizado</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Work at height</source>
        <translation>Trabajo en altura</translation>
    </message>
    <message>
        <source>Edge protection, scaffold or tower first; two persons for the plate; not in wind, wet or frost.</source>
        <translation>Primero protección de borde, andamio o torre; el captador entre dos; no con viento, lluvia ni helada.</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Presión</translation>
    </message>
    <message>
        <source>Dry nitrogen only, regulator set, never above {max_pressure}. Goggles. Stand aside when a valve opens.</source>
        <translation>Solo nitrógeno seco, manorreductor regulado, nunca más de {max_pressure}. Gafas. Apártese al abrir una válvula.</translation>
    </message>
    <message>
        <source>Highly flammable refrigerant: {refrigerant} ({safety_class})</source>
        <translation>Refrigerante muy inflamable: {refrigerant} ({safety_class})</translation>
    </message>
    <message>
        <source>{total_charge} in the circuit. No flame, no spark, no smoking; air the room; detector on; tools fit for it. Only persons trained for flammable refrigerants.</source>
        <translation>{total_charge} en el circuito. Sin llama, sin chispa, sin fumar; ventile el local; detector encendido; herramienta adecuada. Solo personas formadas en refrigerantes inflamables.</translation>
    </message>
    <message>
        <source>Mildly flammable refrigerant: {refrigerant} ({safety_class})</source>
        <translation>Refrigerante ligeramente inflamable: {refrigerant} ({safety_class})</translation>
    </message>
    <message>
        <source>{total_charge} in the circuit. No flame where it is opened; air the room; detector on.</source>
        <translation>{total_charge} en el circuito. Sin llama donde se abra; ventile el local; detector encendido.</translation>
    </message>
    <message>
        <source>Refrigerant {refrigerant} ({safety_class})</source>
        <translation>Refrigerante {refrigerant} ({safety_class})</translation>
    </message>
    <message>
        <source>{total_charge} in the circuit. Liquid burns the skin by cold, the gas displaces air: gloves, goggles, air the room. Only persons certified for refrigerants.</source>
        <translation>{total_charge} en el circuito. El líquido quema la piel por frío, el gas desplaza el aire: guantes, gafas, ventilar. Solo frigoristas habilitados.</translation>
    </message>
    <message>
        <source>Electricity</source>
        <translation>Electricidad</translation>
    </message>
    <message>
        <source>Connection by a licensed person, after the circuit is charged. Lock off and test dead before any cover comes off.</source>
        <translation>Conexión por electricista autorizado, después de cargar el circuito. Corte, bloquee y compruebe la ausencia de tensión antes de quitar una tapa.</translation>
    </message>
    <message>
        <source>Hot water and hot metal</source>
        <translation>Agua y metal calientes</translation>
    </message>
    <message>
        <source>Water over 60 °C scalds in seconds: mixing valve before use. The discharge tube burns; a plate in the sun too.</source>
        <translation>El agua a más de 60 °C escalda en segundos: válvula mezcladora antes del uso. El tubo de descarga quema; un captador al sol también.</translation>
    </message>
    <message>
        <source>Drinking water</source>
        <translation>Agua potable</translation>
    </message>
    <message>
        <source>Clean tools and parts. Legionella: hold the store hot as the local rule asks, flush what stood for days.</source>
        <translation>Herramienta y piezas limpias. Legionela: mantenga el acumulador tan caliente como pida la norma local, vacíe lo que estuvo días parado.</translation>
    </message>
    <message>
        <source>, %1 of ballast a point</source>
        <translation>, %1 de lastre por punto</translation>
    </message>
    <message>
        <source>, %1 screws %2 × %3 mm in the timber a point</source>
        <translation>, %1 tornillos de %2 × %3 mm en la madera por punto</translation>
    </message>
    <message>
        <source>; hole %1</source>
        <translation>; taladro %1</translation>
    </message>
    <message>
        <source>; torque %1</source>
        <translation>; par %1</translation>
    </message>
    <message>
        <source>Fixing points, in millimetres along the surface from the edges named</source>
        <translation>Puntos de fijación, en milímetros sobre la superficie desde los bordes indicados</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>N.º</translation>
    </message>
    <message>
        <source>Across, from edge</source>
        <translation>A lo ancho, desde borde</translation>
    </message>
    <message>
        <source>Up or down, from edge</source>
        <translation>A lo alto, desde borde</translation>
    </message>
    <message>
        <source>On rafter</source>
        <translation>En cabio</translation>
    </message>
    <message>
        <source>Pull, shear kN</source>
        <translation>Tiro, corte kN</translation>
    </message>
    <message>
        <source>Hold used</source>
        <translation>Uso</translation>
    </message>
    <message>
        <source>; all on rafters</source>
        <translation>; todos sobre los cabios</translation>
    </message>
    <message>
        <source>◆ worst </source>
        <translation>◆ peor </translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>No fixing points are worked out for this surface.</source>
        <translation>No hay puntos de fijación calculados para esta superficie.</translation>
    </message>
    <message>
        <source>Fixing: </source>
        <translation>Fijación: </translation>
    </message>
    <message>
        <source>Hole: drill x depth, as the method's data ask; verify with its maker. </source>
        <translation>Taladro: broca × profundidad según los datos del método; confírmelo con su fabricante. </translation>
    </message>
    <message>
        <source>Hole: the method's data ask for none. </source>
        <translation>Taladro: los datos del método no piden ninguno. </translation>
    </message>
    <message>
        <source>Torque: not told in the method's data, ask its maker. </source>
        <translation>Par: no figura en los datos del método, pregunte a su fabricante. </translation>
    </message>
    <message>
        <source>Pull and shear are design values for one point, worst of wind, snow and weight; 'hold used' is their share of what the point holds. ◆ and bold: the worst point of each collector; ■: over what it holds. Dimensions were moved to the rafters as surveyed: check them on the place.</source>
        <translation>Tiro y corte son valores de cálculo de un punto, lo peor de viento, nieve y peso; «uso» es su parte de lo que aguanta el punto. ◆ y negrita: el peor punto de cada captador; ■: más de lo que aguanta. Las cotas se llevaron a los cabios medidos: compruébelas en obra.</translation>
    </message>
    <message>
        <source>foot of leg %1</source>
        <translation>pie del tramo %1</translation>
    </message>
    <message>
        <source>leg %1 at %2</source>
        <translation>tramo %1 a %2</translation>
    </message>
    <message>
        <source>Cut list of the run</source>
        <translation>Lista de corte del trazado</translation>
    </message>
    <message>
        <source>Leg</source>
        <translation>Tramo</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>Rise</source>
        <translation>Subida</translation>
    </message>
    <message>
        <source>Ends at</source>
        <translation>Acaba en</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Cortado</translation>
    </message>
    <message>
        <source>Liquid tube</source>
        <translation>Tubo de líquido</translation>
    </message>
    <message>
        <source>%1, coil of %2</source>
        <translation>%1, rollo de %2</translation>
    </message>
    <message>
        <source>Suction tube</source>
        <translation>Tubo de aspiración</translation>
    </message>
    <message>
        <source>Insulation</source>
        <translation>Aislamiento</translation>
    </message>
    <message>
        <source>%1 on the suction tube, %2 on the small tube</source>
        <translation>%1 en el tubo de aspiración, %2 en el fino</translation>
    </message>
    <message>
        <source>Allow besides</source>
        <translation>Añadir además</translation>
    </message>
    <message>
        <source>%1 at the collector, %2 at the block, %3 for each oil trap</source>
        <translation>%1 en el captador, %2 en el bloque, %3 por cada sifón de aceite</translation>
    </message>
    <message>
        <source>Oil traps</source>
        <translation>Sifones de aceite</translation>
    </message>
    <message>
        <source>Total charge</source>
        <translation>Carga total</translation>
    </message>
    <message>
        <source>%1, as carbon dioxide %2</source>
        <translation>%1, equivalente a %2 de CO₂</translation>
    </message>
    <message>
        <source>Cylinder's place</source>
        <translation>Sitio del acumulador</translation>
    </message>
    <message>
        <source>No place is chosen.</source>
        <translation>No hay sitio elegido.</translation>
    </message>
    <message>
        <source>Service</source>
        <translation>Servicio</translation>
    </message>
    <message>
        <source>As surveyed</source>
        <translation>Según visita</translation>
    </message>
    <message>
        <source>Needed</source>
        <translation>Necesario</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Visto</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Sitio</translation>
    </message>
    <message>
        <source>%1 wide, %2 high</source>
        <translation>%1 de ancho, %2 de alto</translation>
    </message>
    <message>
        <source>Headroom</source>
        <translation>Altura libre</translation>
    </message>
    <message>
        <source>cylinder and room to draw the anode</source>
        <translation>acumulador y espacio para sacar el ánodo</translation>
    </message>
    <message>
        <source>Free width × depth</source>
        <translation>Libre ancho × fondo</translation>
    </message>
    <message>
        <source>Floor carries</source>
        <translation>El suelo aguanta</translation>
    </message>
    <message>
        <source>, checked</source>
        <translation>, comprobado</translation>
    </message>
    <message>
        <source>, assumed: check</source>
        <translation>, supuesto: comprobar</translation>
    </message>
    <message>
        <source>kg filled</source>
        <translation>kg lleno</translation>
    </message>
    <message>
        <source>Own supply circuit</source>
        <translation>Circuito propio</translation>
    </message>
    <message>
        <source>breaker %1, RCD %2; cable %3, %4, drop %5 %</source>
        <translation>magnetotérmico %1, diferencial %2; cable %3, %4, caída %5 %</translation>
    </message>
    <message>
        <source>Earth</source>
        <translation>Tierra</translation>
    </message>
    <message>
        <source>as the wiring rules ask</source>
        <translation>como pide el reglamento</translation>
    </message>
    <message>
        <source>Cold water</source>
        <translation>Agua fría</translation>
    </message>
    <message>
        <source>Hot water</source>
        <translation>Agua caliente</translation>
    </message>
    <message>
        <source>through the mixing valve</source>
        <translation>por la válvula mezcladora</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Desagüe</translation>
    </message>
    <message>
        <source>open tundish for valve and condensate</source>
        <translation>embudo abierto para válvula y condensados</translation>
    </message>
    <message>
        <source>Recirculation</source>
        <translation>Recirculación</translation>
    </message>
    <message>
        <source>port there</source>
        <translation>tiene conexión</translation>
    </message>
    <message>
        <source>no port</source>
        <translation>sin conexión</translation>
    </message>
    <message>
        <source>Ventilated</source>
        <translation>Ventilado</translation>
    </message>
    <message>
        <source>Ignition source</source>
        <translation>Foco de ignición</translation>
    </message>
    <message>
        <source>none seen</source>
        <translation>ninguno visto</translation>
    </message>
    <message>
        <source>Hazards and access</source>
        <translation>Peligros y acceso</translation>
    </message>
    <message>
        <source>Read page 1 and walk the site with it. Agree with the client who stays clear of where, and for how long.</source>
        <translation>Lea la página 1 y recorra la obra con ella. Acuerde con el cliente quién se aparta de dónde y cuánto tiempo.</translation>
    </message>
    <message>
        <source>What the survey did not show is cheapest to find before tools are out.</source>
        <translation>Lo que la visita no mostró sale más barato antes de sacar la herramienta.</translation>
    </message>
    <message>
        <source>Put up the scaffold or edge protection named on page 1 before anybody works on the surface.</source>
        <translation>Monte el andamio o la protección de borde de la página 1 antes de que nadie trabaje en la superficie.</translation>
    </message>
    <message>
        <source>A fall is the worst thing that can happen on this job. A harness does not replace an edge that holds.</source>
        <translation>Una caída es lo peor que puede pasar aquí. Un arnés no sustituye a un borde que sujeta.</translation>
    </message>
    <message>
        <source>Secure the roof: edge protection or scaffold, roof ladder, nobody below. Not in wind, rain, frost or on moss.</source>
        <translation>Asegure el tejado: protección de borde o andamio, escalera de tejado, nadie debajo. No con viento, lluvia, helada ni sobre musgo.</translation>
    </message>
    <message>
        <source>A plate catches wind like a sail: two persons carry it, none throws or lowers it free.</source>
        <translation>Un captador coge el viento como una vela: lo llevan dos, nadie lo lanza ni lo descuelga suelto.</translation>
    </message>
    <message>
        <source>Set ladder or tower on firm ground, tied; keep the foot of the wall clear while the plate goes up.</source>
        <translation>Ponga escalera o torre sobre suelo firme, atada; deje libre el pie del muro mientras sube el captador.</translation>
    </message>
    <message>
        <source>A ladder that slips takes the plate along.</source>
        <translation>Una escalera que resbala se lleva el captador.</translation>
    </message>
    <message>
        <source>Look for overhead lines within reach of ladder, plate and tube. Less than the local safe distance: stop and ask the network operator.</source>
        <translation>Busque líneas aéreas al alcance de escalera, captador y tubo. Si hay menos de la distancia de seguridad local: pare y pregunte a la distribuidora.</translation>
    </message>
    <message>
        <source>A plate or a length of copper makes a good conductor in the wrong place.</source>
        <translation>Una chapa o una barra de cobre es buen conductor en mal sitio.</translation>
    </message>
    <message>
        <source>Keep flames, sparks and switches that are not sealed away from every place where refrigerant is opened; air the room; have a gas detector for {refrigerant} on, low down.</source>
        <translation>Aleje llamas, chispas e interruptores no estancos de todo punto donde se abra refrigerante; ventile el local; detector de {refrigerant} encendido, a ras de suelo.</translation>
    </message>
    <message>
        <source>{refrigerant} ({safety_class}) burns and is heavier than air: it gathers in pits and drains.</source>
        <translation>El {refrigerant} ({safety_class}) arde y pesa más que el aire: se acumula en fosos y desagües.</translation>
    </message>
    <message>
        <source>Check that the room's permanent opening of at least {opening} to the next room is there and free.</source>
        <translation>Compruebe que la abertura permanente del local, de al menos {opening}, al local vecino existe y está libre.</translation>
    </message>
    <message>
        <source>The charge is allowed in this room only with it.</source>
        <translation>Solo con ella se admite la carga en este local.</translation>
    </message>
    <message>
        <source>Check the place</source>
        <translation>Comprobar el sitio</translation>
    </message>
    <message>
        <source>Compare the drawing with the surface: edges, openings, obstacles and covering. Measure two dimensions of the set-out table back.</source>
        <translation>Compare el plano con la superficie: bordes, huecos, obstáculos y cubierta. Vuelva a medir dos cotas de la tabla de replanteo.</translation>
    </message>
    <message>
        <source>If one is out by more than 30 mm, stop and replan: points would miss what holds them.</source>
        <translation>Si una difiere más de 30 mm, pare y replantee: los puntos no darían en lo que los sujeta.</translation>
    </message>
    <message>
        <source>Check with compass and inclinometer where the plate looks to and how it is tilted, as on page 1. Never lay it flat.</source>
        <translation>Compruebe con brújula e inclinómetro adónde mira el captador y su inclinación, como en la página 1. Nunca lo deje tumbado.</translation>
    </message>
    <message>
        <source>Flat, rain, frost and leaves stay on it and oil does not come back. Look also for shade that grew since the survey.</source>
        <translation>Tumbado se le quedan lluvia, escarcha y hojas, y el aceite no vuelve. Mire también la sombra que haya crecido desde la visita.</translation>
    </message>
    <message>
        <source>Find the rafters or studs and check width and soundness at two points (test hole or from inside).</source>
        <translation>Busque cabios o montantes y compruebe ancho y estado en dos puntos (cata o desde dentro).</translation>
    </message>
    <message>
        <source>The loads in the table assume sound timber of the class in the plan. Rot, splits or trussed members with nail plates: stop.</source>
        <translation>Las cargas de la tabla suponen madera sana de la clase prevista. Pudrición, grietas o cerchas con placas clavadas: pare.</translation>
    </message>
    <message>
        <source>Tap the wall and drill a test hole beside the first point: solid, hollow or aerated, how thick render and insulation are.</source>
        <translation>Golpee el muro y haga un taladro de prueba junto al primer punto: macizo, hueco o celular, y qué grueso tienen revoco y aislamiento.</translation>
    </message>
    <message>
        <source>The loads in the table hold for the masonry in the plan. In another wall this anchor holds less: stop and ask its maker.</source>
        <translation>Las cargas de la tabla valen para la fábrica prevista. En otro muro este anclaje aguanta menos: pare y pregunte a su fabricante.</translation>
    </message>
    <message>
        <source>Look whether the seams are sound, closed and of the shape the clamp is made for, and where the sheets are held fast.</source>
        <translation>Mire si las juntas alzadas están sanas, cerradas y de la forma para la que es la grapa, y dónde están fijas las bandejas.</translation>
    </message>
    <message>
        <source>The clamp holds the seam, and only the clips below hold the seam on the roof.</source>
        <translation>La grapa sujeta la junta, y solo las patillas de debajo sujetan la junta al tejado.</translation>
    </message>
    <message>
        <source>Check the roof's covering and what carries it: no blisters, no ponds, drains free; the load of plate, frame, ballast and snow agreed with whoever answers for the structure.</source>
        <translation>Compruebe la cubierta y lo que la sostiene: sin bolsas, sin charcos, desagües libres; la carga de captador, bastidor, lastre y nieve acordada con quien responde de la estructura.</translation>
    </message>
    <message>
        <source>Ballast on a weak deck or soft insulation sinks, ponds and leaks.</source>
        <translation>El lastre sobre forjado débil o aislamiento blando se hunde, encharca y acaba en gotera.</translation>
    </message>
    <message>
        <source>Check paving, slab or soil under the frame: firm, drained, no cable or pipe below the footings.</source>
        <translation>Compruebe pavimento, losa o terreno bajo el bastidor: firme, drenado, sin cables ni tubos bajo las zapatas.</translation>
    </message>
    <message>
        <source>A foot that sinks tilts the plate away from its level side.</source>
        <translation>Un pie que se hunde saca el captador de nivel.</translation>
    </message>
    <message>
        <source>Walk the run: the shortest way that the drawing allows, free of flues, hot pipes and places where nails will come.</source>
        <translation>Recorra el trazado: el más corto que permita el plano, lejos de humos, tubos calientes y sitios donde se vaya a clavar.</translation>
    </message>
    <message>
        <source>Every metre more costs heat and charge.</source>
        <translation>Cada metro de más cuesta calor y carga.</translation>
    </message>
    <message>
        <source>At the cylinder spot check headroom, free space, floor, supply, cold, hot, drain and earth against the list on this sheet.</source>
        <translation>En el sitio del acumulador compruebe altura, espacio, suelo, alimentación, fría, caliente, desagüe y tierra con la lista de esta hoja.</translation>
    </message>
    <message>
        <source>A filled cylinder weighs {filled_mass}: what the floor carries is measured or asked for, not guessed.</source>
        <translation>Un acumulador lleno pesa {filled_mass}: lo que aguanta el suelo se mide o se pregunta, no se supone.</translation>
    </message>
    <message>
        <source>Check where the recirculation comes back and that it can be shut.</source>
        <translation>Compruebe por dónde vuelve la recirculación y que se puede cortar.</translation>
    </message>
    <message>
        <source>It goes to its own port, not into the cold inlet.</source>
        <translation>Va a su propia conexión, no a la entrada fría.</translation>
    </message>
    <message>
        <source>Unpack and look over plate, block and cylinder; enter their numbers as '{serial_number}'. Leave all caps on. A plate that has lost its holding charge or has a dent in a channel goes back.</source>
        <translation>Desembale y revise captador, bloque y acumulador; anote sus números como «{serial_number}». Deje todos los tapones. Un captador sin su gas de protección o con un canal abollado se devuelve.</translation>
    </message>
    <message>
        <source>A leak found on the ground costs an hour, on the roof a day.</source>
        <translation>Una fuga hallada en el suelo cuesta una hora, en el tejado un día.</translation>
    </message>
    <message>
        <source>Mark, drill, sleeve and seal</source>
        <translation>Marcar, taladrar, poner casquillos y sellar</translation>
    </message>
    <message>
        <source>Mark and set the fixing points</source>
        <translation>Marcar y poner los puntos de fijación</translation>
    </message>
    <message>
        <source>Mark all {points} fixing points from the set-out table, from the two edges named. Check both diagonals of each plate's set of points: equal within 5 mm.</source>
        <translation>Marque los {points} puntos de fijación con la tabla de replanteo, desde los dos bordes indicados. Compruebe las dos diagonales de los puntos de cada captador: iguales a menos de 5 mm.</translation>
    </message>
    <message>
        <source>A plate forced onto a crooked frame is under strain for life.</source>
        <translation>Un captador forzado sobre un bastidor torcido trabaja así toda la vida.</translation>
    </message>
    <message>
        <source>Have the maker's sheet of '{method}' at hand; where it says otherwise than the steps here, it goes first.</source>
        <translation>Tenga a mano la hoja del fabricante de «{method}»; si dice otra cosa que estos pasos, manda ella.</translation>
    </message>
    <message>
        <source>Push up or lift the tiles at each point and lay them where they cannot slide.</source>
        <translation>Levante o suba las tejas en cada punto y déjelas donde no resbalen.</translation>
    </message>
    <message>
        <source>A tile that slides off kills whoever stands below.</source>
        <translation>Una teja que resbala mata al que está debajo.</translation>
    </message>
    <message>
        <source>Set each hook on the middle of its rafter; pack it until its arm passes over the tile below with air between, 5 mm or more.</source>
        <translation>Ponga cada gancho en el centro de su cabio y cálcelo hasta que el brazo pase sobre la teja de abajo con aire, 5 mm o más.</translation>
    </message>
    <message>
        <source>A hook that presses on the tile below breaks it under the first snow.</source>
        <translation>Un gancho que apoya en la teja de abajo la rompe con la primera nieve.</translation>
    </message>
    <message>
        <source>Set each hook flat on the middle of its rafter, its arm free of the covering below.</source>
        <translation>Ponga cada gancho plano en el centro de su cabio, con el brazo libre de la cubierta de abajo.</translation>
    </message>
    <message>
        <source>A hook that presses on the covering breaks it under the first snow.</source>
        <translation>Un gancho que apoya en la cubierta la rompe con la primera nieve.</translation>
    </message>
    <message>
        <source>Screw each point down: {screws} screws of {screw}, {grip} of thread in the timber, pre-drilled near ends. Where the timber splits set none: move along the rafter and note it on the drawing.</source>
        <translation>Atornille cada punto: {screws} tornillos de {screw}, {grip} de rosca en la madera, con pretaladro junto a los extremos. Donde la madera se abra no ponga ninguno: corra el punto por el cabio y anótelo en el plano.</translation>
    </message>
    <message>
        <source>Pull-out goes with the threaded length in sound wood, and is nothing in a split.</source>
        <translation>La extracción depende de la rosca en madera sana, y en una grieta no vale nada.</translation>
    </message>
    <message>
        <source>Grind a notch into the underside of the tile above, never its weather face, so that it lies flat again; on the ground or with goggles and mask.</source>
        <translation>Rebaje con la radial la teja de arriba por debajo, nunca por la cara vista, hasta que asiente plana; en el suelo o con gafas y mascarilla.</translation>
    </message>
    <message>
        <source>A tile that stands up lets driven rain and snow in and lifts in wind.</source>
        <translation>Una teja levantada deja entrar lluvia y nieve y el viento la arranca.</translation>
    </message>
    <message>
        <source>Drill at the crown or another high part of the covering, never in the trough where water runs, at a right angle{drill_words}. Masonry and slate without hammer.</source>
        <translation>Taladre en la cresta u otra parte alta de la cubierta, nunca en el canal por donde corre el agua, en ángulo recto{drill_words}. Teja y pizarra sin percusión.</translation>
    </message>
    <message>
        <source>Every hole in the water's way leaks some day.</source>
        <translation>Todo agujero en el camino del agua acaba goteando.</translation>
    </message>
    <message>
        <source>Clear the dust from hole and covering, set the sleeve through covering and underlay, its lower seal tight on the underlay.</source>
        <translation>Quite el polvo del agujero y de la cubierta, meta el casquillo por cubierta y lámina, con su junta inferior bien asentada en la lámina.</translation>
    </message>
    <message>
        <source>Without a sleeve the screw crushes tile and underlay, and water that passes the tile goes on inwards.</source>
        <translation>Sin casquillo el tornillo aplasta teja y lámina, y el agua que pasa la teja sigue hacia dentro.</translation>
    </message>
    <message>
        <source>Drive the double-ended screw into the middle of the timber to its mark: {grip} of thread in the wood. Set the sealing washer and tighten until the seal swells evenly, no further{torque_words}.</source>
        <translation>Meta el espárrago en el centro de la madera hasta su marca: {grip} de rosca en la madera. Ponga la arandela de estanqueidad y apriete hasta que la junta asome por igual, no más{torque_words}.</translation>
    </message>
    <message>
        <source>Too loose leaks, too tight squeezes the seal out and it leaks next winter.</source>
        <translation>Flojo gotea; demasiado apretado expulsa la junta y gotea el próximo invierno.</translation>
    </message>
    <message>
        <source>Clamp to the seam without drilling or bending it; clamp and sheet of metals that suit each other{torque_words}.</source>
        <translation>Sujete la grapa a la junta alzada sin taladrarla ni doblarla; grapa y chapa de metales compatibles{torque_words}.</translation>
    </message>
    <message>
        <source>A hole in the seam leaks and ends the roof's warranty; copper above zinc or aluminium eats it.</source>
        <translation>Un agujero en la junta gotea y acaba con la garantía del tejado; el cobre por encima de cinc o aluminio se lo come.</translation>
    </message>
    <message>
        <source>One row of clamps fixed, the others free to slide with the sheet, as the roof's maker asks.</source>
        <translation>Una fila de grapas fija, las demás libres de deslizar con la chapa, como pide el fabricante del tejado.</translation>
    </message>
    <message>
        <source>A metal roof grows by a millimetre a metre between night and noon and shears what holds it fast.</source>
        <translation>Un tejado de chapa crece un milímetro por metro entre la noche y el mediodía y corta lo que lo retiene.</translation>
    </message>
    <message>
        <source>Drill at a right angle{drill_words}, away from joints and edges; hollow blocks without hammer.</source>
        <translation>Taladre en ángulo recto{drill_words}, lejos de juntas y bordes; ladrillo hueco sin percusión.</translation>
    </message>
    <message>
        <source>A blow breaks the webs that the anchor is to hold in. A hole too deep leaves mortar without backing.</source>
        <translation>Un golpe rompe los tabiquillos en que agarra el anclaje. Un agujero demasiado hondo deja el mortero sin fondo.</translation>
    </message>
    <message>
        <source>Clean each hole: blow out, brush, blow out again, until no dust comes.</source>
        <translation>Limpie cada agujero: sople, cepille, vuelva a soplar, hasta que no salga polvo.</translation>
    </message>
    <message>
        <source>On dust no anchor and no mortar holds half of its load.</source>
        <translation>Sobre polvo ningún anclaje ni mortero aguanta la mitad de su carga.</translation>
    </message>
    <message>
        <source>Set sleeve or anchor to its mark, with mortar fill from the bottom; wait its setting time by the wall's temperature, then tighten with a torque wrench{torque_words}.</source>
        <translation>Meta tamiz o anclaje hasta su marca, con el mortero desde el fondo; espere el fraguado según la temperatura del muro y apriete con llave dinamométrica{torque_words}.</translation>
    </message>
    <message>
        <source>Turned too early the bond is broken and nobody sees it.</source>
        <translation>Si se gira antes de tiempo se rompe la adherencia y nadie lo ve.</translation>
    </message>
    <message>
        <source>The load goes through the render into the masonry: bracket on a firm ground, render cut round it, joint sealed. Through insulation only with a spacer made for it.</source>
        <translation>La carga pasa por el revoco a la fábrica: escuadra sobre base firme, revoco recortado alrededor, junta sellada. A través de aislamiento solo con el separador hecho para ello.</translation>
    </message>
    <message>
        <source>Tightened onto insulation the bracket works loose; open render draws water behind it.</source>
        <translation>Apretada sobre aislamiento la escuadra se afloja; el revoco abierto mete agua detrás.</translation>
    </message>
    <message>
        <source>Seal round each bracket's bolt with lasting elastic sealant, open below.</source>
        <translation>Selle alrededor del perno de cada escuadra con masilla elástica duradera, abierto por abajo.</translation>
    </message>
    <message>
        <source>Water in the hole freezes and bursts the brick; open below it can leave.</source>
        <translation>El agua en el agujero se hiela y revienta el ladrillo; abierta por abajo puede salir.</translation>
    </message>
    <message>
        <source>Set the frame out square, cast a footing under each foot below frost depth, and let the concrete harden before anything is tightened.</source>
        <translation>Replantee el bastidor a escuadra, hormigone una zapata bajo cada pie por debajo de la helada y deje fraguar antes de apretar nada.</translation>
    </message>
    <message>
        <source>Soil that freezes lifts what stands in it.</source>
        <translation>El terreno que se hiela levanta lo que está en él.</translation>
    </message>
    <message>
        <source>Anchor each foot into footing or slab{drill_words}, hole blown out; tighten with a torque wrench{torque_words}.</source>
        <translation>Ancle cada pie a zapata o losa{drill_words}, agujero soplado; apriete con llave dinamométrica{torque_words}.</translation>
    </message>
    <message>
        <source>Paving alone holds no wind.</source>
        <translation>Un pavimento solo no sujeta contra el viento.</translation>
    </message>
    <message>
        <source>Where an anchor goes through a membrane, have its maker's roofer flash and seal the foot before the frame comes on.</source>
        <translation>Donde un anclaje atraviese una lámina, que el impermeabilizador remate y selle el pie antes de poner el bastidor.</translation>
    </message>
    <message>
        <source>Below a frame nobody finds the leak again.</source>
        <translation>Bajo un bastidor nadie encuentra ya la gotera.</translation>
    </message>
    <message>
        <source>Sweep the covering, lay the protective mats under every foot and tray. Pierce nothing.</source>
        <translation>Barra la cubierta y ponga las mantas protectoras bajo cada pie y bandeja. No perfore nada.</translation>
    </message>
    <message>
        <source>A stone under a foot is a hole after one winter.</source>
        <translation>Una piedra bajo un pie es un agujero tras un invierno.</translation>
    </message>
    <message>
        <source>Set the frame out square on the mats and lay the ballast: {ballast} at each of the {points} points, weighed or counted, locked against sliding.</source>
        <translation>Replantee el bastidor a escuadra sobre las mantas y ponga el lastre: {ballast} en cada uno de los {points} puntos, pesado o contado, sujeto para que no resbale.</translation>
    </message>
    <message>
        <source>Wind takes the plate at the point with too little. Never borrow from one point for another.</source>
        <translation>El viento se lleva el captador por el punto que tiene poco. Nunca quite de un punto para otro.</translation>
    </message>
    <message>
        <source>Keep the ways of the water free: no mat, tray or slab in front of a drain or across the fall.</source>
        <translation>Deje libre el camino del agua: ninguna manta, bandeja o losa delante de un sumidero ni atravesada a la pendiente.</translation>
    </message>
    <message>
        <source>A pond weighs more than the plate and finds every seam.</source>
        <translation>Un charco pesa más que el captador y encuentra cada junta.</translation>
    </message>
    <message>
        <source>Drill passages for the run with a slight fall to the outside, deburr, set a sleeve, and keep tube and insulation free in it.</source>
        <translation>Taladre los pasos del trazado con ligera caída hacia fuera, desbarbe, ponga casquillo y deje tubo y aislamiento libres dentro.</translation>
    </message>
    <message>
        <source>Copper rubbing on masonry wears through; water follows a hole that falls inwards.</source>
        <translation>El cobre que roza la fábrica se agujerea; el agua sigue un agujero que cae hacia dentro.</translation>
    </message>
    <message>
        <source>Seal each point and passage to the covering's own rules: underlay first, then flashing or sealing collar. Sealant alone is not a seal.</source>
        <translation>Selle cada punto y paso según las reglas de la cubierta: primero la lámina, luego remate o manguito. La masilla sola no sella.</translation>
    </message>
    <message>
        <source>The client's roof must be as tight as before. Take a photograph of each before it is covered.</source>
        <translation>El tejado del cliente ha de quedar tan estanco como estaba. Fotografíe cada uno antes de taparlo.</translation>
    </message>
    <message>
        <source>Seal each passage: sleeve to wall or roof outside, tube to sleeve with a soft collar.</source>
        <translation>Selle cada paso: casquillo a muro o tejado por fuera, tubo a casquillo con collarín blando.</translation>
    </message>
    <message>
        <source>What is not sealed outside runs down inside.</source>
        <translation>Lo que no está sellado por fuera escurre por dentro.</translation>
    </message>
    <message>
        <source>Set the profiles, seal their feet where they stand on the covering, tighten crosswise, check with straight edge and spirit level.</source>
        <translation>Ponga los perfiles, selle sus pies donde apoyen en la cubierta, apriete en cruz, compruebe con regla y nivel.</translation>
    </message>
    <message>
        <source>What is crooked now pulls on the plate's channels later.</source>
        <translation>Lo que ahora está torcido tira luego de los canales del captador.</translation>
    </message>
    <message>
        <source>Set the profiles on the frame, tighten crosswise, check with straight edge and spirit level.</source>
        <translation>Ponga los perfiles en el bastidor, apriete en cruz, compruebe con regla y nivel.</translation>
    </message>
    <message>
        <source>Fixing points and seals</source>
        <translation>Puntos de fijación y sellados</translation>
    </message>
    <message>
        <source>Every point numbered in the table is set as shown, sealed and photographed.</source>
        <translation>Cada punto numerado en la tabla está puesto como se muestra, sellado y fotografiado.</translation>
    </message>
    <message>
        <source>Hang the collector</source>
        <translation>Colgar el captador</translation>
    </message>
    <message>
        <source>Hang the plate with its {level_side} level (spirit level on the lower edge), connections down and on the LEFT seen face-on.</source>
        <translation>Cuelgue el captador con el {level_side} a nivel (nivel sobre el borde inferior), conexiones abajo y a la IZQUIERDA visto de frente.</translation>
    </message>
    <message>
        <source>Oil comes back only from the low side. Upside down or tilted the plate floods and the compressor wears.</source>
        <translation>El aceite solo vuelve por el lado bajo. Boca arriba o torcido el captador se inunda y el compresor se desgasta.</translation>
    </message>
    <message>
        <source>Hang the plate with its {level_side} level (spirit level on the lower edge), connections down and on the RIGHT seen face-on.</source>
        <translation>Cuelgue el captador con el {level_side} a nivel (nivel sobre el borde inferior), conexiones abajo y a la DERECHA visto de frente.</translation>
    </message>
    <message>
        <source>Keep the order of the plates as drawn and the clearances between them.</source>
        <translation>Respete el orden de los captadores del plano y las distancias entre ellos.</translation>
    </message>
    <message>
        <source>Air has to pass all round.</source>
        <translation>El aire ha de pasar por todo alrededor.</translation>
    </message>
    <message>
        <source>Hold each connection with a second spanner when anything is turned on it. Do not step on the plate or lean a ladder on it.</source>
        <translation>Sujete cada conexión con una segunda llave cuando gire algo en ella. No pise el captador ni apoye una escalera en él.</translation>
    </message>
    <message>
        <source>The channels are thin sheet: a twist of the stub tears them where nobody can reach.</source>
        <translation>Los canales son chapa fina: una torsión del racor los rasga donde nadie llega.</translation>
    </message>
    <message>
        <source>Refrigerant lines</source>
        <translation>Líneas frigoríficas</translation>
    </message>
    <message>
        <source>Uncoil both tubes, dehydrated and capped as delivered, by rolling along the floor, never by pulling the coil open. Slide the insulation on before anything is joined: {insulation}, joints glued, no gaps.</source>
        <translation>Desenrolle los dos tubos, deshidratados y tapados como vienen, rodándolos por el suelo, nunca tirando del rollo. Meta el aislamiento antes de unir nada: {insulation}, juntas pegadas, sin huecos.</translation>
    </message>
    <message>
        <source>A flattened tube starves the plate; a gap in the insulation drips on the ceiling below.</source>
        <translation>Un tubo aplastado deja al captador sin refrigerante; un hueco en el aislamiento gotea en el techo de abajo.</translation>
    </message>
    <message>
        <source>Lay the run as drawn, bends with a bender, clips every 1.0 m level and 1.5 m upright. Caps stay on and come off only when the joint is made.</source>
        <translation>Tienda el trazado como en el plano, curvas con curvadora, abrazaderas cada 1,0 m en horizontal y 1,5 m en vertical. Los tapones se quedan y solo se quitan al hacer la unión.</translation>
    </message>
    <message>
        <source>Damp and dirt that get in now come back as a blocked valve or a burnt motor.</source>
        <translation>La humedad y suciedad que entran hoy vuelven como válvula atascada o motor quemado.</translation>
    </message>
    <message>
        <source>Let the suction line fall evenly to the block, without sags that hold oil.</source>
        <translation>Lleve la línea de aspiración con caída uniforme al bloque, sin bolsas que retengan aceite.</translation>
    </message>
    <message>
        <source>Oil that lies in a sag is missing in the compressor.</source>
        <translation>El aceite que se queda en una bolsa le falta al compresor.</translation>
    </message>
    <message>
        <source>Bend the oil traps into the suction line where the cut list names them; elsewhere no sags.</source>
        <translation>Haga los sifones de aceite en la línea de aspiración donde los nombra la lista de corte; en lo demás, sin bolsas.</translation>
    </message>
    <message>
        <source>The gas lifts oil in short slugs from a trap; a sag elsewhere only catches it.</source>
        <translation>El gas levanta el aceite a golpes cortos desde un sifón; una bolsa en otra parte solo lo retiene.</translation>
    </message>
    <message>
        <source>The plate hangs below the block: lay the suction line with an oil trap at its foot and no other sags.</source>
        <translation>El captador cuelga por debajo del bloque: tienda la línea de aspiración con un sifón de aceite al pie y sin otras bolsas.</translation>
    </message>
    <message>
        <source>Oil has to be lifted by the gas in short slugs; a sag higher up catches it.</source>
        <translation>El gas ha de levantar el aceite a golpes cortos; una bolsa más arriba lo retiene.</translation>
    </message>
    <message>
        <source>The plates stand side by side in the circuit: branch both lines so that each plate has the same length of tube, branches level, none above the other.</source>
        <translation>Los captadores van en paralelo en el circuito: ramifique las dos líneas de modo que cada captador tenga igual longitud de tubo, derivaciones a nivel, ninguna sobre otra.</translation>
    </message>
    <message>
        <source>The plate with the shorter way takes the refrigerant, the other stays dry and warm.</source>
        <translation>El captador con el camino más corto se lleva el refrigerante, el otro queda seco y caliente.</translation>
    </message>
    <message>
        <source>The plates stand one after the other in the circuit: liquid into the first, its suction into the liquid connection of the next, suction line from the last.</source>
        <translation>Los captadores van en serie en el circuito: líquido al primero, su aspiración a la conexión de líquido del siguiente, línea de aspiración desde el último.</translation>
    </message>
    <message>
        <source>Crossed, one plate is passed by, and the test of tightness does not show it.</source>
        <translation>Si se cruzan, un captador queda puenteado y la prueba de estanqueidad no lo muestra.</translation>
    </message>
    <message>
        <source>The expansion device sits at the collector: set it upright as its arrow says, bulb clamped on the suction tube and insulated, wet cloth round it where heat is used.</source>
        <translation>La válvula de expansión está en el captador: móntela vertical según su flecha, bulbo sujeto al tubo de aspiración y aislado, trapo mojado alrededor donde se suelde.</translation>
    </message>
    <message>
        <source>A bulb in the sun or the wind reads the weather instead of the tube.</source>
        <translation>Un bulbo al sol o al viento mide el tiempo y no el tubo.</translation>
    </message>
    <message>
        <source>Cut to length with a tube cutter, deburr with the tube's end held down, wipe clean.</source>
        <translation>Corte a medida con cortatubos, desbarbe con la boca del tubo hacia abajo, limpie.</translation>
    </message>
    <message>
        <source>Swarf ends in the expansion valve.</source>
        <translation>La viruta acaba en la válvula de expansión.</translation>
    </message>
    <message>
        <source>Slide the nut on, then flare. Look at the flare: even all round, shiny, no crack, no burr.</source>
        <translation>Meta la tuerca y luego abocarde. Mire el abocardado: igual todo alrededor, brillante, sin grieta ni rebaba.</translation>
    </message>
    <message>
        <source>A nut forgotten means cutting again; a cracked flare holds for the test and leaks in winter.</source>
        <translation>Tuerca olvidada es volver a cortar; un abocardado agrietado aguanta la prueba y fuga en invierno.</translation>
    </message>
    <message>
        <source>Oil the flare's back with refrigeration oil, turn the nut on by hand over all its thread, then tighten with torque wrench and second spanner: liquid {liquid_od} {torque_liquid}, suction {suction_od} {torque_suction}. Verify with the fitting's maker.</source>
        <translation>Ponga aceite frigorífico en el dorso del abocardado, rosque la tuerca a mano todo su recorrido y apriete con llave dinamométrica y contrallave: líquido {liquid_od} {torque_liquid}, aspiración {suction_od} {torque_suction}. Confírmelo con el fabricante del racor.</translation>
    </message>
    <message>
        <source>Too loose leaks at once, too tight cracks and leaks later. By feel is neither.</source>
        <translation>Flojo fuga enseguida; demasiado apretado se agrieta y fuga después. A ojo no es ni lo uno ni lo otro.</translation>
    </message>
    <message>
        <source>Braze what is not flared with dry nitrogen flowing through the tube, fire watch and extinguisher at hand, flame kept off seals and insulation.</source>
        <translation>Suelde lo que no va abocardado con nitrógeno seco pasando por el tubo, vigilante y extintor a mano, llama lejos de juntas y aislamiento.</translation>
    </message>
    <message>
        <source>Without nitrogen the tube scales inside and the scale travels to the valve.</source>
        <translation>Sin nitrógeno el tubo hace cascarilla por dentro y la cascarilla viaja a la válvula.</translation>
    </message>
    <message>
        <source>Heat pump and cylinder</source>
        <translation>Bomba de calor y acumulador</translation>
    </message>
    <message>
        <source>Stand the cylinder at its spot, plumb, on its feet, with room to draw anode and heater.</source>
        <translation>Ponga el acumulador en su sitio, a plomo, sobre sus pies, con espacio para sacar ánodo y resistencia.</translation>
    </message>
    <message>
        <source>Once it is full nobody moves it.</source>
        <translation>Una vez lleno no lo mueve nadie.</translation>
    </message>
    <message>
        <source>Check the anode: fitted, wired where it has a wire, tight.</source>
        <translation>Compruebe el ánodo: puesto, conectado si lleva cable, apretado.</translation>
    </message>
    <message>
        <source>Transport loosens it.</source>
        <translation>El transporte lo afloja.</translation>
    </message>
    <message>
        <source>Look at condenser, flange and seal seat: clean, dry, no scratch; the seal new, in its groove, without a twist.</source>
        <translation>Mire condensador, brida y asiento de la junta: limpios, secos, sin rayas; la junta nueva, en su ranura, sin torcer.</translation>
    </message>
    <message>
        <source>A reused or twisted seal weeps behind the insulation for years.</source>
        <translation>Una junta usada o torcida rezuma años detrás del aislamiento.</translation>
    </message>
    <message>
        <source>Lower the condenser in straight, without letting it strike or lean on the wall; it must touch no other metal inside.</source>
        <translation>Baje el condensador recto, sin que golpee ni se apoye en la pared; no ha de tocar ningún otro metal dentro.</translation>
    </message>
    <message>
        <source>Metal on metal in drinking water is a battery: the softer one is eaten through.</source>
        <translation>Metal con metal en agua potable es una pila: se come al menos noble.</translation>
    </message>
    <message>
        <source>Before water comes in, measure with a continuity meter between condenser and cylinder wall: no contact. Enter it as '{wall_contact}'. With contact take it out and set it again.</source>
        <translation>Antes de que entre agua, mida con el comprobador de continuidad entre condensador y pared del acumulador: sin contacto. Anótelo como «{wall_contact}». Si hay contacto, sáquelo y vuelva a ponerlo.</translation>
    </message>
    <message>
        <source>Once the cylinder is full the meter reads the water, and the fault stays until it leaks.</source>
        <translation>Con el acumulador lleno el aparato mide el agua, y el fallo se queda hasta que pierde.</translation>
    </message>
    <message>
        <source>Tighten the flange's screws crosswise: opposite screws in turn, three rounds (hand-tight, half, full), to the cylinder maker's torque; go round once more after the first heating.</source>
        <translation>Apriete los tornillos de la brida en cruz: los opuestos por turno, tres vueltas (a mano, a medias, del todo), al par del fabricante del acumulador; repase tras el primer calentamiento.</translation>
    </message>
    <message>
        <source>One side first tips the flange and pinches the seal.</source>
        <translation>Un lado primero ladea la brida y pellizca la junta.</translation>
    </message>
    <message>
        <source>Check that the wrapped condenser sits tight on the shell with its paste or band unbroken; do not pull on its tubes.</source>
        <translation>Compruebe que el condensador envolvente asienta bien en la cuba con su pasta o cinta entera; no tire de sus tubos.</translation>
    </message>
    <message>
        <source>Air between coil and shell costs heat all its life.</source>
        <translation>El aire entre serpentín y cuba cuesta calor toda la vida.</translation>
    </message>
    <message>
        <source>Condenser and cylinder</source>
        <translation>Condensador y acumulador</translation>
    </message>
    <message>
        <source>No contact between condenser and cylinder wall, flange tightened in three rounds, anode in place.</source>
        <translation>Sin contacto entre condensador y pared del acumulador, brida apretada en tres vueltas, ánodo puesto.</translation>
    </message>
    <message>
        <source>Water side</source>
        <translation>Lado del agua</translation>
    </message>
    <message>
        <source>Fit in the direction of flow: stop valve, reducing valve, safety group with check valve and safety valve {safety_valve}, expansion vessel pre-charged to {precharge}, open tundish to the drain. Reducing valve and safety group always. No stop valve between safety valve and cylinder.</source>
        <translation>Monte en el sentido del agua: llave de corte, válvula reductora, grupo de seguridad con antirretorno y válvula de seguridad {safety_valve}, vaso de expansión con precarga de {precharge}, embudo abierto al desagüe. Reductora y grupo de seguridad siempre. Ninguna llave entre válvula de seguridad y acumulador.</translation>
    </message>
    <message>
        <source>Water grows when heated. With its way out blocked the cylinder is a pressure vessel without a valve.</source>
        <translation>El agua crece al calentarse. Con la salida cerrada, el acumulador es un recipiente a presión sin válvula.</translation>
    </message>
    <message>
        <source>Fit the thermostatic mixing valve at the hot outlet and set it to the wanted temperature at the nearest tap.</source>
        <translation>Monte la válvula mezcladora termostática en la salida caliente y ajústela a la temperatura deseada en el grifo más cercano.</translation>
    </message>
    <message>
        <source>Scalds happen in seconds above 60 °C.</source>
        <translation>Por encima de 60 °C uno se escalda en segundos.</translation>
    </message>
    <message>
        <source>Connect the recirculation to its own port with its own check valve, pump and timer; balance it so that the return stays hot.</source>
        <translation>Conecte la recirculación a su propia toma con su antirretorno, bomba y temporizador; equilíbrela para que el retorno siga caliente.</translation>
    </message>
    <message>
        <source>Without a check valve cold water runs backwards to the tap.</source>
        <translation>Sin antirretorno el agua fría corre al revés hasta el grifo.</translation>
    </message>
    <message>
        <source>Flush, then fill through the cold inlet with the farthest hot tap open. Close the tap when water comes without air. Look at every joint under pressure; vent again next day. Enter '{cold_pressure}'.</source>
        <translation>Enjuague y llene por la entrada fría con el grifo caliente más lejano abierto. Cierre el grifo cuando salga agua sin aire. Mire cada unión con presión; vuelva a purgar al día siguiente. Anote «{cold_pressure}».</translation>
    </message>
    <message>
        <source>A heater or condenser in air overheats: never power up before water runs from the tap.</source>
        <translation>Una resistencia o un condensador en aire se quema: nunca dé tensión antes de que salga agua por el grifo.</translation>
    </message>
    <message>
        <source>Lift the safety valve by hand: it runs to the tundish and closes again.</source>
        <translation>Accione a mano la válvula de seguridad: vierte en el embudo y vuelve a cerrar.</translation>
    </message>
    <message>
        <source>A valve that sticks now will stick when it matters.</source>
        <translation>Una válvula que hoy se pega se pegará cuando haga falta.</translation>
    </message>
    <message>
        <source>Water side full and tight</source>
        <translation>Lado del agua lleno y estanco</translation>
    </message>
    <message>
        <source>Water runs from the farthest hot tap without air and nothing drips: '{water_vented}' and '{safety_valve_lift}' are entered.</source>
        <translation>Del grifo caliente más lejano sale agua sin aire y nada gotea: «{water_vented}» y «{safety_valve_lift}» están anotados.</translation>
    </message>
    <message>
        <source>Pressure hold</source>
        <translation>Prueba de presión</translation>
    </message>
    <message>
        <source>The block's valves stay SHUT: its charge is behind them. Through the service port only, fill collector and lines with dry nitrogen from a regulator, in steps: 3 bar, 10 bar, then {test_pressure} gauge. Never above {max_pressure}.</source>
        <translation>Las válvulas del bloque siguen CERRADAS: detrás está su carga. Solo por la toma de servicio, llene captador y líneas con nitrógeno seco desde manorreductor, por escalones: 3 bar, 10 bar, luego {test_pressure} manométricos. Nunca más de {max_pressure}.</translation>
    </message>
    <message>
        <source>Never oxygen: with oil it explodes. Never air: it brings water. Nitrogen that gets into the block spoils its charge.</source>
        <translation>Nunca oxígeno: con aceite explota. Nunca aire: mete agua. El nitrógeno que entra en el bloque estropea su carga.</translation>
    </message>
    <message>
        <source>Soap every joint, flares and brazed ones, and both stubs of each plate. Mark those that are good.</source>
        <translation>Enjabone cada unión, abocardada y soldada, y los dos racores de cada captador. Marque las buenas.</translation>
    </message>
    <message>
        <source>The joint without soap is the one that leaks.</source>
        <translation>La unión sin jabón es la que fuga.</translation>
    </message>
    <message>
        <source>Shut the bottle, wait until the gas has taken the tubes' temperature, enter '{pressure_hold_start}' with pressure and temperature. Hold at least 30 minutes, longer when the sun moves; enter '{pressure_hold_end}'.</source>
        <translation>Cierre la botella, espere a que el gas tome la temperatura de los tubos, anote «{pressure_hold_start}» con presión y temperatura. Mantenga al menos 30 minutos, más si el sol se mueve; anote «{pressure_hold_end}».</translation>
    </message>
    <message>
        <source>Pressure follows temperature: about 0.1 bar for each 1 K at 25 bar. The program corrects for it.</source>
        <translation>La presión sigue a la temperatura: unos 0,1 bar por cada 1 K a 25 bar. El programa lo corrige.</translation>
    </message>
    <message>
        <source>Pressure hold passed</source>
        <translation>Prueba de presión superada</translation>
    </message>
    <message>
        <source>The two readings agree after correction for temperature; no joint bubbles.</source>
        <translation>Las dos lecturas coinciden tras corregir la temperatura; ninguna unión hace burbujas.</translation>
    </message>
    <message>
        <source>Let the nitrogen out slowly through the port, outdoors, away from faces.</source>
        <translation>Suelte el nitrógeno despacio por la toma, al aire libre, lejos de las caras.</translation>
    </message>
    <message>
        <source>It smothers in a closed room and blows swarf into eyes.</source>
        <translation>Asfixia en un local cerrado y sopla viruta a los ojos.</translation>
    </message>
    <message>
        <source>Evacuate</source>
        <translation>Hacer vacío</translation>
    </message>
    <message>
        <source>Evacuate collector and lines through the service port, the block's valves still SHUT. Never through the block's own pipe. Gauge at the far end from the pump if it can be.</source>
        <translation>Haga vacío en captador y líneas por la toma de servicio, las válvulas del bloque aún CERRADAS. Nunca por el tubo propio del bloque. Vacuómetro en el extremo lejano a la bomba si se puede.</translation>
    </message>
    <message>
        <source>Pulling through the block takes its charge and oil; a gauge at the pump reads the pump.</source>
        <translation>A través del bloque se van su carga y su aceite; un vacuómetro en la bomba mide la bomba.</translation>
    </message>
    <message>
        <source>Pull down until the gauge stands below {vacuum} absolute and stays: '{vacuum_level}'. Then close the valve to the pump and watch the rise for {vacuum_wait} minutes: '{vacuum_after_rise}' not above {vacuum_limit}. Enter both with the temperature of the coldest part.</source>
        <translation>Baje hasta que el vacuómetro quede por debajo de {vacuum} absolutos y se mantenga: «{vacuum_level}». Cierre entonces la válvula a la bomba de vacío y vigile la subida {vacuum_wait} minutos: «{vacuum_after_rise}» no más de {vacuum_limit}. Anote las dos con la temperatura de la parte más fría.</translation>
    </message>
    <message>
        <source>A rise that levels off is water still boiling: go on pumping. A rise that does not is a leak: back to soap. Below about 5 °C water does not leave by itself: warm the lines.</source>
        <translation>Una subida que se frena es agua que aún hierve: siga con la bomba. Una que no se frena es una fuga: vuelva al jabón. Por debajo de unos 5 °C el agua no sale sola: caliente las líneas.</translation>
    </message>
    <message>
        <source>Never purge with refrigerant.</source>
        <translation>Nunca barra con refrigerante.</translation>
    </message>
    <message>
        <source>It leaves air and water in, and is forbidden.</source>
        <translation>Deja aire y agua dentro, y está prohibido.</translation>
    </message>
    <message>
        <source>Vacuum holds</source>
        <translation>El vacío se mantiene</translation>
    </message>
    <message>
        <source>With the pump shut off the rise is within the limit of the table.</source>
        <translation>Con la bomba cerrada la subida queda dentro del límite de la tabla.</translation>
    </message>
    <message>
        <source>Charge and open</source>
        <translation>Cargar y abrir</translation>
    </message>
    <message>
        <source>Use bottle, hose and scale kept for {refrigerant} only, outdoors or with the room aired, detector on; bond the bottle to earth. No brazing from here on.</source>
        <translation>Use botella, latiguillo y báscula solo para {refrigerant}, al aire libre o con el local ventilado, detector encendido; conecte la botella a tierra. Desde aquí no se suelda.</translation>
    </message>
    <message>
        <source>R290 is propane: a charge left in a hose burns.</source>
        <translation>El R290 es propano: un resto en el latiguillo arde.</translation>
    </message>
    <message>
        <source>Air the room while charging and keep ignition sources switched off outside it. No brazing from here on.</source>
        <translation>Ventile el local al cargar y mantenga los focos de ignición apagados desde fuera. Desde aquí no se suelda.</translation>
    </message>
    <message>
        <source>{refrigerant} burns slowly but it burns.</source>
        <translation>El {refrigerant} arde despacio, pero arde.</translation>
    </message>
    <message>
        <source>Weigh in the extra charge of {extra_charge} {refrigerant} on a scale, as liquid, slowly, through the service port into the evacuated lines, valves still shut. Enter it as '{charge_added}' and write the total of {total_charge} on the block's label.</source>
        <translation>Cargue {extra_charge} de {refrigerant} con báscula, en líquido, despacio, por la toma de servicio a las líneas en vacío, válvulas aún cerradas. Anótelo como «{charge_added}» y escriba el total de {total_charge} en la etiqueta del bloque.</translation>
    </message>
    <message>
        <source>Charge by weight, not by pressure or by feel.</source>
        <translation>Cargue por peso, no por presión ni a ojo.</translation>
    </message>
    <message>
        <source>No extra charge: the run is within what the factory charge serves. Write the total of {total_charge} {refrigerant} on the block's label.</source>
        <translation>Sin carga añadida: el trazado está dentro de lo que cubre la carga de fábrica. Escriba el total de {total_charge} de {refrigerant} en la etiqueta del bloque.</translation>
    </message>
    <message>
        <source>More than the plate can boil off goes to the compressor as liquid.</source>
        <translation>Lo que el captador no evapora llega líquido al compresor.</translation>
    </message>
    <message>
        <source>Check once more that the cylinder is full of water. Then open the liquid valve slowly by a quarter turn, listen, wait until the pressure stands, open fully; then the suction valve. Put the caps back on: they are part of the seal.</source>
        <translation>Compruebe otra vez que el acumulador está lleno de agua. Abra entonces la válvula de líquido despacio un cuarto de vuelta, escuche, espere a que la presión se estabilice, abra del todo; luego la de aspiración. Vuelva a poner los tapones: son parte del cierre.</translation>
    </message>
    <message>
        <source>Opened in one go, liquid strikes the compressor's oil; with an empty cylinder the condenser has nothing to give its heat to.</source>
        <translation>Abierta de golpe, el líquido golpea el aceite del compresor; con el acumulador vacío el condensador no tiene a qué ceder su calor.</translation>
    </message>
    <message>
        <source>Go over all joints with a leak detector made for {refrigerant}.</source>
        <translation>Repase todas las uniones con un detector de fugas para {refrigerant}.</translation>
    </message>
    <message>
        <source>Nitrogen does not find every leak that refrigerant finds.</source>
        <translation>El nitrógeno no encuentra todas las fugas que encuentra el refrigerante.</translation>
    </message>
    <message>
        <source>Electrical connection</source>
        <translation>Conexión eléctrica</translation>
    </message>
    <message>
        <source>Own protected circuit from the board: breaker, residual current device and copper cable as listed under 'Cylinder's place'. Supply locked off and tested dead before the cover comes off.</source>
        <translation>Circuito propio protegido desde el cuadro: magnetotérmico, diferencial y cable de cobre como figuran en «Sitio del acumulador». Cortado, bloqueado y sin tensión antes de quitar la tapa.</translation>
    </message>
    <message>
        <source>A shared circuit trips at the first cold start.</source>
        <translation>Un circuito compartido salta en el primer arranque en frío.</translation>
    </message>
    <message>
        <source>Connect earth first, and bond plate, profiles and tubes as the local wiring rules ask.</source>
        <translation>Conecte primero la tierra, y lleve captador, perfiles y tubos a la equipotencial como pida el reglamento.</translation>
    </message>
    <message>
        <source>Metal on a roof is in reach of lightning and faults; the local rules decide how it is bonded.</source>
        <translation>El metal del tejado está al alcance de rayos y averías; el reglamento decide cómo se une.</translation>
    </message>
    <message>
        <source>Measure before first power and enter with the instrument: '{protective_conductor}', '{insulation_resistance}', '{earth_resistance}', '{loop_impedance}', '{residual_current_trip}', '{supply_voltage}'.</source>
        <translation>Mida antes de dar tensión y anote con el instrumento: «{protective_conductor}», «{insulation_resistance}», «{earth_resistance}», «{loop_impedance}», «{residual_current_trip}», «{supply_voltage}».</translation>
    </message>
    <message>
        <source>What is not measured is not safe.</source>
        <translation>Lo que no se mide no es seguro.</translation>
    </message>
    <message>
        <source>Electrical tests</source>
        <translation>Ensayos eléctricos</translation>
    </message>
    <message>
        <source>Measured by a licensed person before first power; figures entered.</source>
        <translation>Medidos por electricista autorizado antes de dar tensión; cifras anotadas.</translation>
    </message>
    <message>
        <source>Start, record, hand over</source>
        <translation>Arrancar, anotar, entregar</translation>
    </message>
    <message>
        <source>Enter '{heating_start}'. Switch on, set {set_point}. Listen through the first ten minutes: even hum, plate cool all over, no knocking.</source>
        <translation>Anote «{heating_start}». Conecte, ajuste {set_point}. Escuche los diez primeros minutos: zumbido parejo, captador frío por igual, sin golpes.</translation>
    </message>
    <message>
        <source>A plate cold in one strip only is short of refrigerant; a liquid knock means switch off at once.</source>
        <translation>Si solo se enfría una franja falta refrigerante; un golpe de líquido es apagar enseguida.</translation>
    </message>
    <message>
        <source>After 30 minutes enter '{suction_temperature}', '{discharge_temperature}', '{supply_current}', '{water_temperature}' and '{outdoor_temperature}', and say whether the plate lies in sun or shade; compare with the expected values.</source>
        <translation>A los 30 minutos anote «{suction_temperature}», «{discharge_temperature}», «{supply_current}», «{water_temperature}» y «{outdoor_temperature}», y diga si el captador está al sol o a la sombra; compare con los valores esperados.</translation>
    </message>
    <message>
        <source>The first figures are what every later service is held against.</source>
        <translation>Con las primeras cifras se compara todo servicio posterior.</translation>
    </message>
    <message>
        <source>Check drain and tundish. Enter '{set_point_reading}' and '{hygiene_setting}' to the local rule and tell the client what the hygiene run does.</source>
        <translation>Compruebe desagüe y embudo. Anote «{set_point_reading}» y «{hygiene_setting}» según la norma local y explique al cliente el ciclo de higiene.</translation>
    </message>
    <message>
        <source>Water kept lukewarm for weeks breeds bacteria.</source>
        <translation>El agua tibia durante semanas cría bacterias.</translation>
    </message>
    <message>
        <source>At the set-point enter '{heating_end}' and, at the nearest tap, '{tap_temperature}'.</source>
        <translation>En la consigna anote «{heating_end}» y, en el grifo más cercano, «{tap_temperature}».</translation>
    </message>
    <message>
        <source>A tap hotter than agreed scalds; a heating that took too long shows a fault.</source>
        <translation>Un grifo más caliente de lo acordado escalda; un calentamiento demasiado largo delata un fallo.</translation>
    </message>
    <message>
        <source>Show the client: switch-off, mixing valve, safety valve by hand, whom to call. Hand over papers, record and this sheet.</source>
        <translation>Enseñe al cliente: apagado, válvula mezcladora, válvula de seguridad a mano, a quién llamar. Entregue papeles, registro y esta hoja.</translation>
    </message>
    <message>
        <source>What the client was not shown the client will ring about on a Sunday.</source>
        <translation>Lo que no se le enseñó al cliente lo preguntará un domingo.</translation>
    </message>
    <message>
        <source>Record entered, site clean, client shown. Signatures on the last page.</source>
        <translation>Registro anotado, obra limpia, cliente informado. Firmas en la última página.</translation>
    </message>
    <message>
        <source>To hand at the side door</source>
        <translation>A mano junto a la puerta lateral</translation>
    </message>
    <message>
        <source>Roof rack and long tray</source>
        <translation>Baca y bandeja larga</translation>
    </message>
    <message>
        <source>Workshop drawers</source>
        <translation>Cajones de taller</translation>
    </message>
    <message>
        <source>Refrigeration case</source>
        <translation>Maleta de frigorista</translation>
    </message>
    <message>
        <source>Bottles upright, ventilated, strapped</source>
        <translation>Botellas en pie, ventiladas y sujetas</translation>
    </message>
    <message>
        <source>Electrical case</source>
        <translation>Maletín eléctrico</translation>
    </message>
    <message>
        <source>Spirit level, tape, chalk line, square, pencil; compass, inclinometer; camera</source>
        <translation>Nivel, cinta métrica, tiralíneas, escuadra, lápiz; brújula, inclinómetro; cámara</translation>
    </message>
    <message>
        <source>Personal: helmet, goggles, gloves for sheet edges and for refrigerant, shoes with grip</source>
        <translation>Personal: casco, gafas, guantes para cantos de chapa y para refrigerante, calzado antideslizante</translation>
    </message>
    <message>
        <source>Harness, lanyard and anchor; roof ladder; edge protection</source>
        <translation>Arnés, cuerda y anclaje; escalera de tejado; protección de borde</translation>
    </message>
    <message>
        <source>Ladder or tower with ties</source>
        <translation>Escalera o torre con ataduras</translation>
    </message>
    <message>
        <source>Broom, scale for the ballast, hoist or barrow for the slabs</source>
        <translation>Escoba, báscula para el lastre, elevador o carretilla para las losas</translation>
    </message>
    <message>
        <source>Drill, wood bits, impact driver, torque bits for the fixing screws</source>
        <translation>Taladro, brocas de madera, atornillador de impacto, puntas para los tornillos de fijación</translation>
    </message>
    <message>
        <source>Angle grinder with stone disc for the tiles, goggles, dust mask</source>
        <translation>Radial con disco de piedra para las tejas, gafas, mascarilla</translation>
    </message>
    <message>
        <source>Torque wrench for the clamps</source>
        <translation>Llave dinamométrica para las grapas</translation>
    </message>
    <message>
        <source>Hammer drill, masonry bits, blow-out pump, brush, torque wrench for the anchors</source>
        <translation>Taladro percutor, brocas de obra, soplador, cepillo, llave dinamométrica para los anclajes</translation>
    </message>
    <message>
        <source>Core bit or hole saw and sleeves for the passages</source>
        <translation>Corona o sierra de copa y casquillos para los pasos</translation>
    </message>
    <message>
        <source>Tube cutter, deburrer, bender, flaring tool, refrigeration oil</source>
        <translation>Cortatubos, desbarbador, curvadora, abocardador, aceite frigorífico</translation>
    </message>
    <message>
        <source>Tube cutter, deburrer, bender, refrigeration oil</source>
        <translation>Cortatubos, desbarbador, curvadora, aceite frigorífico</translation>
    </message>
    <message>
        <source>Torque wrench with open jaws for the flare nuts, second spanner</source>
        <translation>Llave dinamométrica de boca abierta para las tuercas de abocardar, segunda llave</translation>
    </message>
    <message>
        <source>Vacuum pump with check valve, vacuum gauge in Pa, valve-core tool, short wide hoses</source>
        <translation>Bomba de vacío con antirretorno, vacuómetro en Pa, extractor de obuses, latiguillos cortos y anchos</translation>
    </message>
    <message>
        <source>Pump and detector fit for flammable gas, bonding lead, vent hose, warning signs</source>
        <translation>Bomba y detector aptos para gas inflamable, cable de tierra, manguera de venteo, señales</translation>
    </message>
    <message>
        <source>Leak detector made for {refrigerant}</source>
        <translation>Detector de fugas para {refrigerant}</translation>
    </message>
    <message>
        <source>Scale reading to 5 g, bottle and hoses kept for {refrigerant}</source>
        <translation>Báscula con lectura de 5 g, botella y latiguillos solo para {refrigerant}</translation>
    </message>
    <message>
        <source>Brazing set, filler rods, nitrogen flow meter, extinguisher</source>
        <translation>Equipo de soldar, varillas, caudalímetro de nitrógeno, extintor</translation>
    </message>
    <message>
        <source>Dry nitrogen with regulator and safety valve, hose, soap spray</source>
        <translation>Nitrógeno seco con manorreductor y válvula de seguridad, latiguillo, espray de jabón</translation>
    </message>
    <message>
        <source>Continuity meter, torque wrench for the flange</source>
        <translation>Comprobador de continuidad, llave dinamométrica para la brida</translation>
    </message>
    <message>
        <source>Contact thermometer, clamp ammeter, insulation, loop and residual-current tester</source>
        <translation>Termómetro de contacto, pinza amperimétrica, comprobador de aislamiento, bucle y diferencial</translation>
    </message>
    <message>
        <source>On edge along the side wall, padded</source>
        <translation>De canto contra el lateral, protegido</translation>
    </message>
    <message>
        <source>Upright at the bulkhead, strapped</source>
        <translation>En pie contra el mamparo, sujeto</translation>
    </message>
    <message>
        <source>Water crate</source>
        <translation>Caja de fontanería</translation>
    </message>
    <message>
        <source>Parts and tools to load</source>
        <translation>Material y herramienta para cargar</translation>
    </message>
    <message>
        <source>Dear {client},
thank you for the time you gave us at your house. Our quote {number} of {date} is enclosed: hot water with heat from outdoors, for {price} with tax.
The quote says what we would build, where it goes, what it needs in a year and what it costs. It holds until {valid_until}. To order, sign at its end and send it back to us; we then set the days with you.
Ask us whatever is not clear: it costs you nothing.
Kind regards
{firm}</source>
        <translation>Hola, {client}:
gracias por el tiempo que nos dedicó en su casa. Adjuntamos nuestro presupuesto {number} del {date}: agua caliente con calor del exterior, por {price} con impuestos.
El presupuesto dice qué haríamos, dónde va, qué necesita en un año y cuánto cuesta. Vale hasta el {valid_until}. Para encargarlo, firme al final y envíenoslo; después fijamos los días con usted.
Pregúntenos lo que no esté claro: no le cuesta nada.
Un saludo cordial
{firm}</translation>
    </message>
    <message>
        <source>(not issued yet)</source>
        <translation>(sin emitir todavía)</translation>
    </message>
    <message>
        <source>(no price yet)</source>
        <translation>(sin precio todavía)</translation>
    </message>
    <message>
        <source>Our quote: %1</source>
        <translation>Nuestro presupuesto: %1</translation>
    </message>
    <message>
        <source>Our quote %1: %2</source>
        <translation>Nuestro presupuesto %1: %2</translation>
    </message>
    <message>
        <source>It takes the place of our quote %1.</source>
        <translation>Sustituye a nuestro presupuesto %1.</translation>
    </message>
    <message>
        <source>Words in braces that stand for nothing</source>
        <translation>Palabras entre llaves que no representan nada</translation>
    </message>
    <message>
        <source>%1. There are: %2.</source>
        <translation>%1. Existen: %2.</translation>
    </message>
    <message>
        <source>%1, dated %2</source>
        <translation>%1 del %2</translation>
    </message>
    <message>
        <source>Quote accepted</source>
        <translation>Presupuesto aceptado</translation>
    </message>
    <message>
        <source>Accepted on</source>
        <translation>Aceptado el</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Por</translation>
    </message>
    <message>
        <source>Choice</source>
        <translation>Opción</translation>
    </message>
    <message>
        <source>Noted with it</source>
        <translation>Anotado con ello</translation>
    </message>
    <message>
        <source>Signature under the acceptance, as it reached us.</source>
        <translation>Firma de la aceptación, tal como nos llegó.</translation>
    </message>
    <message>
        <source>%1 %2 of %3</source>
        <translation>%1 %2 del %3</translation>
    </message>
    <message>
        <source>This confirmation takes the place of: %1. What it replaces no longer counts.</source>
        <translation>Esta confirmación sustituye a: %1. Lo sustituido ya no vale.</translation>
    </message>
    <message>
        <source>Discount</source>
        <translation>Descuento</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>Neto</translation>
    </message>
    <message>
        <source>%1, %2 on %3</source>
        <translation>%1, %2 sobre %3</translation>
    </message>
    <message>
        <source>Total with tax</source>
        <translation>Total con impuestos</translation>
    </message>
    <message>
        <source>Subsidies</source>
        <translation>Subvenciones</translation>
    </message>
    <message>
        <source>What you ordered</source>
        <translation>Lo que ha pedido</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Equipment and material</source>
        <translation>Equipos y material</translation>
    </message>
    <message>
        <source>When to pay</source>
        <translation>Cuándo se paga</translation>
    </message>
    <message>
        <source>As the terms of the quote have it.</source>
        <translation>Como dicen las condiciones del presupuesto.</translation>
    </message>
    <message>
        <source>As the terms of the quote have it:</source>
        <translation>Como dicen las condiciones del presupuesto:</translation>
    </message>
    <message>
        <source>To be paid</source>
        <translation>A pagar</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Parte</translation>
    </message>
    <message>
        <source>With tax</source>
        <translation>Con impuestos</translation>
    </message>
    <message>
        <source>What comes next</source>
        <translation>Qué viene ahora</translation>
    </message>
    <message>
        <source>We order the parts and tell you when they are here.</source>
        <translation>Encargamos las piezas y le avisamos cuando lleguen.</translation>
    </message>
    <message>
        <source>We set the days of fitting with you, and look at the weather: nobody works on a wet roof.</source>
        <translation>Fijamos con usted los días del montaje y miramos el tiempo: nadie trabaja en un tejado mojado.</translation>
    </message>
    <message>
        <source>Before that day, please make room where the cylinder goes and on the way to it.</source>
        <translation>Antes de ese día, haga sitio donde va el acumulador y en el camino hasta él.</translation>
    </message>
    <message>
        <source>What your quote names as still to be made at the cylinder's place has to be there by then.</source>
        <translation>Lo que su presupuesto nombra como pendiente en el lugar del acumulador tiene que estar hecho para entonces.</translation>
    </message>
    <message>
        <source>After the start we show you how it works, and hand over the booklet and the record.</source>
        <translation>Después de la puesta en marcha le enseñamos cómo funciona y le entregamos el cuaderno y el protocolo.</translation>
    </message>
    <message>
        <source>Anything you want to change, tell us before the parts are ordered: you get a change order with its price, and nothing changes before you have signed it.</source>
        <translation>Lo que quiera cambiar, díganoslo antes de encargar las piezas: recibirá un cambio del pedido con su precio, y nada cambia antes de que lo firme.</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Nuevo</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation>Cambiado</translation>
    </message>
    <message>
        <source>No longer</source>
        <translation>Ya no</translation>
    </message>
    <message>
        <source>Agreed</source>
        <translation>Acordado</translation>
    </message>
    <message>
        <source>From now on</source>
        <translation>Desde ahora</translation>
    </message>
    <message>
        <source>Difference, net</source>
        <translation>Diferencia, neto</translation>
    </message>
    <message>
        <source>instead of: %1</source>
        <translation>en lugar de: %1</translation>
    </message>
    <message>
        <source>Difference with tax</source>
        <translation>Diferencia con impuestos</translation>
    </message>
    <message>
        <source>Price agreed, with tax</source>
        <translation>Precio acordado, con impuestos</translation>
    </message>
    <message>
        <source>Price from now on, with tax</source>
        <translation>Precio desde ahora, con impuestos</translation>
    </message>
    <message>
        <source>More or less for you to pay when all is granted</source>
        <translation>De más o de menos a pagar si todo se concede</translation>
    </message>
    <message>
        <source>Everything else in the quote stays as agreed.</source>
        <translation>Todo lo demás del presupuesto queda como se acordó.</translation>
    </message>
    <message>
        <source>Your order</source>
        <translation>Su pedido</translation>
    </message>
    <message>
        <source>No quote of this job is accepted yet: there is no order to confirm.</source>
        <translation>Todavía no se ha aceptado ningún presupuesto de esta obra: no hay pedido que confirmar.</translation>
    </message>
    <message>
        <source>Thank you for your order. We confirm what was agreed between us.</source>
        <translation>Gracias por su pedido. Confirmamos lo que hemos acordado.</translation>
    </message>
    <message>
        <source>Confirmed</source>
        <translation>Confirmado</translation>
    </message>
    <message>
        <source>We take the order as it stands here.</source>
        <translation>Aceptamos el pedido tal como está aquí.</translation>
    </message>
    <message>
        <source>For the firm</source>
        <translation>Por la empresa</translation>
    </message>
    <message>
        <source>Change of your order</source>
        <translation>Cambio de su pedido</translation>
    </message>
    <message>
        <source>There are no two quotes of this job to be compared: there is no change.</source>
        <translation>No hay dos presupuestos de esta obra que comparar: no hay cambio.</translation>
    </message>
    <message>
        <source>This changes what was agreed: quote %1, accepted on %2 by %3. Quote %4 of %5 takes its place.</source>
        <translation>Esto cambia lo acordado: presupuesto %1, aceptado el %2 por %3. Lo sustituye el presupuesto %4 del %5.</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Qué cambia</translation>
    </message>
    <message>
        <source>Nothing: both quotes have the same lines and the same price.</source>
        <translation>Nada: los dos presupuestos tienen las mismas partidas y el mismo precio.</translation>
    </message>
    <message>
        <source>The order is changed as it stands here, and in nothing else.</source>
        <translation>El pedido cambia como está aquí, y en nada más.</translation>
    </message>
    <message>
        <source>left-hand (connections on the left)</source>
        <translation>de mano izquierda (conexiones a la izquierda)</translation>
    </message>
    <message>
        <source>right-hand (connections on the right)</source>
        <translation>de mano derecha (conexiones a la derecha)</translation>
    </message>
    <message>
        <source>there</source>
        <translation>existe</translation>
    </message>
    <message>
        <source>bring over %1</source>
        <translation>llevar %1</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>Please pay to %1: %2.</source>
        <translation>Pague, por favor, a %1: %2.</translation>
    </message>
    <message>
        <source>When to pay is not set here: what you and we have agreed in writing holds, and where nothing is agreed, the law.</source>
        <translation>Aquí no se fija cuándo se paga: vale lo que usted y nosotros hayamos acordado por escrito y, a falta de acuerdo, la ley.</translation>
    </message>
    <message>
        <source>VAT number %1</source>
        <translation>N.º de IVA %1</translation>
    </message>
    <message>
        <source>Firm's name and address not entered yet</source>
        <translation>Nombre y dirección de la empresa aún sin introducir</translation>
    </message>
    <message>
        <source>Job %1, revision %2</source>
        <translation>Obra %1, revisión %2</translation>
    </message>
    <message>
        <source>without number</source>
        <translation>sin número</translation>
    </message>
    <message>
        <source>Job %1</source>
        <translation>Obra %1</translation>
    </message>
    <message>
        <source> with changes</source>
        <translation> con cambios</translation>
    </message>
    <message>
        <source>mark %1</source>
        <translation>marca %1</translation>
    </message>
    <message>
        <source>No choice yet</source>
        <translation>Aún sin opción</translation>
    </message>
    <message>
        <source>Choice: </source>
        <translation>Opción: </translation>
    </message>
    <message>
        <source>Printed %1</source>
        <translation>Impreso el %1</translation>
    </message>
    <message>
        <source>content %1</source>
        <translation>contenido %1</translation>
    </message>
    <message>
        <source>local codes and licensed practice decide</source>
        <translation>mandan las normas locales y los profesionales</translation>
    </message>
    <message>
        <source>Invented data: for demonstration</source>
        <translation>Datos inventados: para demostración</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Atención</translation>
    </message>
    <message>
        <source>entered by the office</source>
        <translation>anotado por la oficina</translation>
    </message>
    <message>
        <source>the office's: %1</source>
        <translation>de la oficina: %1</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation>sin motivo</translation>
    </message>
    <message>
        <source>planned: %1</source>
        <translation>planeado: %1</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>To take</source>
        <translation>Llevar</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Tiempo</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>The plan asks for no parts yet.</source>
        <translation>El plan todavía no pide piezas.</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>En total</translation>
    </message>
    <message>
        <source>1 pack of %1</source>
        <translation>1 envase de %1</translation>
    </message>
    <message>
        <source>%1 packs of %2</source>
        <translation>%1 envases de %2</translation>
    </message>
    <message>
        <source>Supplier's number</source>
        <translation>Número del proveedor</translation>
    </message>
    <message>
        <source>Taken for this job</source>
        <translation>Tomado para este trabajo</translation>
    </message>
    <message>
        <source>In stock</source>
        <translation>En almacén</translation>
    </message>
    <message>
        <source>On order</source>
        <translation>Pedido antes</translation>
    </message>
    <message>
        <source>Reserved</source>
        <translation>Reservado</translation>
    </message>
    <message>
        <source>To order</source>
        <translation>Pedir</translation>
    </message>
    <message>
        <source>Ordered before: %1</source>
        <translation>Ya pedido: %1</translation>
    </message>
    <message>
        <source>%1 for job %2: %3</source>
        <translation>%1 para la obra %2: %3</translation>
    </message>
    <message>
        <source>%1, on order by %2.</source>
        <translation>%1, pedido con %2.</translation>
    </message>
    <message>
        <source>%1, reserved by %2.</source>
        <translation>%1, reservado con %2.</translation>
    </message>
    <message>
        <source>On order and reserved</source>
        <translation>Pedido y reservado</translation>
    </message>
    <message>
        <source>Your number</source>
        <translation>Su número</translation>
    </message>
    <message>
        <source>Price each</source>
        <translation>Precio unitario</translation>
    </message>
    <message>
        <source>Trade discount</source>
        <translation>Descuento</translation>
    </message>
    <message>
        <source>Together, without tax</source>
        <translation>En total, sin impuestos</translation>
    </message>
    <message>
        <source>There is nothing to order.</source>
        <translation>No hay nada que pedir.</translation>
    </message>
    <message>
        <source>No supplier told</source>
        <translation>Sin proveedor indicado</translation>
    </message>
    <message>
        <source>Reserved is what other jobs that are not fitted yet still need of stock and orders by their purchase lists.</source>
        <translation>Reservado es lo que otras obras aún sin montar necesitan todavía del almacén y de los pedidos según sus listas de compra.</translation>
    </message>
    <message>
        <source>To be delivered to: %1.</source>
        <translation>Entregar en: %1.</translation>
    </message>
    <message>
        <source>Please deliver what is listed here, and confirm price and day.</source>
        <translation>Les rogamos que suministren lo que aquí se indica y que confirmen el precio y el día.</translation>
    </message>
    <message>
        <source>Our order</source>
        <translation>Nuestro pedido</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Deliver to</source>
        <translation>Entregar en</translation>
    </message>
    <message>
        <source>Or to</source>
        <translation>O en</translation>
    </message>
    <message>
        <source>Wished on</source>
        <translation>Fecha deseada</translation>
    </message>
    <message>
        <source>Prices are net, as our price list has them. Tell us before you deliver where yours differ.</source>
        <translation>Precios netos según nuestra lista. Avísennos antes de la entrega si los suyos son distintos.</translation>
    </message>
    <message>
        <source>Of lines without a price we know none: please tell us yours.</source>
        <translation>De las líneas sin precio no conocemos ninguno: indíquennos el suyo.</translation>
    </message>
    <message>
        <source>Ordered on</source>
        <translation>Pedido el</translation>
    </message>
    <message>
        <source>the surface shown</source>
        <translation>la superficie mostrada</translation>
    </message>
    <message>
        <source>and</source>
        <translation>y</translation>
    </message>
    <message>
        <source>What we offer</source>
        <translation>Lo que ofrecemos</translation>
    </message>
    <message>
        <source>Hot water from the outdoor air, rain, wind and daylight. A bare metal plate outdoors takes up the heat, by day and by night; a small heat pump raises it to the temperature of the hot water. The plate has no glass and no fan and makes no noise. An electric heater in the cylinder steps in when more is asked for than the heat pump can give.</source>
        <translation>Agua caliente del aire exterior, la lluvia, el viento y la luz del día. Una placa de metal desnuda en el exterior recoge el calor, de día y de noche; una pequeña bomba de calor lo eleva a la temperatura del agua caliente. La placa no tiene vidrio ni ventilador y no hace ruido. Una resistencia eléctrica en el acumulador ayuda cuando se pide más de lo que da la bomba de calor.</translation>
    </message>
    <message>
        <source>%1 %2 of %3 by %4 on %5.</source>
        <translation>%1 %2 de %3 por %4 en: %5.</translation>
    </message>
    <message>
        <source>One collector</source>
        <translation>Un captador</translation>
    </message>
    <message>
        <source>%1 collectors</source>
        <translation>%1 captadores</translation>
    </message>
    <message>
        <source>Heat pump %1, %2, joined to the collector by a refrigerant run of about %3.</source>
        <translation>Bomba de calor %1, %2, unida al captador por unas líneas de refrigerante de unos %3.</translation>
    </message>
    <message>
        <source>Cylinder %1 of %2%3, with electric heater of %4 and thermostatic mixing valve.</source>
        <translation>Acumulador %1 de %2%3, con resistencia eléctrica de %4 y válvula mezcladora termostática.</translation>
    </message>
    <message>
        <source>in: %1</source>
        <translation>en: %1</translation>
    </message>
    <message>
        <source>Fitting, filling, tests, start and instruction as listed under price.</source>
        <translation>Montaje, llenado, pruebas, puesta en marcha e instrucción según figura en el precio.</translation>
    </message>
    <message>
        <source>What to expect in a year</source>
        <translation>Qué esperar en un año</translation>
    </message>
    <message>
        <source>The yearly figures are not worked out for this plan.</source>
        <translation>Las cifras anuales de este plan no están calculadas.</translation>
    </message>
    <message>
        <source>Hot water heat used</source>
        <translation>Calor usado en agua caliente</translation>
    </message>
    <message>
        <source>Electricity for it</source>
        <translation>Electricidad para ello</translation>
    </message>
    <message>
        <source>Heat at the tap for each kWh of electricity</source>
        <translation>Calor en el grifo por cada kWh de electricidad</translation>
    </message>
    <message>
        <source>Heat into the cylinder for each kWh of electricity</source>
        <translation>Calor al acumulador por cada kWh de electricidad</translation>
    </message>
    <message>
        <source>more than at the tap: the cylinder loses some heat while the water waits</source>
        <translation>más que en el grifo: el acumulador pierde algo de calor mientras el agua espera</translation>
    </message>
    <message>
        <source>Electricity cost</source>
        <translation>Coste de la electricidad</translation>
    </message>
    <message>
        <source>The same water with the present heater</source>
        <translation>La misma agua con el calentador actual</translation>
    </message>
    <message>
        <source>Carbon dioxide, new and present</source>
        <translation>Dióxido de carbono, nuevo y actual</translation>
    </message>
    <message>
        <source>about %1 and %2</source>
        <translation>unos %1 y %2</translation>
    </message>
    <message>
        <source>Saving has paid the price back after</source>
        <translation>El ahorro ha pagado el precio tras</translation>
    </message>
    <message>
        <source>years</source>
        <translation>años</translation>
    </message>
    <message>
        <source>times %1</source>
        <translation>por %1</translation>
    </message>
    <message>
        <source>draw-off as cycle %1 of EU 812/2013%2</source>
        <translation>consumo según el ciclo %1 de UE 812/2013%2</translation>
    </message>
    <message>
        <source>a household of %1 with %2 of 40 °C a head and day%3</source>
        <translation>un hogar de %1 con %2 a 40 °C por persona y día%3</translation>
    </message>
    <message>
        <source>water stored at %1</source>
        <translation>agua acumulada a %1</translation>
    </message>
    <message>
        <source>cold water at %1 on average</source>
        <translation>agua fría a %1 de media</translation>
    </message>
    <message>
        <source>present heater: %1, %2</source>
        <translation>calentador actual: %1, %2</translation>
    </message>
    <message>
        <source>weather: %1%2</source>
        <translation>clima: %1%2</translation>
    </message>
    <message>
        <source>(invented)</source>
        <translation>(inventado)</translation>
    </message>
    <message>
        <source>Assumed: %1. Figures in brackets are the likely range%2. Your use and the weather decide; none of these figures is a promise.</source>
        <translation>Supuesto: %1. Las cifras entre paréntesis son el margen probable%2. Deciden su consumo y el tiempo; ninguna de estas cifras es una promesa.</translation>
    </message>
    <message>
        <source>Where it goes</source>
        <translation>Dónde va</translation>
    </message>
    <message>
        <source>You may add: tick what you want</source>
        <translation>Puede añadir: marque lo que quiera</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>There is no price yet: see what stands against it below.</source>
        <translation>Aún no hay precio: vea abajo qué lo impide.</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Equipos</translation>
    </message>
    <message>
        <source>Fixings, tube with insulation, water-side and electrical material, each in the parts list</source>
        <translation>Fijaciones, tubo con aislamiento, material de agua y eléctrico, uno por uno en la lista de piezas</translation>
    </message>
    <message>
        <source>%1 items</source>
        <translation>%1 piezas</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Labour</source>
        <translation>Mano de obra</translation>
    </message>
    <message>
        <source>Discount of %1%2</source>
        <translation>Descuento del %1%2</translation>
    </message>
    <message>
        <source>Total to pay</source>
        <translation>Total a pagar</translation>
    </message>
    <message>
        <source>Not all items have a price</source>
        <translation>No todas las piezas tienen precio</translation>
    </message>
    <message>
        <source>Some items are not in the price list. They are not in the total.</source>
        <translation>Algunas piezas no están en la lista de precios. No están en el total.</translation>
    </message>
    <message>
        <source>This quote holds for %1 days, until %2.</source>
        <translation>Este presupuesto vale %1 días, hasta el %2.</translation>
    </message>
    <message>
        <source>This quote holds for %1 days.</source>
        <translation>Este presupuesto vale %1 días.</translation>
    </message>
    <message>
        <source>Prices: %1.</source>
        <translation>Precios: %1.</translation>
    </message>
    <message>
        <source>Still to be made at the cylinder's place</source>
        <translation>Por hacer aún en el sitio del acumulador</translation>
    </message>
    <message>
        <source>Hot water by heat pump and bare plate: %1</source>
        <translation>Agua caliente con bomba de calor y placa desnuda: %1</translation>
    </message>
    <message>
        <source>Something in this plan must be changed first; it is named at the end.</source>
        <translation>Antes hay que cambiar algo en este plan; se nombra al final.</translation>
    </message>
    <message>
        <source>This quote takes the place of our quote %1.</source>
        <translation>Este presupuesto sustituye a nuestro presupuesto %1.</translation>
    </message>
    <message>
        <source>What you should know before you decide</source>
        <translation>Lo que debe saber antes de decidir</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Pedido</translation>
    </message>
    <message>
        <source>I order the system as described in this quote, job %1, revision %2.</source>
        <translation>Hago el pedido de la instalación como se describe en este presupuesto, obra %1, revisión %2.</translation>
    </message>
</context>
</TS>

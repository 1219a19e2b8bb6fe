import type { HazardName, HazardWords } from '../hazard.ts'
import { listed } from './listed.ts'

/** Spanish, of Spain and of America. Accents need not be written, neither here nor in a lesson. */
export const es: Readonly<Record<HazardName, HazardWords>> = {
  blades: {
    words: listed(
      `cúter, cutter, cuchillo, cuchilla, bisturí, escalpelo, trincheta, navaja, cuchilla de afeitar,
       hoja de afeitar, hoja de recambio, hoja de bisturí, cortador circular, cortacírculos,
       cortador de círculos, cortador rotatorio, cúter rotativo, cortador giratorio, cortador de paspartú,
       estilete`,
    ),
    not: listed(
      `cuchillo de paleta, cuchillo de mantequilla, cuchillo de mesa, cuchillo de plástico,
       cuchillo de untar, cuchilla de la cizalla, cuchilla de la guillotina, cuchilla de la cortadora`,
    ),
    also: listed('filo'),
  },
  trimmers: {
    words: listed(
      `cizalla, guillotina, cortadora, cortadora de papel, cortapapel, cortapapeles, cizalla rotatoria,
       cizalla de rodillo, recortadora`,
    ),
    not: listed('cizalla de jardín'),
  },
  scissors: {
    words: [],
    forChildren: listed('tijera, tijeras'),
    not: listed('tijera de podar'),
  },
  points: {
    words: listed(
      `aguja, punzón, lezna, perforador de papel, alfiler, chincheta, tachuela, imperdible, compás, brocheta,
       pincho, palillo, mondadientes, palillo de dientes, buril`,
    ),
    not: listed(
      `aguja de pino, aguja de tejer, aguja de punto, aguja de plástico, aguja de reloj, aguja del reloj,
       aguja de brújula, alfiler de corbata`,
    ),
    also: listed('pinchar'),
  },
  punches: {
    words: listed(
      `perforadora, sacabocados, perforadora de esquinas, redondeadora de esquinas, redondeador de esquinas,
       alicate para ojales, alicates para ojales, remachadora, ponedora de ojales, colocador de ojales,
       martillo, mazo, maza, troqueladora, troquel, máquina de troquelar, máquina de corte,
       máquina de repujar, plóter de corte, plóter, plotter, prensa, prensa de libros, grapadora,
       engrapadora, corchetera, taladro de papel`,
    ),
    not: listed('prensa de ajos'),
    also: listed('rodillo, pillar, máquina'),
  },
  wire: {
    words: listed(
      `alambre, hilo de alambre, hilo metálico, hilo de cobre, hilo de aluminio, cortaalambres, cortalambres,
       corta alambres, alicate de corte, alicates de corte, cuerda de piano, cable de acero`,
    ),
    not: listed('alambre de espino, alambre de púas'),
  },
  film: {
    words: listed(
      `acetato, lámina de acetato, hoja de acetato, lámina de plástico, lámina plástica, lámina transparente,
       lámina rígida, hoja de plástico, película de plástico, película transparente, plástico rígido,
       plástico transparente, plástico mágico, plástico encogible, plástico retráctil, poliéster,
       lámina de metal, lámina metálica, lámina de estaño, lámina de cobre, mica, chapa, hojalata`,
    ),
    not: listed(
      `papel film, film transparente, película adhesiva, plástico adhesivo, cinta transparente,
       lámina adhesiva`,
    ),
    also: listed('película'),
  },
  heat: {
    words: listed(
      `pistola de calor, pistola de aire caliente, pistola térmica, herramienta de calor, secador, soldador,
       soldador eléctrico, cautín, plancha de ropa, plancha caliente, plancha de vapor, miniplancha,
       mini plancha, pirograbador, laminadora, plastificadora, placa caliente, placa eléctrica, hornillo,
       prensa de calor, prensa térmica, cúter térmico, cortador térmico, bolígrafo térmico,
       pistola de embossing`,
    ),
    alone: listed('plancha'),
    also: listed('calor, caliente, quemar, quemadura, chamuscar'),
  },
  'hot-glue': {
    words: listed(
      `pistola de silicona, pistola de cola, pistola de pegamento, pistola encoladora, silicona caliente,
       cola caliente, pegamento caliente, cola termofusible, silicona termofusible, adhesivo termofusible,
       barra de silicona, barrita de silicona, barra de cola termofusible, pegamento termofusible, termocola,
       pistola termofusible`,
    ),
    also: listed('boquilla'),
  },
  flames: {
    words: listed(
      `vela, velita, cerilla, fósforo, cerillo, mechero, encendedor, soplete, llama abierta, fuego abierto,
       lacre, incienso, varilla de incienso, bengala, antorcha`,
    ),
    not: listed(
      `vela LED, vela de LED, vela eléctrica, vela de pilas, vela a pilas, vela con pilas, vela electrónica,
       barco de vela, barco a vela, velita LED, velita eléctrica, vela mayor, vela de barco, vela del barco`,
    ),
    also: listed('llama, fuego, quemar, encender'),
  },
  sprays: {
    words: listed(
      `espray, spray, espráis, aerosol, adhesivo en espray, adhesivo en aerosol, pegamento en espray,
       cola en espray, barniz en espray, pintura en espray, pintura en aerosol, bote de espray, fijador,
       laca, laca de pelo`,
    ),
    not: listed('espray de agua, spray de agua, goma laca'),
    also: listed('pulverizar, rociar, vapor, ventilar, ventilación, aire libre'),
  },
  solvents: {
    words: listed(
      `disolvente, solvente, cola de contacto, pegamento de contacto, adhesivo de contacto,
       cemento de contacto, cemento de goma, cemento de caucho, trementina, aguarrás, gasolina, bencina,
       alcohol de quemar, alcohol isopropílico, alcohol desnaturalizado, alcohol, tinta al alcohol,
       tinta de alcohol, acetona, quitaesmalte, diluyente, tíner, thinner, quita etiquetas, quitaetiquetas,
       quitaadhesivos, removedor de adhesivo`,
    ),
    not: listed(
      `sin disolvente, sin disolventes, pegamento sin disolvente, pegamento sin disolventes,
       quitaesmalte sin acetona, sin acetona, sin alcohol, tinta sin alcohol`,
    ),
    also: listed('vapor, ventilar, ventilación'),
  },
  'instant-glue': {
    words: listed(
      `pegamento instantáneo, adhesivo instantáneo, cola instantánea, superpegamento, super pegamento,
       supercola, super cola, superglue, cianoacrilato, cianocrilato, pegamento rápido,
       pegamento de cianoacrilato, gotita instantánea`,
    ),
  },
  resin: {
    words: listed(
      `resina, resina epoxi, resina UV, epoxi, pegamento epoxi, pegamento de dos componentes,
       adhesivo de dos componentes, adhesivo bicomponente, endurecedor`,
    ),
    not: listed('resina de pino'),
  },
  powders: {
    words: listed(
      `polvo de relieve, polvos de embossing, polvo de embossing, polvo de mica, pigmento, pigmento en polvo,
       purpurina, brillantina, escarcha, diamantina, talco, polvo de tiza, polvo de flocado, flocado`,
    ),
    not: listed(
      `pegamento con purpurina, pegamento de purpurina, cola con purpurina, cartulina con purpurina,
       cartulina de purpurina, papel con purpurina, papel de purpurina, rotulador de purpurina,
       bolígrafo de purpurina, cinta con purpurina, gel con purpurina, goma eva con purpurina,
       pegatina con purpurina, tinta pigmento`,
    ),
    also: listed('polvo'),
  },
  'small-parts': {
    words: listed(
      `perla, perlita, media perla, cuenta de vidrio, cuenta de madera, cuenta de plástico,
       cuenta de colores, abalorio, mostacilla, chaquira, rocalla, strass, gema, piedra brillante, cristal,
       cristalito, cabujón, joya, botón, encuadernador, sujetapapeles de patas, brad, broche latonado,
       ojo móvil, ojos móviles, ojo saltón, ojito móvil, lentejuela, ojal metálico, ojal, ollao, remache,
       charm, colgante metálico, cascabel, campanilla, canica, piedra de vidrio, pompón, minipinza,
       mini pinza, alubia seca, garbanzo, enamel dot, gota de esmalte, bombillita, clavo decorativo`,
    ),
    alone: listed('cuenta'),
    forChildren: listed(
      `almohadilla de espuma, almohadilla adhesiva, almohadilla 3D, cuadrado de espuma, cuadradito de espuma,
       punto de espuma, pastilla de espuma, espuma adhesiva`,
    ),
    not: listed(
      `pila de botón, pila botón, botón magnético, botón de imán, botón de encendido, alicate para ojales,
       alicates para ojales, ponedora de ojales, colocador de ojales, papel cristal, tinta perla,
       polvo perla, cuenta regresiva, cuenta atrás, en cuenta, se cuenta`,
    ),
    also: listed('atragantarse, atragantar, asfixia, asfixiarse, tragar, tragarse, pieza pequeña'),
  },
  magnets: {
    words: listed(
      `imán, iman, neodimio, imán de neodimio, cierre magnético, cierre de imán, broche magnético,
       botón magnético, botón de imán, disco magnético`,
    ),
    not: listed(
      `lámina magnética, lámina de imán, plancha magnética, cinta magnética, tapete magnético,
       hoja magnética`,
    ),
  },
  'button-cells': {
    words: listed(
      `pila de botón, pila botón, pila de litio, pila plana, vela LED, vela de LED, vela eléctrica,
       vela de pilas, vela a pilas, vela con pilas, vela electrónica, velita LED, velita eléctrica, luz LED,
       luces LED, guirnalda de luces, guirnalda LED, tira de luces, módulo de sonido, módulo musical,
       chip musical, CR1216, CR1220, CR1616, CR1620, CR2016, CR2025, CR2032, CR2450, LR41, LR44, AG13`,
    ),
    also: listed('pila, batería'),
  },
  balloons: {
    words: listed('globo, globo de látex, globo de agua, bombita de agua'),
    not: listed('globo de aluminio, globo metálico, globo aerostático, globo terráqueo, globo de texto'),
  },
  allergies: {
    words: listed(
      `látex, guante de látex, guante de goma, goma elástica, gomita elástica, banda elástica, liga elástica,
       líquido de enmascarar, líquido enmascarador, fluido de enmascarar, goma de enmascarar,
       cáscara de nuez, nuez, nueces, avellana, cacahuete, cacahuate, maní, almendra, pistacho,
       cáscara de pistacho, cáscara de huevo, huevera, cartón de huevos, pluma, flor seca, flor prensada,
       lana cruda, engrudo, harina, pasta de harina, cera de abeja, cera de abejas, aceite esencial`,
    ),
    not: listed(
      `sin látex, guante sin látex, pluma estilográfica, pluma de caligrafía, pluma fuente, pluma de dibujo`,
    ),
    also: listed('alérgico, alérgica, alergia'),
  },
}

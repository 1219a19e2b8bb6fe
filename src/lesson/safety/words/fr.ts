import type { HazardName, HazardWords } from '../hazard.ts'
import { listed } from './listed.ts'

/** French. Accents need not be written, neither here nor in a lesson. */
export const fr: Readonly<Record<HazardName, HazardWords>> = {
  blades: {
    words: listed(
      `couteau, cutter, cutteur, couteau de précision, scalpel, bistouri, cutter rotatif, cutter circulaire,
       coupe-cercle, compas coupant, lame de rasoir, lame de rechange, lame de cutter, lame de scalpel,
       lame sécable, couteau à lame sécable, cutter passe-partout, coupe-passe-partout`,
    ),
    not: listed(
      `couteau à peindre, couteau à palette, couteau à beurre, couteau de table, couteau en plastique,
       couteau à enduire`,
    ),
    also: listed('lame'),
  },
  trimmers: {
    words: listed(
      `massicot, rogneuse, coupe-papier, cisaille, cisaille à papier, coupeuse, massicot rotatif,
       rogneuse rotative, guillotine`,
    ),
    not: listed('cisaille de jardin'),
  },
  scissors: {
    words: [],
    forChildren: listed('ciseaux, paire de ciseaux, ciseau, ciseaux cranteurs'),
    not: listed('ciseau à bois'),
  },
  points: {
    words: listed(
      `aiguille, poinçon, alène, pointe à tracer, pointe à piquer, pointeau, perce-papier, piqueur, épingle,
       punaise, compas, pique à brochette, brochette, cure-dent, pic en bois, épingle à nourrice,
       épingle de sûreté`,
    ),
    not: listed(
      `aiguille de pin, aiguille de sapin, aiguille à tricoter, aiguille en plastique, aiguille d’horloge,
       aiguille de montre, aiguille de boussole, épingle à linge, épingle à cheveux, épingle de cravate`,
    ),
    also: listed('piquer'),
  },
  punches: {
    words: listed(
      `perforatrice, perforateur, perforeuse, emporte-pièce, pince à perforer, pince emporte-pièce,
       pince à œillet, pose-œillet, outil à œillet, marteau, maillet, machine de découpe, machine à découper,
       machine de découpe et d’embossage, machine à embosser, machine à gaufrer, plotter de découpe, plotter,
       matrice de découpe, matrice, die, presse à livre, presse à percussion, presse à rouleau, agrafeuse,
       arrondisseur d’angle, coupe-angle, arrondisseur de coin, perce-trou`,
    ),
    also: listed('rouleau, pincer, machine, presse'),
  },
  wire: {
    words: listed(
      `fil de fer, fil métallique, fil de cuivre, fil de laiton, fil d’aluminium, fil alu, fil de fleuriste,
       fil à bijoux, fil à modeler, fil floral, pince coupante, coupe-fil, corde à piano`,
    ),
    not: listed('fil de fer barbelé'),
  },
  film: {
    words: listed(
      `acétate, feuille d’acétate, film plastique, film transparent, film rigide, film polyester,
       feuille plastique, feuille de plastique, feuille transparente, rhodoïd, plastique rétractable,
       feuille de métal, feuille de cuivre, tôle, feuille d’aluminium à repousser, feuille à repousser`,
    ),
    not: listed(
      `film alimentaire, film souple, film étirable, film adhésif, papier transparent, ruban transparent`,
    ),
    also: listed('film'),
  },
  heat: {
    words: listed(
      `pistolet chauffant, pistolet à embosser, pistolet thermique, pistolet à air chaud, heat gun,
       embosseur thermique, décapeur thermique, sèche-cheveux, fer à repasser, fer à souder, mini fer,
       fer chaud, pyrograveur, fer à pyrograver, plastifieuse, plaque chauffante, plaque de cuisson,
       casserole à fondre, presse à chaud, presse thermique, couteau chauffant, cutter thermique,
       stylo chauffant, outil chauffant, outil à chauffer`,
    ),
    alone: listed('fer'),
    also: listed('chaleur, chaud, chaude, chauffer, brûlure, brûler, roussir'),
  },
  'hot-glue': {
    words: listed(
      `pistolet à colle, colle chaude, colle à chaud, colle thermofusible, colle thermo-fusible,
       bâton de colle chaude, bâton de colle thermofusible, bâtonnet de colle chaude, colle hot melt,
       recharge de colle chaude`,
    ),
    also: listed('buse'),
  },
  flames: {
    words: listed(
      `bougie, chauffe-plat, allumette, briquet, allume-gaz, chalumeau, réchaud, flamme nue, feu de camp,
       cire à cacheter, bâton d’encens, encens, cierge magique, cierge, torche`,
    ),
    not: listed(
      `bougie LED, bougie à LED, bougie à pile, bougie électrique, bougie électronique, bougie d’allumage,
       lampe torche`,
    ),
    also: listed('flamme, feu, brûler, allumer'),
  },
  sprays: {
    words: listed(
      `spray, aérosol, bombe aérosol, bombe de peinture, peinture en bombe, colle en spray, colle en bombe,
       colle en aérosol, colle aérosol, colle repositionnable en bombe, vernis en bombe, vernis en spray,
       fixatif, laque à cheveux, laque pour cheveux, bombe de laque, bombe de colle, bombe de vernis`,
    ),
    not: listed('spray d’eau'),
    also: listed('vaporiser, vaporisateur, vapeur, aérer, ventilation, grand air, air libre'),
  },
  solvents: {
    words: listed(
      `solvant, dissolvant, colle contact, colle de contact, colle néoprène, néoprène, colle à solvant,
       dissolution, white-spirit, white spirit, essence de térébenthine, térébenthine, essence à briquet,
       essence C, essence, alcool à brûler, alcool isopropylique, alcool à 90, alcool ménager,
       encre à alcool, encre alcool, acétone, diluant, décolle-étiquette, détachant, colle caoutchouc,
       gaz à briquet, pétrole`,
    ),
    not: listed(
      `colle sans solvant, sans solvant, dissolvant sans acétone, sans acétone, huile essentielle,
       essence de lavande`,
    ),
    also: listed('vapeur, aérer, ventilation, grand air, air libre'),
  },
  'instant-glue': {
    words: listed(
      `colle instantanée, superglue, super glue, super colle, supercolle, colle cyanoacrylate, cyanoacrylate,
       colle extra-forte instantanée, colle forte instantanée, colle express`,
    ),
  },
  resin: {
    words: listed(
      `résine, résine époxy, époxy, époxyde, colle époxy, colle bicomposant, colle à deux composants,
       résine UV, durcisseur`,
    ),
    not: listed('résine de pin'),
  },
  powders: {
    words: listed(
      `poudre, poudre à embosser, poudre d’embossage, poudre de mica, mica, pigment, pigment en poudre,
       poudre nacrée, talc, poussière de craie, paillette, glitter, flocage, poudre de flocage,
       poussière de diamant`,
    ),
    not: listed(
      `colle pailletée, colle à paillettes, papier à paillettes, carton à paillettes, stylo à paillettes,
       gel à paillettes, feutre à paillettes, ruban à paillettes, sucre en poudre, autocollant à paillettes`,
    ),
    also: listed('poussière'),
  },
  'small-parts': {
    words: listed(
      `perle, rocaille, perle de rocaille, demi-perle, strass, gemme, pierre précieuse, bijou, cabochon,
       cristal, cristaux, attache parisienne, brad, bouton, œil mobile, yeux mobiles, yeux qui bougent,
       œil qui bouge, sequin, paillette à coudre, œillet, charm, breloque, clochette, grelot, bille,
       galet de verre, pépite de verre, haricot sec, pois sec, mini-pince à linge, mini pince à linge,
       mini-ampoule, rivet, clou décoratif, pompon, enamel dot, point émail, pastille émail,
       garniture de shaker`,
    ),
    forChildren: listed(
      `pastille de mousse, pastille mousse, carré de mousse, carré mousse, mousse 3D, pastille 3D,
       point de mousse, mousse adhésive`,
    ),
    not: listed(
      `pile bouton, bouton de fleur, bouton d’or, boutonnière, bouton magnétique, bouton aimanté,
       bouton marche, poudre perle, stylo perle, pince à œillet, pose-œillet, outil à œillet, papier cristal,
       papier perlé, carton perlé, stylo bille, stylo à bille, œillet de poète`,
    ),
    also: listed('s’étouffer, étouffer, étouffement, avaler, petite pièce'),
  },
  magnets: {
    words: listed(
      `aimant, mini-aimant, néodyme, aimant néodyme, fermoir magnétique, fermeture magnétique,
       fermeture aimantée, fermoir aimanté, bouton magnétique, bouton aimanté, pastille magnétique,
       pastille aimantée`,
    ),
    not: listed(
      `feuille aimantée, feuille magnétique, plaque magnétique, tapis magnétique, ruban magnétique,
       bande aimantée`,
    ),
  },
  'button-cells': {
    words: listed(
      `pile bouton, pile au lithium, pile lithium, pile ronde, pile plate, bougie LED, bougie à LED,
       bougie à pile, bougie électrique, bougie électronique, guirlande lumineuse, guirlande LED,
       guirlande à LED, mini LED, module sonore, module musical, puce musicale, CR1216, CR1220, CR1616,
       CR1620, CR2016, CR2025, CR2032, CR2450, LR41, LR44, AG13`,
    ),
    also: listed('pile'),
  },
  balloons: {
    words: listed('ballon, ballon de baudruche, baudruche, ballon gonflable, bombe à eau, ballon en latex'),
    not: listed('ballon aluminium, ballon en aluminium, montgolfière, ballon de football, ballon de foot'),
  },
  allergies: {
    words: listed(
      `latex, gant en latex, gant de caoutchouc, gant en caoutchouc, élastique, bracelet élastique,
       caoutchouc, gomme à masquer, masquage liquide, coque de noix, coquille de noix, noix, noisette,
       cacahuète, cacahouète, arachide, amande, coque de pistache, coquille d’œuf, boîte à œufs,
       boîte d’œufs, plume, fleur séchée, fleur pressée, laine brute, colle de farine, colle à la farine,
       colle d’amidon, farine, cire d’abeille, huile essentielle`,
    ),
    not: listed(
      `sans latex, gant sans latex, noix de coco, noisette de colle, noisette de peinture, noisette de gel,
       plume à dessin, plume métallique, stylo à plume, porte-plume, stylo plume, plume de calligraphie`,
    ),
    also: listed('allergique, allergie'),
  },
}

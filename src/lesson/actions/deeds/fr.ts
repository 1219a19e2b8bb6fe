import type { DeedWords } from './deed-words.ts'

/** French: `Couper la base`, `Coupez la base`, `Coupe la base`. */
export const fr: DeedWords = {
  verbs: {
    cut: 'couper découper tailler',
    shape: `recouper rogner raccourcir ébarber arrondir entailler inciser évider perforer poinçonner percer
      déchirer échancrer`,
    score: 'rainer rainurer',
    fold: 'plier replier rabattre déplier courber cintrer',
    stick: 'coller encoller recoller fixer attacher agrafer coudre assembler scotcher',
    lay: `poser placer mettre glisser insérer enfiler suspendre nouer centrer aligner disposer positionner
      appliquer`,
    write: 'écrire dessiner tracer colorier peindre tamponner marquer décorer numéroter',
    turn: 'retourner tourner pivoter',
  },
  called: (verb) => [verb, verb.replace(/er$/, 'e'), verb.replace(/er$/, 'ez')],
  ending: /\p{Ll}(?:er|ir|re|ez)$/u,
  noVerbs:
    'papier cahier premier dernier entier mer hiver vers centre ordre autre entre contre encadre cadre',
  verbLast: false,
  prepositions: `à au aux de du des d en dans sur sous avec par pour contre entre vers depuis chez derrière devant
    autour près hors jusqu`,
  onto: 'à au aux dans sur sous contre derrière devant entre',
  pronouns: 'le la les l y lui leur celui-ci celle-ci ceux-ci',
  several: 'tout tous toute toutes pièces éléments couches reste autres',
  small: `le la les l un une des du de d à au aux et ou puis ensuite enfin alors maintenant aussi encore bien y en
    nouveau fois × x`,
  and: 'et ou puis ensuite enfin alors maintenant',
  notDone: 'ne pas sans avant si jusqu’à quand lorsque pour afin',
}

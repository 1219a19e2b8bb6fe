import { craftKnives } from '../../prose/knives.ts'
import type { Hazard } from '../hazard.ts'

/**
 * A mat larger than the cut, a safety rule, the holding hand behind the blade and out of its path, a sharp blade rather
 * than a blunt one: NSEAD, health and safety, cutting tools. That adults make the cuts for young children: from memory.
 */
export const blades: Hazard = {
  name: 'blades',
  title: 'Blades',
  words: [
    'knife',
    'craft knife',
    ...craftKnives,
    'swivel knife',
    'stencil knife',
    'box cutter',
    'circle cutter',
    'mat cutter',
    'mount cutter',
    'craft cutter',
    'rotary cutter',
    'scalpel',
    'scalpel blade',
    'razor blade',
    'snap-off blade',
    'spare blade',
  ],
  not: ['palette knife', 'painting knife', 'butter knife', 'table knife', 'putty knife', 'plastic knife'],
  also: ['blade'],
  caution:
    'A craft blade is through the skin before it hurts. Cut on a mat and along a steel ruler, with a blade that is sharp: a blunt one slips. Keep the hand that holds the paper behind the blade and out of its path, and cover the blade whenever you put it down.',
  children: 'An adult makes every cut with a blade.',
}

/** Common practice, no source. */
export const trimmers: Hazard = {
  name: 'trimmers',
  title: 'Trimmers and guillotines',
  words: ['trimmer', 'paper trimmer', 'rotary trimmer', 'guillotine', 'paper cutter', 'paper guillotine'],
  not: ['hedge trimmer', 'beard trimmer'],
  caution:
    'A trimmer cuts fingers as well as paper. Keep them behind its guard and off the cutting line, one person at a time, and leave it with the arm locked or the cutter parked.',
  children: 'An adult works the trimmer, or holds the paper down and lets a child move the cutter.',
}

/** Too well known to need a word among grown people. Common practice, no source. */
export const scissors: Hazard = {
  name: 'scissors',
  title: 'Scissors',
  words: [],
  forChildren: ['scissors', 'snips', 'shears', 'pinking shears', 'deckle scissors'],
  caution: 'Carry scissors shut with the points in the fist, and pass them handles first.',
  children: 'Small hands get round ends, everyone sits down to cut, and an adult watches.',
}

/** Common practice, no source. */
export const film: Hazard = {
  name: 'film',
  title: 'Film',
  words: [
    'acetate',
    'acetate sheet',
    'clear film',
    'plastic film',
    'polyester film',
    'stiff film',
    'shrink plastic',
    'tin sheet',
    'metal foil sheet',
    'metal sheet',
  ],
  not: ['soft film', 'cling film', 'sticky-backed film'],
  also: ['film'],
  caution:
    'Film has edges and corners that scratch and cut once it is trimmed. Snip the corners off, and slide no finger along an edge.',
  children: 'An adult cuts the film beforehand and rounds its corners.',
}

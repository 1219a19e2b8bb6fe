import { craftKnives } from '../../prose/knives.ts'
import type { Hazard } from '../hazard.ts'

/**
 * A mat larger than the cut, a safety rule, the holding hand behind the blade and out of its path, a sharp blade rather
 * than a blunt one: NSEAD, health and safety, cutting tools. That adults make the cuts for young children: from memory.
 */
export const blades: Hazard = {
  name: 'blades',
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
}

/** Common practice, no source. */
export const trimmers: Hazard = {
  name: 'trimmers',
  words: ['trimmer', 'paper trimmer', 'rotary trimmer', 'guillotine', 'paper cutter', 'paper guillotine'],
  not: ['hedge trimmer', 'beard trimmer'],
}

/** Too well known to need a word among grown people. Common practice, no source. */
export const scissors: Hazard = {
  name: 'scissors',
  words: [],
  forChildren: ['scissors', 'snips', 'shears', 'pinking shears', 'deckle scissors'],
}

/** Common practice, no source. */
export const film: Hazard = {
  name: 'film',
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
}

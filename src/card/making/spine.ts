import { chosenIn } from '../chosen.ts'
import type { Reading } from '../reading.ts'
import type { Choice, Chosen, FoldStyle } from '../style.ts'
import type { Fields } from '../yaml.ts'

/**
 * The choice of a card that opens like a book or like a tent. A spine on the long or the short side turns with the shut
 * card: turned from portrait to landscape, it is the same sheet turned.
 */
export const spineChoice: Choice = {
  help: 'where the fold is: the card opens like a book, or stands like a stage',
  words: ['left', 'top'],
  byShape: {
    'long side': { portrait: 'left', landscape: 'top', square: 'left' },
    'short side': { portrait: 'top', landscape: 'left', square: 'left' },
  },
}

export const spineOf = ({ choices }: Pick<Chosen, 'choices'>): 'left' | 'top' =>
  choices.spine === 'top' ? 'top' : 'left'

/** The names of the lengths of the shut card across the spine and along it. */
export const sidesOf = (spine: 'left' | 'top') =>
  spine === 'left'
    ? ({ across: 'closed.width', along: 'closed.height' } as const)
    : ({ across: 'closed.height', along: 'closed.width' } as const)

/** What a block chooses, before its mistakes are told: the usual lengths of a fold may depend on it. */
export const chosenBefore = (reading: Reading, fields: Fields, style: FoldStyle): Chosen =>
  chosenIn({ ...reading, findings: [] }, fields, style)

import type { Card } from '../../card/card.ts'
import { suggestWord } from '../../length/finding.ts'
import type { FigureFinding } from '../figure.ts'

export const nothingOnIt: FigureFinding = {
  rule: 'figure-not-drawn',
  severity: 'error',
  message: 'Nothing is stuck on this card, so there are no pieces to lift apart',
  suggestion: 'Show `flat` instead',
}

export function notThere({ structure }: Card, of: string): FigureFinding {
  const loose = structure.pieces.some(({ name, kind }) => name === of && kind === 'loose')
  if (!loose)
    return {
      rule: 'unknown-name',
      severity: 'error',
      message: `Unexpected name \`${of}\`, expected a piece of this card`,
      suggestion: suggestWord(
        of,
        structure.pieces.filter(({ kind }) => kind !== 'loose').map(({ name }) => name),
      ),
    }
  return {
    rule: 'figure-not-drawn',
    severity: 'error',
    message: `\`${of}\` is a loose piece, and the card does not say where it goes`,
    suggestion: 'Show `flat` instead, or make it a layer of the card',
  }
}

export const standsAlone = (of: string): FigureFinding => ({
  rule: 'figure-not-drawn',
  severity: 'error',
  message: `Nothing is stuck on \`${of}\`, and it is stuck on nothing`,
  suggestion: 'Show `flat` instead',
})

export const doesNotFold: FigureFinding = {
  rule: 'figure-not-drawn',
  severity: 'error',
  message: 'This figure needs a card that folds, and this one does not yet',
  suggestion: 'Cure what the check says of its folding first',
}

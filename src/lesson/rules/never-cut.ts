import { endsIn } from '../actions/actions.ts'
import { placeOfAction } from '../actions/course.ts'
import { firstTelling } from '../actions/first-telling.ts'
import { hasPlainLength } from '../actions/plain-length.ts'
import type { Named } from '../prose/named.ts'
import type { Rule } from './rule.ts'

/** A piece of the card that no step cuts. Quiet when no cut at all is understood, or one may be that of the piece. */
export const neverCut: Rule = {
  docs: [
    {
      name: 'never-cut',
      about: 'No step cuts a piece that the card has.',
      example:
        '1. Cut the base to {base.size} and score it at {base.scores}.\n2. Cut the backdrop to {backdrop.size} and stick it on the floor.\n3. Stick the sea wall across.',
    },
  ],
  find: ({ prose, filled: { supplies } }) => {
    const course = prose.course()
    const { actions, asides, sentences, cuts, pieces } = course
    if (cuts.size === 0) return []
    const unknown = [...actions, ...asides].filter(
      ({ kind, objects, says }) =>
        (kind === 'cut' || kind === 'shape') && objects.length === 0 && says === 'other',
    )
    if (unknown.some(hasPlainLength)) return []
    // `The lamp, 4 cm wide, is …`: its size is said, with or without a word for cutting.
    const sized = sentences
      .filter(
        (sentence) =>
          ['text', 'cell'].includes(sentence.kind) &&
          hasPlainLength({ sentence, start: 0, end: sentence.words.length }),
      )
      .flatMap(prose.mentions)
    const bought = [...supplies.each, ...supplies.shared]
    const isElsewhere = (piece: Named): boolean =>
      sized.some(({ named }) => named === piece) ||
      unknown.some(({ noun }) => noun !== undefined && endsIn(piece.name, noun)) ||
      bought.some(({ item }) => item.toLowerCase().includes(piece.name.toLowerCase()))
    const uses = firstTelling(course, ({ objects, onto }) => [...objects, ...onto])
    return pieces
      .filter((piece) => !cuts.has(piece) && !isElsewhere(piece))
      .map((piece) => {
        const use = uses.get(piece)
        const { name, card } = piece
        const place = use ? placeOfAction(use) : (card.places.get(name) ?? card.places.get('fold'))
        return {
          rule: 'never-cut',
          severity: 'warning' as const,
          message: `No step cuts \`${name}\``,
          suggestion: `Say it ${use ? 'there or ' : ''}in a step of its own: \`Cut the ${name} to {${name}.size}.\``,
          ...(place && { place }),
        }
      })
  },
}

import type { Action } from '../actions/action.ts'
import { endsIn } from '../actions/actions.ts'
import { type Course, placeOfAction, stepOf } from '../actions/course.ts'
import type { Mention } from '../prose/mentions.ts'
import type { Named } from '../prose/named.ts'
import type { Sentence } from '../prose/sentence.ts'
import type { Rule } from './rule.ts'

/**
 * A piece that is cut, and then nothing is done with it: a layer or a span is not put anywhere, any other piece is not
 * scored, folded, stuck, wrapped or written on. Quiet when a later step puts something somewhere whose words are not
 * understood.
 */
export const neverUsed: Rule = {
  docs: [
    {
      name: 'never-used',
      about: 'A piece is cut, and nothing is done with it.',
      example:
        '1. Cut the base to {base.size} and score it at {base.scores}.\n2. Cut the backdrop to {backdrop.size}.\n3. Cut the sea wall to {sea wall.size} and stick it across.',
    },
  ],
  find: ({ prose }) => {
    const course = prose.course()
    const understood = new Set(course.actions.map(({ sentence }) => sentence))
    const untold = course.sentences.filter(
      (sentence) =>
        sentence.kind === 'text' &&
        sentence.step !== undefined &&
        sentence.callout === undefined &&
        !understood.has(sentence),
    )
    return [...course.cuts].flatMap(([piece, { action: cut }]) => {
      if (!cut || isUsed(piece, cut, course) || mayBeUsed(piece, cut, untold, course, prose.mentions))
        return []
      const { name, card } = piece
      const on = card.layers.find((layer) => layer.name === name)?.on[0]
      return [
        {
          rule: 'never-used',
          severity: 'warning' as const,
          message: `Step ${stepOf(cut)} cuts \`${name}\`, and nothing is done with it`,
          suggestion: on
            ? `Say where it goes: \`Stick the ${name} on the ${on}.\``
            : `Say what becomes of it, such as \`Stick the ${name} …\``,
          place: placeOfAction(cut),
        },
      ]
    })
  },
}

function isUsed(piece: Named, cut: Action, { actions, pieceOf }: Course): boolean {
  const kind = piece.card.structure.pieces.find(({ name }) => name === piece.name)?.kind
  const isPut = kind === 'layer' || kind === 'span'
  const isIt = ({ named }: { named: Named }): boolean => pieceOf(named) === piece
  return actions.some(
    (action) =>
      stepOf(action) >= stepOf(cut) &&
      action !== cut &&
      ((isPut
        ? puts(action) && action.objects.some(isIt)
        : (action.kind !== 'cut' && action.objects.some(isIt)) || action.onto.some(isIt)) ||
        (puts(action) && mayBe(action, piece))),
  )
}

/** Whether a sentence that has no verb that is known speaks of the piece: it may say anything, as `Pop it on the backdrop.` */
function mayBeUsed(
  piece: Named,
  cut: Action,
  untold: readonly Sentence[],
  { pieceOf }: Course,
  mentions: (sentence: Sentence) => Mention[],
): boolean {
  const from = stepOf(cut)
  return untold.some(
    (sentence) =>
      stepOf({ sentence }) >= from &&
      (mentions(sentence).some(({ by, named }) => by !== 'last word' && pieceOf(named) === piece) ||
        (stepOf({ sentence }) <= from + 1 && /[^.]\s(?:it|them|each|one)\b/i.test(sentence.words))),
  )
}

const puts = ({ kind }: Action): boolean => kind === 'stick' || kind === 'lay'

/** Whether what is put somewhere may be the piece, though it is not called by its name. */
const mayBe = ({ kind, says, objects, onto, noun = '' }: Action, { name }: Named): boolean =>
  objects.length === 0 &&
  (says === 'pronoun' ||
    says === 'several' ||
    endsIn(name, noun) ||
    (says === 'other' && (kind === 'stick' || onto.length > 0)))

import type { Finding } from '../../length/finding.ts'
import type { Action } from '../actions/action.ts'
import { type Course, placeOfAction, stepOf } from '../actions/course.ts'
import { coveringsOf } from '../actions/coverings.ts'
import { earlyUses } from '../actions/early-uses.ts'
import type { Named } from '../prose/named.ts'
import type { Rule } from './rule.ts'

/** A layer or a span is stuck before what it covers, or before what it is stuck on has been cut. */
export const stuckTooEarly: Rule = {
  docs: [
    {
      name: 'stuck-too-early',
      about: 'A piece is stuck down before something that belongs under it.',
      example:
        '1. Cut the base to {base.size} and score it at {base.scores}.\n2. Cut the sea wall to {sea wall.size} and stick it on both tabs.\n3. Cut the backdrop to {backdrop.size} and stick it on the floor.',
    },
  ],
  find: ({ prose, filled: { cards } }) => {
    const course = prose.course()
    const early = new Set(earlyUses(course).map(({ piece }) => piece))
    return cards.flatMap(({ card }) => {
      const named = (name: string): Named | undefined =>
        course.pieceOf({ card, name, kind: 'piece', piece: name })
      return [
        ...coveringsOf(card).flatMap(({ under, over }) => covered(course, named(under), named(over))),
        ...card.layers.flatMap((layer) =>
          layer.on.flatMap((plate) => {
            const piece = card.structure.plates.find(({ name }) => name === plate)?.piece ?? ''
            return uncut(course, named(layer.name), named(piece), early)
          }),
        ),
      ].filter(({ message }, i, all) => all.findIndex((other) => other.message === message) === i)
    })
  },
}

function covered(course: Course, under: Named | undefined, over: Named | undefined): Finding[] {
  const [first, later] = [over && stuckIn(course, over), under && laidIn(course, under)]
  if (!first || !later || stepOf(first) >= stepOf(later)) return []
  return [
    {
      rule: 'stuck-too-early',
      severity: 'warning',
      message: `Step ${stepOf(first)} sticks \`${over?.name}\` over the place of \`${under?.name}\`, which step ${stepOf(later)} sticks`,
      suggestion: `Stick \`${under?.name}\` before step ${stepOf(first)}, or move step ${stepOf(first)} behind step ${stepOf(later)}`,
      place: placeOfAction(first),
    },
  ]
}

/** @param early what is used before it is cut, which is told already. */
function uncut(
  course: Course,
  layer: Named | undefined,
  target: Named | undefined,
  early: ReadonlySet<Named>,
): Finding[] {
  if (!layer || !target || early.has(layer) || early.has(target)) return []
  const [first, cut] = [stuckIn(course, layer), course.cuts.get(target)]
  if (!first || !cut || stepOf(first) >= cut.step) return []
  return [
    {
      rule: 'stuck-too-early',
      severity: 'warning',
      message: `Step ${stepOf(first)} sticks \`${layer.name}\` on \`${target.name}\`, which step ${cut.step} cuts`,
      suggestion: `Cut \`${target.name}\` before step ${stepOf(first)}, or move step ${stepOf(first)} behind step ${cut.step}`,
      place: placeOfAction(first),
    },
  ]
}

/** The first action that surely sticks a piece where it belongs. */
function stuckIn({ actions, cuts, pieceOf }: Course, piece: Named): Action | undefined {
  return actions.find(
    (action) =>
      (action.kind === 'stick' ||
        (action.kind === 'lay' && (action.onto.length > 0 || /\bacross\b/i.test(wordsOf(action))))) &&
      action.objects.some(
        ({ named, sure }) => pieceOf(named) === piece && (sure || cuts.get(piece)?.step === stepOf(action)),
      ),
  )
}

/** The first action that may put it there. */
const laidIn = ({ actions, pieceOf }: Course, piece: Named): Action | undefined =>
  actions.find(
    ({ kind, objects }) =>
      (kind === 'stick' || kind === 'lay') && objects.some(({ named }) => pieceOf(named) === piece),
  )

const wordsOf = ({ sentence, start, end }: Action): string => sentence.words.slice(start, end)

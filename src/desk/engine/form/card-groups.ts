import { foldStyles } from '../../../card/fold-styles.ts'
import { wordsOf } from '../../../card/style.ts'
import type { Field, FieldGroup } from '../form.ts'
import { blockKeyHelp } from '../vocabulary/key-help.ts'
import { namesIn } from './addition.ts'
import { fieldAt, type Making } from './field.ts'
import type { FoldOfCard } from './fold.ts'
import { groupOf } from './part-groups.ts'
import { at, has, isGroup } from './plain.ts'
import { stockFields } from './stock-fields.ts'

const choices = (words: readonly string[]) => words.map((word) => ({ value: word, label: word }))

/** The card itself: its fold, its size, and what this fold can be told. */
export function cardGroup(making: Making, fold: FoldOfCard | undefined): FieldGroup {
  const top = fieldAt(making, ['fold'], {
    kind: 'choice',
    choices: choices([...foldStyles.keys(), 'free']),
    ...helped(fold?.style.summary ?? blockKeyHelp('fold')),
  })
  const closed = fieldAt(making, ['closed'], {
    kind: 'size',
    name: 'closed.size',
    suggestions: ['5 x 7 in', '7 x 5 in', 'A6 portrait', 'A6 landscape', '5 x 5 in'],
    help: 'Width first: `7 x 5 in`, `180 x 120 mm`, or a standard size such as `A6 landscape`.',
  })
  return {
    name: 'card',
    kind: 'card',
    title: 'The card',
    path: [],
    fields: [top, closed, ...foldFields(making, fold)],
    removable: false,
    trouble: [],
  }
}

const helped = (help: string | undefined) => (help === undefined ? {} : { help })

/** Words, counts and lengths of the fold. Those of parts that it lists stand with their parts. */
function foldFields(making: Making, fold: FoldOfCard | undefined): Field[] {
  if (!fold) return []
  const { choices: words = {}, counts = {}, parameters } = fold.style
  return [
    ...Object.entries(words).map(([key, choice]) =>
      fieldAt(making, [key], {
        kind: 'choice',
        choices: choices(wordsOf(choice)),
        usual: wordsOf(choice)[0],
        help: sentence(choice.help),
      }),
    ),
    ...Object.entries(counts).map(([key, { help, usual, least, most }]) =>
      fieldAt(making, [key], {
        kind: 'count',
        usual: String(usual),
        help: `${sentence(help)} From ${least} to ${most}.`,
      }),
    ),
    ...Object.entries(parameters)
      .filter(([key]) => !key.includes('.'))
      .map(([key, { help, usual }]) =>
        fieldAt(making, [key], { kind: 'length', name: key, usual, help: sentence(help) }),
      ),
  ]
}

const sentence = (help: string): string => `${help[0]?.toUpperCase() ?? ''}${help.slice(1)}.`

/** The boxes that a box step lists. */
export function boxGroups(making: Making, fold: FoldOfCard | undefined): FieldGroup[] {
  const names = fold?.keys.includes('boxes') ? namesIn(making.card.plain, 'boxes') : []
  return names.map((name, i) =>
    groupOf(making, 'box', ['boxes', name], name, (path) => [
      fieldAt(making, [...path, 'on'], {
        kind: 'choice',
        choices: choices(names.slice(0, i)),
        usual: 'the fold of the card',
        help: 'The box that it stands on, if it stands on one.',
      }),
      ...['height', 'depth', 'width', 'at'].map((key) =>
        fieldAt(making, [...path, key], {
          kind: 'length',
          name: `${name}.${key}`,
          ...helped(fold?.style.parameters[`${name}.${key}`]?.help),
        }),
      ),
    ]),
  )
}

export const baseGroup = (making: Making): FieldGroup => ({
  ...groupOf(making, 'base', ['base'], 'base', (path) => stockFields(making, path, 'card')),
  title: 'The base',
})

/** The envelope, if the card has one. It may be written as its make alone. */
export function envelopeGroup(making: Making): FieldGroup[] {
  const { plain } = making.card
  if (!has(plain, ['envelope'])) return []
  const short = at(plain, ['envelope'])
  const path = typeof short === 'string' ? ['envelope'] : ['envelope', 'make']
  const make = fieldAt(making, path, {
    kind: 'choice',
    label: 'Made as',
    choices: choices(['diagonal', 'side seam']),
    usual: 'diagonal',
    help: 'A square sheet folded round the card at a slant, or one with a seam on both sides.',
  })
  const isSeam = make.text === 'side seam'
  const length = (key: string): Field =>
    fieldAt(making, ['envelope', key], { kind: 'length', name: `envelope.${key}` })
  const group = groupOf(making, 'envelope', ['envelope'], 'envelope', () => [
    make,
    length('clearance'),
    ...(isSeam || has(plain, ['envelope', 'flap']) ? [length('flap')] : []),
    ...(!isSeam || has(plain, ['envelope', 'seam']) ? [length('seam')] : []),
    ...stockFields(making, ['envelope'], 'envelope paper', { direction: false }),
  ])
  return [{ ...group, title: 'The envelope' }]
}

/** Keys that this fold does not take, so that they can be taken out. */
export function otherGroup(making: Making, keys: readonly string[]): FieldGroup[] {
  const fields = keys.map((key) =>
    fieldAt(making, [key], {
      kind: isGroup(at(making.card.plain, [key])) ? 'words' : 'length',
      help: 'This fold does not take it.',
    }),
  )
  return fields.length === 0
    ? []
    : [
        {
          name: 'other',
          kind: 'other',
          title: 'Not for this fold',
          path: [],
          fields,
          removable: false,
          trouble: [],
        },
      ]
}

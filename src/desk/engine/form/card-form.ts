import { readYaml } from '../../../card/yaml.ts'
import { errorsIn, type Finding } from '../../../length/finding.ts'
import type { Refusal } from '../engine.ts'
import type { Addition, CardForm, FieldGroup, Trouble } from '../form.ts'
import { type KeptLesson, lessonAt } from '../kept-lesson.ts'
import { listOfPart, namesIn } from './addition.ts'
import { type CardBlock, openCard } from './card-block.ts'
import { baseGroup, boxGroups, cardGroup, envelopeGroup, otherGroup } from './card-groups.ts'
import type { Making } from './field.ts'
import { type FoldOfCard, foldOf } from './fold.ts'
import { partGroups } from './part-groups.ts'
import { at, isGroup } from './plain.ts'
import { told, troublesIn } from './troubles.ts'
import { valuesOf } from './values.ts'

/** The fields of a card block, as its lesson has it, in its own size and unit. */
export const formAt = (text: string, card: string): CardForm | Refusal => cardForm(lessonAt(text, {}), card)

export function cardForm({ lesson, filled }: KeptLesson, name: string): CardForm | Refusal {
  const card = openCard(lesson, name)
  if (!card)
    return {
      refused: `The lesson has no card \`${name}\``,
      suggestion:
        'Write a card block: three backticks and `card`, the lines of the card, and three backticks',
    }
  const { fields } = readYaml(card.block).top.value
  const fold = foldOf(fields, filled.unit)
  const troubles = troublesIn(filled.findings.filter(isNew(card)), stretchOf(card))
  const built = filled.cards.find((proven) => proven.card.name === name)?.card
  const making: Making = { card, troubles, measure: valuesOf(built, filled.unit) }
  const groups = groupsOf(making, fold)
  const onlyInText = fold?.keys.filter((key) => fields.has(key) && isOnlyText(card, key, groups)) ?? []
  return {
    card: name,
    fold: fold?.style.name ?? '',
    editable: errorsIn(card.broken).length === 0,
    groups,
    additions: fold ? additionsFor(card, fold) : [],
    onlyInText,
    trouble: [...card.broken.map(unread), ...troubles.take(stretchOf(card))],
  }
}

/** What is broken is told first, once, and in fewer words than the reader of YAML has. */
const unread = (finding: Finding): Trouble => ({
  ...told(finding),
  message: `Line ${finding.place?.line ?? 1} cannot be read`,
})

const isNew =
  ({ broken }: CardBlock) =>
  ({ message }: Finding): boolean =>
    broken.every((finding) => finding.message !== message)

function stretchOf({ block }: CardBlock): { from: number; to: number } {
  const { offset } = block.place
  return { from: offset, to: offset + block.text.length }
}

function groupsOf(making: Making, fold: FoldOfCard | undefined): FieldGroup[] {
  const own = new Set<string>([...general, ...(fold?.keys ?? [])])
  const { plain } = making.card
  const strange = isGroup(plain) ? [...plain.keys()].filter((key) => !own.has(key)) : []
  return [
    cardGroup(making, fold),
    ...boxGroups(making, fold),
    baseGroup(making),
    ...partGroups(making, fold),
    ...envelopeGroup(making),
    ...(fold ? otherGroup(making, strange) : []),
  ]
}

const general = ['fold', 'closed', 'base', 'envelope', ...Object.values(listOfPart)]

const isOnlyText = (card: CardBlock, key: string, groups: readonly FieldGroup[]): boolean =>
  at(card.plain, [key]) !== undefined &&
  groups.every(({ path, fields }) => path[0] !== key && fields.every((field) => field.path[0] !== key))

const labels: Readonly<Record<Addition, string>> = {
  layer: 'A layer',
  span: 'A strip across',
  window: 'A window',
  lettering: 'Letters',
  piece: 'A loose piece',
  envelope: 'An envelope',
}

/** What may be added, each with a name that nothing has yet. */
function additionsFor({ plain }: CardBlock, { panels }: FoldOfCard): CardForm['additions'] {
  const taken = new Set([...panels, ...Object.values(listOfPart).flatMap((list) => namesIn(plain, list))])
  const free = (word: string): string => {
    for (let i = 1; ; i++) {
      const name = i === 1 ? word : `${word} ${i}`
      if (!taken.has(name)) return name
    }
  }
  const names: Readonly<Record<Addition, string>> = {
    layer: free('mat'),
    span: free('strip'),
    window: free('window'),
    lettering: free('letters'),
    piece: free('tag'),
    envelope: '',
  }
  return (Object.keys(labels) as Addition[])
    .filter((what) => what !== 'envelope' || at(plain, ['envelope']) === undefined)
    .map((what) => ({ what, label: labels[what], name: names[what] }))
}

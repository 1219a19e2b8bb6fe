import type { Field, FieldGroup, GroupKind } from '../form.ts'
import { namesIn } from './addition.ts'
import { borderFields } from './border-fields.ts'
import { fieldAt, fieldsAt, keysAt, type Making, type Wish, whereIs } from './field.ts'
import type { FoldOfCard } from './fold.ts'
import { at, has, isGroup, isList, type Plain } from './plain.ts'
import { stockFields } from './stock-fields.ts'

type Choices = NonNullable<Field['choices']>

/** What lies on the card, one group a part, in the order of the kinds and then of the text. */
export function partGroups(making: Making, fold: FoldOfCard | undefined): FieldGroup[] {
  const { plain } = making.card
  const layers = namesIn(plain, 'layers')
  const spans = namesIn(plain, 'spans')
  const pieces = namesIn(plain, 'pieces')
  const panels = choicesOf(fold?.panels ?? [])
  const places = (but: string, more: readonly string[] = []): Choices => [
    ...panels,
    ...choicesOf(fold?.otherNames.filter((name) => wordsIn(plain).has(name)) ?? []),
    ...[...layers, ...spans, ...more]
      .filter((name) => name !== but)
      .map((name) => ({ value: name, label: name })),
  ]
  const field = (path: readonly string[], key: string, wish: Wish): Field =>
    fieldAt(making, [...path, key], wish)
  const length = (path: readonly string[], key: string, usual?: string): Field =>
    field(path, key, { kind: 'length', name: `${path.at(-1)}.${key}`, ...(usual !== undefined && { usual }) })
  const raise = (path: readonly string[]): Field =>
    field(path, 'raise', {
      kind: 'length',
      ...(has(plain, [...path, 'raise']) && { name: `${path.at(-1)}.raise` }),
      usual: 'nothing, it lies flat',
      suggestions: ['thin foam tape', 'foam tape', 'thick foam tape'],
    })
  const size = (path: readonly string[]): Field =>
    field(path, 'size', { kind: 'size', name: `${path.at(-1)}.size` })

  return [
    ...parts(making, 'layer', 'layers', (path) => [
      field(path, 'on', { kind: 'panels', choices: places(path.at(-1) ?? '') }),
      ...borderFields(making, path),
      ...stockFields(making, path, 'paper'),
      raise(path),
      field(path, 'side', {
        kind: 'choice',
        choices: choicesOf(['inside', 'outside']),
        usual: 'the side that shows',
      }),
    ]),
    ...parts(making, 'span', 'spans', (path) => [
      length(path, 'height'),
      field(path, 'at', {
        kind: 'length',
        usual: 'bottom',
        suggestions: ['bottom', 'middle', 'top'],
        name: `${path.at(-1)}.at`,
        help: '`bottom`, `middle` or `top` of its panels, or how far above their lower edge.',
      }),
      ...(fold?.hasSpans && !at(plain, [...path, 'from']) && !at(plain, [...path, 'to'])
        ? []
        : [
            field(path, 'from', { kind: 'choice', choices: places(path.at(-1) ?? '') }),
            field(path, 'to', { kind: 'choice', choices: places(path.at(-1) ?? '') }),
          ]),
      length(path, 'width'),
      ...stockFields(making, path, 'card'),
      raise(path),
    ]),
    ...parts(making, 'window', 'apertures', (path) => [
      field(path, 'on', { kind: 'panels', choices: places(path.at(-1) ?? '') }),
      size(path),
      length(path, 'left', 'in the middle'),
      length(path, 'bottom', 'in the middle'),
      length(path, 'rim'),
    ]),
    ...parts(making, 'lettering', 'lettering', (path) => [
      field(path, 'on', { kind: 'choice', choices: places(path.at(-1) ?? '', pieces) }),
      ...fieldsAt(making, [...path, 'letters'], { kind: 'words' }),
      ...fieldsAt(making, [...path, 'widths'], { kind: 'length', name: `${path.at(-1)}.width` }),
      length(path, 'margin'),
      ...stockFields(making, path, 'card', { direction: false }),
      raise(path),
    ]),
    ...parts(making, 'piece', 'pieces', (path) => [
      size(path),
      field(path, 'count', { kind: 'count', usual: '1' }),
      ...stockFields(making, path, 'card'),
    ]),
  ]
}

const choicesOf = (words: readonly string[]): Choices => words.map((word) => ({ value: word, label: word }))

/** Every text in a block. */
function wordsIn(plain: Plain): ReadonlySet<string> {
  if (isGroup(plain)) return new Set([...plain.values()].flatMap((one) => [...wordsIn(one)]))
  if (isList(plain)) return new Set(plain.flatMap((one) => [...wordsIn(one)]))
  return new Set(typeof plain === 'string' ? [plain] : [])
}

function parts(
  making: Making,
  kind: GroupKind,
  list: string,
  fields: (path: readonly string[]) => Field[],
): FieldGroup[] {
  return namesIn(making.card.plain, list).map((name) => groupOf(making, kind, [list, name], name, fields))
}

/** A group with the fields that are usual for it, and those of keys that it should not have. */
export function groupOf(
  making: Making,
  kind: GroupKind,
  path: readonly string[],
  title: string,
  fieldsOf: (path: readonly string[]) => Field[],
): FieldGroup {
  const fields = fieldsOf(path)
  const span = whereIs(making.card, path)
  const known = new Set(fields.map((field) => field.path[path.length]))
  const strange = keysAt(making, path).filter((key) => !known.has(key))
  const all = [...fields, ...strange.map((key) => fieldAt(making, [...path, key], { kind: 'words' }))]
  const comes = kind === 'lettering' ? undefined : making.measure(`${title}.size`)
  return {
    name: path.join('.'),
    kind,
    title,
    path,
    fields: all,
    ...span,
    ...(comes !== undefined && { comes }),
    removable: path.length === 2 || kind === 'envelope',
    trouble: making.troubles.take(span),
  }
}

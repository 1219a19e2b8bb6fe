import { readYaml } from '../../../card/yaml.ts'
import { tokens } from '../../../length/tokens.ts'
import type { Lesson } from '../../../lesson/lesson.ts'
import type { Refusal } from '../engine.ts'
import type { Addition } from '../form.ts'
import type { CardBlock } from './card-block.ts'
import { type FoldOfCard, foldOf } from './fold.ts'
import { at, has, isGroup, type Plain, type PlainMap } from './plain.ts'

/** Where each part of a card is listed. */
export const listOfPart = {
  layer: 'layers',
  span: 'spans',
  window: 'apertures',
  lettering: 'lettering',
  piece: 'pieces',
} as const

/** A new part with what it needs to be one: the teacher changes it from there. */
export function addition(
  lesson: Lesson,
  card: CardBlock,
  what: Addition,
  name: string,
): { readonly path: readonly string[]; readonly value: Plain } | Refusal {
  const unit = lesson.frontMatter.units
  const fold = foldOf(readYaml(card.block).top.value.fields, unit)
  if (!fold) return { refused: 'The card has no fold yet', suggestion: 'Choose the fold first' }
  if (what === 'envelope') {
    if (has(card.plain, ['envelope'])) return { refused: 'The card has an envelope already' }
    const clearance = unit === 'mm' ? '6 mm' : '1/4 in'
    return { path: ['envelope'], value: group({ make: 'diagonal', clearance, stock: 'envelope paper' }) }
  }
  const wrong = wrongName(name, takenIn(card.plain, fold))
  if (wrong) return wrong
  return { path: [listOfPart[what], name], value: group(usualPart(what, card.plain, fold, unit === 'mm')) }
}

const group = (fields: Readonly<Record<string, string>>): PlainMap => new Map(Object.entries(fields))

function usualPart(
  what: Exclude<Addition, 'envelope'>,
  plain: Plain,
  { panels, style, hasSpans }: FoldOfCard,
  metric: boolean,
): Record<string, string> {
  const layers = namesIn(plain, 'layers')
  const spans = namesIn(plain, 'spans')
  const panel = panels.find((one) => style.panels[one] !== undefined) ?? 'base'
  switch (what) {
    case 'layer': {
      const covered = new Set(layers.flatMap((layer) => wordsAt(plain, ['layers', layer, 'on'])))
      const on = panels.find((one) => !covered.has(one)) ?? panel
      return { on, border: metric ? '3 mm' : '1/8 in', stock: 'patterned paper' }
    }
    case 'span': {
      const height = 'closed.height / 4'
      const stock = 'white card'
      return hasSpans
        ? { height, at: 'bottom', stock }
        : { height, at: 'bottom', from: panel, to: panel, stock }
    }
    case 'window': {
      const on = layers.at(-1) ?? panel
      return { on, size: `${on}.width / 2 x ${on}.height / 2` }
    }
    case 'lettering': {
      const on = spans.at(-1) ?? layers.at(-1) ?? panel
      return { on, letters: 'HELLO', widths: `${on}.width / 8` }
    }
    case 'piece':
      return { size: metric ? '25 x 25 mm' : '1 x 1 in', stock: 'white card' }
  }
}

/** The names in one of the lists. */
export const namesIn = (plain: Plain, list: string): string[] => {
  const found = at(plain, [list])
  return isGroup(found) ? [...found.keys()] : []
}

/** One word or a list of them. */
export function wordsAt(plain: Plain, path: readonly string[]): string[] {
  const found = at(plain, path)
  if (typeof found === 'string') return [found.trim()]
  return Array.isArray(found) ? found.filter((item): item is string => typeof item === 'string') : []
}

function takenIn(plain: Plain, { panels, style, otherNames }: FoldOfCard): Set<string> {
  return new Set([
    ...['closed', 'card', 'base', 'envelope'],
    ...panels,
    ...otherNames,
    ...(style.pieces ?? []),
    ...Object.keys(style.parameters).map((key) => key.split('.')[0] ?? key),
    ...Object.values(listOfPart).flatMap((list) => namesIn(plain, list)),
  ])
}

function wrongName(name: string, taken: ReadonlySet<string>): Refusal | undefined {
  if (name === '') return { refused: 'It needs a name', suggestion: 'Write one, such as `harbour wall`' }
  if (taken.has(name))
    return {
      refused: `\`${name}\` is the name of another part of this card`,
      suggestion: 'Write another name',
    }
  const [word, end] = tokens(name)
  return word?.kind === 'name' && word.text === name && end?.kind === 'end'
    ? undefined
    : {
        refused: `\`${name}\` cannot be a name, because a measure could not ask for it`,
        suggestion: 'Write words of letters, such as `harbour wall`; a number may stand at the end',
      }
}

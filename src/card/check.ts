import { type Finding, hasErrors, listOf, suggestWord } from '../length/finding.ts'
import { onGrid } from '../length/grid.ts'
import type { Length, Size, Unit } from '../length/length.ts'
import { zero } from '../length/length.ts'
import { once } from '../length/once.ts'
import { type Wording, wordingOf } from '../wording/wording.ts'
import { assemble } from './assemble.ts'
import { layBench } from './bench.ts'
import type { Card } from './card.ts'
import { chosenIn, entriesOf, keysOf, styleFor } from './chosen.ts'
import { envelopeCell } from './envelope.ts'
import { foldStyles } from './fold-styles.ts'
import { freeFold, freeKeys } from './folds/free.ts'
import { mailingCell } from './mailing.ts'
import { defineEnvelope, defineSize } from './measures.ts'
import { mechanismCell } from './mechanism.ts'
import { checkOffPanel } from './off-panel.ts'
import type { Held, Origin } from './origins.ts'
import { checkKeys, isTooLong, type Reading, report, say, unlessBroken } from './reading.ts'
import { makeScope } from './scope.ts'
import type { InCrease } from './setbacks/between.ts'
import { checkSetbacks } from './setbacks/check.ts'
import { type Shape, shapeIn } from './shape.ts'
import { sideOnGrid, sizeCell } from './sizes.ts'
import { stockReader } from './stock.ts'
import type { Structure } from './structure.ts'
import type { ReadFold } from './style.ts'
import { tooManyParts } from './too-many.ts'
import { type Fields, readYaml, type YamlBlock } from './yaml.ts'

/** What a card block is evaluated with. */
export interface CardWishes {
  readonly unit: Unit
  readonly grid: Length
  /** How texts speak that a lesson can ask for; nothing else needs it, and they are English when it is absent. */
  readonly wording?: Wording
  /** Another size than the block's own. */
  readonly closed?: Size
  /** Thickness of the shut card, from whoever can fold it; taken as nothing when absent or when it cannot fold. */
  readonly thickness?: (structure: Structure) => Length | undefined
  /** What lies in the creases of the shut card, from the same; taken as nothing when absent or when it cannot fold. */
  readonly inCreases?: (structure: Structure) => InCrease | undefined
  /** Lengths that are given, whatever the block says of them. */
  readonly held?: Held
  /** Which way the card counts as standing, where its size shall not decide. */
  readonly shape?: Shape
}

/** The keys that every card block has, whatever its fold. */
export const blockKeys = [
  'fold',
  'closed',
  'base',
  'layers',
  'spans',
  'lettering',
  'apertures',
  'pieces',
  'envelope',
] as const

/**
 * Checks a card block into a card without unknowns.
 *
 * @returns the card unless there are errors, and all findings, with their places in the file.
 */
export function checkCard(block: YamlBlock, wishes: CardWishes): { card?: Card; findings: Finding[] } {
  const { top, findings } = readYaml(block)
  const fields = top.value.fields
  const tooMany = tooManyParts(fields)
  if (tooMany) return { findings: [...findings, tooMany] }
  const origins = new Map<string, Origin>()
  const shape = wishes.shape ?? shapeIn(fields, wishes.grid, wishes.closed)
  const reading: Reading = {
    scope: makeScope(),
    findings,
    unit: wishes.unit,
    grid: wishes.grid,
    wording: wishes.wording ?? wordingOf('en', wishes.unit),
    places: new Map(),
    origins,
    ...(wishes.held && { held: wishes.held }),
    ...(shape && { shape }),
  }
  for (const { key, keyPlace } of fields.values()) reading.places.set(key, keyPlace)
  const stockOf = stockReader(reading, fields)
  const written = styleOf(reading, fields, block, stockOf)
  if (!written) return { findings }
  const chosen = chosenIn(reading, fields, written.style)
  const fold = { ...written, style: styleFor(written.style, chosen) }
  const { style } = fold
  const own = style.name === 'free' ? freeKeys : keysOf(style)
  checkKeys(reading, fields, [...blockKeys, ...own], `a \`${style.name}\` card`)

  const closed = closedCell(reading, fields, block, wishes.closed)
  const built = mechanismCell(reading, fields, fold, chosen, closed, stockOf)
  const bareCreases = once(() => wishes.inCreases?.(built()))
  const bench = layBench(reading, fields, fold.style, chosen, built, stockOf, bareCreases)
  const structure = reading.scope.cell('card', () => assemble(built(), bench))
  const thickness = reading.scope.cell('card.thickness', () => wishes.thickness?.(structure()) ?? zero)
  reading.scope.define('card.thickness', () => ({
    kind: 'length',
    value: onGrid(thickness(), wishes.grid, 'up'),
  }))
  const envelopeField = fields.get('envelope')
  const envelope = envelopeField && envelopeCell(bench, envelopeField, closed, thickness)
  if (envelope) defineEnvelope(reading.scope, envelope, reading.wording)
  const paper = stockOf(new Map(), 'envelope paper').caliper
  const mailing = mailingCell(reading.scope, { closed, thickness, envelope, paper }, reading.wording)

  reading.scope.settle(({ rule, message, suggestion = 'Give it a plain length' }) =>
    report(reading, rule, block.place, message, suggestion),
  )
  const card = unlessBroken((): Card => {
    const layers = [...bench.layers.values()].flatMap((cell) => cell().layer ?? [])
    const { span } = built()
    return {
      name: block.name,
      fold: style.name,
      closed: closed(),
      unit: wishes.unit,
      grid: wishes.grid,
      structure: structure(),
      ...(span && { span }),
      layers,
      lettering: [...bench.lettering.values()].map((cell) => cell()),
      ...(envelope && { envelope: envelope() }),
      mailing: mailing(),
      names: reading.scope,
      places: reading.places,
      origins,
    }
  })
  if (card) {
    checkSetbacks(reading, card, wishes.inCreases?.(card.structure))
    checkOffPanel(reading, card)
  }
  const all = distinct(findings)
  return card && !hasErrors(all) ? { card, findings: all } : { findings: all }
}

function styleOf(
  reading: Reading,
  fields: Fields,
  block: YamlBlock,
  stockOf: ReturnType<typeof stockReader>,
): ReadFold | undefined {
  const field = fields.get('fold')
  const names = [...foldStyles.keys(), 'free']
  if (field?.value.kind !== 'text') {
    report(
      reading,
      'missing-key',
      field?.keyPlace ?? block.place,
      'The card block does not say which fold it is',
      `Add \`fold:\` with one of ${listOf(names, 'or')}`,
    )
    return undefined
  }
  const name = field.value.text.trim()
  if (name === 'free') return freeFold(reading, fields, stockOf)
  const style = foldStyles.get(name)
  if (style?.read) return style.read(reading, fields)
  if (style) return { style, entries: entriesOf(style, fields) }
  report(reading, 'unknown-fold', field.value.place, `Unexpected fold \`${name}\``, suggestWord(name, names))
  return undefined
}

/** The shut size: what the lesson says, or what is wished. It must fit an envelope, so it goes down on the ruler. */
function closedCell(reading: Reading, fields: Fields, block: YamlBlock, wish: Size | undefined): () => Size {
  const field = fields.get('closed')
  if (!field)
    report(
      reading,
      'missing-key',
      fields.get('fold')?.keyPlace ?? block.place,
      'The card block does not say how large the shut card is',
      'Add `closed:`, width first, such as `closed: 7 x 5 in`',
    )
  const written = sizeCell(reading, 'closed', field?.value, 'down')
  const wished = (side: 'width' | 'height', { [side]: length }: Size): Length =>
    sideOnGrid(reading, `closed.${side}`, length, 'down', { from: 'wished', text: say(reading, length) })
  const cell = reading.scope.cell('closed size', () => {
    const size = wish ? { width: wished('width', wish), height: wished('height', wish) } : written()
    const sides = [size.width, size.height]
    const wrong = sides.some(isTooLong) ? 'is longer than any card' : 'has no width or no height'
    if (!sides.some(isTooLong) && sides.every((x) => x.gt(0))) return size
    report(
      reading,
      'impossible-size',
      field?.value.place ?? block.place,
      `The shut card ${wrong}`,
      'Give both, such as `7 x 5 in`',
    )
    return undefined
  })
  defineSize(reading.scope, 'closed', cell)
  return cell
}

/** The same mistake is told once, however many measures need it. */
function distinct(findings: readonly Finding[]): Finding[] {
  const seen = new Map(findings.map((f) => [`${f.rule} ${f.place?.offset} ${f.message}`, f]))
  return [...seen.values()]
}

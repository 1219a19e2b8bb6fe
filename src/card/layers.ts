import { type Length, larger, minus, plus, type Size, shorter, smaller, zero } from '../length/length.ts'
import { borderCells } from './borders.ts'
import type { Border } from './card.ts'
import type { Part, PartCell, Workbench } from './parts.ts'
import { raiseCell } from './raise.ts'
import { checkKeys, report, say, wordOf } from './reading.ts'
import { autoBorder } from './setbacks/auto.ts'
import { stockKeys } from './stock.ts'
import { point, rectangle } from './strip.ts'
import type { Bond, Side } from './structure.ts'
import { namesIn, type Target, targetsOn } from './targets.ts'
import type { Field } from './yaml.ts'

/** The keys of a layer, and the words for its side. */
export const layerKeys = ['on', 'side', 'border', 'raise', ...stockKeys] as const
export const layerSides = ['inside', 'outside'] as const

/** Reads one layer: a piece inset by its border on each panel that it is on. */
export function layerCell(bench: Workbench, { key: name, keyPlace, value }: Field): PartCell {
  const fields = value.kind === 'map' ? value.fields : new Map()
  if (value.kind !== 'map')
    report(
      bench,
      'value',
      value.place,
      `The layer \`${name}\` has no keys`,
      'Write at least `on:` and `stock:`',
    )
  checkKeys(bench, fields, layerKeys, `the layer \`${name}\``)
  if (!fields.has('on') && value.kind === 'map')
    report(
      bench,
      'missing-key',
      keyPlace,
      `The layer \`${name}\` does not say what it is on`,
      'Add `on:` with the name of a panel',
    )
  const auto = (edge: keyof Border): Length => autoBorder(bench, name, edge)
  const borders = borderCells(bench, name, fields.get('border')?.value, auto, bench.spine)
  const raise = raiseCell(bench, name, fields.get('raise')?.value)
  const stock = bench.stockOf(fields, 'paper')
  const on = fields.get('on')?.value
  const sideWord = fields.has('side') ? wordOf(bench, fields.get('side')?.value, layerSides) : undefined
  const side = sideWord && (sideWord === 'inside' ? 'face' : 'back')
  bench.sheets.set(name, {
    on: () => namesIn(on).map(({ text }) => bench.nameOf(text.trim())),
    ...(side && { side }),
    height: () => plus(stock.caliper, raise()),
    border: borders,
  })

  return bench.scope.cell(name, (): Part | undefined => {
    const targets = targetsOn(bench, on, bench.find, bench.known)
    const [first] = targets
    if (!first) return undefined
    const border: Border = {
      left: borders.left(),
      right: borders.right(),
      top: borders.top(),
      bottom: borders.bottom(),
    }
    const room = commonSize(targets)
    if (!room) {
      report(
        bench,
        'unlike-panels',
        on?.place ?? keyPlace,
        `The panels that \`${name}\` is on differ in size`,
        'Give each of them a layer of its own',
      )
      return undefined
    }
    const size: Size = {
      width: minus(room.width, border.left, border.right),
      height: minus(room.height, border.top, border.bottom),
    }
    if (!shorter(zero, size.width) || !shorter(zero, size.height)) {
      report(
        bench,
        'no-room',
        fields.get('border')?.value.place ?? keyPlace,
        `The border leaves nothing of \`${name}\`: there are ${say(bench, room.width)} × ${say(bench, room.height)} to sit on`,
        'Make the border smaller',
      )
      return undefined
    }
    for (const [edge, width] of Object.entries(border) as [keyof Border, Length][])
      if (shorter(width, zero))
        report(
          bench,
          'sticks-out',
          fields.get('border')?.value.place ?? keyPlace,
          `\`${name}\` sticks out beyond the ${edge} edge by ${say(bench, minus(zero, width))}`,
          'Make the border 0 or more',
        )
    const seen = side ?? first.side
    const upsideDown = bench.built().upsideDown ?? []
    const plateName = (t: Target) => (targets.length === 1 ? name : `${name} on ${t.plate}`)
    return {
      piece: { name, kind: 'layer', stock, count: targets.length, size, cuts: [] },
      plates: targets.map((t) => ({ name: plateName(t), piece: name, outline: rectangle(size), holes: [] })),
      bonds: targets.map((t) => bondOn(t, plateName(t), { side: seen, border, height: raise(), upsideDown })),
      layer: { name, on: targets.map((t) => t.plate), side: seen, border, plates: targets.map(plateName) },
    }
  })
}

/** Panels that differ by no more than a ruler mark take the same piece, the smaller; others do not. */
function commonSize(targets: readonly Target[]): Size | undefined {
  const spread = (of: (t: Target) => Length) => {
    const all = targets.map(of)
    const least = all.reduce(smaller)
    return { least, by: minus(all.reduce(larger), least) }
  }
  const [w, h] = [spread((t) => t.size.width), spread((t) => t.size.height)]
  const atMost = 2 // millimetres: one mark of any ruler that panels are shared out on
  return w.by.gt(atMost) || h.by.gt(atMost) ? undefined : { width: w.least, height: h.least }
}

interface Laying {
  readonly side: Side
  readonly border: Border
  readonly height: Length
  readonly upsideDown: readonly string[]
}

/** On the outside a layer lies turned over, sideways or head over heels: its left or its top is the panel's right or bottom. */
function bondOn(target: Target, plate: string, { side, border, height, upsideDown }: Laying): Bond {
  const over = side === 'back'
  const onHead = over && upsideDown.includes(target.plate)
  const left =
    over && !onHead
      ? minus(plus(target.left, target.size.width), border.left)
      : plus(target.left, border.left)
  const bottom = onHead
    ? minus(plus(target.bottom, target.size.height), border.bottom)
    : plus(target.bottom, border.bottom)
  return { plate, onto: target.plate, side, over, turn: onHead ? 180 : 0, at: point(left, bottom), height }
}

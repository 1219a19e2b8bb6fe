import { isOnGrid, nearest } from '../length/grid.ts'
import { type Length, minus, part, plus, shorter, zero } from '../length/length.ts'
import type { Part, PartCell, Workbench } from './parts.ts'
import { raiseCell } from './raise.ts'
import { checkKeys, lengthCell, report, say } from './reading.ts'
import { someLeft } from './some-left.ts'
import { stockKeys } from './stock.ts'
import { point, rectangle } from './strip.ts'
import type { Bond } from './structure.ts'
import type { Target } from './targets.ts'
import type { Entry, Field } from './yaml.ts'

/** The keys of a span, and the words for where on its panels it is. */
export const spanKeys = ['height', 'at', 'from', 'to', 'width', 'raise', ...stockKeys] as const
export const spanPlaces = ['bottom', 'top', 'middle'] as const

/**
 * Reads one span: a strip that reaches from one panel of the mechanism to another and is stuck on both. From a panel to
 * itself it begins at the panel's left edge.
 */
export function spanCell(bench: Workbench, { key: name, keyPlace, value }: Field): PartCell {
  const fields = value.kind === 'map' ? value.fields : new Map()
  const get = (key: string): Entry | undefined => fields.get(key)?.value
  checkKeys(bench, fields, spanKeys, `the span \`${name}\``)
  if (!fields.has('height'))
    report(
      bench,
      'missing-key',
      keyPlace,
      `The span \`${name}\` has no height`,
      'Add `height:` with a length',
    )
  const height = lengthCell(bench, `${name}.height`, get('height'), '0', 'down')
  const given = fields.has('width')
    ? lengthCell(bench, `${name}.width`, get('width'), '0', 'nearest')
    : undefined
  const raise = raiseCell(bench, name, get('raise'))
  const stock = bench.stockOf(fields, 'card')
  const at = heightAt(bench, name, get('at'))
  const endOf = (key: 'from' | 'to'): string | undefined => {
    const entry = get(key)
    return entry?.kind === 'text' ? bench.nameOf(entry.text.trim()) : bench.built().span?.[key]
  }
  bench.sheets.set(name, {
    on: () => [endOf('from') ?? '', endOf('to') ?? ''],
    side: 'face',
    height: () => plus(stock.caliper, raise()),
  })

  return bench.scope.cell(name, (): Part | undefined => {
    const usual = bench.built().span
    const end = (key: 'from' | 'to'): Target | undefined => {
      const entry = get(key)
      const word = endOf(key)
      const target = word === undefined ? undefined : bench.find(word)?.[0]
      if (!target)
        report(
          bench,
          'unknown-name',
          entry?.place ?? keyPlace,
          word
            ? `Unexpected name \`${word}\`, expected a panel`
            : `This fold has no usual place for a span, and \`${name}\` does not say where it ${key === 'from' ? 'starts' : 'ends'}`,
          `Write \`${key}:\` with the name of a panel, and the span's \`width:\``,
        )
      return target
    }
    const [from, to] = [end('from'), end('to')]
    const isOnOne = from !== undefined && from.plate === to?.plate
    const width = given?.() ?? (isOnOne ? from.size.width : usual?.width)
    if (!from || !to || !width || !fields.has('height')) {
      if (from && to && !width)
        report(
          bench,
          'missing-key',
          keyPlace,
          `The span \`${name}\` has no width`,
          'Add `width:` with a length',
        )
      return undefined
    }
    const size = { width, height: height() }
    if (!someLeft(bench, name, size, (get('height') ?? get('width'))?.place ?? keyPlace)) return undefined
    const up = at(size.height, from.size.height)
    const room = minus(from.size.height, up)
    if (shorter(up, zero)) {
      report(
        bench,
        'sticks-out',
        get('at')?.place ?? keyPlace,
        `\`${name}\` sticks out beyond the lower edge of \`${from.plate}\` by ${say(bench, minus(zero, up))}`,
        shorter(from.size.height, size.height)
          ? `Make it at most ${say(bench, from.size.height)} high`
          : 'Make `at` 0 or more',
      )
      return undefined
    }
    if (shorter(room, size.height)) {
      report(
        bench,
        'sticks-out',
        get('at')?.place ?? get('height')?.place ?? keyPlace,
        `\`${name}\` is ${say(bench, size.height)} high, but there are ${say(bench, room)} for it`,
        `Make it at most ${say(bench, room)} high, or put it elsewhere`,
      )
      return undefined
    }
    const y = plus(from.bottom, up)
    const bond = (onto: Target, x: Length): Bond => ({
      plate: name,
      onto: onto.plate,
      side: 'face',
      over: false,
      turn: 0,
      at: point(x, y),
      height: raise(),
    })
    return {
      piece: { name, kind: 'span', stock, count: 1, size, cuts: [] },
      plates: [{ name, piece: name, outline: rectangle(size), holes: [] }],
      bonds: [
        bond(from, from.left),
        ...(isOnOne ? [] : [bond(to, minus(plus(to.left, to.size.width), width))]),
      ],
    }
  })
}

/** Where a span's lower edge lies on a panel so high: `bottom`, `top`, `middle`, or a length from the lower edge. */
function heightAt(
  bench: Workbench,
  name: string,
  entry: Entry | undefined,
): (height: Length, panel: Length) => Length {
  const word = entry?.kind === 'text' ? entry.text.trim() : 'bottom'
  if (word === 'bottom') return () => zero
  if (word === 'top') return (height, panel) => minus(panel, height)
  if (word === 'middle')
    return (height, panel) => {
      const half = part(minus(panel, height), 2)
      return isOnGrid(half, bench.grid) ? half : nearest(half, bench.grid)
    }
  const cell = lengthCell(bench, `${name}.at`, entry, '0', 'nearest')
  return () => cell()
}

import { suggestWord } from '../length/finding.ts'
import { fitInside } from '../length/grid.ts'
import { type Length, minus, part, plus, shorter, times, zero } from '../length/length.ts'
import type { Lettering } from './card.ts'
import { padsOn } from './letter-pads.ts'
import type { LetteringCell, PartCell, Workbench } from './parts.ts'
import { raiseCell } from './raise.ts'
import { checkKeys, lengthCell, report, say, textOf } from './reading.ts'
import { stockKeys } from './stock.ts'
import type { Entry, Field } from './yaml.ts'

/** The keys of lettering. */
export const letteringKeys = ['on', 'letters', 'widths', 'margin', 'raise', ...stockKeys] as const

/** What a reader calls letters. The segmenter takes long to make, and plain English needs none. */
const graphemesOf = (text: string): string[] => {
  if (/^[\x20-\x7e]*$/.test(text)) return [...text]
  return [...new Intl.Segmenter('en', { granularity: 'grapheme' }).segment(text)].map((s) => s.segment)
}

/**
 * Reads lettering: pieces spaced out evenly along a strip.
 *
 * gap = (strip - all widths - 2 · margin) / (letters - 1), down to the ruler grid; what is left over widens both margins.
 */
export function letteringCell(
  bench: Workbench,
  { key: name, keyPlace, value }: Field,
  parts: ReadonlyMap<string, PartCell>,
): LetteringCell {
  const fields = value.kind === 'map' ? value.fields : new Map()
  const get = (key: string): Entry | undefined => fields.get(key)?.value
  checkKeys(bench, fields, letteringKeys, `the lettering \`${name}\``)
  const letters = lettersIn(bench, name, get('letters'), keyPlace)
  const widths = widthCells(bench, name, get('widths'), letters.length)
  const margin = lengthCell(bench, `${name}.margin`, get('margin'), '1/4 in', 'up')
  const stock = bench.stockOf(fields, 'card')
  const raise = raiseCell(bench, name, get('raise'))
  const height = () => plus(stock.caliper, raise())
  const on = get('on')
  const target = on?.kind === 'text' ? bench.nameOf(on.text.trim()) : ''
  bench.sheets.set(name, { on: () => [target], height })

  return bench.scope.cell(name, (): Lettering | undefined => {
    const piece = parts.get(target)?.().piece
    const strips = piece ? [] : (bench.find(target) ?? [])
    const strip = piece?.size ?? strips[0]?.size
    if (!strip) {
      report(
        bench,
        'unknown-name',
        on?.place ?? keyPlace,
        `Unexpected name \`${target}\`, expected a strip for the letters`,
        suggestWord(target, bench.known()),
      )
      return undefined
    }
    if (letters.length === 0) return undefined
    if (shorter(margin(), zero))
      report(
        bench,
        'sticks-out',
        get('margin')?.place ?? keyPlace,
        `The margin of \`${name}\` is ${say(bench, minus(zero, margin()))} below nothing, so the letters stick out of \`${target}\``,
        'Make the margin 0 or more',
      )
    const all = widths.map((w) => w())
    const none = all.findIndex((width) => !shorter(zero, width))
    if (none >= 0) {
      report(
        bench,
        'impossible-size',
        get('widths')?.place ?? keyPlace,
        `Letter ${none + 1} of \`${name}\` is ${say(bench, all[none] ?? zero)} wide`,
        'Give every letter a width above zero',
      )
      return undefined
    }
    const room = minus(strip.width, times(margin(), 2))
    const left = minus(room, plus(...all))
    if (shorter(left, zero)) {
      const widest = fitInside(part(room, letters.length), bench.grid)
      report(
        bench,
        'letters-too-wide',
        get('widths')?.place ?? keyPlace,
        `${letters.length} letters take ${say(bench, plus(...all))}, but there are ${say(bench, room)} between the margins`,
        shorter(zero, widest)
          ? `Use letters at most ${say(bench, widest)} wide, or fewer of them`
          : 'Use fewer letters or a smaller margin',
      )
      return undefined
    }
    const gaps = Math.max(letters.length - 1, 1)
    const gap = letters.length === 1 ? zero : fitInside(part(left, gaps), bench.grid)
    const spare = minus(left, times(gap, letters.length - 1))
    let at = plus(margin(), fitInside(part(spare, 2), bench.grid))
    const marks = all.map((width) => {
      const mark = at
      at = plus(at, width, gap)
      return mark
    })
    const upsideDown = strips.length > 0 ? bench.built().upsideDown : undefined
    const pads = padsOn(strips, { name, marks, widths: all, height: height() }, upsideDown)
    return { name, on: target, letters, widths: all, gap, marks, stock, pads }
  })
}

function lettersIn(
  bench: Workbench,
  name: string,
  entry: Entry | undefined,
  place: Field['keyPlace'],
): string[] {
  if (entry?.kind === 'list') return entry.items.flatMap((item) => (item.kind === 'text' ? [item.text] : []))
  const text = entry && textOf(bench, entry, 'Letters are wanted', 'Write `letters: HARBOUR`')
  if (!entry)
    report(bench, 'missing-key', place, `The lettering \`${name}\` has no letters`, 'Add `letters:`')
  return text ? graphemesOf(text.text).filter((s) => s.trim() !== '') : []
}

function widthCells(
  bench: Workbench,
  name: string,
  entry: Entry | undefined,
  count: number,
): (() => Length)[] {
  if (entry?.kind === 'list' && entry.items.length !== count)
    report(
      bench,
      'value',
      entry.place,
      `There are ${count} letters but ${entry.items.length} widths`,
      'Give one width for all, or one for each',
    )
  const list = entry?.kind === 'list' ? entry.items : undefined
  if (!list) {
    const one = lengthCell(bench, `${name}.width`, entry, '1/2 in', 'up')
    return Array.from({ length: count }, () => one)
  }
  return Array.from({ length: count }, (_, i) =>
    lengthCell(bench, `${name}.widths.${i + 1}`, list[i], '0', 'up'),
  )
}

import type { Reading } from '../reading.ts'
import type { Side, Stock } from '../structure.ts'
import type { FoldStyle, ReadFold } from '../style.ts'
import type { Fields } from '../yaml.ts'
import { buildFree } from './free/build.ts'
import { sheetCell } from './free/layout.ts'
import { checkLoose } from './free/loose-sheets.ts'
import { checkNames, withOwnNames } from './free/names.ts'
import { readOwnLengths } from './free/own-lengths.ts'
import { readBends } from './free/read-bends.ts'
import { readBonds } from './free/read-bonds.ts'
import { readSheets, sheetKeys } from './free/read-sheets.ts'
import { readStand } from './free/read-stand.ts'
import { readSlits } from './free/slits.ts'
import { defineStrips } from './free/strip-names.ts'
import { panelNames } from './free/written.ts'

/** The keys of a free card that no named fold has. */
export const freeKeys = [...sheetKeys, 'lengths', 'sheets', 'slits', 'bonds', 'glue', 'shut', 'stand']

/** What the catalogue says of a fold that is not in it. */
export const free = {
  name: 'free',
  summary:
    'A card of your own: strips of panels, the creases and slits between them, and what is stuck on what.',
  starter: `fold: free
closed: 6 x 4 in
base: {stock: white card, weight: 250 gsm}
strips:
  upper:
    panels:
      front: closed.width * 3/8
      upper wall: 3/4 in
      back: closed.width + upper wall.width - upper.front
    creases: [mountain, valley]
  lower:
    height: closed.height / 2
    panels:
      front: closed.width * 3/4
      lower wall: upper wall.width
      back:
    creases: [mountain, valley]
stand: {panel: back, rests: upright}
layers:
  hill:
    on: front
    border: {left: 1/8 in, right: 1/8 in, bottom: 1/8 in, top: upper.height + 1/8 in}
    stock: patterned paper
  sky:
    on: back
    border: {left: 1/8 in, right: 1/8 in, top: 1/8 in, bottom: lower.height + 1/8 in}
    stock: patterned paper`,
} satisfies Partial<FoldStyle>

/**
 * Reads a fold that is not in the catalogue. The card block describes the base: its `panels` with the `creases` between
 * them, or several `strips` of such that share panels and have slits between them. `sheets` are further ones of the same
 * kind, and `bonds` say what is stuck on what. Everything is computed from that as for a named fold.
 */
export function freeFold(
  outer: Reading,
  fields: Fields,
  stockOf: (fields: Fields, usual: string) => Stock,
): ReadFold {
  const reading = { ...outer, scope: withOwnNames(outer.scope) }
  const sheets = readSheets(reading, fields)
  checkNames(reading, sheets, fields)
  readOwnLengths(reading, fields)
  const names = panelNames(sheets)
  const laid = sheets.map((sheet) => {
    const cell = sheetCell(reading, sheet, stockOf(sheet.stock, 'card'))
    defineStrips(reading, sheet, cell)
    return cell
  })
  const bonds = readBonds(reading, [fields.get('bonds'), fields.get('glue')], names)
  checkLoose(reading, sheets, bonds)
  const rest = {
    bonds,
    slits: readSlits(reading, fields, names),
    shut: readBends(reading, fields.get('shut'), sheets),
    stand: readStand(reading, fields, sheets),
  }
  const style: FoldStyle = {
    ...free,
    parameters: {},
    panels: Object.fromEntries(names.map((name): [string, Side] => [name, 'face'])),
    pieces: sheets.slice(1).map(({ name }) => name),
    limits: () => [],
    build: () =>
      buildFree(
        laid.map((cell) => cell()),
        rest,
      ),
  }
  return { style, entries: new Map() }
}

import { minus } from '../../../length/length.ts'
import type { Reading } from '../../reading.ts'
import type { Cell } from '../../scope.ts'
import type { Hinge, Piece, Plate, Stock } from '../../structure.ts'
import { checkSum } from './across.ts'
import { boxesOf, type PlacedStrip } from './bank-place.ts'
import { banksOf } from './banks.ts'
import { type Box, round } from './box.ts'
import { creasesOf, creasesOfSheet } from './creases.ts'
import { cutsOf } from './cuts.ts'
import { lengthsOf } from './lengths.ts'
import { outlineOf } from './outline.ts'
import { checkSheet } from './shared.ts'
import { placeSheet } from './sheet-place.ts'
import { hasPanel, type WrittenSheet } from './written.ts'

/** A sheet as it is cut and scored. */
export interface LaidSheet {
  readonly sheet: WrittenSheet
  readonly piece: Piece
  readonly plates: readonly Plate[]
  readonly hinges: readonly Hinge[]
  /** The creases of each strip by its name. */
  readonly creases: ReadonlyMap<string, readonly Hinge[]>
  /** The rectangle round each panel. */
  readonly boxes: ReadonlyMap<string, Box>
}

/** Lays a sheet out when it is first asked for. Whatever does not fit is reported then. */
export function sheetCell(reading: Reading, sheet: WrittenSheet, stock: Stock): Cell<LaidSheet> {
  const banks = banksOf(reading, sheet)
  const measuring = { reading, sheet, banks, lengths: lengthsOf(reading, sheet, banks) }
  return reading.scope.cell(sheet.name, () => {
    if (banks.length === 0 || sheet.strips.some(({ panels, folds }) => folds.length !== panels.length - 1))
      return undefined
    const placed = placeSheet(measuring)
    if (!placed || !checkSum(measuring, banks[0] ?? []) || !checkSheet(reading, placed)) return undefined
    const hinges = creasesOfSheet(reading, placed)
    return hinges && laid(sheet, stock, placed, hinges)
  })
}

function laid(
  sheet: WrittenSheet,
  stock: Stock,
  placed: readonly PlacedStrip[],
  hinges: readonly Hinge[],
): LaidSheet {
  const { name: piece } = sheet
  const boxes = boxesOf(placed)
  const all = round([...boxes.values()])
  const size = { width: minus(all.right, all.left), height: minus(all.top, all.bottom) }
  const plates = [...boxes.keys()].map((name): Plate => {
    const along = placed.find(({ strip }) => hasPanel(strip, name))?.strip.along ?? 'width'
    const parts = placed
      .filter(({ strip }) => strip.along === along)
      .flatMap((strip) => strip.boxes.flatMap(([panel, box]) => (panel === name ? [box] : [])))
    return { name, piece, outline: outlineOf(parts, along), holes: [] }
  })
  return {
    sheet,
    piece: { name: piece, kind: 'base', stock, count: 1, size, cuts: cutsOf(plates, hinges, size) },
    plates,
    hinges,
    creases: new Map(placed.map((one) => [one.strip.name, creasesOf(one)])),
    boxes,
  }
}

import type { Piece, Segment } from '../../structure.ts'
import type { Built } from '../../style.ts'
import { bondOf } from './bond-place.ts'
import type { LaidSheet } from './layout.ts'
import { usualLeads } from './leads.ts'
import type { WrittenBond } from './read-bonds.ts'
import type { WrittenStand } from './read-stand.ts'
import { stopOf } from './read-stop.ts'
import type { WrittenSlit } from './slits.ts'

/** What a card block says besides its sheets. */
export interface WrittenRest {
  readonly bonds: readonly WrittenBond[]
  readonly slits: readonly WrittenSlit[]
  readonly shut: NonNullable<Built['shut']>
  readonly stand: WrittenStand
}

/** The mechanism, from sheets that are laid out. */
export function buildFree(sheets: readonly LaidSheet[], { bonds, slits, shut, stand }: WrittenRest): Built {
  const boxes = new Map(sheets.flatMap((sheet) => [...sheet.boxes]))
  const hinges = sheets.flatMap((sheet) => sheet.hinges)
  const { panel, rests, turn, until, angles } = stand
  return {
    pieces: sheets.map((sheet) => withSlits(sheet, slits)),
    plates: sheets.flatMap((sheet) => sheet.plates),
    hinges,
    bonds: bonds.flatMap((bond) => bondOf(bond, sheets)),
    stops: until ? stopOf(until, boxes) : [],
    ...(shut.length > 0 && { shut }),
    display: { angles: angles ?? (until ? [] : usualLeads(hinges, bonds)), plate: panel, rests, turn },
  }
}

function withSlits({ piece, plates }: LaidSheet, slits: readonly WrittenSlit[]): Piece {
  const cuts = slits.flatMap(({ on, lineOn }): Segment[] => {
    const plate = plates.find(({ name }) => name === on)
    const line = plate && lineOn(plate)
    return line ? [line] : []
  })
  return { ...piece, cuts: [...piece.cuts, ...cuts] }
}

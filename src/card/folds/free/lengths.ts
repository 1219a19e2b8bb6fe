import { type Length, larger, plus, zero } from '../../../length/length.ts'
import type { Reading } from '../../reading.ts'
import type { Cell } from '../../scope.ts'
import { acrossCell, wholeCell } from './across.ts'
import { panelCell } from './panel-length.ts'
import { type Along, hasPanel, type WrittenSheet, type WrittenStrip } from './written.ts'

/** The lengths of one sheet, each computed when it is asked for. Asking throws BrokenName where one has a mistake. */
export interface Lengths {
  /** How long a panel is in a strip. */
  readonly panel: (strip: WrittenStrip, name: string) => Length
  /** How long the creases of a strip are. */
  readonly across: (strip: WrittenStrip) => Length
  /** How long the creases of the first strips are together; undefined when nothing says so. */
  readonly whole: Cell<Length> | undefined
  /** How wide or high a panel is, over all its strips. */
  readonly extent: (name: string, direction: Along) => Length
}

/** Strips of one direction that hang together by panels that they share, in the order of the file. */
export type Bank = readonly WrittenStrip[]

/** A sheet whose lengths are being made. */
export interface Measuring {
  readonly reading: Reading
  readonly sheet: WrittenSheet
  readonly banks: readonly Bank[]
  readonly lengths: Lengths
}

/** Makes the lengths of a sheet, and names them: `front.width`, and in a sheet of several strips `upper.front`. */
export function lengthsOf(reading: Reading, sheet: WrittenSheet, banks: readonly Bank[]): Lengths {
  const { strips } = sheet
  const panels = new Map<WrittenStrip, Map<string, Cell<Length>>>()
  const acrosses = new Map<WrittenStrip, Cell<Length>>()
  const lengths: Lengths = {
    panel: (strip, name) => panels.get(strip)?.get(name)?.() ?? zero,
    across: (strip) => acrosses.get(strip)?.() ?? zero,
    whole: wholeCell(reading, sheet),
    extent: (name, direction) => {
      const first = strips.find((strip) => hasPanel(strip, name))
      const beside = banks.find((bank) => first && bank.includes(first)) ?? []
      const own = beside.filter((strip) => hasPanel(strip, name))
      return first?.along === direction
        ? own.map((strip) => lengths.panel(strip, name)).reduce(larger, zero)
        : plus(...own.map(lengths.across))
    },
  }
  const measuring = { reading, sheet, banks, lengths }
  for (const strip of strips) {
    panels.set(strip, new Map(strip.panels.map((panel) => [panel.name, panelCell(measuring, strip, panel)])))
    acrosses.set(strip, acrossCell(measuring, strip))
  }
  for (const name of new Set(strips.flatMap((strip) => strip.panels.map((panel) => panel.name))))
    for (const direction of ['width', 'height'] as const)
      reading.scope.define(`${name}.${direction}`, () => ({
        kind: 'length',
        value: lengths.extent(name, direction),
      }))
  return lengths
}

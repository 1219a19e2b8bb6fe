import { type Reading, report } from '../../reading.ts'
import type { WrittenBond } from './read-bonds.ts'
import { hasPanel, type WrittenSheet } from './written.ts'

/** A plain sheet that is stuck on nothing takes no part in the card, and nobody would see it. */
export function checkLoose(
  reading: Reading,
  sheets: readonly WrittenSheet[],
  bonds: readonly WrittenBond[],
): void {
  for (const { name, place, strips } of sheets.slice(1)) {
    const isPlain = strips.every(({ panels }) => panels.length < 2)
    const isStuck = bonds.some((bond) =>
      strips.some((strip) => hasPanel(strip, bond.panel) || hasPanel(strip, bond.onto)),
    )
    if (isPlain && !isStuck)
      report(
        reading,
        'loose-sheet',
        place,
        `\`${name}\` is stuck on nothing`,
        `Add \`{panel: ${name}, onto: …}\` to \`bonds:\`, or list it under \`pieces:\` if it is only to be cut`,
      )
  }
}

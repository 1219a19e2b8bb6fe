import { mustCover } from '../length/grid.ts'
import { type Length, larger, plus, type Size, times } from '../length/length.ts'
import type { Envelope } from './card.ts'
import {
  clearanceMisfit,
  depthMisfit,
  lapMisfit,
  longCard,
  type Misfit,
  wideFlapMisfit,
} from './envelopes/checks.ts'
import { bottomFlap, diagonal, diagonalEnvelope } from './envelopes/diagonal.ts'
import { sideSeam } from './envelopes/side-seam.ts'
import type { Workbench } from './parts.ts'
import { checkKeys, lengthCell, report, say, wordOf } from './reading.ts'
import type { Cell } from './scope.ts'
import { stockKeys } from './stock.ts'
import type { Entry, Field } from './yaml.ts'

/** The keys of an envelope, and how it can be made. */
export const envelopeKeys = ['make', 'clearance', 'seam', 'flap', ...stockKeys] as const
export const envelopeMakes = ['diagonal', 'side seam'] as const

/**
 * Reads the envelope. Its inside is the shut card with the clearance, and the card's thickness on both.
 *
 * @param thickness of the shut card.
 */
export function envelopeCell(
  bench: Workbench,
  { value }: Field,
  closed: Cell<Size>,
  thickness: Cell<Length>,
): Cell<Envelope> {
  const fields = value.kind === 'map' ? value.fields : new Map()
  const get = (key: string): Entry | undefined => fields.get(key)?.value
  checkKeys(bench, fields, envelopeKeys, 'the envelope')
  const wanted = wordOf(bench, value.kind === 'text' ? value : get('make'), envelopeMakes)
  const clearance = lengthCell(bench, 'envelope.clearance', get('clearance'), '1/4 in', 'up')
  const seam = lengthCell(bench, 'envelope.seam', get('seam'), '3/8 in', 'up')
  const flap = lengthCell(bench, 'envelope.flap', get('flap'), '3/4 in', 'up')
  const stock = bench.stockOf(fields, 'envelope paper')
  const [text, grid] = [(x: Length) => say(bench, x), bench.grid]
  /** Tells what is wrong; whether it can be made all the same. */
  const told = (misfits: readonly Misfit[]): boolean => {
    for (const { rule, key, message, suggestion, severity } of misfits)
      report(bench, rule, (get(key) ?? value).place, message, suggestion, severity)
    return misfits.every(({ severity }) => severity === 'warning')
  }

  const withSideSeam = (inside: Size): Envelope | undefined => {
    const onRuler = { width: mustCover(inside.width, grid), height: mustCover(inside.height, grid) }
    const misfits = [...lapMisfit('flap', flap(), grid, text), ...wideFlapMisfit(onRuler, flap(), grid, text)]
    return told(misfits) ? sideSeam(onRuler, flap(), grid, stock) : undefined
  }

  return bench.scope.cell('envelope', () => {
    const [card, thick] = [closed(), thickness()]
    if (!told([...depthMisfit(card, thick, grid, text), ...clearanceMisfit(clearance())])) return undefined
    const withRoom = around(card, clearance())
    const inside = around(withRoom, thick)
    if (wanted === 'side seam') return withSideSeam(inside)
    if (!told(lapMisfit('seam', times(seam(), 2), grid, text))) return undefined
    const need = { inside, least: largerSize(withRoom, around(card, thick)), grid }
    const sheet = diagonal(need, seam())
    if (!bottomFlap(sheet, grid).passes) return diagonalEnvelope(sheet, stock)
    told([longCard(need, sheet, text)])
    return withSideSeam(inside)
  })
}

const around = ({ width, height }: Size, room: Length): Size => ({
  width: plus(width, room),
  height: plus(height, room),
})

const largerSize = (a: Size, b: Size): Size => ({
  width: larger(a.width, b.width),
  height: larger(a.height, b.height),
})

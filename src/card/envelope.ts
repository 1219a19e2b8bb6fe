import { mustCover } from '../length/grid.ts'
import { type Length, plus, type Size } from '../length/length.ts'
import type { Envelope } from './card.ts'
import { diagonal, flapsStayInside } from './envelopes/diagonal.ts'
import { sideSeam } from './envelopes/side-seam.ts'
import type { Workbench } from './parts.ts'
import { checkKeys, lengthCell, report, wordOf } from './reading.ts'
import type { Cell } from './scope.ts'
import { stockKeys } from './stock.ts'
import type { Entry, Field } from './yaml.ts'

const keys = ['make', 'clearance', 'seam', 'flap', ...stockKeys]

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
  checkKeys(bench, fields, keys, 'the envelope')
  const wanted = wordOf(bench, value.kind === 'text' ? value : get('make'), ['diagonal', 'side seam'])
  const clearance = lengthCell(bench, 'envelope.clearance', get('clearance'), '1/4 in', 'up')
  const seam = lengthCell(bench, 'envelope.seam', get('seam'), '3/8 in', 'up')
  const flap = lengthCell(bench, 'envelope.flap', get('flap'), '3/4 in', 'up')
  const stock = bench.stockOf(fields, 'envelope paper')

  return bench.scope.cell('envelope', () => {
    const least = around(closed(), clearance())
    const inside = around(least, thickness())
    const tooLong = wanted === 'diagonal' && !flapsStayInside(inside, seam())
    if (tooLong)
      report(
        bench,
        'long-card',
        (get('make') ?? value).place,
        'This card is too long and thin for a diagonal envelope: its bottom flap would pass the opposite edge; a side seam is used',
        'Write `make: side seam`',
        'warning',
      )
    if (wanted === 'diagonal' && !tooLong)
      return { make: 'diagonal', stock, scores: [], ...diagonal(inside, least, seam(), bench.grid) }
    const onRuler = {
      width: mustCover(inside.width, bench.grid),
      height: mustCover(inside.height, bench.grid),
    }
    return { make: 'side seam', stock, inside: onRuler, ...sideSeam(onRuler, flap()) }
  })
}

const around = ({ width, height }: Size, room: Length): Size => ({
  width: plus(width, room),
  height: plus(height, room),
})

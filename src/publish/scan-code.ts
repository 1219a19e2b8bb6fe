import type { Element } from 'hast'
import { s } from 'hastscript'
import { encode } from 'uqr'
import { num, type Spot } from '../draw/num.ts'
import { outlinesOf } from './outlines.ts'

/** Light modules round a code, without which it is not found (ISO/IEC 18004). */
const quietZone = 4
/** The least width of a code with its quiet zone, and of a module of it, in mm: what a phone reads from a hand's length. */
const leastWidth = 22
const leastModule = 0.5

/**
 * A link as a QR code (ISO/IEC 18004) with error correction M, which a sixth of its area may be lost from. It is drawn as
 * outlines of whole dark areas: squares side by side would show seams in a PDF. The light ones are drawn too, whatever
 * the code lies on.
 *
 * @param link whose bytes in UTF-8 the code carries just as they are.
 * @param name the text alternative, with an id unlike that of anything else on the page.
 */
export function scanCode(link: string, name: { readonly id: string; readonly text: string }): Element {
  // Bytes, and not text: half a character, which no encoder takes, becomes a character that it takes.
  const { data, size } = encode([...new TextEncoder().encode(link)], { ecc: 'M', border: quietZone })
  const width = num(Math.max(leastWidth, size * leastModule))
  return s(
    'svg',
    {
      class: 'scan-code',
      role: 'img',
      ariaLabelledBy: [name.id],
      width: `${width}mm`,
      height: `${width}mm`,
      viewBox: `0 0 ${size} ${size}`,
      'shape-rendering': 'crispEdges',
    },
    s('title', { id: name.id }, name.text),
    s('path', { d: `M0 0H${size}V${size}H0Z`, fill: '#fff' }),
    s('path', { d: outlinesOf(data).map(pathOf).join(''), fill: '#000', 'fill-rule': 'evenodd' }),
  )
}

/** A loop of level and upright edges. */
const pathOf = ([first = [0, 0], ...rest]: readonly Spot[]): string =>
  `M${first[0]} ${first[1]}${rest.map(([x, y], i) => (y === (rest[i - 1] ?? first)[1] ? `H${x}` : `V${y}`)).join('')}Z`

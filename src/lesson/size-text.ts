import { formatBare } from '../length/format.ts'
import { isOnGrid } from '../length/grid.ts'
import { inches, type Length, mm, type Size, same, type Unit } from '../length/length.ts'
import { readSize } from '../length/text.ts'

/** What looks right in each unit: anything else is written in the other one. */
const fine = { in: inches(1, 64), mm: mm(0.5) } as const

const number = '[\\d¼½¾⅐-⅞](?:[\\d\\s./⁄¼½¾⅐-⅞-]*[\\d¼½¾⅐-⅞])?'
const unit = "\\s*(?:\\p{L}+|[\"″”]|'')"
/** `7 x 5 in`, `7" × 5"`: the unit of the first number if it has one, the sign, and the unit. */
const writtenSize = new RegExp(`^\\s*${number}(${unit})??(\\s*[x×]\\s*)${number}(${unit})\\s*$`, 'u')

/**
 * A size as it is written in a card block: `6 x 6 in`. Reading it gives exactly that size again.
 *
 * @param like the size it takes the place of: its sign, its spaces and the spelling of its unit are kept.
 * @param units in the order in which they are preferred.
 */
export function sizeText(size: Size, like: string, units: readonly Unit[]): string {
  const [, first, sign = ' x ', second = ' in'] = writtenSize.exec(like) ?? []
  const oldUnit = unitOf(like)
  const wanted = [...units, ...(oldUnit ? [oldUnit] : []), 'in' as const, 'mm' as const]
  const both = [size.width, size.height]
  const chosen =
    wanted.find((u) => both.every((x) => isOnGrid(x, fine[u]))) ??
    wanted.find((u) => same(readBack(both[0], u), size.width) && same(readBack(both[1], u), size.height)) ??
    'mm'
  const suffix = chosen === oldUnit ? second : ` ${chosen}`
  const [width, height] = both.map((x) => bare(x, chosen))
  return `${width}${chosen === oldUnit ? (first ?? '') : ''}${sign}${height}${suffix}`
}

/** A length without its unit, exactly; as a fraction where a decimal would be rounded. */
const bare = (x: Length, u: Unit): string =>
  same(readBack(x, u), x) ? formatBare(x, u) : `${x.n * x.s}/${x.d}`

const readBack = (x: Length | undefined, u: Unit): Length =>
  x ? readSize(`${formatBare(x, u)} x 1 ${u}`).width : mm(0)

/** The unit that a written size is in. */
function unitOf(text: string): Unit | undefined {
  const suffix = writtenSize.exec(text)?.[3]
  if (suffix === undefined) return undefined
  const one = readSize(`1 x 1${suffix}`).width
  return same(one, inches(1)) ? 'in' : same(one, mm(1)) ? 'mm' : undefined
}

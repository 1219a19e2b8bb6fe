import { mm } from '../../length/length.ts'
import { sheetSize } from '../../length/paper.ts'
import type { Literal } from './literal.ts'
import { grouped, withUnits } from './literal-groups.ts'
import { type Item, itemAt, type Joint, nextItem } from './literal-items.ts'

/** Where a number in figures may start, and one in letters, which needs a unit in letters: no need to look elsewhere. */
const figures = /\d|\.\d|[¼½¾⅐-⅞]/g
const figuresOrLetters =
  /\d|\.\d|[¼½¾⅐-⅞]|\b(?:an?|half|quarter|eighth|third|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen)\b/giu
const unitInLetters = /inch|met(?:re|er)|foot|feet/i
const sheet = /\b(?:[ABC][2-8]|DL)(?: (?:portrait|landscape))?(?![\p{L}\p{N}-])/gu

/**
 * Every measure that stands in words as plain numbers with a unit, in order. Times, weights, prices, counts, ratios and
 * dates are none, and neither is the `in` of "cut 2 in the same way".
 */
export function literalsIn(text: string): Literal[] {
  const found: Literal[] = []
  let from = 0
  for (const { index } of text.matchAll(unitInLetters.test(text) ? figuresOrLetters : figures)) {
    if (index < from) continue
    const { literals, end } = literalsAt(text, index)
    found.push(...literals)
    // What has no unit at the end of a row of numbers has none from its middle either.
    from = end
  }
  const free = (start: number, end: number): boolean => found.every((l) => end <= l.start || l.end <= start)
  const sheets = [...text.matchAll(sheet)].flatMap(({ index, 0: name }): Literal[] => {
    const size = sheetSize(name)
    if (!size || !free(index, index + name.length)) return []
    const lengths = [size.width, size.height]
    return [
      {
        kind: 'sheet',
        lengths,
        steps: lengths.map(() => mm(1)),
        unit: 'mm',
        start: index,
        end: index + name.length,
      },
    ]
  })
  return [...found, ...sheets].sort((a, b) => a.start - b.start)
}

/** The literals of the row of numbers that starts at `start`, and where it ends. */
function literalsAt(text: string, start: number): { literals: Literal[]; end: number } {
  const first = itemAt(text, start)
  if (!first) return { literals: [], end: start }
  const items = [first]
  const kinds: Joint[] = []
  for (;;) {
    const last = items.at(-1) ?? first
    const next = nextItem(text, last.end)
    // In "six, 1 1/2 in each" the six is a count.
    if (!next || (last.unit === undefined && isInWords(last) !== isInWords(next.item))) break
    items.push(next.item)
    kinds.push(next.joint)
  }
  const end = items.at(-1)?.end ?? start
  // What stands behind the last unit is no part of it.
  const count = items.findLastIndex(({ unit }) => unit !== undefined) + 1
  if (count === 0) return { literals: [], end }
  const measured = withoutArticle(text, items.slice(0, count))
  const literals = grouped(text, withUnits(measured), kinds.slice(0, count - 1))
  return { literals, end: literals.at(-1)?.end ?? end }
}

/** In "a quarter inch margin" the article is the margin's; in "a quarter inch at the edge" it is the inch's. */
const article = /^an? (?=\S+[ -]inch)/i
const noThing =
  /^(?:$|[^\p{L}\s]| (?:of|from|at|in|on|to|into|all|and|or|is|are|by|for|with|than|wide|high|long|tall|deep|thick|apart|below|above|left|right|round|each|either|away|up|down|off|free|bare|clear|before|behind|under|over|so|as|if|that|which)(?!\p{L}))/iu

function withoutArticle(text: string, items: readonly Item[]): readonly Item[] {
  const [first, ...rest] = items
  const last = items.at(-1)
  const found = first && article.exec(text.slice(first.start, first.end))?.[0]
  if (!first || !last || !found || noThing.test(text.slice(last.end))) return items
  return [{ ...first, start: first.start + found.length }, ...rest]
}

const isInWords = ({ amount }: Item): boolean => amount.written === 'words'

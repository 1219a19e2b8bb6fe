import { createRequire } from 'node:module'
import { numberIn } from '../../src/length/length.ts'
import { planCutting } from '../../src/workshop/cutting/plan-cutting.ts'
import { count, words } from '../../src/workshop/listing.ts'
import { listingText } from '../../src/workshop/listing-text.ts'
import { mistakesIn } from '../workshop/cutting/checker.ts'
import { randomClass, type StockOfClass } from './random-class.ts'

interface Rect {
  width: number
  height: number
}

const load = createRequire(import.meta.url)
/** Both packers are on their best: the first tries all its ways, the second its best ones. */
const { packer } = load('guillotine-packer') as {
  packer: (bin: { binWidth: number; binHeight: number; items: Rect[] }, options: object) => unknown[][] | null
}
const { MaxRectsPacker } = (await import('maxrects-packer/dist/maxrects-packer.mjs' as string)) as {
  MaxRectsPacker: new (
    width: number,
    height: number,
    padding: number,
    options: object,
  ) => { addArray(rects: Rect[]): void; bins: unknown[] }
}

// Run by `npm run bench:sheets`: sheets that are used for a hundred random classes.
const classes = Number(process.argv[2] ?? 100)
const sum = { ours: 0, bound: 0, guillotine: 0, free: 0, proven: 0, ms: 0, wrong: 0 }
const against = { fewer: 0, same: 0, more: 0 }
const againstFree = { fewer: 0, same: 0, more: 0 }
for (let seed = 1; seed <= classes; seed++) {
  const stock = randomClass(seed)
  const start = performance.now()
  const plan = await planCutting(stock.pieces, [stock.sheet])
  sum.ms += performance.now() - start
  sum.wrong += mistakesIn(plan, stock.pieces, [stock.sheet]).length
  const [ours] = plan.plans
  const used = ours?.used ?? 0
  const { width, height, rects } = asNumbers(stock)
  const guillotine =
    packer({ binWidth: width, binHeight: height, items: rects() }, { allowRotation: true })?.length ??
    Number.NaN
  const maxrects = new MaxRectsPacker(width, height, 0, { smart: false, pot: false, allowRotation: true })
  maxrects.addArray(rects())
  const free = maxrects.bins.length
  sum.ours += used
  sum.bound += ours?.lowerBound ?? 0
  sum.guillotine += guillotine
  sum.free += free
  sum.proven += Number(ours?.proven ?? false)
  against[used < guillotine ? 'fewer' : used === guillotine ? 'same' : 'more']++
  againstFree[used < free ? 'fewer' : used === free ? 'same' : 'more']++
}

/** In eighths of an inch, in which all pieces are whole. */
function asNumbers({ pieces, sheet }: StockOfClass) {
  const eighths = (length: StockOfClass['sheet']['size']['width']) => numberIn(length, 'in') * 8
  const rects = (): Rect[] =>
    pieces.flatMap(({ size, count }) =>
      Array.from({ length: count }, () => ({ width: eighths(size.width), height: eighths(size.height) })),
    )
  return {
    width: Math.floor(eighths(sheet.size.width)),
    height: Math.floor(eighths(sheet.size.height)),
    rects,
  }
}

console.log(
  listingText({
    title: 'Sheets used',
    intro: `${classes} random classes; ${sum.proven} plans proven, ${sum.wrong} mistakes, ${(sum.ms / classes).toFixed(0)} ms a plan`,
    sections: [
      {
        heading: 'Side by side',
        columns: [words('what'), count('sheets'), count('we use fewer'), count('as many'), count('more')],
        rows: [
          ['lower bound', String(sum.bound), '', '', ''],
          ['foldlore', String(sum.ours), '', '', ''],
          ['guillotine-packer', String(sum.guillotine), ...Object.values(against).map(String)],
          ['maxrects-packer, not edge to edge', String(sum.free), ...Object.values(againstFree).map(String)],
        ],
      },
    ],
  }),
)

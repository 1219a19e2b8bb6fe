import { inches } from '../../src/length/length.ts'
import { sheetSize } from '../../src/length/paper.ts'
import type { WantedPiece } from '../../src/workshop/cutting/cutting.ts'
import { planCutting } from '../../src/workshop/cutting/plan-cutting.ts'
import { median, type Ratio } from './ratio.ts'

/** What one person takes of a stock: a base, two layers, three strips. */
const kit = [
  [8, 5.25, 1],
  [5, 4, 2],
  [5.25, 0.75, 3],
] as const

const piecesFor = (people: number): WantedPiece[] =>
  kit.map(([width, height, count], i) => ({
    lesson: 'Quillhaven',
    name: `piece ${i}`,
    stock: 'card',
    size: { width: inches(width * 8, 8), height: inches(height * 8, 8) },
    count: count * people,
    turns: true,
  }))

/** Plans for more and more people, each against the smallest class: no worse than in line with the people. */
export async function benchPlans(classes: readonly number[], runs: number): Promise<Ratio[]> {
  const size = sheetSize('A4')
  if (!size) throw new RangeError('A size of paper is missing')
  const times = new Map<number, number>()
  for (const people of classes) {
    const all: number[] = []
    for (let run = 0; run <= runs; run++) {
      const start = performance.now()
      await planCutting(piecesFor(people), [{ stock: 'card', size }])
      if (run > 0) all.push(performance.now() - start)
    }
    times.set(people, median(all))
  }
  const [first = 5] = classes
  const floor = times.get(first) ?? Number.NaN
  return classes.slice(1).map((people) => ({
    what: `a plan for ${people} people`,
    against: `for ${first}`,
    ours: times.get(people) ?? Number.NaN,
    floor,
    goal: { atMost: people / first },
    runs,
  }))
}

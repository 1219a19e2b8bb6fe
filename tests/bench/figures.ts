import { readFileSync } from 'node:fs'
import { toHtml } from 'hast-util-to-html'
import { drawFigure } from '../../src/draw/draw.ts'
import { fillLesson } from '../../src/lesson/fill.ts'
import { figureKinds } from '../../src/lesson/nodes.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { inTurn, type Ratio } from './ratio.ts'

/** Each kind of figure of a lesson's first card, against writing the finished one down. */
export async function benchFigures(lesson: string, runs: number): Promise<Ratio[]> {
  const { cards, wording } = fillLesson(readLesson(readFileSync(lesson, 'utf8')))
  const [card] = cards
  if (!card) throw new Error(`${lesson} has no card`)
  const ratios: Ratio[] = []
  for (const kind of figureKinds) {
    const draw = () => drawFigure(kind, card, undefined, wording)
    const drawn = draw()
    if ('findings' in drawn) continue
    const times = await inTurn(runs, draw, () => toHtml(drawn.svg))
    ratios.push({ what: kind, against: 'writing its SVG', ...times })
  }
  return ratios.toSorted((a, b) => b.ours - a.ours)
}

import { count, words } from '../../src/workshop/listing.ts'
import { listingText } from '../../src/workshop/listing-text.ts'
import { benchHandout } from './handout.ts'
import { benchHtml } from './html.ts'
import { benchMeasure } from './measure.ts'

// Run by `npm run bench` in the project's folder. Prints ratios; a slow machine fails nothing.
const lesson = 'lessons/harbour-lights.md'
const ratios = [await benchMeasure(lesson, 21), await benchHtml(lesson, 200), await benchHandout(lesson, 7)]

const ms = (x: number) => x.toFixed(x < 100 ? 1 : 0)
console.log(
  listingText({
    title: 'How long it takes',
    intro: `Medians in ms of runs in turn, ${lesson}`,
    sections: [
      {
        heading: 'Against the least that could do it',
        columns: [
          words('what'),
          count('ms'),
          words('against'),
          count('ms'),
          count('times'),
          count('goal'),
          count('runs'),
        ],
        rows: ratios.map(({ what, floor, ours, floors, goal, runs }) => [
          what,
          ms(ours),
          floor,
          ms(floors),
          (ours / floors).toFixed(2),
          String(goal),
          String(runs),
        ]),
      },
    ],
  }),
)

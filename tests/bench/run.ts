import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { listingText } from '../../src/workshop/listing-text.ts'
import { benchFigures } from './figures.ts'
import { benchFolds } from './folds.ts'
import { benchHandout, manySteps } from './handout.ts'
import { benchHtml } from './html.ts'
import { benchLibrary } from './library.ts'
import { benchFirstMeasure, benchHelp, benchMeasure } from './measure.ts'
import { benchMemory } from './memory.ts'
import { benchPlans } from './plans.ts'
import { type Part, tableOf } from './table.ts'

// Run by `npm run bench` in the project's folder; `npm run bench -- cold folds` makes only these parts of the table, and a
// number says how many lessons the library has. Prints ratios; a slow machine fails nothing.
const lesson = 'lessons/harbour-lights.md'
const asked = process.argv.slice(2)
const lessons = Number(asked.find((word) => /^\d+$/.test(word)) ?? 200)
const names = asked.filter((word) => !/^\d+$/.test(word))
const folder = mkdtempSync(join(tmpdir(), 'bench-'))

const long = join(folder, 'long.md')
writeFileSync(long, manySteps(readFileSync(lesson, 'utf8'), 9))

const parts: Record<string, () => Promise<Part>> = {
  cold: async () => ({
    heading: 'From nothing',
    ratios: [
      await benchHelp(21),
      await benchMeasure(lesson, 21),
      await benchFirstMeasure(lesson, 21),
      await benchHandout(lesson, 'a handout', 7),
      await benchHandout(long, 'a handout of fifty pages', 3),
    ],
  }),
  warm: async () => ({ heading: 'In a program that runs', ratios: [await benchHtml(lesson, 200)] }),
  folds: async () => ({ heading: 'The proof of each fold', ratios: await benchFolds(5) }),
  figures: async () => ({ heading: 'Figures', ratios: await benchFigures(lesson, 7) }),
  plans: async () => ({
    heading: 'Cutting plans',
    ratios: await benchPlans([5, 10, 20, 50, 100, 200, 500], 3),
  }),
  memory: async () => ({ heading: 'Memory', ratios: benchMemory(lesson, folder) }),
  library: async () => ({
    heading: 'A library, each lesson in three sizes and both units',
    ratios: benchLibrary(lesson, lessons),
  }),
}

try {
  const wrong = names.find((name) => !Object.hasOwn(parts, name))
  if (wrong !== undefined)
    throw new Error(`There is no part \`${wrong}\`, only ${Object.keys(parts).join(', ')}`)
  const made: Part[] = []
  for (const [name, make] of Object.entries(parts)) {
    if (names.length > 0 && !names.includes(name)) continue
    process.stderr.write(`${name} …\n`)
    made.push(await make())
  }
  console.log(listingText(tableOf('How long it takes', `Medians of runs in turn, ${lesson}`, made)))
} finally {
  rmSync(folder, { recursive: true, force: true })
}

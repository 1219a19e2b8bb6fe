import process from 'node:process'
import { parseArgs } from 'node:util'
import { entries } from './entries.ts'
import { fuzz } from './fuzz.ts'
import { startTrial } from './trial.ts'

// Run by `npm run fuzz` in the project's folder: tries texts at every entry in turn, an hour unless `--minutes` says
// otherwise. Exit code 1 when anything was found; each find is printed as a test that fails.
const { values } = parseArgs({
  options: {
    minutes: { type: 'string', default: '60' },
    seed: { type: 'string' },
    entry: { type: 'string' },
    // In s: how long one text may take. A busy computer wants more.
    limit: { type: 'string', default: '20' },
  },
})
const end = Date.now() + Number(values.minutes) * 60_000
const names = Object.keys(entries).filter((name) => values.entry === undefined || name === values.entry)
const trial = await startTrial(Number(values.limit) * 1000)
const tried = new Map<string, number>()
const found = new Set<string>()
for (let seed = Number(values.seed ?? Date.now() % 1_000_000); Date.now() < end; seed++)
  for (const name of names) {
    if (Date.now() >= end) break
    const outcome = await fuzz(trial, name, Math.min(15_000, Math.max(1000, end - Date.now())), seed)
    tried.set(name, (tried.get(name) ?? 0) + outcome.tried)
    if (!outcome.failure) continue
    const { text, wrong } = outcome.failure
    // One mistake is found again and again: its first two lines tell it.
    const key = `${name} ${wrong.split('\n').slice(0, 2).join(' ').replace(/\d+/g, '#')}`
    if (found.has(key)) continue
    found.add(key)
    console.log(`\n// seed ${seed}: ${wrong.split('\n').slice(0, 6).join('\n// ')}`)
    console.log(
      `test('${name}', async () => expect(await trial.of('${name}', ${JSON.stringify(text)})).toBeUndefined())`,
    )
  }
trial.end()
console.log(`\nTexts tried: ${[...tried].map(([name, count]) => `${name} ${count}`).join(', ')}`)
console.log(`Found: ${found.size}`)
process.exitCode = found.size > 0 ? 1 : 0

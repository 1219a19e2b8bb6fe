import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'

const stages = [
  ...['length', 'wording', 'card', 'fold', 'lesson', 'draw', 'workshop'],
  ...['motion', 'screen', 'publish', 'desk', 'cli'],
]
const inBrowser = stages.slice(0, 9)

/** One file a line of which breaks the rule, in a project of its own with our lint configuration. */
const folder = mkdtempSync(join(tmpdir(), 'stages-'))
let report: { file: string; rule: string; line: number }[]

beforeAll(() => {
  cpSync('.biome.json', join(folder, '.biome.json'))
  for (const stage of stages) {
    mkdirSync(join(folder, 'src', stage), { recursive: true })
    const imports = stages.map((other) => `export * from '../${other}/a.ts'`)
    const outside = ["export { cwd } from 'node:process'", 'export const now = () => Date.now()']
    const lazy = stages.map((other) => `export const ${other} = () => import('../${other}/a.ts')`)
    writeFileSync(join(folder, 'src', stage, 'bad.ts'), [...imports, ...lazy, ...outside].join('\n'))
  }
  const biome = join(process.cwd(), 'node_modules/.bin/biome')
  const { stdout } = spawnSync(biome, ['lint', '--reporter=github', '--max-diagnostics=none', 'src'], {
    cwd: folder,
    encoding: 'utf8',
  })
  report = [
    ...stdout.matchAll(/title=lint\/style\/(noRestricted\w+),file=.*?src\/(\w+)\/bad\.ts,line=(\d+)/g),
  ].map(([, rule = '', file = '', line]) => ({ rule, file, line: Number(line) }))
})
afterAll(() => rmSync(folder, { recursive: true }))

const linesOf = (stage: string, rule: string) => {
  const lines = report.filter((r) => r.file === stage && r.rule === rule).map((r) => r.line)
  return [...new Set(lines)].sort((a, b) => a - b)
}

test.each(stages)('%s imports no later stage, at once or when needed', (stage) => {
  const later = stages.flatMap((_, i) => (i > stages.indexOf(stage) ? [i + 1] : []))
  const node = inBrowser.includes(stage) ? [2 * stages.length + 1] : []
  const expected = [...later, ...later.map((line) => line + stages.length), ...node]
  expect(linesOf(stage, 'noRestrictedImports')).toEqual(expected)
})

test.each(inBrowser)('%s reads no clock', (stage) => {
  expect(linesOf(stage, 'noRestrictedGlobals')).toEqual([2 * stages.length + 2])
})

test('every folder of the source is a stage', () => {
  const folders = readdirSync('src', { withFileTypes: true }).filter((entry) => entry.isDirectory())
  expect(stages).toEqual(expect.arrayContaining(folders.map(({ name }) => name)))
})

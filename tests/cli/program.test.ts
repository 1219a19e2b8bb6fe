import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { isOurs } from '../../src/publish/write.ts'
import { measuresShape } from '../workshop/contract.ts'
import { broken, small } from './lessons.ts'

/** The files that the command is built of. */
type Parts = Record<string, { inputs: string[]; imports: { path: string; kind: string }[] }>

const folder = mkdtempSync(join(tmpdir(), 'program-'))
const program = resolve('dist/foldlore.js')
let parts: Parts

const foldlore = (...argv: string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...argv], {
    cwd: folder,
    encoding: 'utf8',
  })
  return { code: status, out: stdout, err: stderr }
}

beforeAll(() => {
  const about = join(folder, 'meta.json')
  const { status, stderr } = spawnSync(process.execPath, ['.ci/build.js', about], { encoding: 'utf8' })
  expect([status, stderr]).toEqual([0, ''])
  parts = JSON.parse(readFileSync(about, 'utf8'))
  writeFileSync(join(folder, 'small.md'), small)
  writeFileSync(join(folder, 'broken.md'), broken)
})
afterAll(() => rmSync(folder, { recursive: true }))

test('0: the real program measures a lesson', () => {
  const { code, out, err } = foldlore('measure', resolve('lessons/harbour-lights.md'), '--json')
  expect([code, err]).toEqual([0, ''])
  expect(measuresShape.parse(JSON.parse(out)).lesson).toBe('Harbour lights')
})

test('1: a lesson with errors; 2: a word that is none; 3: a file that is not there', () => {
  const lesson = foldlore('check', 'broken.md')
  expect([lesson.code, lesson.err]).toEqual([1, ''])
  expect(lesson.out).toMatch(/^broken\.md:27:\d+ error /)
  expect(foldlore('chek', 'small.md')).toEqual({
    code: 2,
    out: '',
    err: 'foldlore: Unexpected command `chek`\n  Write `check`\n',
  })
  expect(foldlore('measure', 'none.md')).toEqual({
    code: 3,
    out: '',
    err: 'foldlore: Cannot read `none.md`: there is no such file\n  Check the folder and the name\n',
  })
})

test('a PDF is printed, may be printed again, and nothing else is left in the folder', () => {
  const print = () => foldlore('kit', 'small.md', '--people', '3', '-o', 'out/kit.pdf')
  expect(print()).toEqual({ code: 0, out: '', err: 'Wrote out/kit.pdf\n' })
  const pdf = readFileSync(join(folder, 'out/kit.pdf'))
  expect([pdf.subarray(0, 5).toString(), isOurs(pdf)]).toEqual(['%PDF-', true])
  expect(print()).toMatchObject({ code: 0 })
  expect(readdirSync(join(folder, 'out'))).toEqual(['kit.pdf'])
})

test('a reader that has seen enough is no mistake', () => {
  const line = `"${process.execPath}" "${program}" measure small.md --json | head -c 1`
  const { stdout, stderr } = spawnSync('sh', ['-c', line], { cwd: folder, encoding: 'utf8' })
  expect([stdout, stderr]).toEqual(['{', ''])
})

test('a folder that cannot be written is told as that', () => {
  mkdirSync(join(folder, 'taken.md'))
  const { code, err } = foldlore('new', 'bridge', 'taken.md')
  expect([code, err]).toEqual([3, 'foldlore: Cannot write `taken.md`: it is a folder\n  Name a file in it\n'])
})

/** All files that a source file brings along at once, before anything is imported when needed. */
function broughtBy(source: string): string[] {
  const [start] = Object.entries(parts).find(([, { inputs }]) => inputs.includes(source)) ?? []
  const seen = new Set<string>()
  const visit = (path: string): void => {
    const output = parts[path]
    if (!output || seen.has(path)) return
    seen.add(path)
    for (const { path: next, kind } of output.imports) if (kind === 'import-statement') visit(next)
  }
  visit(start ?? '')
  return [...seen].flatMap((path) => parts[path]?.inputs ?? [])
}

test('what the program loads for itself is in ASCII, for it is read letter by letter', () => {
  const files = readdirSync('dist').filter((name) => name.endsWith('.cjs'))
  expect(files.length).toBeGreaterThan(3)
  expect(files.filter((name) => /[^\0-\x7f]/.test(readFileSync(join('dist', name), 'utf8')))).toEqual([])
})

test('what is not built in is loaded too, also by code that was kept compiled', () => {
  const saturday = resolve('lessons/saturday.yaml')
  const [first, second] = [1, 2].map(() => foldlore('kit', saturday))
  expect(first).toMatchObject({ code: 0, err: '' })
  expect(first?.out).toContain('Saturday')
  expect(second).toEqual(first)
})

test('measuring loads nothing that only printing needs', () => {
  const files = broughtBy('src/cli/commands/measure.ts')
  expect(files).toContain('src/cli/commands/measure.ts')
  expect(files.filter((file) => /puppeteer|handlebars|hast|rehype|zod|src\/draw\//.test(file))).toEqual([])
})

test('of the languages only English is loaded before a text asks for another', () => {
  const words = broughtBy('src/cli/commands/measure.ts').filter((file) =>
    /src\/wording\/messages\//.test(file),
  )
  expect(words).toContain('src/wording/messages/en-gb/kit.json')
  expect(words.filter((file) => !file.includes('en-gb'))).toEqual([])
})

test('a lesson in another language has its words in every command', () => {
  const lesson = 'ebbe.md'
  writeFileSync(join(folder, lesson), readFileSync('lessons/deutsch/ebbe.md'))
  writeFileSync(join(folder, 'kurs.yaml'), 'lesson: ebbe.md\npeople: 3\n')
  const said = [
    ['measure', lesson],
    ['kit', lesson, '--people', '3'],
    ['kit', 'kurs.yaml'],
    ['sizes', lesson],
    ['text', lesson],
  ].map((argv) => foldlore(...argv).out)
  for (const out of said) expect(out).toMatch(/Zuschnitt|insgesamt|Breite|Größe/)
  foldlore('handout', lesson, '-o', 'out/ebbe.html', '--quiet')
  expect(readFileSync(join(folder, 'out/ebbe.html'), 'utf8')).toContain('Zuschnitt')
})

test('a number stays with the unit of a language that is learnt later', () => {
  const lesson = resolve('lessons/francais/maree-basse.md')
  foldlore('handout', lesson, '-o', 'out/pouces.html', '--units', 'in', '--quiet')
  const page = readFileSync(join(folder, 'out/pouces.html'), 'utf8')
  const sizes = [...page.matchAll(/<td class="size">(.*?)<\/td>/g)].map(([, size]) => size)
  expect(sizes.length).toBeGreaterThan(3)
  for (const size of sizes) expect(size).toMatch(/\d(?:<\/span>)?\u00a0po$/)
})

test('the help loads no lesson', () => {
  expect(
    broughtBy('src/cli/program.ts').filter((file) => /yaml|micromark|src\/(card|lesson)\//.test(file)),
  ).toEqual([])
})

test('nothing that the command runs holds the program of the page in motion, or three.js', () => {
  const files = Object.values(parts).flatMap(({ inputs }) => inputs)
  expect(files).toContain('src/motion/course.ts')
  expect(files.filter((file) => /node_modules\/three\/|src\/motion\/(main|page|stage)/.test(file))).toEqual(
    [],
  )
})

test('motion writes the page with the program that was built, and says so', () => {
  const lesson = resolve('lessons/harbour-lights.md')
  expect(foldlore('motion', lesson, '-o', 'out', '--units', 'mm', '--json')).toEqual({
    code: 0,
    out: `${JSON.stringify({ written: ['out/harbour-lights-motion-mm.html'] }, undefined, 2)}\n`,
    err: '',
  })
  const page = readFileSync(join(folder, 'out/harbour-lights-motion-mm.html'))
  expect([isOurs(page), page.length < 1_200_000]).toEqual([true, true])
  const text = page.toString()
  expect([
    text.includes(readFileSync('dist/motion-page.js', 'utf8')),
    /177\s×\s127\smm card/.test(text),
  ]).toEqual([true, true])
  expect(foldlore('motion', lesson, '-o', 'out', '--units', 'mm', '--quiet')).toEqual({
    code: 0,
    out: '',
    err: '',
  })
})

import { spawnSync } from 'node:child_process'
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { checkPackage, createPackageFromTarballData } from '@arethetypeswrong/core'
import { publint } from 'publint'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { output, packed } from './packed.ts'

const folder = realpathSync(mkdtempSync(join(tmpdir(), 'package-')))
const lesson = resolve('lessons/harbour-lights.md')
let tarball: string

beforeAll(() => {
  tarball = packed(folder)
})
afterAll(() => rmSync(folder, { recursive: true }))

test('what the package says of itself is in it', async () => {
  const data = readFileSync(tarball)
  const { messages } = await publint({
    pack: { tarball: data.buffer.slice(data.byteOffset, data.byteOffset + data.byteLength) as ArrayBuffer },
    strict: true,
  })
  expect(messages).toEqual([])
})

test('each entry has the types of what it runs', async () => {
  const result = await checkPackage(createPackageFromTarballData(new Uint8Array(readFileSync(tarball))), {
    entrypoints: ['.', './remark', './figures'],
  })
  if (!result.types) throw new Error('The package has no types')
  expect(Object.keys(result.entrypoints)).toEqual(['.', './remark', './figures'])
  // Modules only: Node has no way in that knows no modules since 20.19, and resolving as before `exports` is left out.
  const ours = result.problems.filter(
    (problem) =>
      problem.kind !== 'CJSResolvesToESM' &&
      !('resolutionKind' in problem && problem.resolutionKind === 'node10'),
  )
  expect(ours).toEqual([])
}, 120_000)

test('nothing in it is for contributors only', () => {
  const files = output(folder, 'tar', '-tf', tarball).trim().split('\n')
  const others = files.filter((file) => !/^package\/(dist|themes)\//.test(file))
  expect(others.sort()).toEqual(['package/LICENSE', 'package/README.md', 'package/package.json'])
  expect(files).toContain('package/dist/LICENSES.txt')
})

describe('installed in an empty folder', () => {
  const place = join(folder, 'empty')
  let offline: string | undefined

  beforeAll(() => {
    mkdirSync(place)
    writeFileSync(join(place, 'package.json'), '{"type": "module", "private": true}')
    const pipeline = ['remark-parse', 'remark-rehype', 'rehype-stringify', 'unified']
    const { status, stderr } = spawnSync(
      'npm',
      [
        'install',
        tarball,
        ...pipeline,
        ...['--prefer-offline', '--no-audit', '--no-fund', '--omit=optional', '--fetch-retries=0'],
      ],
      { cwd: place, encoding: 'utf8', timeout: 100_000 },
    )
    const unreached = /ENOTFOUND|ECONNREFUSED|ETIMEDOUT|EAI_AGAIN|ENOTCACHED|ECONNRESET|E40[35]/.exec(stderr)
    if (status !== 0 && unreached) {
      offline = unreached[0]
      console.warn(`The package was NOT installed: the registry did not answer (${offline})`)
    } else expect([status, stderr]).toEqual([0, expect.any(String)])
  })

  test('the command measures and prints', ({ skip }) => {
    skip(offline !== undefined, 'no registry')
    const command = join(place, 'node_modules/.bin/foldlore')
    const measured = JSON.parse(output(place, command, 'measure', lesson, '--json'))
    expect([measured.lesson, measured.cards.length]).toEqual(['Harbour lights', 1])
    expect(output(place, command, 'folds')).toContain('bridge')
    output(place, command, 'handout', lesson, '-o', 'out')
    expect(readdirSync(join(place, 'out')).sort()).toEqual(['harbour-lights.html', 'harbour-lights.pdf'])
  })

  test('the library is imported, and plans with its solver', ({ skip }) => {
    skip(offline !== undefined, 'no registry')
    const program = `
      import { fillLesson, measures, planCutting, readLesson, readSize } from 'foldlore'
      import { readFileSync } from 'node:fs'
      const filled = fillLesson(readLesson(readFileSync(process.argv[2], 'utf8')))
      const piece = (size, count) => ({ lesson: '', name: size, stock: 'card', size: readSize(size), count, turns: true })
      const pieces = [piece('7 x 5 in', 30), piece('4 x 3 in', 41), piece('2 3/8 x 6 1/8 in', 23)]
      const { plans } = await planCutting(pieces, [{ stock: 'card', size: readSize('12 x 12 in') }])
      const { width } = measures(filled).cards[0].pieces[0]
      console.log(JSON.stringify([filled.findings.length, width.text, plans[0].used >= plans[0].lowerBound]))`
    writeFileSync(join(place, 'library.js'), program)
    expect(output(place, process.execPath, 'library.js', lesson)).toBe('[0,"8 1/2 in",true]\n')
  })

  test('the pipeline of the README fills measures in and draws figures', ({ skip }) => {
    skip(offline !== undefined, 'no registry')
    const readme = readFileSync('README.md', 'utf8')
    const [, shown = ''] = /```js\n(import \{ unified \}[\s\S]*?)```/.exec(readme) ?? []
    expect(shown.trim().split('\n').filter(Boolean).length).toBeLessThanOrEqual(10)
    const before =
      "import { readFileSync } from 'node:fs'\nconst lesson = readFileSync(process.argv[2], 'utf8')\n"
    writeFileSync(join(place, 'pipeline.js'), before + shown)
    const html = output(place, process.execPath, 'pipeline.js', lesson)
    expect(html).toContain('8 1/2 × 5 in')
    const wanted = readFileSync(lesson, 'utf8').match(/^ *::figure/gm)?.length
    expect(html.match(/<figure class="figure figure-\w+">\s*<div><svg/g)?.length).toBe(wanted)
    expect(html).toMatch(/ \[\]\n$/)
  })

  test('strict TypeScript finds nothing wrong with the types, or with their use', ({ skip }) => {
    skip(offline !== undefined, 'no registry')
    writeFileSync(
      join(place, 'use.ts'),
      `import { type Finding, fillLesson, publishHandout, readLesson, readSize } from 'foldlore'
import { figure, type Figure, drawFigure } from 'foldlore/figures'
import remarkFoldlore from 'foldlore/remark'
import remarkParse from 'remark-parse'
import { unified } from 'unified'
unified().use(remarkParse).use(remarkFoldlore, { figure, closed: '6 x 6 in' })
const filled = fillLesson(readLesson('# A'), { closed: readSize('6 x 6 in') })
export const findings: readonly Finding[] = filled.findings
export const print = () => publishHandout(filled, { paper: 'a4', theme: 'step-sheet', out: 'a', force: false })
export const width = (drawn: Figure): number => drawn.width
export const draw = drawFigure
// @ts-expect-error a paper that is none
export const wrong = () => publishHandout(filled, { paper: 'a9', theme: 'step-sheet', out: 'a', force: false })
`,
    )
    const options = ['--strict', '--noEmit', '--module', 'nodenext', '--target', 'es2023', '--types', '']
    output(place, process.execPath, resolve('node_modules/typescript/bin/tsc'), ...options, 'use.ts')
  })

  test('it brings little along: its fonts, types, the solver and what the types are of', ({ skip }) => {
    skip(offline !== undefined, 'no registry')
    const { packages } = JSON.parse(readFileSync(join(place, 'node_modules/.package-lock.json'), 'utf8'))
    const brought = new Set<string>()
    const bring = (name: string): void => {
      if (brought.has(name)) return
      brought.add(name)
      for (const next of Object.keys(packages[`node_modules/${name}`].dependencies ?? {})) bring(next)
    }
    bring('foldlore')
    const others = [...brought].filter((name) => !/^(foldlore|@fontsource-variable\/|@types\/)/.test(name))
    expect(others.sort()).toEqual([
      'bail',
      'dequal',
      'devlop',
      'extend',
      'fraction.js',
      'highs',
      'is-plain-obj',
      'trough',
      'unified',
      'unist-util-stringify-position',
      'vfile',
      'vfile-message',
    ])
    const sizes = output(place, 'du', '-sk', ...[...brought].map((name) => `node_modules/${name}`))
    const kilobytes = sizes.split('\n').reduce((sum, line) => sum + Number.parseInt(line || '0', 10), 0)
    expect(kilobytes).toBeLessThan(30_000)
  })
})

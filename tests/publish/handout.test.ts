import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { type HandoutOptions, publishHandout } from '../../src/publish/handout.ts'
import { disk, type Outside } from '../../src/publish/outside.ts'
import { isOurs } from '../../src/publish/write.ts'
import { filled, pier, pierText } from './lesson.ts'
import { withBrowser } from './with-browser.ts'

const browser = withBrowser()
let folder = ''
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'handout-'))
})
afterEach(() => rmSync(folder, { recursive: true }))

const publish = (options: Partial<HandoutOptions> = {}, outside?: Outside, lesson = pier()) =>
  publishHandout(
    lesson,
    {
      paper: 'a4',
      theme: 'step-sheet',
      out: join(folder, 'out/pier'),
      force: false,
      browser: browser(),
      ...options,
    },
    outside,
  )
const there = () => (existsSync(join(folder, 'out')) ? readdirSync(join(folder, 'out')).sort() : [])

test('page and PDF appear, and a second print takes their place', async () => {
  const first = await publish()
  expect(first.paths).toEqual([join(folder, 'out/pier.html'), join(folder, 'out/pier.pdf')])
  expect(first.findings.filter(({ severity }) => severity !== 'hint')).toEqual([])
  for (const path of first.paths) expect(isOurs(readFileSync(path))).toBe(true)
  expect((await publish()).paths).toEqual(first.paths)
  expect(there()).toEqual(['pier.html', 'pier.pdf'])
})

test('the page needs no browser', async () => {
  const none = Promise.reject(new Error('no browser'))
  none.catch(() => {})
  const { paths } = await publish({ pdf: false, browser: none })
  expect(paths).toEqual([join(folder, 'out/pier.html')])
})

test('without a browser the page is there all the same, and the error says so', async () => {
  const { browser: _, ...none } = { browser: undefined }
  const options = {
    paper: 'a4',
    theme: 'step-sheet',
    out: join(folder, 'out/pier'),
    force: false,
    ...none,
  } as const
  await expect(publishHandout(pier(), { ...options, browserPath: '/nowhere' })).rejects.toMatchObject({
    name: 'NoBrowserError',
    message: 'There is no browser at `/nowhere`',
  })
  expect(there()).toEqual(['pier.html'])
})

test('a lesson with errors is not printed', async () => {
  const broken = filled(pierText.replace('{base.size}', '{bas.size}'))
  const { paths, findings } = await publish({}, undefined, broken)
  expect(paths).toEqual([])
  expect(findings.filter(({ severity }) => severity === 'error')).toMatchObject([{ rule: 'unknown-name' }])
  expect(there()).toEqual([])
})

test("another's file stays, and so does everything else", async () => {
  await publish({ pdf: false })
  const page = readFileSync(join(folder, 'out/pier.html'), 'utf8')
  writeFileSync(join(folder, 'out/pier.pdf'), 'mine')
  await expect(publish({ paper: 'letter' })).rejects.toMatchObject({
    name: 'NotOursError',
    path: join(folder, 'out/pier.pdf'),
  })
  expect(readFileSync(join(folder, 'out/pier.pdf'), 'utf8')).toBe('mine')
  expect(readFileSync(join(folder, 'out/pier.html'), 'utf8')).toBe(page)
  await publish({ force: true })
  expect(isOurs(readFileSync(join(folder, 'out/pier.pdf')))).toBe(true)
})

test('a full disk: plain words, and no half of anything', async () => {
  const full: Outside = {
    ...disk,
    create: (path, data) =>
      path.includes('pdf')
        ? Promise.reject(Object.assign(new Error('no space'), { code: 'ENOSPC' }))
        : disk.create(path, data),
  }
  await expect(publish({}, full)).rejects.toMatchObject({
    name: 'OutsideError',
    message: `Cannot write \`${join(folder, 'out/pier.pdf')}\`: the disk is full`,
  })
  expect(there()).toEqual([])
})

test('a picture beside the lesson is printed; one that is missing is told', async () => {
  writeFileSync(join(folder, 'gull.svg'), '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>')
  const lesson = filled(pierText.replace('3. Fold.', '3. Fold. ![a gull](gull.svg) ![a boat](boat.png)'))
  const { findings } = await publish({ pdf: false, folder }, undefined, lesson)
  expect(findings.filter(({ severity }) => severity !== 'hint')).toMatchObject([
    { rule: 'picture-missing', severity: 'warning' },
  ])
  const page = readFileSync(join(folder, 'out/pier.html'), 'utf8')
  expect(page).toContain('alt="a gull"')
  expect(page).toContain('Picture missing: a boat')
})

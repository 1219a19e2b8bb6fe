import { readXlsx } from 'hucre'
import { expect, test } from 'vitest'
import { openPdf, pageTexts } from '../publish/pdf-reading.ts'
import { harbour } from './lessons.ts'
import { failure, foldlore, foldloreIn, memory } from './memory.ts'

const stocks = ['dark blue card', 'patterned paper', 'vellum', 'grey card', 'white card', 'envelope paper']
const saturday = `title: Saturday
lesson: harbour.md
people: [Ada, {name: Bo, note: no latex}]
start: 10:00
sheets:
${stocks.map((stock) => `  ${stock}: 12 x 12 in`).join('\n')}
`

const files = { 'saturday.yaml': saturday, 'harbour.md': harbour }
const prints = [
  'kit',
  'sheets',
  'prepare',
  'run-sheet',
  'step-sheet-harbour',
  'labels',
  'packing',
  'attendance',
]
const noBrowser = { FOLDLORE_BROWSER: '/none/chrome' }
/** The pages and the workbook, which take no browser. */
const withoutPdfs = [
  'day/saturday-class.html',
  ...prints.map((name) => `day/saturday-${name}.html`),
  'day/saturday-class.xlsx',
]

test('everything for the day, each in a file of its own; what is to be known of a person in one of them only', async () => {
  const here = memory(files)
  expect(await foldloreIn(here, ['class', 'saturday.yaml', '-o', 'day', '--quiet'])).toBe(0)
  for (const name of prints) {
    const pdf = await openPdf(here.disk.get(`day/saturday-${name}.pdf`) ?? new Uint8Array())
    const text = (await pageTexts(pdf)).join(' ')
    expect(text).toContain({ labels: 'Ada', 'step-sheet-harbour': 'Harbour lights' }[name] ?? 'Saturday')
    expect(text.includes('no latex')).toBe(name === 'attendance')
  }
  expect([...here.disk.keys()].filter((path) => !path.endsWith('.pdf')).slice(2)).toEqual(withoutPdfs)
  // The page that leads to them names files that are there, each of them once.
  const links = [...here.text('day/saturday-class.html').matchAll(/href="\.\/([^"]+)"/g)].map(
    ([, to = '']) => to,
  )
  const made = [...here.disk.keys()].flatMap((path) => (path.startsWith('day/') ? [path.slice(4)] : []))
  expect([...links, 'saturday-class.html'].sort()).toEqual(made.sort())
  const { sheets } = await readXlsx(here.disk.get('day/saturday-class.xlsx') ?? new Uint8Array())
  expect(sheets.map(({ name }) => name)).toEqual([
    'To buy',
    'Each kit',
    'On the tables',
    'For the tutor',
    'Weight',
    'Sheets',
    'Cutting',
    'Pieces',
    'Cut',
    'Pack',
    'Run sheet',
    'Before the class',
    'Kits',
    'Guests',
  ])
  expect(JSON.stringify(sheets)).not.toContain('no latex')
}, 300_000)

test('without a browser all pages and the workbook are there all the same: exit code 3', async () => {
  const here = memory(files, noBrowser)
  expect(await foldloreIn(here, ['class', 'saturday.yaml', '-o', 'day', '--quiet'])).toBe(3)
  expect([...here.disk.keys()].slice(2)).toEqual(withoutPdfs)
  expect(here.err()).toMatch(/^foldlore: There is no browser at `\/none\/chrome`/)
  expect(here.text('day/saturday-class.html')).not.toContain('.pdf')
}, 60_000)

test('step sheets are in the size and unit of the class', async () => {
  const own = saturday.replace(
    'lesson: harbour.md',
    'units: mm\nlessons: [{lesson: harbour.md, closed: 6 x 6 in}]',
  )
  const here = memory({ ...files, 'saturday.yaml': own }, noBrowser)
  await foldloreIn(here, ['class', 'saturday.yaml', '-o', 'day', '--quiet'])
  expect(/152\s×\s152\smm/.test(here.text('day/saturday-step-sheet-harbour.html'))).toBe(true)
}, 60_000)

test('nothing is written when one of the files is somebody else’s, or the disk fills up', async () => {
  const taken = memory({ ...files, 'day/saturday-packing.html': 'mine' }, noBrowser)
  expect(await foldloreIn(taken, ['class', 'saturday.yaml', '-o', 'day', '--quiet'])).toBe(2)
  expect([...taken.disk.keys()].slice(2)).toEqual(['day/saturday-packing.html'])
  const full = memory(files, noBrowser)
  let room = 5
  const outside = {
    ...full.outside,
    create: (path: string, data: Uint8Array) =>
      --room > 0 ? full.outside.create(path, data) : Promise.reject(failure('ENOSPC')),
  }
  expect(await foldloreIn({ ...full, outside }, ['class', 'saturday.yaml', '-o', 'day', '--quiet'])).toBe(3)
  expect(full.err()).toContain('the disk is full')
  expect([...full.disk.keys()].slice(2)).toEqual([])
}, 60_000)

test('the foot of a list names the cards of all lessons', async () => {
  const two = saturday.replace(
    'lesson: harbour.md',
    'lessons: [harbour.md, {lesson: harbour.md, closed: 6 x 6 in}]',
  )
  const here = memory({ ...files, 'saturday.yaml': two })
  expect(await foldloreIn(here, ['runsheet', 'saturday.yaml', '-o', 'a.html', '--quiet'])).toBe(0)
  expect(here.text('a.html').replace(/\s/g, ' ')).toContain('7 × 5 in and 6 × 6 in cards')
})

test('a class goes into a folder, not into a file', async () => {
  const { code, err } = await foldlore(['class', 'saturday.yaml', '-o', 'day.pdf'], files)
  expect([code, err]).toEqual([
    2,
    'foldlore: `class` fills a folder with files\n  Name the folder, such as `-o day`\n',
  ])
})

test('a lesson that comes twice, once in a size that it cannot have, is told', async () => {
  const twice = saturday.replace(
    'lesson: harbour.md',
    'lessons: [{lesson: harbour.md, closed: 1 x 1 in}, harbour.md]',
  )
  const { code, err } = await foldlore(['runsheet', 'saturday.yaml'], { ...files, 'saturday.yaml': twice })
  expect(code).toBe(1)
  expect(err).toMatch(/^harbour\.md:\d+:\d+ error /m)
})

import { mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { join } from 'node:path'
import { beforeAll, expect, test } from 'vitest'
import type { OpenDesk } from '../../../src/desk/server/serve.ts'
import { small } from '../../cli/lessons.ts'
import { openPdf, pageSizes, pageTexts } from '../../publish/pdf-reading.ts'
import { ask, someDesk, someFolder } from './desk.ts'

const around = someFolder()
const folder = join(around, 'lessons')
let desk: OpenDesk
beforeAll(async () => {
  mkdirSync(join(folder, 'sea'), { recursive: true })
  writeFileSync(
    join(folder, 'sea/gull.svg'),
    '<svg xmlns="http://www.w3.org/2000/svg" width="200" height="60"><text x="5" y="30">A gull from the folder</text></svg>',
  )
  writeFileSync(
    join(around, 'secret.svg'),
    '<svg xmlns="http://www.w3.org/2000/svg" width="200" height="60"><text x="5" y="30">A secret</text></svg>',
  )
  symlinkSync(join(around, 'secret.svg'), join(folder, 'sea/link.svg'))
  desk = await someDesk(folder)
})

const usual = { path: 'sea/small.md', text: small, what: 'handout', paper: 'a4', theme: 'step-sheet' }
const print = (wish: object) =>
  ask(desk, '/api/print', { method: 'POST', body: JSON.stringify({ ...usual, ...wish }) })
const read = async ({ body }: { body: Buffer }) => {
  const pdf = await openPdf(body)
  return { text: (await pageTexts(pdf)).join(' '), sizes: await pageSizes(pdf) }
}

test('a lesson is printed as it is sent, and nothing is left in the folder', async () => {
  const answer = await print({ text: small.replace('Low tide', 'High tide') })
  expect([answer.status, answer.headers['content-type']]).toEqual([200, 'application/pdf'])
  const { text, sizes } = await read(answer)
  expect(text).toContain('High tide')
  expect(text).toContain('10 × 7 in')
  // A4 in points.
  for (const [width, height] of sizes) expect([Math.round(width), Math.round(height)]).toEqual([595, 842])
  expect(readdirSync(join(folder, 'sea')).sort()).toEqual(['gull.svg', 'link.svg'])
})

test('size, unit and paper are those of the wish', async () => {
  const { text, sizes } = await read(
    await print({ closed: 'A6 landscape', units: 'mm', paper: 'letter', path: '' }),
  )
  expect(text).toContain('296 × 105 mm')
  expect(sizes[0]?.map(Math.round)).toEqual([612, 792])
})

test('templates are printed at their real size', async () => {
  const template = await print({ what: 'template' })
  expect((await read(template)).text).toContain('Low tide: templates')
  // As the file itself asks of the program that prints it.
  expect(template.body.includes('/PrintScaling /None')).toBe(true)
})

test('the chart of sizes has the other sizes of the lesson, on one sheet', async () => {
  const sizes = small.replace('units: in', 'units: in\nsizes: [4 1/4 x 5 1/2 in]')
  const chart = await read(await print({ what: 'sizes', text: sizes, units: 'in' }))
  expect(chart.text).toContain('4 1/4 × 5 1/2 in')
  expect(chart.sizes).toHaveLength(1)
})

test('a lesson with errors is not printed, and its findings come back', async () => {
  const { status, json } = await print({ text: small.replace('{mat.size}', '{matt.size}') })
  expect([status, json().refused]).toEqual([422, 'The lesson has errors, so its numbers cannot be relied on'])
  expect(json().findings).toMatchObject([
    { rule: 'unknown-name', severity: 'error', line: 29, suggestion: 'Write `mat.size`' },
  ])
})

test('pictures come from the lesson’s folder, and from nowhere else', async () => {
  let asked = 0
  const far = createServer((_, response) => {
    asked++
    response.end()
  })
  await new Promise<void>((done) => far.listen(0, '127.0.0.1', done))
  const there = `http://127.0.0.1:${(far.address() as AddressInfo).port}`
  const pictures = [
    'gull.svg',
    'link.svg',
    '../../secret.svg',
    `${around}/secret.svg`,
    `file://${around}/secret.svg`,
    `${there}/a.png`,
  ]
  const body = pictures.map((address) => `![A picture](${address})`).join('\n\n')
  const html = `<script>document.body.textContent = 'stolen'</script><img src="${there}/b.png" onerror="document.body.textContent = 'stolen'"><iframe src="file:///etc/passwd"></iframe>`
  const { text } = await read(await print({ text: `${small}\n${body}\n\n${html}\n` }))
  expect(text).toContain('A gull from the folder')
  expect(text).not.toMatch(/A secret|root:/)
  expect(text).toContain('Cut the base')
  expect(asked).toBe(0)
  await new Promise((done) => far.close(done))
})

test('a wish that is none is told, and a theme of a stranger is not loaded', async () => {
  const wrong: [object, number][] = [
    [{ what: 'poster' }, 400],
    [{ paper: 'a3' }, 400],
    [{ paper: undefined }, 400],
    [{ units: 'cm' }, 400],
    [{ theme: '../../secret' }, 400],
    [{ theme: around }, 400],
    [{ text: 7 }, 400],
    [{ closed: 'as large as a house' }, 422],
    [{ closed: '0 x 5 in' }, 422],
    [{ text: 'a'.repeat(2_000_001) }, 413],
  ]
  for (const [wish, status] of wrong) expect([wish, (await print(wish)).status]).toEqual([wish, status])
})

test('a path that leads out gives no picture from there', async () => {
  const { status, body } = await print({ path: '../a.md', text: `${small}\n![A picture](secret.svg)\n` })
  expect(status).toBe(200)
  expect((await read({ body })).text).not.toContain('A secret')
})

test('where there is no browser, that is told in words', async () => {
  const other = await someDesk(someFolder(), { browserPath: '/none/browser' })
  const { status, json } = await ask(other, '/api/print', { method: 'POST', body: JSON.stringify(usual) })
  expect([status, json().refused]).toEqual([500, 'There is no browser at `/none/browser`'])
})

test('a desk that is closed prints what it was asked for first', async () => {
  const own = someFolder()
  const other = await someDesk(own)
  const printing = ask(other, '/api/print', { method: 'POST', body: JSON.stringify(usual) })
  const saving = ask(other, '/api/file?path=a.md', { method: 'PUT', body: JSON.stringify({ text: 'Saved' }) })
  // Both have arrived when a third thing, asked later, is answered.
  await ask(other, '/api/about')
  await other.close()
  expect([(await saving).status, readFileSync(join(own, 'a.md'), 'utf8')]).toEqual([200, 'Saved'])
  expect((await read(await printing)).text).toContain('Low tide')
  await expect(ask(other, '/api/about')).rejects.toMatchObject({ code: 'ECONNREFUSED' })
})

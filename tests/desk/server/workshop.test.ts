import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, expect, test } from 'vitest'
import type { OpenDesk } from '../../../src/desk/server/serve.ts'
import { workshopBytes } from '../../../src/desk/server/workshop.ts'
import { small } from '../../cli/lessons.ts'
import { openPdf, pageTexts } from '../../publish/pdf-reading.ts'
import { ask, someDesk, someFolder } from './desk.ts'

const around = someFolder()
const folder = join(around, 'lessons')
const says = 'logo: marks/quill.svg\nname: Quillhaven\nfooter: At the old lamp house\n'
const mark = (words: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="200" height="40"><text x="5" y="30">${words}</text></svg>`
let desk: OpenDesk
beforeAll(async () => {
  for (const path of ['sea/deep', 'land', 'marks', 'linked', 'odd'])
    mkdirSync(join(folder, path), { recursive: true })
  writeFileSync(join(around, 'workshop.yaml'), 'footer: Outside of the desk\n')
  writeFileSync(join(folder, 'workshop.yaml'), says)
  writeFileSync(join(folder, 'marks/quill.svg'), mark('The mark of the table'))
  writeFileSync(join(folder, 'land/workshop.yaml'), 'footer: On land\n')
  symlinkSync(join(around, 'workshop.yaml'), join(folder, 'linked/workshop.yaml'))
  writeFileSync(join(folder, 'odd/workshop.yaml'), new Uint8Array([0x66, 0xff, 0xfe]))
  desk = await someDesk(folder)
})

const workshop = async (path: string) => {
  const { status, json } = await ask(desk, `/api/workshop?${new URLSearchParams({ path })}`)
  return [status, json().found]
}
const print = async (wish: object): Promise<string> => {
  const usual = { path: 'sea/small.md', text: small, what: 'handout', paper: 'a4', theme: 'step-sheet' }
  const { body } = await ask(desk, '/api/print', {
    method: 'POST',
    body: JSON.stringify({ ...usual, ...wish }),
  })
  return (await pageTexts(await openPdf(body))).join(' ')
}

test('the nearest `workshop.yaml` is found, in the folder of the lesson or the one above', async () => {
  expect(await workshop('small.md')).toEqual([200, { path: 'workshop.yaml', text: says }])
  expect(await workshop('sea/small.md')).toEqual([200, { path: 'workshop.yaml', text: says }])
  expect(await workshop('land/small.md')).toEqual([
    200,
    { path: 'land/workshop.yaml', text: 'footer: On land\n' },
  ])
  expect(await workshop('sea/deep/small.md')).toEqual([200, undefined])
})

test('one that is no text is told, and nothing outside of the folder is read', async () => {
  expect(await workshop('odd/small.md')).toEqual([200, { path: 'odd/workshop.yaml' }])
  expect(await workshop('linked/small.md')).toMatchObject([403, undefined])
  expect(await workshop('../small.md')).toMatchObject([403, undefined])
})

test('a PDF has what the workshop puts on its prints', async () => {
  const handout = await print({})
  expect(handout).toContain('At the old lamp house')
  expect(handout).toContain('The mark of the table')
  expect(await print({ path: 'land/small.md', what: 'template' })).toContain('On land')
}, 120_000)

test('for printing too, what is outside of the folder is not there', async () => {
  for (const path of ['../workshop.yaml', 'linked/workshop.yaml', 'sea/workshop.yaml'])
    await expect(workshopBytes(path, folder)).rejects.toMatchObject({ code: 'ENOENT' })
  expect(new TextDecoder().decode(await workshopBytes('workshop.yaml', folder))).toBe(says)
})

import { createHash } from 'node:crypto'
import {
  chmodSync,
  existsSync,
  linkSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { beforeAll, expect, test } from 'vitest'
import { savingDisk } from '../../../src/desk/server/disk.ts'
import type { OpenDesk } from '../../../src/desk/server/serve.ts'
import { ask, get, put, someDesk, someFolder } from './desk.ts'

const secret = 'The key of the paper store is under the mat.'
const around = someFolder()
const folder = join(around, 'lessons')
let desk: OpenDesk

const at = (path: string) => join(folder, path)
const sha = (bytes: string | Uint8Array) => createHash('sha256').update(bytes).digest('hex')
const failing = (code: string) => Promise.reject(Object.assign(new Error(code), { code }))

beforeAll(async () => {
  mkdirSync(at('sea/.kept'), { recursive: true })
  for (const path of [
    '../secret.md',
    '.hidden.md',
    'sea/.kept/a.md',
    'notes.txt',
    'inside.md',
    'sea/gulls.md',
  ])
    writeFileSync(at(path), path === 'inside.md' ? 'In the folder' : secret)
  symlinkSync(at('../secret.md'), at('out.md'))
  symlinkSync(around, at('above'))
  symlinkSync(at('../none-yet.md'), at('dangling.md'))
  symlinkSync(around, at('sea/away'))
  symlinkSync(at('.hidden.md'), at('to-hidden.md'))
  symlinkSync(at('notes.txt'), at('to-notes.md'))
  symlinkSync(at('loop.md'), at('loop.md'))
  symlinkSync(at('inside.md'), at('linked.md'))
  symlinkSync(at('sea'), at('shore'))
  desk = await someDesk(folder)
})

/** Ways to write a path that leads out of the folder or to what is hidden in it; as they stand in the address. */
const ways = [
  '../secret.md',
  '%2e%2e/secret.md',
  '%2E%2E%2Fsecret.md',
  '..%2fsecret.md',
  '..%5csecret.md',
  '%252e%252e%252fsecret.md',
  '%2e%2e%252fsecret.md',
  '..%c0%afsecret.md',
  '%c0%ae%c0%ae/secret.md',
  '%uff0e%uff0e/secret.md',
  '．．/secret.md',
  './../secret.md',
  'sea/../../secret.md',
  'sea/../../lessons/inside.md',
  './inside.md',
  'sea/../inside.md',
  'sea//gulls.md',
  '/inside.md',
  `${encodeURIComponent(around)}/secret.md`,
  'file:///etc/passwd.md',
  'C:%5csecret.md',
  'c:secret.md',
  '%5c%5cserver%5cshare%5ca.md',
  '//server/share/a.md',
  'inside.md%00',
  'inside.md%00.md',
  '..%00/secret.md',
  'inside.md%0a',
  'inside.md/',
  'inside.md.',
  'inside.md%20',
  '...%2fsecret.md',
  '....//secret.md',
  '.hidden.md',
  'sea/.kept/a.md',
  'notes.txt',
  'inside',
  '',
  '.',
  '..',
  '.md',
  'con.md',
  'sea/NUL.md',
  'inside.md::$DATA',
  `${'a/'.repeat(600)}a.md`,
  'a%2f..%2f..%2fsecret.md',
  '~/secret.md/..',
  'sea%2f.%2f..%2f..%2fsecret.md',
]

test.each(ways)('no way out: %s', async (path) => {
  const read = await ask(desk, `/api/file?path=${path.replaceAll('．', '%EF%BC%8E')}`)
  expect(read.status).toBeGreaterThanOrEqual(400)
  expect(read.body.toString()).not.toContain(secret)
  const written = await ask(desk, `/api/file?path=${path.replaceAll('．', '%EF%BC%8E')}`, {
    method: 'PUT',
    body: JSON.stringify({ text: 'taken', over: sha(secret) }),
  })
  // A name that only looks like a way out on some systems is an ordinary one; then it is in the folder.
  if (written.status === 200) expect(found(folder)).toContain('taken')
  expect(readFileSync(at('../secret.md'), 'utf8')).toBe(secret)
  expect([readFileSync(at('inside.md'), 'utf8'), readFileSync(at('.hidden.md'), 'utf8')]).toEqual([
    'In the folder',
    secret,
  ])
  expect(readdirSync(around).sort()).toEqual(['lessons', 'secret.md'])
})

/** What all files below hold. */
function found(place: string): string[] {
  return readdirSync(place, { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory()
      ? found(join(place, entry.name))
      : entry.isFile()
        ? [readFileSync(join(place, entry.name), 'utf8')]
        : [],
  )
}

test('whatever a path says, nothing outside is read or written', async () => {
  const part = fc.constantFrom(
    '..',
    '.',
    '',
    'sea',
    'above',
    'away',
    'secret.md',
    'lessons',
    '%2e%2e',
    '\\',
    'out.md',
    'new',
    'x.md',
    '\u2025',
    '..\\',
    'a\u0000',
  )
  await fc.assert(
    fc.asyncProperty(fc.array(part, { minLength: 1, maxLength: 6 }), async (parts) => {
      const path = parts.join('/')
      expect((await get(desk, path)).body.toString()).not.toContain('under the mat')
      await put(desk, path, 'taken')
      expect(readdirSync(around).sort()).toEqual(['lessons', 'secret.md'])
      expect(readFileSync(at('../secret.md'), 'utf8')).toBe(secret)
    }),
    { numRuns: 150 },
  )
})

test.each([
  'out.md',
  'above/secret.md',
  'sea/away/secret.md',
  'above/lessons/inside.md',
  'to-hidden.md',
  'to-notes.md',
  'loop.md',
  'dangling.md',
  'above/new.md',
  'above/new/new.md',
])('a link that leads out, to what is hidden or nowhere is neither read nor written: %s', async (path) => {
  // One of these goes out and comes back in: then it is in the folder after all.
  const back = path === 'above/lessons/inside.md'
  expect((await get(desk, path)).status).toBe(back ? 200 : 403)
  for (const over of [undefined, sha(secret)]) {
    const { status } = await put(desk, path, 'taken', over)
    expect(status).toBe(back ? 409 : 403)
  }
  expect(readFileSync(at('../secret.md'), 'utf8')).toBe(secret)
  expect(readFileSync(at('notes.txt'), 'utf8')).toBe(secret)
  expect(readdirSync(around).sort()).toEqual(['lessons', 'secret.md'])
})

test('a link inside the folder is followed, and stays a link when it is saved', async () => {
  const { text, version } = (await get(desk, 'linked.md')).json()
  expect([text, version]).toEqual(['In the folder', sha('In the folder')])
  expect((await put(desk, 'linked.md', 'Still in the folder', version)).status).toBe(200)
  expect(readFileSync(at('inside.md'), 'utf8')).toBe('Still in the folder')
  expect((await get(desk, 'linked.md')).json().text).toBe('Still in the folder')
  expect(existsSync(at('shore/gulls.md')) && (await get(desk, 'shore/gulls.md')).status).toBe(200)
  await put(desk, 'inside.md', 'In the folder', sha('Still in the folder'))
})

test('a new file is made, also in a folder that is not there yet, and never over one that is there', async () => {
  expect((await put(desk, 'spring/tulips/new.md', 'One')).json()).toEqual({ version: sha('One') })
  const again = await put(desk, 'spring/tulips/new.md', 'Two')
  expect([again.status, again.json()]).toEqual([
    409,
    { path: 'spring/tulips/new.md', text: 'One', version: sha('One') },
  ])
  expect(readFileSync(at('spring/tulips/new.md'), 'utf8')).toBe('One')
})

test('a file that another program has changed is not overwritten, and what it holds comes back', async () => {
  await put(desk, 'both.md', 'Mine')
  writeFileSync(at('both.md'), 'Theirs')
  const { status, json } = await put(desk, 'both.md', 'Mine, longer', sha('Mine'))
  expect([status, json()]).toEqual([409, { path: 'both.md', text: 'Theirs', version: sha('Theirs') }])
  expect(readFileSync(at('both.md'), 'utf8')).toBe('Theirs')
  expect((await put(desk, 'both.md', 'Mine, longer', sha('Theirs'))).json()).toEqual({
    version: sha('Mine, longer'),
  })
})

test('saving what lies there already is done, whatever it was meant to replace', async () => {
  writeFileSync(at('same.md'), 'The same')
  const before = statSync(at('same.md')).ino
  for (const over of [undefined, sha('old'), sha('The same')])
    expect((await put(desk, 'same.md', 'The same', over)).json()).toEqual({ version: sha('The same') })
  expect(statSync(at('same.md')).ino).toBe(before)
})

test('a file that is gone is made again', async () => {
  await put(desk, 'gone.md', 'Here')
  rmSync(at('gone.md'))
  expect((await get(desk, 'gone.md')).status).toBe(404)
  expect((await put(desk, 'gone.md', 'Here again', sha('Here'))).status).toBe(200)
})

test('of many saves over one version, one is done, and the others hear of it', async () => {
  await put(desk, 'race.md', 'Start')
  const answers = await Promise.all(
    Array.from({ length: 20 }, (_, i) => put(desk, 'race.md', `Text ${i}`, sha('Start'))),
  )
  const now = readFileSync(at('race.md'), 'utf8')
  const done = answers.filter(({ status }) => status === 200)
  expect(done.map(({ json }) => json().version)).toEqual([sha(now)])
  for (const { status, json } of answers)
    if (status !== 200) expect([status, json().text]).toEqual([409, now])
})

test('of many new files of one name, one is made', async () => {
  const answers = await Promise.all(Array.from({ length: 20 }, (_, i) => put(desk, 'first.md', `Text ${i}`)))
  expect(answers.filter(({ status }) => status === 200)).toHaveLength(1)
})

test('a file keeps its rights', async () => {
  await put(desk, 'rights.md', 'One')
  chmodSync(at('rights.md'), 0o640)
  await put(desk, 'rights.md', 'Two', sha('One'))
  expect(statSync(at('rights.md')).mode & 0o7777).toBe(0o640)
})

test('a file that may only be read is not replaced', async () => {
  await put(desk, 'fixed.md', 'One')
  chmodSync(at('fixed.md'), 0o444)
  const { status, json } = await put(desk, 'fixed.md', 'Two', sha('One'))
  expect([status, json().refused]).toEqual([403, '`fixed.md` may only be read'])
  expect(readFileSync(at('fixed.md'), 'utf8')).toBe('One')
})

test('the text is all of the bytes: what is read and saved again is the same file', async () => {
  const texts = [
    '\ufeffWith a mark\r\nand ends\r\n',
    'a\rb\nc\r\nd',
    '',
    '\n',
    'é ü ½ × “” 𝄞',
    'a\u0000b',
    '\ufeff\ufeff',
    '\u2028',
  ]
  for (const text of texts) {
    writeFileSync(at('bytes.md'), text)
    const read = (await get(desk, 'bytes.md')).json() as unknown as { text: string; version: string }
    expect([read.text, read.version]).toEqual([text, sha(text)])
    await put(desk, 'bytes.md', `${read.text}.`, read.version)
    expect(readFileSync(at('bytes.md'))).toEqual(Buffer.from(`${text}.`))
  }
})

test('what is no text is told as that, and not overwritten', async () => {
  const bytes = Buffer.from([0x66, 0xfc, 0x72])
  writeFileSync(at('latin.md'), bytes)
  const { status, json } = await get(desk, 'latin.md')
  expect([status, json()]).toEqual([
    422,
    { refused: '`latin.md` is not UTF-8 text', suggestion: 'Save it as UTF-8 in your editor' },
  ])
  expect((await put(desk, 'latin.md', 'für', sha(bytes))).status).toBe(422)
  expect(readFileSync(at('latin.md'))).toEqual(bytes)
})

test('a folder with the name of a lesson is no lesson', async () => {
  mkdirSync(at('taken.md'))
  expect([(await get(desk, 'taken.md')).status, (await put(desk, 'taken.md', 'A')).status]).toEqual([
    403, 403,
  ])
})

const troubles: [code: string, status: number, refused: string][] = [
  ['ENOSPC', 507, 'Cannot save: the disk is full'],
  ['EDQUOT', 507, 'Cannot save: there is no room left for you on this disk'],
  ['EROFS', 500, 'Cannot save: that disk can only be read'],
  ['EACCES', 500, 'Cannot save: you may not write there'],
]
test.each(troubles)(
  'what the disk says is told in plain words, and the old text stays: %s',
  async (code, status, refused) => {
    for (const broken of [{ create: () => failing(code) }, { rename: () => failing(code) }]) {
      const own = someFolder()
      writeFileSync(join(own, 'a.md'), 'Old')
      const other = await someDesk(own, { disk: { ...savingDisk, ...broken } })
      const answer = await put(other, 'a.md', 'New', sha('Old'))
      expect([answer.status, answer.json().refused]).toEqual([status, refused])
      expect([readdirSync(own), readFileSync(join(own, 'a.md'), 'utf8')]).toEqual([['a.md'], 'Old'])
    }
  },
)

test('a disk that is full in the middle of writing leaves nothing behind', async () => {
  const own = someFolder()
  writeFileSync(join(own, 'a.md'), 'Old')
  const create = async (path: string) => {
    writeFileSync(path, 'Ne')
    await failing('ENOSPC')
  }
  const other = await someDesk(own, { disk: { ...savingDisk, create } })
  expect((await put(other, 'a.md', 'New', sha('Old'))).status).toBe(507)
  expect([readdirSync(own), readFileSync(join(own, 'a.md'), 'utf8')]).toEqual([['a.md'], 'Old'])
})

test('a program that saves while the desk is writing is not overwritten', async () => {
  const own = someFolder()
  writeFileSync(join(own, 'a.md'), 'Old')
  const create: typeof savingDisk.create = async (path, data) => {
    await savingDisk.create(path, data)
    writeFileSync(join(own, 'a.md'), 'Theirs')
    writeFileSync(join(own, 'b.md'), 'Theirs')
  }
  for (const link of [savingDisk.link, () => failing('EPERM')]) {
    const other = await someDesk(own, { disk: { ...savingDisk, create, link } })
    for (const [path, over] of [
      ['a.md', sha('Old')],
      ['b.md', undefined],
    ] as const) {
      const { status, json } = await put(other, path, 'Mine', over)
      expect([status, json().text]).toEqual([409, 'Theirs'])
    }
    expect(readdirSync(own)).toEqual(['a.md', 'b.md'])
    writeFileSync(join(own, 'a.md'), 'Old')
    rmSync(join(own, 'b.md'))
  }
})

test('on a disk without second names a new file is made all the same', async () => {
  const own = someFolder()
  const other = await someDesk(own, { disk: { ...savingDisk, link: () => failing('EPERM') } })
  expect((await put(other, 'a.md', 'One')).status).toBe(200)
  expect((await put(other, 'a.md', 'Two')).status).toBe(409)
  expect([readdirSync(own), readFileSync(join(own, 'a.md'), 'utf8')]).toEqual([['a.md'], 'One'])
})

test('a folder that is gone is not made again somewhere else', async () => {
  const own = join(someFolder(), 'stick')
  mkdirSync(own)
  const other = await someDesk(own)
  rmSync(own, { recursive: true })
  const { status, json } = await put(other, 'a.md', 'New')
  expect([status, json().refused, existsSync(own)]).toEqual([503, 'The folder is not there any more', false])
})

test('a second name of a file keeps the old text: saving makes a new file', async () => {
  await put(desk, 'one-name.md', 'One')
  linkSync(at('one-name.md'), at('second-name.txt'))
  await put(desk, 'one-name.md', 'Two', sha('One'))
  expect(readFileSync(at('second-name.txt'), 'utf8')).toBe('One')
})

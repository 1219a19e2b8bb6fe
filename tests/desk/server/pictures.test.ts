import { mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, expect, test } from 'vitest'
import type { OpenDesk } from '../../../src/desk/server/serve.ts'
import { ask, someDesk, someFolder } from './desk.ts'

const png = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8z8BQDwAEhQGAhKmMIQAAAABJRU5ErkJggg==',
  'base64',
)
const jpeg = Buffer.concat([Buffer.from([0xff, 0xd8, 0xff, 0xe0]), Buffer.alloc(20)])
const svg = '<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>'

const folder = join(someFolder(), 'lessons')
let desk: OpenDesk
beforeAll(async () => {
  mkdirSync(join(folder, 'sea/pictures'), { recursive: true })
  writeFileSync(join(folder, '../out.png'), png)
  writeFileSync(join(folder, 'top.png'), png)
  writeFileSync(join(folder, 'sea/pictures/two gulls.jpg'), jpeg)
  writeFileSync(join(folder, 'sea/drawn.svg'), svg)
  writeFileSync(join(folder, 'sea/no.png'), '<html><script>alert(1)</script></html>')
  writeFileSync(join(folder, 'sea/.hidden.png'), png)
  writeFileSync(join(folder, 'sea/heavy.png'), Buffer.concat([png, Buffer.alloc(10_000_000)]))
  symlinkSync(join(folder, '../out.png'), join(folder, 'sea/out.png'))
  desk = await someDesk(folder)
})

const picture = (lesson: string, address: string) =>
  ask(desk, `/api/picture?${new URLSearchParams({ lesson, address })}`)
const add = (lesson: string, name: string, body: Uint8Array, type = 'image/png', other = desk) =>
  ask(other, `/api/picture?${new URLSearchParams({ lesson, name })}`, {
    method: 'POST',
    body,
    headers: { 'content-type': type },
  })

test('a picture comes as its lesson names it, with the kind that it is', async () => {
  const { status, headers, body } = await picture('sea/a.md', 'pictures/two%20gulls.jpg')
  expect([status, headers['content-type'], headers['x-content-type-options'], body.equals(jpeg)]).toEqual([
    200,
    'image/jpeg',
    'nosniff',
    true,
  ])
  for (const address of ['pictures/two gulls.jpg', './pictures/two%20gulls.jpg?1#a'])
    expect((await picture('sea/a.md', address)).status).toBe(200)
  expect((await picture('', 'top.png')).headers['content-type']).toBe('image/png')
})

test('a drawing with a program in it may do nothing, also when it is opened by itself', async () => {
  const { headers } = await picture('sea/a.md', 'drawn.svg')
  expect(headers['content-security-policy']).toContain("default-src 'none'")
  expect(headers['content-security-policy']).toContain('sandbox')
})

test.each([
  '../top.png',
  '..%2ftop.png',
  '%2e%2e/top.png',
  '../../out.png',
  'out.png',
  '/etc/passwd',
  'file:///etc/passwd',
  '.hidden.png',
  'https://harbour.example/a.png',
  '//harbour.example/a.png',
  'data:image/png;base64,AA',
  '',
  '.',
  'pictures',
  'none.png',
  'no.png',
  'heavy.png',
  '%00',
  'a\\b.png',
])('a picture that is none, or elsewhere, does not come: %s', async (address) => {
  const { status, body } = await picture('sea/a.md', address)
  expect([403, 404, 413, 415]).toContain(status)
  expect(body.includes(png) || body.includes('<html>')).toBe(false)
})

test('the lesson does not lead out either', async () => {
  for (const lesson of ['../a.md', '../../a.md', '/etc/a.md', '.hidden/a.md', 'sea/../../a.md'])
    expect([lesson, (await picture(lesson, 'out.png')).status]).toEqual([lesson, 403])
})

test('a new picture lies beside its lesson, under a plain name that is free', async () => {
  const own = someFolder()
  const other = await someDesk(own)
  const names = [
    'Der Hafen (2).JPG',
    'der-hafen-2.png',
    'C:\\photos\\Der Hafen.png',
    '../../etc/passwd',
    '',
    '.png',
    'con.png',
    'crème_brûlée.jpeg',
  ]
  const addresses: string[] = []
  for (const [i, name] of names.entries()) {
    const body = Buffer.concat([png, Buffer.from([i])])
    addresses.push((await add('sea/a.md', name, body, 'image/png', other)).json().address ?? '')
  }
  expect(addresses).toEqual([
    'der-hafen-2.png',
    'der-hafen-2-2.png',
    'der-hafen.png',
    'passwd.png',
    'picture.png',
    'picture-2.png',
    'picture-con.png',
    'crème-brûlée.png',
  ])
  expect(readdirSync(own)).toEqual(['sea'])
  expect(readdirSync(join(own, 'sea')).sort()).toEqual([...addresses].sort())
})

test('the very same picture is not stored twice, and none is overwritten', async () => {
  const own = someFolder()
  const other = await someDesk(own)
  const address = async (body: Uint8Array) =>
    (await add('', 'gull', body, 'application/octet-stream', other)).json().address
  expect([await address(png), await address(png), await address(jpeg)]).toEqual([
    'gull.png',
    'gull.png',
    'gull.jpg',
  ])
  const two = [Buffer.concat([png, Buffer.from('a')]), Buffer.concat([png, Buffer.from('b')])]
  expect((await Promise.all(two.map(address))).sort()).toEqual(['gull-2.png', 'gull-3.png'])
  expect(readFileSync(join(own, 'gull.png')).equals(png)).toBe(true)
})

test('what is no picture, too large or of another kind is refused in words', async () => {
  const page = await add('sea/a.md', 'page.png', Buffer.from('<html><svg></svg></html>'))
  expect([page.status, page.json().refused]).toEqual([415, '`page.png` is no picture that can be printed'])
  const large = await add('sea/a.md', 'a', Buffer.concat([png, Buffer.alloc(10_000_001)]))
  expect([large.status, large.json().refused]).toEqual([
    413,
    'That is more than 10 MB, too much for a picture',
  ])
  expect((await add('sea/a.md', 'a', png, 'text/html')).status).toBe(415)
  expect((await add('sea/a.md', 'a', png, '')).status).toBe(415)
  for (const lesson of ['../a.md', '/a.md', '.hidden/a.md'])
    expect((await add(lesson, 'a', png)).status).toBe(403)
  expect(readdirSync(join(folder, 'sea')).sort()).toEqual([
    '.hidden.png',
    'drawn.svg',
    'heavy.png',
    'no.png',
    'out.png',
    'pictures',
  ])
})

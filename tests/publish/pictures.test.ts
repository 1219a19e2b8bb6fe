import { expect, test } from 'vitest'
import { readPictures } from '../../src/publish/pictures.ts'
import { plainLesson } from './lesson.ts'

const png = Buffer.from('\x89PNG\r\n\x1a\n….', 'latin1')
const files = new Map<string, Uint8Array>([
  ['lessons/gull.png', png],
  ['lessons/a b/gull.jpg', Buffer.from('\xff\xd8\xff….', 'latin1')],
  [
    'lessons/plan.svg',
    Buffer.from('<?xml version="1.0"?>\n<!-- a -->\n<svg xmlns="http://www.w3.org/2000/svg"/>'),
  ],
  ['lessons/secret.png', Buffer.from('a password')],
  ['lessons/page.html', Buffer.from('<html><svg></svg></html>')],
  ['lessons/huge.png', Buffer.concat([png, Buffer.alloc(10_000_000)])],
  ['gull.png', png],
])
const asked: string[] = []
const outside = {
  async read(path: string) {
    asked.push(path)
    const file = files.get(path.replaceAll('\\', '/'))
    if (!file) throw Object.assign(new Error('no such file'), { code: 'ENOENT' })
    return file
  },
}
const read = (markdown: string) => readPictures(plainLesson(markdown).tree, 'lessons', outside)

test.each([
  ['gull.png', 'data:image/png;base64,'],
  ['a%20b/gull.jpg', 'data:image/jpeg;base64,'],
  ['./plan.svg', 'data:image/svg+xml;base64,'],
  ['sub/../gull.png', 'data:image/png;base64,'],
])('%s goes into the page', async (url, start) => {
  const { pictures, findings } = await read(`![a gull](${url})`)
  expect(findings).toEqual([])
  expect(pictures.get(url)?.startsWith(start)).toBe(true)
})

test('a picture by reference is found by its definition', async () => {
  const { pictures } = await read('![a gull][g]\n\n[g]: gull.png')
  expect([...pictures.keys()]).toEqual(['gull.png'])
})

test.each([
  ['missing.png', 'picture-missing'],
  ['secret.png', 'picture-kind'],
  ['page.html', 'picture-kind'],
  ['huge.png', 'picture-heavy'],
  ['../gull.png', 'picture-outside'],
  ['%2e%2e/gull.png', 'picture-outside'],
  ['/etc/hostname', 'picture-outside'],
  ['https://far.example/gull.png', 'picture-far'],
  ['//far.example/gull.png', 'picture-far'],
  ['file:///etc/hostname', 'picture-far'],
  ['data:image/png;base64,AAAA', 'picture-far'],
])('%s: %s, at its place', async (url, rule) => {
  const { pictures, findings } = await read(`See\n![a gull](${url}) here`)
  expect(pictures.size).toBe(0)
  expect(findings).toMatchObject([{ rule, severity: 'warning', place: { line: 8, column: 1 } }])
  expect(findings[0]?.suggestion).toBeTruthy()
})

test('nothing outside the folder is even looked at', async () => {
  asked.length = 0
  await read('![a](../gull.png) ![b](/gull.png) ![c](file:///gull.png)')
  expect(asked).toEqual([])
})

test('a picture made to keep the program busy does not', async () => {
  files.set('lessons/slow.svg', Buffer.from('<!---->'.repeat(280)))
  const start = performance.now()
  const { findings } = await read('![a](slow.svg)')
  expect(findings).toMatchObject([{ rule: 'picture-kind' }])
  expect(performance.now() - start).toBeLessThan(2000)
})

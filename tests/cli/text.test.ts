import { expect, test } from 'vitest'
import { broken, harbour, small } from './lessons.ts'
import { foldlore } from './memory.ts'

const files = { 'h.md': harbour, 's.md': small, 'b.md': broken }
const text = (...argv: string[]) => foldlore(['text', ...argv], files)

test('to the terminal as plain text: the pieces and the steps', async () => {
  const { code, out, err } = await text('h.md')
  expect([code, err]).toEqual([0, ''])
  expect(out).toMatch(/^Harbour lights\n\nA bridge card /)
  expect(out).toContain(
    '\n- base: 8 1/2 × 5 in, dark blue card; mountain scores at 3/4 and 7 3/4 in from the left edge; ',
  )
  expect(out).toContain('\n1. Cut the base to 8 1/2 × 5 in. Lay it ')
})

test('--as md, or a file that ends so, is Markdown; another size and unit are other numbers', async () => {
  expect((await text('h.md', '--as', 'md')).out).toMatch(/^# Harbour lights\n/)
  const { code, text: read } = await text('h.md', '--units', 'mm', '-o', 'post.md')
  expect(code).toBe(0)
  expect(read('post.md')).toContain('1. Cut the base to **215 × 127 mm**.')
  expect((await text('h.md', '-o', 'post.txt')).text('post.txt')).toMatch(/^Harbour lights\n/)
})

test('--with chapters and sizes', async () => {
  const { out } = await text('h.md', '--with', 'chapters,sizes')
  expect(out).toContain('\n0:00 Cut the base\n4:00 Score the two mountain folds\n')
  expect(out).toContain('\n6 × 6 in, in inches\n')
})

test('--limit keeps to it and says what is left out', async () => {
  const { out, err } = await text('h.md', '--limit', '3000')
  expect(out.length).toBeLessThanOrEqual(3000)
  expect(err).toMatch(/^Left out here: /)
  expect(out).toContain(err)
  expect((await text('h.md', '--limit', '3000', '--quiet')).err).toBe('')
  const short = await text('h.md', '--limit', '40')
  expect(short.code).toBe(2)
  const [, least = ''] = /--limit (\d+)/.exec(short.err) ?? []
  expect((await text('h.md', '--limit', least)).code).toBe(0)
  expect((await text('h.md', '--limit', String(Number(least) - 1))).code).toBe(2)
})

test('--json tells the same with what is left out and where the chapters begin', async () => {
  const told = JSON.parse((await text('h.md', '--json', '--limit', '4000', '--with', 'chapters')).out)
  expect(told).toMatchObject({ lesson: 'Harbour lights', as: 'text', limit: 4000 })
  expect(told.characters).toBe(told.text.length)
  expect(told.leftOut[0]).toBe('captions')
  expect(told.chapters[1]).toEqual({
    seconds: 240,
    time: '4:00',
    name: 'Score the two mountain folds',
    step: 2,
  })
})

test('what cannot be is told: chapters without minutes, other kinds, a lesson with errors', async () => {
  const none = await text('s.md', '--with', 'chapters')
  expect([none.code, none.out]).toEqual([2, ''])
  expect(none.err).toContain(':minutes[5]')
  expect((await text('h.md', '--as', 'svg')).err).toContain('`text` writes no `svg`')
  expect((await text('h.md', '-o', 'post.docx')).code).toBe(2)
  expect((await text('h.md', '--with', 'chaptres')).err).toContain('chapters')
  expect(await text('b.md')).toMatchObject({ code: 1, out: '' })
  const exported = await foldlore(['export', 'h.md', '--as', 'md'], files)
  expect([exported.code, exported.err.includes('`export` writes no `md`')]).toEqual([2, true])
})

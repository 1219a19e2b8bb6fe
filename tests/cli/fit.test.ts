import { expect, test } from 'vitest'
import { z } from 'zod'
import { readPaper } from '../../src/cli/read-paper.ts'
import { inches } from '../../src/length/length.ts'
import { broken, harbour, small } from './lessons.ts'
import { foldlore } from './memory.ts'

const files = { 'harbour.md': harbour, 'small.md': small, 'broken.md': broken }
const ask = (...argv: string[]) => foldlore(['fit', ...argv], files)

const length = z.strictObject({ mm: z.number(), in: z.number(), text: z.string() })
const size = z.strictObject({ width: length, height: length })
const next = z.strictObject({
  closed: size,
  why: z.array(z.strictObject({ limit: z.string(), message: z.string(), suggestion: z.string().optional() })),
})
const placed = size.extend({ piece: z.string(), x: length, y: length, turned: z.boolean() })
const cut = z.strictObject({
  across: z.enum(['width', 'height']),
  at: length,
  set: length,
  from: length,
  to: length,
})
const found = z.strictObject({
  closed: size,
  thickness: length,
  layouts: z.array(
    z.strictObject({ stock: z.string(), sheet: size, placed: z.array(placed), cuts: z.array(cut) }),
  ),
  room: size.optional(),
  use: size
    .extend({ share: z.number(), whole: z.boolean(), turned: z.boolean(), beside: length, above: length })
    .optional(),
  findings: z.array(z.unknown()),
})
const shape = z.strictObject({
  lesson: z.string(),
  units: z.enum(['in', 'mm']),
  grid: z.string(),
  asked: z.strictObject({
    paper: z.array(z.strictObject({ stock: z.string(), sheets: z.array(size) })),
    envelope: z.strictObject({ name: z.string(), size, holds: size }).optional(),
    whole: z.strictObject({ piece: z.string(), sheet: size }).optional(),
    lettering: z.boolean(),
  }),
  searched: z.strictObject({ from: size, to: size, sizes: z.number(), keeps: z.string() }),
  found: found.optional(),
  next: next.optional(),
  alike: z.array(size),
  otherShape: found.optional(),
  ranges: z.array(z.strictObject({ from: size, to: size, below: next.optional(), above: next.optional() })),
  nearest: next.optional(),
})

test('the largest card for an envelope, in both units, and what is in the way of a larger one', async () => {
  const { code, out, err } = await ask('harbour.md', '--envelope', 'A7')
  expect([code, err]).toEqual([0, ''])
  expect(out).toMatch(/^Harbour lights\nAsked for: the card goes into A7 \(US trade\)\. /)
  expect(out).toMatch(/\n {2}shut +7 × 5 in \(about 178 × 127 mm\)\n/)
  expect(out).toMatch(/\nOne mark larger, 7 1\/16 × 5 1\/16 in\n/)
  expect(out).toMatch(/\n {2}in the way {2}A7 \(US trade\) takes a flat card of 7 × 5 in at most/)
})

test('scraps of a stock: what lies where, and the cuts', async () => {
  const wanted = ['--scraps', '8 x 8 in, 6 x 4 in, A5', '--stock', 'patterned paper', '--grid', '1/4 in']
  const { code, out } = await ask('harbour.md', ...wanted)
  expect(code).toBe(0)
  expect(out).toContain('\nOn 8 x 8 in of patterned paper\n')
  expect(out).toMatch(/\n {2}backdrop +\S.* in +0 in +0 in\n/)
  expect(out).toContain('\nIts cuts, in this order\n')
  const answer = shape.parse(JSON.parse((await ask('harbour.md', ...wanted, '--json')).out))
  const pieces = answer.found?.layouts.flatMap((layout) => layout.placed.map(({ piece }) => piece))
  expect(pieces?.sort()).toEqual(['backdrop', 'side strip', 'side strip'])
})

test.each([
  [['--whole', '6 x 6 in']],
  [['--lettering', '--wide', '7 in']],
  [['--sheet', 'vellum: 2 x 2 in']],
])('--json has the promised shape for %j', async (argv) => {
  const { code, out, err } = await ask('harbour.md', ...argv, '--grid', '1/4 in', '--json')
  expect([code, err]).toEqual([0, ''])
  const answer = shape.parse(JSON.parse(out))
  expect(answer.found === undefined).toBe(answer.nearest !== undefined)
})

test('-o writes the answer, as Markdown when the name says so', async () => {
  const written = await ask('small.md', '--envelope', 'C6', '-o', 'answer.md')
  expect([written.code, written.out, written.err]).toEqual([0, '', 'Wrote answer.md\n'])
  expect(written.text('answer.md')).toMatch(/^# Low tide\n/)
  expect(written.text('answer.md')).toMatch(/\n\| shut +\| /)
})

test('a lesson with errors that no size cures is not searched: they are told', async () => {
  const { code, out, err } = await ask('broken.md', '--envelope', 'C6')
  expect([code, out]).toEqual([1, ''])
  expect(err).toMatch(/^broken\.md:27:\d+ error /)
})

test.each([
  [[], 'needs to know what the card is to fit'],
  [['--stock', 'vellum', '--envelope', 'C6'], 'there is none'],
  [['--piece', 'base', '--envelope', 'C6'], 'there is none'],
  [['--sheet', '8 x 8 in, 6 x 4 in'], 'more than one sheet'],
  [['--sheet', 'velum: A4'], 'nothing of stock `velum`'],
  [['--scraps', '0 x 8 in'], 'no size for a sheet'],
  [['--wide', '0 in', '--envelope', 'C6'], 'no length for a card'],
  [['--envelope', 'Z9'], 'Unexpected envelope `Z9`'],
])('%j is wrong usage', async (argv, message) => {
  const { code, out, err } = await ask('harbour.md', ...argv)
  expect([code, out]).toEqual([2, ''])
  expect(err).toContain(message)
})

test('paper is read with the stock before its sizes', () => {
  const a = { text: '8 x 8 in', size: { width: inches(8), height: inches(8) } }
  const b = { text: '6 x 4 in', size: { width: inches(6), height: inches(4) } }
  expect(readPaper('scraps')('8 x 8 in, 6 x 4 in')).toEqual([{ kind: 'scraps', sizes: [a, b] }])
  expect(readPaper('scraps')('red card: 8 x 8 in, 6 x 4 in; vellum: 6 x 4 in')).toEqual([
    { kind: 'scraps', stock: 'red card', sizes: [a, b] },
    { kind: 'scraps', stock: 'vellum', sizes: [b] },
  ])
  expect(readPaper('sheet')('red card: 8 x 8 in, vellum: 6 x 4 in')).toEqual([
    { kind: 'sheet', stock: 'red card', sizes: [a] },
    { kind: 'sheet', stock: 'vellum', sizes: [b] },
  ])
})

test.each([
  ['--wide', 'width'],
  ['--high', 'height'],
] as const)('%s keeps that side, and the other is looked for', async (flag, side) => {
  const { code, out } = await ask('small.md', '--envelope', 'C6', flag, '4 in', '--json')
  const kept = JSON.parse(out)
  expect([code, kept.found.closed[side].in]).toEqual([0, 4])
  const free = JSON.parse((await ask('small.md', '--envelope', 'C6', '--json')).out)
  expect(free.found.closed).not.toEqual(kept.found.closed)
})

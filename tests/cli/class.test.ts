import { expect, test } from 'vitest'
import { openPdf, pageTexts } from '../publish/pdf-reading.ts'
import { harbour } from './lessons.ts'
import { foldloreIn, memory } from './memory.ts'

const stocks = ['dark blue card', 'patterned paper', 'vellum', 'grey card', 'white card', 'envelope paper']
const saturday = `title: Saturday
lesson: harbour.md
people: [Ada, {name: Bo, note: no latex}]
start: 10:00
sheets:
${stocks.map((stock) => `  ${stock}: 12 x 12 in`).join('\n')}
`

test('everything for the day, each in a file of its own; what is to be known of a person in one of them only', async () => {
  const here = memory({ 'saturday.yaml': saturday, 'harbour.md': harbour })
  expect(await foldloreIn(here, ['class', 'saturday.yaml', '-o', 'day', '--quiet'])).toBe(0)
  const names = ['kit', 'sheets', 'run-sheet', 'labels', 'packing', 'attendance']
  for (const name of names) {
    const pdf = await openPdf(here.disk.get(`day/saturday-${name}.pdf`) ?? new Uint8Array())
    const text = (await pageTexts(pdf)).join(' ')
    expect(text.includes('Saturday') || name === 'labels').toBe(true)
    expect(text.includes('no latex')).toBe(name === 'attendance')
    expect(here.disk.has(`day/saturday-${name}.html`)).toBe(true)
  }
}, 180_000)

import { fillLesson } from '../../../src/lesson/fill.ts'
import type { FilledLesson } from '../../../src/lesson/lesson.ts'
import { readLesson } from '../../../src/lesson/read.ts'
import { readClass } from '../../../src/workshop/class/read-class.ts'
import { type Taught, taughtLesson } from '../../../src/workshop/class/taught.ts'

/** Languages that have their own words everywhere. */
export const foreign = ['de', 'fr', 'es'] as const

/** A lesson whose own names are words of no language. */
export const lessonIn = (lang: string, title = 'Quorvex'): FilledLesson =>
  fillLesson(
    readLesson(`---
title: ${title}
lang: ${lang}
units: mm
---

\`\`\`card
fold: bridge
closed: 180 x 120 mm
leg: 20 mm
base: {stock: Zoblim, weight: 300 g/m²}
layers:
  Vornix: {on: floor, border: 2 mm, stock: Plimor}
spans:
  Drelp: {height: 31 mm, at: bottom, stock: Plimor}
lettering:
  Snarv: {on: Drelp, letters: XYZ, widths: 15.5 mm}
envelope: {make: diagonal, clearance: 6 mm, stock: Wexol}
\`\`\`

\`\`\`supplies
each: {Klomp: 5, Tarvo: base.height * 4, Glimo: 2.5 g, Fleeb: 3 drops, Ostrim: base.width * base.height}
shared: {Hrung: 1 per 3, Mibbel: 2 per table}
tutor: {Prunk: 1}
\`\`\`

1. Zint {base.size}. :minutes[5] :drying[20 min]

2. Zant {Vornix.size}. :minutes[2.5]

:::ahead
Zirp.
:::
`),
  )

/** Names of that lesson and of the classes here. */
export const ownWords = new Set(
  'Quorvex Quarbol Zoblim Vornix Plimor Drelp Snarv XYZ Wexol Klomp Tarvo Glimo Fleeb Ostrim Hrung Mibbel Prunk Zint Zant Zirp Jalb Nuvi Yorp Bruvol Chilm Gwendo Skarn'.split(
    ' ',
  ),
)

/** What comes to a class with prices, tables and choices. */
export const classText = (people: number, spare: number, price = '0.65'): string => `title: Skarn
lesson: a.md
choices: {Zoblim: {Zoblim: ${people > 1 ? 1 : 0}, Bruvol: ${people > 1 ? people - 1 : 1}}}
people: ${people}
spare: ${spare}
currency: €
start: 10:00
end: 12:30
welcome: 10 min
clearing: 5 min
breaks: [{at: 10:10, for: 15 min, name: Jalb}]
sheets:
  Zoblim: {size: 305 x 305 mm, price: ${price}, weight: 300 g/m², offcuts: [1 of 240 x 130 mm]}
  Bruvol: {size: 305 x 305 mm, price: ${price}}
  Plimor: {size: 150 x 150 mm, price: 0.4, limit: 1}
supplies:
  Tarvo: {roll: 10 m, price: 2.25, have: 0.5 m}
  Glimo: {bottle: 12.5 g, price: 3}
  Klomp: {pack: 100, price: 1.8}
  Ostrim: {sheet: 200 x 300 mm, price: 1}
shop: {Nuvi: [Tarvo]}
price: {fees: 40, each: {Yorp: 1.5}, margin: 33.3 %, paying: ${Math.max(1, people - 1)}}
tables: 2
`

/** A class of one lesson in a language. */
export function classIn(lang: string, text: string, title?: string) {
  const { file, findings } = readClass(text)
  const lesson = lessonIn(lang, title)
  const lessons: Taught[] = file.lessons.map((one) => taughtLesson(one, lesson, file).taught)
  return { file, lessons, findings }
}

import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { fillLesson } from '../../../src/lesson/fill.ts'
import type { Step } from '../../../src/lesson/lesson.ts'
import { readLesson } from '../../../src/lesson/read.ts'

const cardIn = (lang: string) => `---
title: A
lang: ${lang}
units: mm
---

\`\`\`card
fold: bridge
closed: 180 x 120 mm
layers:
  mar: {on: floor, border: 3 mm}
envelope: {make: diagonal}
\`\`\`

`
const stepsIn = (lang: string, steps: string) => fillLesson(readLesson(cardIn(lang) + steps)).steps
const said = (work: Step['work']) =>
  work
    ? [work.cuts && 'cut', work.scores && 'score', work.more && 'more'].filter(Boolean).join(' ')
    : 'nothing'
const workOf = (lang: string, step: string) => said(stepsIn(lang, `1. ${step}\n`)[0]?.work)

describe('what of a step can be done before the class', () => {
  test.each([
    ['Die Grundkarte auf {base.size} zuschneiden.', 'cut'],
    ['Schneide die Grundkarte auf {base.size} zu.', 'cut'],
    ['Schneiden Sie die Grundkarte auf {base.size} zu und rillen Sie sie bei {base.scores}.', 'cut score'],
    ['Die Grundkarte auf {base.size} zuschneiden und bei {base.scores} rillen.', 'cut score'],
    ['Die Grundkarte wenden. Die Talfalten bei {base.valleys} rillen, von links aus gemessen.', 'score'],
    ['Das mar auf {mar.size} zuschneiden und auf den Boden kleben.', 'cut more'],
    ['Die Grundkarte auf {base.size} zuschneiden und eine Weile bewundern.', 'cut more'],
    ['Aus dem Papier ein Quadrat zuschneiden, {envelope.sheet}.', 'cut'],
    ['Die vier Ecken der Grundkarte abschneiden.', 'nothing'],
    ['Schneide von der Grundkarte die vier Ecken ab.', 'nothing'],
    ['Ein Fenster in die Vorderseite schneiden.', 'nothing'],
    ['Die Schere bereitlegen, bevor {base.size} zuschneiden an der Reihe ist.', 'nothing'],
    ['Das Schneiden von {base.size} üben.', 'nothing'],
  ])('German: %s', (step, work) => expect(workOf('de', step)).toBe(work))

  test.each([
    ['Couper la base à {base.size}.', 'cut'],
    ['Coupez la base à {base.size}.', 'cut'],
    ['Coupe la base à {base.size} et rainer à {base.scores}.', 'cut score'],
    ['Retourner la base. La rainer à {base.valleys}.', 'score'],
    ['Couper la mar à {mar.size} et la coller sur le sol.', 'cut more'],
    ['Couper la base à {base.size} et l’admirer.', 'cut more'],
    ['Couper un carré de papier, {envelope.sheet}.', 'cut'],
    ['Couper les quatre coins de la base.', 'nothing'],
    ['Ne pas couper la base, {base.size}.', 'nothing'],
    ['Préparer la table avant de couper la base à {base.size}.', 'nothing'],
  ])('French: %s', (step, work) => expect(workOf('fr', step)).toBe(work))

  test.each([
    ['Cortar la base a {base.size}.', 'cut'],
    ['Corta la base a {base.size} y hender a {base.scores}.', 'cut score'],
    ['Dar la vuelta a la base. Hender a {base.valleys}.', 'score'],
    ['Cortar el mar a {mar.size} y pegarlo en el suelo.', 'cut more'],
    ['Cortar la base a {base.size} y admirarla.', 'cut more'],
    ['Cortar un cuadrado de papel, {envelope.sheet}.', 'cut'],
    ['Recortar las cuatro esquinas de la base.', 'nothing'],
    ['No cortar la base, {base.size}.', 'nothing'],
    ['Poner la regla para cortar la base a {base.size}.', 'nothing'],
  ])('Spanish: %s', (step, work) => expect(workOf('es', step)).toBe(work))

  test('in a language without words nothing is', () =>
    expect(workOf('it', 'Tagliare la base a {base.size}.')).toBe('nothing'))

  test('what is cut into a piece that an earlier step has cut is no cutting from the sheet', () => {
    const steps = stepsIn(
      'de',
      '1. Die Grundkarte auf {base.size} zuschneiden.\n2. Die Grundkarte entlang der Linie schneiden.\n',
    )
    expect(steps.map(({ work }) => work?.cuts)).toEqual([true, undefined])
  })
})

// The same steps in four languages: who packs the evening before finds the same done.
describe.each([
  ['harbour-lights', ['deutsch/hafenlichter', 'francais/lumieres-du-port', 'espanol/luces-del-puerto']],
  ['low-tide-z-card', ['deutsch/ebbe', 'francais/maree-basse', 'espanol/marea-baja']],
])('the lesson %s', (english, others) => {
  const worksOf = (path: string) =>
    fillLesson(
      readLesson(readFileSync(new URL(`../../../lessons/${path}.md`, import.meta.url), 'utf8')),
    ).steps.map(({ work }) => said(work))
  // The rest of making the envelope is told in words that only English is read for.
  const own = worksOf(english).map((work) => (work === 'score more' ? 'nothing' : work))
  test.each(others)('%s', (path) => expect(worksOf(path)).toEqual(own))
})

describe('what dries waits for the next step that uses the same piece', () => {
  test.each([
    [
      'de',
      '1. Das mar bemalen. :drying[20 min]\n2. Die Grundkarte auf {base.size} zuschneiden.\n3. Das mar auf den Boden kleben.',
    ],
    [
      'fr',
      '1. Peindre la mar. :drying[20 min]\n2. Couper la base à {base.size}.\n3. Coller la mar sur le sol.',
    ],
    [
      'es',
      '1. Pintar el mar. :drying[20 min]\n2. Cortar la base a {base.size}.\n3. Pegar el mar en el suelo.',
    ],
  ])('%s: %s', (lang, steps) => {
    expect(stepsIn(lang, steps)[0]?.drying).toEqual({ minutes: 20, of: ['mar'], before: 3 })
  })
})

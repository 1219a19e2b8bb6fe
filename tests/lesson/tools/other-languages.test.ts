import { expect, test } from 'vitest'
import { fillLesson } from '../../../src/lesson/fill.ts'
import { readLesson } from '../../../src/lesson/read.ts'
import { toolWords, vocabulary } from '../../../src/lesson/tools/vocabulary.ts'

const card = '```card\nfold: side\nclosed: 120 x 150 mm\nbase: {stock: weiß}\n```\n\n'

/** The words at which a rule finds something, in a lesson with these supplies and this step. */
function told(rule: string, lang: string, supplies: string | undefined, step: string): string[] {
  const list = supplies === undefined ? '' : `\`\`\`supplies\nshared:\n  ${supplies}: 1\n\`\`\`\n\n`
  const text = `---\ntitle: x\nlang: ${lang}\n---\n\n${card}${list}1. ${step}\n`
  return fillLesson(readLesson(text))
    .findings.filter((finding) => finding.rule === rule)
    .map(({ place, suggestion }) =>
      rule === 'unlisted-tool' ? text.slice(place?.offset, place?.end) : (suggestion ?? ''),
    )
}

test.each(Object.entries(toolWords))('what %s calls a tool is a tool that is known', (_, words) => {
  const names = vocabulary.map(({ name }) => name)
  expect(Object.keys(words).filter((name) => !names.includes(name))).toEqual([])
})

test.each([
  [
    'de',
    'Schere',
    'Die Grundkarte mit dem Falzbein falten und mit dem Klebestift kleben.',
    ['Falzbein', 'Klebestift'],
  ],
  ['de', 'Bastelschere', 'Mit der Schere schneiden.', []],
  ['de', 'Schere', 'Ohne Lineal reißen.', []],
  ['de', 'Stahllineal', 'An der Kante eines Lineals entlang.', []],
  ['de', 'Bastelkleber', 'Den Kleber dünn auftragen.', []],
  ['fr', 'ciseaux', 'Plier avec le plioir, puis gommer sans gomme.', ['plioir']],
  ['fr', 'règle en métal', 'Tracer le long de la règle avec un crayon blanc.', ['crayon blanc']],
  ['fr', 'crayon', 'Prendre l’aiguille.', ['aiguille']],
  [
    'es',
    'tijeras',
    'Doblar con la plegadera y dibujar con lápices de color.',
    ['plegadera', 'lápices de color'],
  ],
  ['es', 'cinta adhesiva de doble cara', 'Poner cinta en las dos tiras.', []],
])('%s, with %s: %s', (lang, supplies, step, expected) => {
  expect(told('unlisted-tool', lang, supplies, step)).toEqual(expected)
})

test('a lesson without a list is told what its steps want, in their words', () => {
  expect(told('no-supplies', 'de', undefined, 'Die Karte mit einem Falzbein falten.')).toEqual([
    expect.stringMatching(/the steps want `Falzbein`$/),
  ])
})

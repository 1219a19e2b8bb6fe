import { describe, expect, test } from 'vitest'
import { fillLesson } from '../../../src/lesson/fill.ts'
import { readLesson } from '../../../src/lesson/read.ts'
import { wordingOf } from '../../../src/wording/wording.ts'

const lesson = (body: string, front = '') =>
  `---\ntitle: Shells\n${front}---\n\n\`\`\`card\nfold: side\nclosed: 5 x 7 in\n\`\`\`\n\n${body}\n`
const filled = (body: string, front?: string) => fillLesson(readLesson(lesson(body, front)))
const about = (body: string, front?: string) => filled(body, front).cautions.map((caution) => caution.about)

const supplies = (...items: string[]) =>
  `\`\`\`supplies\nshared:\n${items.map((item) => `  ${item}: 1`).join('\n')}\n\`\`\`\n\n`
const caution = (text: string, mark = '') => `\n\n   :::caution${mark}\n   ${text}\n   :::`

describe('the cautions of a lesson', () => {
  test('follow from the supplies, the steps, the call-outs and what the card is made of', () => {
    expect(about(`${supplies('craft knife', 'hot glue gun')}1. Fold.`)).toEqual(['blades', 'hot-glue'])
    expect(about('1. Fold.\n2. Glue a *disc* magnet under it.')).toEqual(['magnets'])
    expect(about('1. Fold.\n\n:::variation\nWith a hot glue gun it is quicker.\n:::')).toEqual(['hot-glue'])
    const text = lesson('1. Fold.').replace('closed: 5 x 7 in', 'closed: 5 x 7 in\nbase: {stock: clear film}')
    const [film] = fillLesson(readLesson(text)).cautions
    expect(text.slice(film?.because?.place.offset, film?.because?.place.end)).toBe('clear film')
  })

  test('what is only spoken of calls for none', () => {
    expect(about('A knife is not for this.\n\n## The knife\n\n1. Fold.')).toEqual([])
    expect(about(`1. Fold.${caution('Never with a knife.')}`)).toEqual([])
  })

  test('a piece of the card is no tool', () => {
    const text = lesson('1. Cut the balloon and stick it on.')
    const withPiece = text.replace('7 in\n', '7 in\npieces: {balloon: {size: 1 x 1 in}}\n')
    expect(fillLesson(readLesson(withPiece)).cautions).toEqual([])
    expect(fillLesson(readLesson(text)).cautions.map((c) => c.about)).toEqual(['balloons'])
  })

  test('each comes once, with the first words that call for it', () => {
    const text = lesson(`${supplies('scalpel')}1. Take the knife.\n2. Take the scalpel.`)
    const { cautions } = fillLesson(readLesson(text))
    expect(cautions.map(({ because }) => [because?.word, because?.place.line])).toEqual([['scalpel', 12]])
  })
})

describe('a caution in the lesson', () => {
  const knife = '1. Take the knife.'

  test.each(['The knife is sharp.', 'A blade slips on film.', 'Never put a scalpel down open.'])(
    'takes the place of the general one: %s',
    (text) => {
      expect(about(knife + caution(text))).toEqual([])
    },
  )

  test.each([
    '{about=blades}',
    '{about="hot glue, blades"}',
    '{about="heat and blades"}',
    '[Mind out]{about=Blades}',
  ])('says what it is about: %s', (mark) => {
    const { cautions, findings } = filled(knife + caution('Sit down for this.', mark))
    const told = findings.filter(({ rule }) =>
      ['no-caution', 'unknown-hazard', 'unknown-attribute'].includes(rule),
    )
    expect([cautions, told]).toEqual([[], []])
  })

  test.each([
    ['about something else', caution('Hot glue burns.')],
    ['about a trimmer only', caution('A trimmer has a blade too.')],
    ['with nothing to say', caution('', '{about=blades}')],
    ['with next to nothing to say', caution('...', '{about=blades}')],
    ['that is a tip', '\n\n   :::tip\n   Keep the knife sharp.\n   :::'],
  ])('%s does not', (_, text) => {
    expect(about(knife + text)).toContain('blades')
  })

  test.each([
    ['{about=blads}', 'Unexpected hazard `blads`', 'Write `blades`', 'blads'],
    ['{about="craft knife"}', 'Unexpected hazard `craft-knife`', 'Write `blades`', 'craft knife'],
    ['{about="blades, glue guns"}', 'Unexpected hazard `glue-guns`', 'Write `hot-glue`', 'blades, glue guns'],
    [
      '{about=""}',
      'This caution does not say what it is about',
      expect.stringMatching(/^Choose one of `blades`,/),
      'about=""',
    ],
  ])('about no hazard is told: %s', (mark, message, suggestion, at) => {
    const text = lesson(`1. Fold.${caution('Sit down for this.', mark)}`)
    const told = fillLesson(readLesson(text)).findings
    expect(told).toMatchObject([{ rule: 'unknown-hazard', severity: 'error', message, suggestion }])
    expect(text.slice(told[0]?.place?.offset, told[0]?.place?.end)).toBe(at)
  })

  test('only a caution is about a hazard', () => {
    const told = filled('1. Fold.\n\n   :::tip{about=blades}\n   Sit down.\n   :::').findings
    expect(told.map(({ rule }) => rule)).toEqual(['unknown-attribute'])
  })
})

describe('a lesson for children', () => {
  const front = 'for: children\n'

  test('asks for an adult, whatever its tools', () => {
    const { cautions } = filled('1. Fold.', front)
    expect(cautions).toMatchObject([{ about: 'children', text: expect.stringContaining('An adult is with') }])
    expect(cautions[0]?.text).not.toMatch(/\d/)
    expect(about(`1. Fold.${caution('Two of us are at each table.', '{about=children}')}`, front)).toEqual([])
  })

  test('says what an adult does, also beside a caution that does not', () => {
    const text = (body: string) => filled(body, front).cautions.find((c) => c.about === 'blades')?.text
    const whole = text('1. Take the knife.')
    expect(whole).toMatch(/^A craft blade .* An adult makes every cut with a blade\.$/)
    expect(text(`1. Take the knife.${caution('The knife is sharp.')}`)).toBe(
      'An adult makes every cut with a blade.',
    )
    expect(text(`1. Take the knife.${caution('Only the tutor takes the knife.')}`)).toBeUndefined()
  })

  test('is told what its own caution leaves out, with a cure', () => {
    const body = `1. Take the knife.${caution('The knife is sharp.')}`
    const hint = (text: string) => filled(text, front).findings.find((f) => f.rule === 'no-caution')
    expect(hint(body)?.message).toContain('does not say what an adult does')
    const [, words = ''] = /`: (.*)/.exec(hint(body)?.suggestion ?? '') ?? []
    expect(hint(body.replace('sharp.', `sharp. ${words}`))).toBeUndefined()
  })

  test('has scissors and foam pads on its list', () => {
    const list = `${supplies('scissors', 'foam pads')}1. Cut and stick.`
    expect(about(list)).toEqual([])
    expect(about(list, front)).toEqual(['children', 'scissors', 'small-parts'])
  })
})

describe('no-caution', () => {
  test('is a hint at the words, with a cure that can be pasted', () => {
    const text = lesson('1. Take the knife.')
    const [told, ...others] = fillLesson(readLesson(text)).findings.filter((f) => f.rule === 'no-caution')
    expect([told?.severity, text.slice(told?.place?.offset, told?.place?.end), others]).toEqual([
      'hint',
      'knife',
      [],
    ])
    const [, mark = '', words = ''] = /`:::caution(\{.*\})`: (.*)/.exec(told?.suggestion ?? '') ?? []
    const cured = filled(`1. Take the knife.${caution(words, mark)}`)
    expect(cured.findings.filter((f) => f.rule === 'no-caution')).toEqual([])
    expect(words).toMatch(/Local rules and the maker’s instructions come first\.$/)
  })

  test('can be allowed; what is printed stays', () => {
    const { cautions, findings } = filled('1. Take the knife.', 'allow: {no-caution: We speak of it.}\n')
    expect(findings.filter((f) => f.rule === 'no-caution')).toEqual([])
    expect(cautions.map((c) => c.about)).toEqual(['blades'])
  })
})

describe.each([
  ['de', 'Cuttermesser', 'Das Messer nehmen.', 'Das Messer ist scharf.', /Bastelklinge/, /erwachsene Person/],
  [
    'de-CH',
    'Heissklebepistole',
    'Mit Heisskleber ankleben.',
    'Heisskleber verbrennt die Haut.',
    /Düse/,
    /erwachsene Person/,
  ],
  ['fr', 'cutter', 'Prendre le cutter.', 'Le cutter est tranchant.', /lame de cutter/, /Un adulte/],
  ['es', 'cúter', 'Tomar el cúter.', 'El cúter corta mucho.', /cuchilla/, /persona adulta/],
])('a lesson in %s', (lang, tool, step, own, wanted, adult) => {
  const front = `lang: ${lang}\n`
  const closing = wordingOf(lang, 'mm').say('cautions.closing')

  test('has the caution of what is on its list, in its steps and in its stock', () => {
    for (const body of [`${supplies(tool)}1. x`, `1. ${step}`, `1. x\n\n:::tip\n${step}\n:::`])
      expect(filled(body, front).cautions.map(({ text }) => text)).toEqual([expect.stringMatching(wanted)])
    const text = lesson('1. x', front).replace('closed: 5 x 7 in', `closed: 5 x 7 in\nbase: {stock: ${tool}}`)
    const [caution] = fillLesson(readLesson(text)).cautions
    expect(text.slice(caution?.because?.place.offset, caution?.because?.place.end)).toBe(tool)
  })

  test('takes its own caution instead, also one that says what it is about', () => {
    const [general] = filled(`1. ${step}`, front).cautions
    expect(about(`1. ${step}${caution(own)}`, front)).toEqual([])
    expect(about(`1. ${step}${caution(step, `{about=${general?.about}}`)}`, front)).toEqual([])
    const { cautions } = filled(`1. ${step}${caution(own)}`, `${front}for: children\n`)
    expect(cautions.map(({ text }) => text)).toEqual([
      expect.stringMatching(adult),
      expect.stringMatching(adult),
    ])
  })

  test('is told how to cure it in its own words, which then are enough', () => {
    for (const whom of ['', 'for: children\n']) {
      const told = filled(`1. ${step}`, front + whom).findings.find(({ rule }) => rule === 'no-caution')
      const [, mark = '', words = ''] = /`:::caution(\{.*\})`: (.*)/.exec(told?.suggestion ?? '') ?? []
      expect(words.endsWith(closing)).toBe(true)
      const cured = filled(`1. ${step}${caution(words, mark)}`, front + whom)
      expect(cured.findings.filter(({ rule }) => rule === 'no-caution')).toEqual([])
    }
  })

  test('is told the word for a hazard by the name of its tool', () => {
    const { findings } = filled(`1. ${step}${caution(own, `{about="${tool}"}`)}`, front)
    const [general] = filled(`1. ${step}`, front).cautions
    expect(findings.find(({ rule }) => rule === 'unknown-hazard')?.suggestion).toBe(
      `Write \`${general?.about}\``,
    )
  })
})

import { expect, test } from 'vitest'
import { hazards } from '../../src/lesson/safety/hazards.ts'
import { handoutHtml } from '../../src/publish/html.ts'
import { mustShowCautions, safetyView } from '../../src/publish/safety.ts'
import { loadTheme } from '../../src/publish/theme.ts'
import { handoutView } from '../../src/publish/view.ts'
import { wordingOf } from '../../src/wording/wording.ts'
import { axeFindings } from './axe.ts'
import { drawStub, plainLesson } from './lesson.ts'
import { withBrowser } from './with-browser.ts'

const browser = withBrowser()
const { say } = wordingOf('en', 'in')
const closingAdvice = say('cautions.closing')

/** A lesson that uses something with every hazard. */
const everything = (front = '', body = '') => {
  const items = hazards.map(({ words, forChildren = [] }) => `  ${words[0] ?? forChildren[0]}: 1`)
  const supplies = ['```supplies', 'shared:', ...items, '```']
  return plainLesson([...supplies, '', '1. Fold it.', '', body].join('\n'), front)
}
const page = async (lesson = everything()) =>
  handoutHtml(handoutView(lesson, drawStub).view, await loadTheme('step-sheet'), { paper: 'a4' })
const times = (html: string, text: string): number => html.split(text.replaceAll("'", '&#39;')).length - 1

test('every caution is printed once, before the first step, with the advice that others come first', async () => {
  const html = await page(everything('for: children\n'))
  for (const { name } of hazards) {
    const text = `${say(`cautions.${name}`)} ${say(`cautions.${name}-children`)}`
    expect(times(html, text), name).toBe(1)
    expect(times(html, `<dt>${say(`cautions.${name}-title`)}</dt>`), name).toBe(1)
  }
  expect(times(html, closingAdvice)).toBe(1)
  expect(html.indexOf(closingAdvice)).toBeLessThan(html.indexOf('<ol class="steps"'))
  expect(html.indexOf('<dt>With children</dt>')).toBeGreaterThan(0)
})

test('for anyone else it says nothing of children and scissors', async () => {
  const html = await page()
  expect(html).not.toContain('<dt>With children</dt>')
  expect(html).not.toContain('<dt>Scissors</dt>')
  for (const { name } of hazards) expect(times(html, say(`cautions.${name}-children`))).toBe(0)
})

test('what the lesson says itself is not printed twice, and nothing is printed when it says it all', async () => {
  const own = ':::caution{about=blades}\nOur blades live in the red tin.\n:::'
  const html = await page(everything('', own))
  expect(html).not.toContain('<dt>Blades</dt>')
  expect(times(html, 'Our blades live in the red tin.')).toBe(1)
  expect(times(html, '<dt>Sprays</dt>')).toBe(1)
  expect(safetyView(plainLesson('1. Fold it.'))).toBeNull()
  expect(await page(plainLesson('1. Fold it.'))).not.toContain(closingAdvice)
})

test.each([
  ['de', 'Bastelmesser'],
  ['fr', 'cutter'],
  ['es', 'cúter'],
])('a lesson in %s has the caution on its page in its language', async (lang, knife) => {
  const supplies = ['```supplies', 'shared:', `  ${knife}: 1`, '```', '', '1. x'].join('\n')
  const html = await page(plainLesson(supplies, `lang: ${lang}\n`))
  const own = wordingOf(lang, 'mm')
  for (const key of ['cautions.blades', 'cautions.closing'] as const) {
    expect(times(html, own.say(key))).toBe(1)
    expect(times(html, say(key))).toBe(0)
  }
  expect(times(html, `<dt>${own.say('cautions.blades-title')}</dt>`)).toBe(1)
})

test('a rule that is allowed hides the finding and prints the caution', async () => {
  const html = await page(everything('allow: {no-caution: We speak of it.}\n'))
  expect(times(html, '<dt>Blades</dt>')).toBe(1)
})

test.each([1200, 390])('axe-core finds nothing to complain of, %i px wide', async (width) => {
  expect(await axeFindings(browser(), await page(everything('for: children\n')), width)).toEqual([])
})

test('a theme that leaves cautions out is refused', async () => {
  const lesson = everything()
  const view = safetyView(lesson)
  const html = await page(lesson)
  expect(() => mustShowCautions(view, html, 'mine')).not.toThrow()
  expect(() => mustShowCautions(null, '', 'mine')).not.toThrow()
  const [first] = view?.cautions ?? []
  const without = html.replace((first?.text ?? '').replaceAll("'", '&#39;').slice(0, 20), '')
  expect(without).not.toBe(html)
  expect(() => mustShowCautions(view, without, 'mine')).toThrow('The theme `mine` leaves out cautions')
  expect(() => mustShowCautions(view, html.replace(closingAdvice.slice(0, 12), ''), 'mine')).toThrow()
})

import { readFileSync } from 'node:fs'
import type { KeyInput } from 'puppeteer-core'
import { expect, test } from 'vitest'
import { axeOn } from '../axe.ts'
import { withBrowser } from '../with-browser.ts'
import { openScreen, withScreenPages } from './screen-lesson.ts'

const browser = withBrowser()
const pages = withScreenPages()
const harbour = readFileSync(new URL('../../../lessons/harbour-lights.md', import.meta.url), 'utf8')
const quay = readFileSync(new URL('../../../lessons/quay-morning.md', import.meta.url), 'utf8')
const children = harbour.replace('level: improver', 'level: improver\nfor: children')

const drying = `---
title: Wet paint
level: beginner
units: in
---

\`\`\`card
fold: side
closed: 5 x 7 in
\`\`\`

1. Cut the base to {base.size}. :minutes[2] :drying[10 min]
2. Score the base at {base.scores}. :minutes[3]
`

test('keys and clickers go through the slides, one at a time, and stop at both ends', async () => {
  const { page, shown } = await openScreen(browser(), await pages.url(harbour))
  const seen = [await shown()]
  const press = async (...keys: KeyInput[]): Promise<void> => {
    for (const key of keys) {
      await page.keyboard.press(key)
      seen.push(await shown())
    }
  }
  await press('PageUp', 'PageDown', 'ArrowRight', 'Space', 'ArrowDown', 'PageUp', 'End', 'PageDown', 'Home')
  expect(seen).toEqual([
    ...['opening', 'opening', 'needs', 'intro', 'step-1', 'step-2', 'step-1'],
    ...[expect.stringMatching(/^words-/), expect.stringMatching(/^words-/), 'opening'],
  ])
  await page.close()
})

test('the times of the step and of the lesson: from the first step on, with a pause and a minute more', async () => {
  const { page, goOn, textOf } = await openScreen(browser(), await pages.url(harbour))
  const times = async () => [await textOf('#step-time'), await textOf('#lesson-time')]
  await goOn(300)
  expect(await times()).toEqual(['', 'The clock starts with the first step'])
  for (let i = 0; i < 3; i++) await page.keyboard.press('PageDown')
  expect(await times()).toEqual(['4:00 left', '0 min gone, 1 h 11 min to go'])
  await goOn(75)
  expect(await times()).toEqual(['2:45 left', '1 min gone, 1 h 10 min to go'])
  await page.keyboard.press('p')
  await goOn(600)
  expect(await times()).toEqual(['2:45 left', '1 min gone, 1 h 10 min to go'])
  await page.keyboard.press('p')
  await page.keyboard.press('+')
  await goOn(240)
  expect(await times()).toEqual(['0:15 over', '5 min gone, 1 h 7 min to go'])
  await page.keyboard.press('PageDown')
  expect((await times())[0]).toBe('3:00 left')
  await page.close()
})

test('loaded again, it goes on at the same step with the same times', async () => {
  const { page, goOn, textOf, shown } = await openScreen(browser(), await pages.url(harbour))
  for (let i = 0; i < 4; i++) await page.keyboard.press('PageDown')
  await goOn(30)
  await page.reload()
  await page.waitForSelector('[data-screen=on]')
  expect([await shown(), await textOf('#step-time')]).toEqual(['step-2', '2:30 left'])
  await goOn(30)
  expect(await textOf('#step-time')).toBe('2:00 left')
  await page.close()
})

test('what is not dry yet is told at the step that needs it', async () => {
  const { page, goOn, textOf, ask } = await openScreen(browser(), await pages.url(drying))
  await page.keyboard.press('End')
  await page.keyboard.press('PageUp')
  expect(await ask("document.querySelector('#wait').hidden")).toBe(true)
  await page.keyboard.press('PageDown')
  await goOn(90)
  expect(await textOf('#wait')).toBe('Step 1 is dry in 8:30')
  await goOn(600)
  expect(await ask("document.querySelector('#wait').hidden")).toBe(true)
  await page.close()
})

test('the list of steps leads to each, by mouse and by keyboard', async () => {
  const { page, shown, ask } = await openScreen(browser(), await pages.url(harbour))
  await page.keyboard.press('s')
  expect(await ask("[...document.querySelectorAll('#list li')].length")).toBe(19)
  await page.click('#list a[href="#step-9"]')
  expect([await shown(), await ask("document.querySelector('#list').open")]).toEqual(['step-9', false])
  await page.keyboard.press('s')
  expect(await ask('document.activeElement.hash')).toBe('#step-9')
  await page.keyboard.press('Tab')
  await page.keyboard.press('Enter')
  expect(await shown()).toBe('step-10')
  await page.close()
})

test('a finger across goes on and back; buttons do what they say', async () => {
  const { page, shown } = await openScreen(browser(), await pages.url(harbour))
  const swipe = async (from: number, to: number): Promise<void> => {
    const touch = await page.touchscreen.touchStart(from, 300)
    await touch.move((from + to) / 2, 305)
    await touch.move(to, 310)
    await touch.end()
  }
  await swipe(900, 500)
  expect(await shown()).toBe('needs')
  await swipe(500, 900)
  expect(await shown()).toBe('opening')
  await swipe(500, 530)
  expect(await shown()).toBe('opening')
  await page.click('[data-wish=next]')
  expect(await shown()).toBe('needs')
  // The button has the keyboard now: the clicker goes on all the same, and once.
  await page.keyboard.press('PageDown')
  expect(await shown()).toBe('intro')
  await page.close()
})

test('a blank screen comes back with the next key, at the same slide', async () => {
  const { page, shown, ask } = await openScreen(browser(), await pages.url(harbour))
  await page.keyboard.press('.')
  expect(await ask('document.elementFromPoint(300, 300).id')).toBe('blank')
  await page.keyboard.press('PageDown')
  expect([await shown(), await ask("document.querySelector('#blank').checkVisibility()")]).toEqual([
    'opening',
    false,
  ])
  await page.close()
})

test.each([
  [1280, 720],
  [1024, 768],
  [1920, 1080],
  [420, 800],
])(
  'on %i × %i px every slide of a lesson is seen whole, in large type, and nothing is covered',
  async (width, height) => {
    const { page, ask } = await openScreen(browser(), await pages.url(width === 1280 ? quay : children), {
      width,
      height,
    })
    const count = Number(await ask("document.querySelectorAll('.slide').length"))
    expect(count).toBeGreaterThan(18)
    for (let i = 0; i < count; i++) {
      const found = (await ask(`(() => {
      const slide = document.querySelector('.slide[data-shown]')
      const box = slide.getBoundingClientRect()
      const words = slide.querySelector('.words, li, dd')
      return {
        id: slide.id,
        across: slide.scrollWidth - slide.clientWidth,
        below: slide.scrollHeight - slide.clientHeight,
        over: document.querySelector('.bar.base').getBoundingClientRect().top - box.bottom,
        type: parseFloat(getComputedStyle(words).fontSize),
        svg: Math.min(1e9, ...[...slide.querySelectorAll('.drawn > .figure > svg')].map((e) => e.getBoundingClientRect().height)),
      }
    })()`)) as { id: string; across: number; below: number; over: number; type: number; svg: number }
      expect(found.across, found.id).toBeLessThanOrEqual(1)
      if (width > height && !/care|words/.test(found.id)) expect(found.below, found.id).toBeLessThanOrEqual(1)
      expect(found.over, found.id).toBeGreaterThanOrEqual(-1)
      expect(found.type, found.id).toBeGreaterThan(width > height ? height / 45 : 12)
      expect(found.svg, found.id).toBeGreaterThan(90)
      // What is longer than the screen is gone through first.
      for (let more = 0; more < 12; more++) {
        await page.keyboard.press('PageDown')
        if ((await ask("document.querySelector('.slide[data-shown]').id")) !== found.id) break
      }
    }
    await page.close()
  },
)

test('nothing is fetched, and only the page’s own program may run', async () => {
  const { page, asked, ask } = await openScreen(browser(), await pages.url(harbour))
  await page.keyboard.press('End')
  expect(asked).toEqual([])
  const policy = String(await ask("document.querySelector('meta[http-equiv]').content"))
  expect(policy).toMatch(/default-src 'none'.*script-src 'sha256-[\w+/=]+'$/)
  await ask(
    "(() => { const s = document.createElement('script'); s.textContent = 'window.intruder = 1'; document.body.append(s) })()",
  )
  expect(await ask('window.intruder === undefined')).toBe(true)
  await page.close()
})

test('printed, and where nothing runs, all slides stand one below the other', async () => {
  const { page, ask } = await openScreen(browser(), await pages.url(harbour))
  const visible = "[...document.querySelectorAll('.slide')].every((e) => e.checkVisibility())"
  const controls = "document.querySelector('.wishes').checkVisibility()"
  expect([await ask(visible), await ask(controls)]).toEqual([false, true])
  await page.emulateMediaType('print')
  expect([await ask(visible), await ask(controls)]).toEqual([true, false])
  await page.close()
  const still = await browser().newPage()
  await still.setJavaScriptEnabled(false)
  await still.goto(await pages.url(harbour))
  expect([await still.evaluate(visible), await still.evaluate(controls)]).toEqual([true, false])
  await still.close()
})

test('with less motion wished for nothing fades', async () => {
  const { page, ask } = await openScreen(browser(), await pages.url(harbour))
  const name = "getComputedStyle(document.querySelector('.slide[data-shown]')).animationName"
  await page.emulateMediaFeatures([{ name: 'prefers-reduced-motion', value: 'no-preference' }])
  expect(await ask(name)).toBe('come')
  await page.emulateMediaFeatures([{ name: 'prefers-reduced-motion', value: 'reduce' }])
  expect(await ask(name)).toBe('none')
  await page.close()
})

test('cautions that the lesson’s tools call for come before the first step', async () => {
  const { page, ask, shown } = await openScreen(browser(), await pages.url(children))
  const ids = (await ask("[...document.querySelectorAll('.slide')].map((e) => e.id)")) as string[]
  expect(ids.indexOf('care')).toBeGreaterThan(0)
  expect(ids.indexOf('care')).toBeLessThan(ids.indexOf('step-1'))
  await page.keyboard.press('PageDown')
  await page.keyboard.press('PageDown')
  expect(await shown()).toBe('care')
  await page.close()
})

test.each([
  [1280, 'opening', 'light'],
  [1280, 'step-9', 'dark'],
  [420, 'step-9', 'light'],
  [1280, 'care', 'dark'],
  [1280, 'needs', 'light'],
] as const)(
  'on a screen %i px wide axe-core finds nothing wrong with `%s`, %s',
  async (width, slide, scheme) => {
    const { page, ask } = await openScreen(browser(), await pages.url(children), { width, scheme })
    await ask(`location.hash = '${slide}'`)
    await page.waitForSelector(`#${slide}[data-shown]`)
    expect(await axeOn(page)).toEqual([])
    await page.keyboard.press('s')
    expect(await axeOn(page)).toEqual([])
    await page.close()
  },
)

test('in a lesson in German the page counts and tells in German', async () => {
  const german = drying.replace('units: in', 'units: in\nlang: de')
  const { page, goOn, textOf } = await openScreen(browser(), await pages.url(german))
  await goOn(1)
  expect(await textOf('#lesson-time')).toBe('Die Uhr beginnt mit dem ersten Schritt')
  await page.keyboard.press('PageDown')
  await page.keyboard.press('PageDown')
  expect([await textOf('#place'), await textOf('#step-time')]).toEqual(['Schritt 1 von 2', 'noch 2:00'])
  await page.keyboard.press('p')
  await goOn(1)
  expect(await textOf('#pause')).toBe('Fortsetzen')
  await page.keyboard.press('p')
  await goOn(150)
  expect(await textOf('#step-time')).toBe('0:30 darüber')
  await page.keyboard.press('PageDown')
  await goOn(60)
  expect(await textOf('#wait')).toBe('Schritt 1 ist in 9:00 trocken')
  // Three minutes of its own, and until the tenth has gone what has dried for one.
  expect(await textOf('#lesson-time')).toBe('bisher 3 min, noch 11 min')
  await page.close()
})

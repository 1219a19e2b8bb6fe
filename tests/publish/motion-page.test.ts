import type { Page } from 'puppeteer-core'
import { expect, test } from 'vitest'
import { axeFindings } from './axe.ts'
import { noWebgl, withFlatBrowser, withSpaceBrowser } from './motion-browser.ts'
import { lessonText, openMotion, viewAt, viewOf, withMotionPages } from './motion-lesson.ts'

const space = withSpaceBrowser()
const flat = withFlatBrowser()
const pages = withMotionPages()
const lights = lessonText('harbour-lights')

/** A lesson with a second, smaller card. */
const two = lights.replace(
  /\n```supplies/,
  '\n```card pocket\nfold: side\nclosed: 3 x 4 in\n```\n\n```supplies',
)

const ask = (page: Page, code: string): Promise<unknown> => page.evaluate(code)
const said = (page: Page) => ask(page, "document.querySelector('#slider').getAttribute('aria-valuetext')")
const moment = async (page: Page) =>
  Number(await ask(page, "document.querySelector('#stage').dataset.moment"))
const settled = (page: Page, to: number) =>
  page.waitForFunction(`document.querySelector('#stage').dataset.moment === '${to.toFixed(4)}'`)
const drawn = (page: Page) =>
  ask(page, 'new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))')
const seen = (page: Page, selector: string) =>
  ask(page, `[...document.querySelectorAll('${selector}')].filter((e) => e.checkVisibility()).length`)

test('it is one file: opened from the disk it asks for nothing else, and lets no other program run', async ({
  skip,
}) => {
  const { browser, draws } = space()
  if (!draws) skip(noWebgl)
  const html = await pages.html(lights)
  expect(html.length).toBeLessThan(1_200_000)
  const [policy = ''] = /http-equiv="Content-Security-Policy" content="[^"]*"/.exec(html) ?? []
  expect(policy).toMatch(/default-src 'none'.*; script-src 'sha256-[\w+/=]+'"$/)
  const page = await browser.newPage()
  const asked: string[] = []
  const wrong: string[] = []
  page.on('request', (request) => asked.push(request.url()))
  page.on('console', (message) => wrong.push(message.text()))
  page.on('pageerror', (error) => wrong.push(String(error)))
  const url = await pages.url(lights.replace('title: Harbour lights', 'title: "</script><script>alert(1)//"'))
  await page.goto(url)
  await page.waitForSelector('#stage[data-view]')
  await viewAt(page, 40)
  expect(asked.filter((one) => !one.startsWith('data:'))).toEqual([url])
  expect(wrong).toEqual([])
  await page.close()
})

test('the slider says where the card is, and the stops and the act follow it', async ({ skip }) => {
  const { browser, draws } = space()
  if (!draws) skip(noWebgl)
  const page = await openMotion(browser, await pages.url(lights))
  expect([await said(page), await moment(page)]).toEqual(['standing', 2])
  await viewAt(page, 50)
  expect(await said(page)).toBe('half folded')
  await page.focus('#slider')
  await page.keyboard.press('ArrowLeft')
  await settled(page, 0.49)
  await page.keyboard.press('Home')
  await settled(page, 0)
  expect(await said(page)).toBe('flat')
  expect(await ask(page, "document.querySelector('[data-stop=flat]').ariaPressed")).toBe('true')
  await viewAt(page, 70)
  expect(await ask(page, "document.querySelector('#said').textContent")).toBe(
    'Stick on the beam and the sea wall, and fold it shut.',
  )
  await page.close()
})

test('arrow keys and buttons turn the card, + and - bring it nearer and farther, Home puts it as it was', async ({
  skip,
}) => {
  const { browser, draws } = space()
  if (!draws) skip(noWebgl)
  const page = await openMotion(browser, await pages.url(lights))
  const home = await viewOf(page)
  await page.focus('#stage')
  const press = async (key: '+' | '-' | 'ArrowLeft' | 'ArrowRight' | 'ArrowUp' | 'Home') => {
    await page.keyboard.press(key)
    await drawn(page)
    return viewOf(page)
  }
  expect((await press('ArrowRight')).turn).toBeCloseTo(home.turn + 10, 3)
  expect((await press('ArrowUp')).rise).toBeCloseTo(home.rise - 10, 3)
  expect((await press('+')).scale).toBeCloseTo(home.scale * 1.2, 3)
  expect(await press('Home')).toEqual(home)
  expect((await press('-')).scale).toBeCloseTo(home.scale / 1.2, 3)
  for (const [word, left] of [
    ['home', 0],
    ['left', -10],
    ['left', -20],
  ] as const) {
    await page.click(`[data-turn=${word}]`)
    await drawn(page)
    expect((await viewOf(page)).turn).toBeCloseTo(home.turn + left, 3)
  }
  await page.close()
})

test('a mouse and a finger drag it round, two fingers bring it nearer', async ({ skip }) => {
  const { browser, draws } = space()
  if (!draws) skip(noWebgl)
  const page = await openMotion(browser, await pages.url(lights))
  const home = await viewOf(page)
  const box = await (await page.$('#stage'))?.boundingBox()
  const [x, y] = [(box?.x ?? 0) + 200, (box?.y ?? 0) + 150]
  await page.mouse.move(x, y)
  await page.mouse.down()
  await page.mouse.move(x + 50, y - 25)
  await page.mouse.up()
  await drawn(page)
  const dragged = await viewOf(page)
  expect([dragged.turn - home.turn, dragged.rise - home.rise].map(Math.round)).toEqual([20, -10])
  await page.touchscreen.touchStart(x, y)
  await page.touchscreen.touchMove(x - 50, y)
  await page.touchscreen.touchEnd()
  await drawn(page)
  expect((await viewOf(page)).turn).toBeCloseTo(dragged.turn - 20, 1)
  const fingers = await page.createCDPSession()
  const touch = (type: 'touchStart' | 'touchMove', apart: number) =>
    fingers.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: [
        { x: x - apart, y, id: 0 },
        { x: x + apart, y, id: 1 },
      ],
    })
  await touch('touchStart', 40)
  await touch('touchMove', 60)
  await fingers.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] })
  await drawn(page)
  expect((await viewOf(page)).scale / home.scale).toBeCloseTo(1.5, 1)
  await page.close()
})

test('space plays from the flat sheet and pauses; a stop is gone to step by step', async ({ skip }) => {
  const { browser, draws } = space()
  if (!draws) skip(noWebgl)
  const page = await openMotion(browser, await pages.url(lights))
  await page.focus('#stage')
  await page.keyboard.press('Space')
  expect(await ask(page, "document.querySelector('#play').textContent")).toBe('Pause')
  await page.waitForFunction(
    "(m => m > 0.02 && m < 0.9)(Number(document.querySelector('#stage').dataset.moment))",
  )
  await page.keyboard.press('Space')
  expect(await ask(page, "document.querySelector('#play').textContent")).toBe('Play')
  await drawn(page)
  const paused = await moment(page)
  await drawn(page)
  expect(await moment(page)).toBe(paused)
  await page.click('[data-stop=shut]')
  await page.waitForFunction(
    `(m => m > ${paused} && m < 1)(Number(document.querySelector('#stage').dataset.moment))`,
  )
  await settled(page, 1)
  await page.close()
})

test('with less motion wished for nothing glides: a stop is there at once, and play shows still pictures', async ({
  skip,
}) => {
  const { browser, draws } = space()
  if (!draws) skip(noWebgl)
  const page = await openMotion(browser, await pages.url(lights))
  await page.emulateMediaFeatures([{ name: 'prefers-reduced-motion', value: 'reduce' }])
  await ask(
    page,
    `(() => {
      const stage = document.querySelector('#stage')
      window.moments = new Set()
      new MutationObserver(() => window.moments.add(stage.dataset.moment)).observe(stage, { attributes: true })
    })()`,
  )
  await page.click('[data-stop=flat]')
  await settled(page, 0)
  await page.click('#play')
  await settled(page, 2)
  expect(await ask(page, '[...window.moments]')).toEqual(['0.0000', '0.5000', '1.0000', '2.0000'])
  await page.close()
})

test('names of the panels stand on them when they are wished for, none on another', async ({ skip }) => {
  const { browser, draws } = space()
  if (!draws) skip(noWebgl)
  const page = await openMotion(browser, await pages.url(lights))
  expect(await seen(page, '#names span')).toBe(0)
  await page.click('#wants-names')
  await drawn(page)
  const names = (await ask(
    page,
    "[...document.querySelectorAll('#names span:not([hidden])')].map((e) => [e.textContent, ...Object.values(e.getBoundingClientRect().toJSON())])",
  )) as [string, number, number, number, number][]
  expect(names.map(([name]) => name)).toEqual(expect.arrayContaining(['beam', 'sea wall', 'right leg']))
  for (const [i, [, x, y, width, height]] of names.entries())
    for (const [, p, q, wide, high] of names.slice(i + 1))
      expect(x < p + wide && p < x + width && y < q + high && q < y + height).toBe(false)
  await page.click('#wants-names')
  await drawn(page)
  expect(await seen(page, '#names span')).toBe(0)
  await page.close()
})

test('of several cards one is chosen', async ({ skip }) => {
  const { browser, draws } = space()
  if (!draws) skip(noWebgl)
  const page = await openMotion(browser, await pages.url(two))
  const before = await viewOf(page)
  const choices =
    "[...document.querySelectorAll('.choice label')].map((e) => e.textContent.trim().replace(/\\s/g, ' '))"
  expect(await ask(page, choices)).toEqual(['card, 7 × 5 in', 'pocket, 3 × 4 in'])
  await page.click('.choice label:nth-of-type(2)')
  await drawn(page)
  expect((await viewOf(page)).scale).toBeGreaterThan(before.scale)
  await page.close()
})

test('printed, it is the still figures', async ({ skip }) => {
  const { browser, draws } = space()
  if (!draws) skip(noWebgl)
  const page = await openMotion(browser, await pages.url(lights))
  expect([await seen(page, '.stills svg'), await seen(page, '#stage')]).toEqual([0, 1])
  await page.emulateMediaType('print')
  expect([await seen(page, '.stills svg'), await seen(page, '#stage'), await seen(page, '.sorry')]).toEqual([
    3, 0, 0,
  ])
  await page.close()
})

test('a browser that cannot draw in space shows the figures, and says why', async () => {
  const page = await flat().newPage()
  await page.goto(await pages.url(lights))
  await page.waitForSelector('[data-motion="still"]')
  expect([await seen(page, '.stills svg'), await seen(page, '#stage'), await seen(page, '.sorry')]).toEqual([
    3, 0, 1,
  ])
  expect(await ask(page, "document.querySelector('.sorry').textContent")).toContain(
    'cannot show the card in space',
  )
  await page.close()
})

test.each([1100, 390])('on a screen %i px wide axe-core finds nothing to complain of', async (width) => {
  for (const text of [lights, two]) {
    const html = await pages.html(text)
    expect(await axeFindings(flat(), html, width, '[data-motion=still]')).toEqual([])
    const { browser, draws } = space()
    if (draws)
      expect(await axeFindings(browser, html, width, '[data-motion=moves] #stage[data-view]')).toEqual([])
    else console.warn(noWebgl)
  }
})

import { readFileSync } from 'node:fs'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { fileURLToPath } from 'node:url'
import type { Browser, Page } from 'puppeteer-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { figuresOf } from '../../src/publish/figures-of.ts'
import { handoutHtml } from '../../src/publish/html.ts'
import { printHandout } from '../../src/publish/pdf.ts'
import { codesFor } from '../../src/publish/scan.ts'
import { loadTheme } from '../../src/publish/theme.ts'
import { handoutView } from '../../src/publish/view.ts'
import { openDesk, troubleOf, useDeskBrowser } from './open-desk.ts'

const browser = useDeskBrowser()
const slow = 240_000
const lesson = (name: string): string =>
  readFileSync(fileURLToPath(new URL(`../../lessons/${name}.md`, import.meta.url)), 'utf8')

/** Puts a text in the place of what stands in the editor, as a teacher does who pastes it. */
async function paste(page: Page, text: string): Promise<void> {
  await page.focus('.cm-content')
  await page.keyboard.down('Control')
  await page.keyboard.press('a')
  await page.keyboard.up('Control')
  await page.evaluate((pasted) => {
    const clipboardData = new DataTransfer()
    clipboardData.setData('text/plain', pasted)
    document
      .querySelector('.cm-content')
      ?.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }))
  }, text)
}

/** The page with a lesson that has been pasted into it. It knows of no page before. */
async function deskWith(text: string): Promise<Page> {
  const apart = await (await browser()).createBrowserContext()
  const page = await openDesk(apart as unknown as Browser)
  page.setDefaultTimeout(90_000)
  await page.locator('::-p-text(Low tide)').click()
  await page.waitForSelector('.cm-content')
  await page.waitForSelector('.looking-row[aria-busy="false"]')
  await paste(page, text)
  return page
}

const inFrame = <T>(page: Page, selector: string, look: (doc: Document) => T): Promise<T> =>
  page.evaluate(
    `(${look.toString()})(document.querySelector(${JSON.stringify(selector)}).contentDocument)`,
  ) as Promise<T>

const titled = (page: Page, title: string): Promise<unknown> =>
  page.waitForFunction(
    (wanted) =>
      document
        .querySelector<HTMLIFrameElement>('.looking-frame')
        ?.contentDocument?.querySelector('h1')
        ?.textContent?.replaceAll('\u00a0', ' ') === wanted,
    {},
    title,
  )

/** Waits until the leaves lie as they will be printed. */
async function settled(page: Page): Promise<void> {
  await page.evaluate(() => new Promise((done) => setTimeout(done, 300)))
  await page.waitForSelector('.looking-row[aria-busy="false"]')
}

/** The leaf that each step ends on. */
const leavesOfSteps = (page: Page): Promise<Record<string, number>> =>
  page.evaluate(() => {
    const doc = document.querySelector<HTMLIFrameElement>('.looking-frame')?.contentDocument
    const leaves = [...document.querySelectorAll<HTMLElement>('.looking-leaf')]
    const zoom = Number(doc?.documentElement.style.zoom) || 1
    const pairs = [...(doc?.querySelectorAll('.step-end') ?? [])].map((end) => {
      const x = end.getBoundingClientRect().left / zoom
      const on = leaves.findLastIndex(({ style }) => Number.parseFloat(style.left) <= x)
      return [end.id, on] as const
    })
    return Object.fromEntries(pairs)
  })

/** The same of a printed handout: Chromium says in a PDF where the marks came to stand. */
async function pagesOfSteps(text: string): Promise<{ pages: number; steps: Record<string, number> }> {
  const filled = fillLesson(readLesson(text))
  const { view } = handoutView(filled, figuresOf(filled), new Map(), await codesFor(filled))
  const html = await handoutHtml(view, await loadTheme('step-sheet'), { paper: 'a4' })
  const { pdf, pages } = await printHandout(html, browser() as Promise<Browser>)
  const said = Buffer.from(pdf).toString('latin1')
  const order = [...said.matchAll(/\b(\d+) 0 obj\s*<<\/Type \/Page\b(?!s)/g)].map(([, number]) => number)
  const marks = [...said.matchAll(/\/(end-of-step-\d+) \[(\d+) 0 R \/XYZ/g)]
  return { pages, steps: Object.fromEntries(marks.map(([, name, on]) => [name, order.indexOf(on)])) }
}

describe('the handout as pages', () => {
  for (const [name, title] of [
    ['harbour-lights', 'Harbour lights'],
    ['deckchair-easel', 'Deckchair'],
    ['ferry-day', 'Ferry day'],
  ] as const)
    test(
      `the leaves of ${name} hold what the printed pages hold`,
      async () => {
        const page = await deskWith(lesson(name))
        await titled(page, title)
        await settled(page)
        const printed = await pagesOfSteps(lesson(name))
        expect(printed.pages).toBeGreaterThan(2)
        expect(await page.$$eval('.looking-leaf', (leaves) => leaves.length)).toBe(printed.pages)
        expect(await leavesOfSteps(page)).toEqual(printed.steps)
        await page.close()
      },
      slow,
    )
})

describe('the page and the writing follow each other', () => {
  let page: Page
  beforeAll(async () => {
    page = await deskWith(lesson('harbour-lights'))
    await titled(page, 'Harbour lights')
    await settled(page)
  }, slow)
  const active = (): Promise<string> =>
    page.evaluate(() => document.querySelector('.cm-activeLine')?.textContent ?? '')

  test('a click on a measure takes the cursor to its name', { timeout: slow }, async () => {
    await inFrame(page, '.looking-frame', (doc) => {
      const step = doc.getElementById('end-of-step-5')?.closest('.step')
      step?.querySelector<HTMLElement>('.measure')?.click()
    })
    await page.waitForFunction(() =>
      document.querySelector('.cm-activeLine')?.textContent?.includes('backdrop.size'),
    )
    expect(await active()).toContain('{backdrop.size}')
  })

  test('the step that is written is marked and lies in the middle', { timeout: slow }, async () => {
    await page.waitForSelector('.looking-mark')
    // The leaves glide: it comes to rest in sight.
    await page.waitForFunction(() => {
      const mark = document.querySelector('.looking-mark')?.getBoundingClientRect()
      const row = document.querySelector('.looking-row')?.getBoundingClientRect()
      return mark && row && mark.left > row.left && mark.right < row.right && mark.bottom < row.bottom
    })
    const beside = await page.evaluate(() => {
      const frame = document.querySelector<HTMLIFrameElement>('.looking-frame')
      const step = frame?.contentDocument?.getElementById('end-of-step-5')?.closest('.step')
      const zoom = Number(frame?.contentDocument?.documentElement.style.zoom) || 1
      const mark = document.querySelector<HTMLElement>('.looking-mark')
      const top = (step?.getBoundingClientRect().top ?? 0) / zoom
      return Math.abs(top - Number.parseFloat(mark?.style.top ?? ''))
    })
    expect(beside).toBeLessThan(1)
  })

  test('Enter on a step opens it where it is written', { timeout: slow }, async () => {
    await inFrame(page, '.looking-frame', (doc) => {
      const step = doc.getElementById('end-of-step-12')?.closest<HTMLElement>('.step')
      step?.focus()
      step?.setAttribute('tabindex', '0')
      step?.focus()
    })
    await page.keyboard.press('Enter')
    await page.waitForFunction(() =>
      document.querySelector('.cm-activeLine')?.textContent?.includes('pearl dots'),
    )
  })

  test('keys turn the leaves, and the count says which one it is', { timeout: slow }, async () => {
    await page.focus('.looking-row')
    await page.keyboard.press('Home')
    await page.waitForFunction(() =>
      document.querySelector('.looking-turn p')?.textContent?.startsWith('page 1 '),
    )
    await page.keyboard.press('PageDown')
    await page.waitForFunction(
      () => document.querySelector('.looking-turn p')?.textContent?.startsWith('page 2 '),
      { polling: 200 },
    )
    // A second key while the leaves still glide goes on from where they glide to.
    await page.keyboard.press('Home')
    await page.keyboard.press('PageDown')
    await page.keyboard.press('PageDown')
    await page.waitForFunction(
      () => {
        const row = document.querySelector('.looking-row')
        const says = document.querySelector('.looking-turn p')?.textContent?.startsWith('page 3 ')
        // It says so, and it is so: two leaves have gone by.
        return says && row && row.scrollLeft > row.clientWidth
      },
      { polling: 200 },
    )
  })

  test('a word that is typed changes its step and nothing else on the page', { timeout: slow }, async () => {
    await inFrame(page, '.looking-frame', (doc) => {
      const step = (n: number) => doc.getElementById(`end-of-step-${n}`)?.closest('.step')
      Object.assign(doc, { kept: [step(1), step(3), doc.querySelector('.cover svg')] })
      step(12)?.querySelector<HTMLElement>('.step-text p')?.click()
    })
    await page.focus('.cm-content')
    await page.keyboard.press('End')
    await page.keyboard.type(' Quickly now.')
    await page.waitForFunction(() =>
      document
        .querySelector<HTMLIFrameElement>('.looking-frame')
        ?.contentDocument?.body.textContent?.includes('Quickly now.'),
    )
    const same = await inFrame(page, '.looking-frame', (doc) => {
      const step = (n: number) => doc.getElementById(`end-of-step-${n}`)?.closest('.step')
      const { kept } = doc as unknown as { kept: unknown[] }
      return [step(1), step(3), doc.querySelector('.cover svg')].map((one, i) => one === kept[i])
    })
    expect(same).toEqual([true, true, true])
    expect(troubleOf(page)).toEqual([])
  })
})

describe('step by step', () => {
  test('buttons, keys and a reload go on where it was, and the screen stays awake', {
    timeout: slow,
  }, async () => {
    const page = await deskWith(lesson('low-tide-z-card'))
    await page.evaluate(() => {
      const asked: string[] = []
      Object.assign(window, { asked })
      Object.defineProperty(navigator, 'wakeLock', {
        value: {
          request: async (what: string) => {
            asked.push(what)
            return { released: false, release: async () => void asked.push('released') }
          },
        },
      })
    })
    await page.locator('::-p-aria([name="Step by step"][role="tab"])').click()
    await page.waitForSelector('.looking-step')
    const said = (): Promise<string> =>
      page.$eval('.looking-steps-head p', (words) => words.textContent ?? '')
    await page.locator('.looking-next').click()
    const first = await said()
    await page.locator('.looking-next').click()
    await page.keyboard.press('ArrowRight')
    await page.waitForFunction(
      (before) => document.querySelector('.looking-steps-head p')?.textContent !== before,
      {},
      first,
    )
    const number = Number(/step (\d+)/.exec(await said())?.[1])
    expect(number).toBeGreaterThan(2)
    expect(
      await inFrame(page, '.looking-step', (doc) => doc.querySelector('.step-number')?.textContent),
    ).toBe(String(number))
    const heights = await page.$$eval('.looking-steps-turn button', (all) =>
      all.map((one) => one.clientHeight),
    )
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(56)
    await page.locator('::-p-aria([name="The handout"][role="tab"])').click()
    await page.waitForSelector('.looking-frame')
    const asked = await page.evaluate(() => (window as unknown as { asked: string[] }).asked)
    expect(asked).toEqual(['screen', 'released'])
    expect(await page.evaluate(() => Object.values(sessionStorage))).toContain(String(number))
    await page.close()
  })
})

describe('the card in space', () => {
  test('another size of the card keeps the moment and how it is looked at', { timeout: slow }, async () => {
    const page = await deskWith(lesson('harbour-lights'))
    await titled(page, 'Harbour lights')
    await page.locator('::-p-aria([name="In space"][role="tab"])').click()
    await page.waitForSelector('.looking-stage-3d[data-moment]')
    await page.$eval('.looking-ruler input', (slider) => {
      ;(slider as HTMLInputElement).value = '150'
      slider.dispatchEvent(new Event('input'))
    })
    await page.locator('[data-turn="left"]').click()
    await page.waitForSelector('.looking-stage-3d[data-moment="1.5000"]')
    const view = async (): Promise<string[]> =>
      (await page.$eval('.looking-stage-3d', (stage) => (stage as HTMLElement).dataset.view ?? '')).split(' ')
    const [turn, rise, scale] = await view()
    await paste(page, lesson('harbour-lights').replace('closed: 7 x 5 in', 'closed: 6 x 6 in'))
    await page.waitForFunction(
      (before) =>
        document.querySelector<HTMLElement>('.looking-stage-3d')?.dataset.view?.split(' ')[2] !== before,
      {},
      scale,
    )
    expect((await view()).slice(0, 2)).toEqual([turn, rise])
    expect(await page.$eval('.looking-stage-3d', (stage) => (stage as HTMLElement).dataset.moment)).toBe(
      '1.5000',
    )
    await page.close()
  })

  test('it speaks the language of the lesson, also when that changes', { timeout: slow }, async () => {
    const page = await deskWith(lesson('deutsch/hafenlichter'))
    await titled(page, 'Hafenlichter')
    await page.locator('::-p-aria([name="In space"][role="tab"])').click()
    const seen = (lang: string) =>
      page.waitForSelector(`.looking-moving[lang="${lang}"] .looking-stage-3d[data-moment]`)
    await seen('de')
    const words = () =>
      page.$$eval('.looking-play, .looking-said, [data-stop="flat"]', (all) =>
        all.map((one) => one.textContent),
      )
    expect(await words()).toEqual(['Sie steht.', 'Abspielen', 'flach'])
    await paste(page, lesson('francais/lumieres-du-port'))
    await seen('fr')
    expect(await words()).toEqual(['Elle est debout.', 'Lire', 'à plat'])
    expect(troubleOf(page)).toEqual([])
    await page.close()
  })

  test('where nothing can be drawn in space it is drawn on paper', { timeout: slow }, async () => {
    const page = await deskWith(lesson('low-tide-z-card'))
    await page.evaluate(() => {
      HTMLCanvasElement.prototype.getContext = () => null
    })
    await page.locator('::-p-aria([name="In space"][role="tab"])').click()
    await page.waitForSelector('.looking-stills svg')
    expect(await page.$$('.looking-still-figures svg')).toHaveLength(3)
    await page.close()
  })
})

describe('the chart of sizes', () => {
  test('the head of a column chooses the size of the card', { timeout: slow }, async () => {
    const page = await deskWith(lesson('harbour-lights'))
    await titled(page, 'Harbour lights')
    await page.locator('::-p-aria([name="All its sizes"][role="tab"])').click()
    await page.waitForFunction(() =>
      document.querySelector<HTMLIFrameElement>('.looking-chart')?.contentDocument?.querySelector('.choose'),
    )
    await inFrame(page, '.looking-chart', (doc) => {
      const heads = [...doc.querySelectorAll<HTMLElement>('.size-head .choose')]
      heads.find(({ textContent }) => textContent?.replace(/\s/g, ' ').includes('6 × 6 in'))?.click()
    })
    await page.waitForFunction(() => {
      const doc = document.querySelector<HTMLIFrameElement>('.looking-chart')?.contentDocument
      const chosen = [...(doc?.querySelectorAll('.choose[aria-pressed="true"]') ?? [])]
      return chosen.length === 1 && chosen[0]?.textContent?.replace(/\s/g, ' ').includes('6 × 6 in')
    })
    await page.locator('::-p-aria([name="The handout"][role="tab"])').click()
    await page.waitForFunction(() =>
      document
        .querySelector('.looking-foot-line')
        ?.textContent?.replace(/\s/g, ' ')
        .includes('6 × 6 in card'),
    )
    await page.close()
  })
})

/** What a stranger may try to reach a place. */
const hostile = (at: string): string => `---
title: "<img src=x onerror=ran()> <script>ran()</script>"
summary: "</style><style>@import '${at}/a.css';</style>"
---

1. Cut <script>ran()</script> it. <img src="${at}/b.png" onerror="ran()"> [link](javascript:ran()) <iframe src="${at}/c"></iframe>
2. ![drawn](${at}/d.svg) <svg onload="ran()"><script>ran()</script></svg> [there](${at}/e)
3. ![data](data:image/svg+xml;utf8,<svg xmlns="http://www.w3.org/2000/svg" onload="ran()"/>) <form action="${at}/f"><input name=a></form>
`

describe('a lesson of a stranger', () => {
  const asked: string[] = []
  const listener = createServer(({ url = '' }, answer) => {
    asked.push(url)
    answer.end()
  })
  let at = ''
  beforeAll(async () => {
    await new Promise<void>((ready) => listener.listen(0, '127.0.0.1', ready))
    at = `http://127.0.0.1:${(listener.address() as AddressInfo).port}`
  })
  afterAll(() => {
    listener.close()
  })

  test('runs nothing, asks for nothing and opens nothing by itself', { timeout: slow }, async () => {
    const page = await deskWith('---\ntitle: Plain\n---\n\n1. Wait.\n')
    await page.evaluate(() => Object.assign(window, { ran: () => Object.assign(window, { broken: true }) }))
    await paste(page, hostile(at))
    await page.waitForFunction(() =>
      document
        .querySelector<HTMLIFrameElement>('.looking-frame')
        ?.contentDocument?.body.textContent?.includes('there'),
    )
    const found = await inFrame(page, '.looking-frame', (doc) => ({
      unwanted: doc.body.querySelectorAll('script, iframe, form, input, [onload], [onerror]').length,
      links: [...doc.body.querySelectorAll('a[href]:not([hidden])')].map((a) => [
        a.getAttribute('href'),
        a.getAttribute('rel'),
      ]),
    }))
    expect(found).toEqual({ unwanted: 0, links: [[`${at}/e`, 'noopener noreferrer']] })
    // Even what would slip in lies in a frame that runs nothing.
    await page.evaluate((to) => {
      const doc = document.querySelector<HTMLIFrameElement>('.looking-frame')?.contentDocument
      const slipped = doc?.createElement('div')
      const script = doc?.createElement('script')
      if (!doc || !slipped || !script) throw new Error('The frame has no document')
      slipped.innerHTML = `<img src="data:image/png;base64,x" onerror="parent.ran()"><img src="${to}/g.png"><svg><set onbegin="parent.ran()" attributeName="x"/></svg><style>@import "${to}/h.css"; body{background:url(${to}/i.png)}</style><iframe src="${to}/j"></iframe>`
      script.textContent = 'parent.ran()'
      doc.body.append(slipped, script)
    }, at)
    await page.evaluate(() => new Promise((done) => setTimeout(done, 1500)))
    expect(await page.evaluate(() => 'broken' in window)).toBe(false)
    expect(asked).toEqual([])
    // The listener hears what does ask.
    await fetch(`${at}/heard`)
    expect(asked).toEqual(['/heard'])
    await page.close()
  })
})

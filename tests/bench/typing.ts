import process from 'node:process'
import { pathToFileURL } from 'node:url'
import puppeteer, { type Page } from 'puppeteer-core'
import { findBrowser } from '../../src/publish/browser.ts'

/** So many keys are pressed, as fast as a quick typist does. */
const keys = 80
const between = 120

/** Times in ms, from the key to what came of it. */
interface Times {
  /** To the first frame after it. */
  readonly frame: number[]
  /** To the page of the handout that shows it. */
  readonly page: number[]
}

const percentile = (all: readonly number[], share: number): number =>
  [...all].sort((a, b) => a - b)[Math.min(all.length - 1, Math.floor(all.length * share))] ?? Number.NaN

/** Presses keys one after the other; each letter that has come is waited for in the page, if there is one. */
async function typing(page: Page, into: string): Promise<Times> {
  await page.evaluate((field) => {
    const times = { down: [] as number[], frame: [] as number[], page: [] as number[] }
    Object.assign(globalThis, { times })
    document.querySelector(field)?.addEventListener(
      'keydown',
      () => {
        const start = performance.now()
        times.down.push(start)
        requestAnimationFrame(() => setTimeout(() => times.frame.push(performance.now() - start)))
      },
      { capture: true },
    )
    const sheet = document.querySelector<HTMLIFrameElement>('.looking-frame')?.contentDocument
    if (!sheet) return
    // The letters stand behind `Typed` in the lesson, one for each key.
    new MutationObserver(() => {
      const letters = /Typed (z*)/.exec(sheet.body.textContent ?? '')?.[1]?.length ?? 0
      while (times.page.length < letters)
        times.page.push(performance.now() - (times.down[times.page.length] ?? 0))
    }).observe(sheet.body, { subtree: true, childList: true, characterData: true })
  }, into)
  for (let i = 0; i < keys; i++) {
    await page.keyboard.press('z')
    await new Promise((resolve) => setTimeout(resolve, between))
  }
  await new Promise((resolve) => setTimeout(resolve, 3000))
  return page.evaluate(() => (globalThis as unknown as { times: Times }).times)
}

/** Typing on the desk, in the longest example lesson, beside typing into an empty field of the same browser. */
const browser = await puppeteer.launch({
  executablePath: await findBrowser(),
  headless: true,
  args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
})
try {
  const plain = await browser.newPage()
  await plain.setContent('<textarea autofocus></textarea>')
  await plain.focus('textarea')
  const floor = percentile((await typing(plain, 'textarea')).frame, 0.95)

  const desk = await browser.newPage()
  await desk.setViewport({ width: 1400, height: 900 })
  await desk.goto(pathToFileURL('dist/desk.html').href)
  await desk.locator('::-p-text(Ferry day)').click()
  await desk.waitForSelector('.writing-nothing')
  await desk.focus('.cm-content')
  // Behind all that is there, where everything above it is looked at again with each key.
  await desk.keyboard.down('Control')
  await desk.keyboard.press('End')
  await desk.keyboard.up('Control')
  await desk.keyboard.type('\n\nTyped ')
  await new Promise((resolve) => setTimeout(resolve, 3000))
  const { frame, page } = await typing(desk, '.cm-content')
  const row = (what: string, ms: number): string =>
    `${what.padEnd(52)} ${(ms / floor).toFixed(1).padStart(7)}`
  process.stdout.write(
    [
      `${'Typing in Ferry day, in times of the same in a field'.padEnd(52)}   ratio`,
      row('key to the next frame, half of them', percentile(frame, 0.5)),
      row('key to the next frame, 95 in 100', percentile(frame, 0.95)),
      row('key to the handout that shows it, half of them', percentile(page, 0.5)),
      row('key to the handout that shows it, 95 in 100', percentile(page, 0.95)),
      `${page.length} of ${keys} keys were seen in the handout; the field takes ${floor.toFixed(1)} ms for 95 in 100.`,
      '',
    ].join('\n'),
  )
} finally {
  await browser.close()
}

import process from 'node:process'
import type { Browser } from 'puppeteer-core'
import { afterEach, expect, test } from 'vitest'
import { makePrinter, type Printer } from '../../../src/cli/library/printer.ts'
import { fillLesson } from '../../../src/lesson/fill.ts'
import { readLesson } from '../../../src/lesson/read.ts'
import { makeHandout } from '../../../src/publish/handout.ts'
import { startBrowser } from '../../../src/publish/launch.ts'
import { disk } from '../../../src/publish/outside.ts'
import { NoBrowserError, OutsideError } from '../../../src/publish/problems.ts'
import { isOurs } from '../../../src/publish/write.ts'
import { small } from '../lessons.ts'

const lesson = fillLesson(readLesson(small))
const { page } = await makeHandout(lesson, { paper: 'a4', theme: 'step-sheet' }, disk)
if (!page) throw new Error('The lesson has errors')

let printer: Printer | undefined
afterEach(() => printer?.close())

/** Does something to the browsers that are started, each in its turn, as soon as they run. */
function badly(does: (browser: Browser, nth: number) => void) {
  const started: Browser[] = []
  const start = async (): Promise<Browser> => {
    const browser = await startBrowser(undefined, { isWatched: true })
    started.push(browser)
    does(browser, started.length)
    return browser
  }
  return { start, started }
}

const signal = (browser: Browser, name: NodeJS.Signals): void => {
  const pid = browser.process()?.pid
  if (pid) process.kill(pid, name)
}

test('a browser that is killed while it prints is started again, and the print is there', async () => {
  const { start, started } = badly((browser, nth) => {
    if (nth === 1) setTimeout(() => signal(browser, 'SIGKILL'), 50)
  })
  printer = makePrinter({ pages: 2, start })
  const prints = await Promise.all([printer.print(page), printer.print(page)])
  expect(prints.map(({ pdf }) => isOurs(pdf))).toEqual([true, true])
  expect(started.length).toBeGreaterThan(1)
}, 120_000)

test('a browser that stands still is given up after its time, and the print comes from another', async () => {
  const { start, started } = badly((browser, nth) => {
    if (nth === 1) signal(browser, 'SIGSTOP')
  })
  printer = makePrinter({ pages: 1, limit: 20_000, start })
  expect(isOurs((await printer.print(page)).pdf)).toBe(true)
  expect(started).toHaveLength(2)
  // The one that stood still is gone, not left behind.
  expect(started[0]?.process()?.signalCode).toBe('SIGKILL')
}, 120_000)

test('one that stands still twice is told, once and in plain words', async () => {
  const { start, started } = badly((browser) => signal(browser, 'SIGSTOP'))
  printer = makePrinter({ pages: 1, limit: 1000, start })
  const error = await printer.print(page).catch((thrown: unknown) => thrown)
  expect(error).toBeInstanceOf(OutsideError)
  expect((error as Error).message).toBe('The browser did not print the page within 1 s')
  expect(started).toHaveLength(2)
}, 120_000)

test('where there is no browser, it is looked for once', async () => {
  let asked = 0
  const start = async (): Promise<Browser> => {
    asked++
    throw new NoBrowserError('No browser was found')
  }
  printer = makePrinter({ pages: 2, start })
  for (let i = 0; i < 3; i++) await expect(printer.print(page)).rejects.toThrow('No browser was found')
  expect(asked).toBe(1)
})

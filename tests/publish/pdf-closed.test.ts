import type { Browser, Page } from 'puppeteer-core'
import { expect, test } from 'vitest'
import { printPdf } from '../../src/publish/pdf.ts'
import { PrintError } from '../../src/publish/problems.ts'
import { withBrowser } from './with-browser.ts'

const browser = withBrowser()

test('the page in a browser of somebody else is closed, also when it cannot be printed', async () => {
  const pages: Page[] = []
  // A browser that nobody here has started, whose pages cannot be printed.
  const theirs = {
    newPage: async () => {
      const page = await browser().newPage()
      pages.push(page)
      return Object.assign(page, { pdf: () => Promise.reject(new Error('no paper')) })
    },
  } as unknown as Browser
  const failed = printPdf('<!doctype html><title>A</title><p>A</p>', theirs)
  await expect(failed).rejects.toThrow(PrintError)
  await expect(failed).rejects.toThrow('The browser could not print the page: no paper')
  // It is closed while the answer is on its way.
  await expect.poll(() => pages.map((page) => page.isClosed())).toEqual([true])
}, 60_000)

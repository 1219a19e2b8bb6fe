import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Browser, Page } from 'puppeteer-core'
import { expect } from 'vitest'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

/**
 * Rules of axe-core that a page breaks, with the elements.
 *
 * @param ready what must be in the page before it is looked at.
 */
export async function axeFindings(
  browser: Browser,
  html: string,
  width: number,
  ready = 'body',
): Promise<string[]> {
  const page = await browser.newPage()
  await page.setViewport({ width, height: 900 })
  await page.setContent(html)
  await page.waitForSelector(ready)
  const found = await axeOn(page)
  await page.close()
  return found
}

/** The same of a page that is open, as it is now. */
export async function axeOn(page: Page): Promise<string[]> {
  await page.evaluate(axe)
  const found = await page.evaluate('axe.run(document, { resultTypes: ["violations"] })')
  const { violations, passes } = found as {
    violations: { id: string; nodes: { html: string }[] }[]
    passes: { id: string }[]
  }
  expect(passes.length).toBeGreaterThan(10)
  return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html.slice(0, 200)}`))
}

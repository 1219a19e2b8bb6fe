import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import type { Page } from 'puppeteer-core'
import { expect, test } from 'vitest'
import { policyOf } from '../../../src/desk/server/page.ts'
import { small } from '../../cli/lessons.ts'
import { deskFile, openDesk as openPage, troubleOf, useDeskBrowser } from '../open-desk.ts'
import { someDesk, someFolder } from './desk.ts'

const browser = useDeskBrowser()

const realPage = async () => {
  const html = readFileSync(await deskFile(), 'utf8')
  return { html, policy: policyOf(html) }
}

async function until(done: () => boolean | Promise<boolean>): Promise<void> {
  for (let i = 0; i < 600 && !(await done()); i++) await wait(50)
  expect(await done()).toBe(true)
}

const shows = (page: Page, words: string) =>
  page.evaluate((text) => document.getElementById('desk')?.textContent?.includes(text) === true, words)

async function press(page: Page, key: 'o' | 's' | 'End'): Promise<void> {
  await page.keyboard.down('Control')
  await page.keyboard.press(key)
  await page.keyboard.up('Control')
}

test('a lesson is opened from the folder, written and saved; a desk that ends and comes back loses no word', {
  timeout: 180_000,
}, async () => {
  const folder = someFolder()
  const file = join(folder, 'low-tide.md')
  writeFileSync(file, small.replaceAll('\n', '\r\n'))
  const desk = await someDesk(folder, { page: realPage })
  const page = await openPage(await browser(), { address: desk.address })
  await press(page, 'o')
  await until(() => shows(page, 'low-tide.md'))
  await page.evaluate(() => {
    const all = [...document.querySelectorAll('button')]
    all.find((one) => one.textContent?.includes('low-tide.md'))?.click()
  })
  await until(() => shows(page, 'Saved in low-tide.md'))

  // Another program changes the file, and the page takes it over.
  writeFileSync(file, small.replace('Low tide', 'High tide').replaceAll('\n', '\r\n'))
  await until(() => shows(page, 'title: High tide'))

  await page.click('.cm-content')
  await press(page, 'End')
  await page.keyboard.type('\nWritten on the desk.')
  await press(page, 's')
  await until(() => readFileSync(file, 'utf8').includes('Written on the desk.'))
  const saved = readFileSync(file, 'utf8')
  expect(saved).toBe(
    `${small.replace('Low tide', 'High tide').replaceAll('\n', '\r\n')}\r\nWritten on the desk.`,
  )
  expect(troubleOf(page)).toEqual([])

  // The desk is gone, and writing goes on.
  await desk.close()
  await page.keyboard.type(' And without it.')
  await press(page, 's')
  await until(() => shows(page, 'The folder cannot be reached'))
  expect(readFileSync(file, 'utf8')).toBe(saved)

  // It is started anew at the same place: the page from before says so, and the new address has every word.
  const again = await someDesk(folder, { page: realPage, port: desk.port })
  await press(page, 's')
  await until(() => shows(page, 'Open the address that foldlore desk shows'))
  await page.close()
  const next = await openPage(await browser(), { address: again.address })
  await until(() => shows(next, 'And without it.'))
  await press(next, 's')
  await until(() => readFileSync(file, 'utf8') === `${saved} And without it.`)
  await next.close()
})

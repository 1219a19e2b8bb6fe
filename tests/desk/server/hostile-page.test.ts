import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { join } from 'node:path'
import puppeteer, { type Browser } from 'puppeteer-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import type { OpenDesk } from '../../../src/desk/server/serve.ts'
import { findBrowser } from '../../../src/publish/browser.ts'
import { someDesk, someFolder } from './desk.ts'

const folder = someFolder()
let desk: OpenDesk
let browser: Browser
let other: Server
let there = ''

beforeAll(async () => {
  writeFileSync(join(folder, 'a.md'), 'Mine')
  desk = await someDesk(folder)
  other = createServer((_, response) => {
    response.setHeader('content-type', 'text/html')
    response.end('<!doctype html><title>Another page</title><body></body>')
  })
  await new Promise<void>((done) => other.listen(0, '127.0.0.1', done))
  there = `:${(other.address() as AddressInfo).port}/`
  browser = await puppeteer.launch({
    executablePath: await findBrowser(),
    headless: true,
    // A name of somebody else that leads to this computer.
    args: [
      '--host-resolver-rules=MAP harbour.example 127.0.0.1',
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
    ],
  })
})
afterAll(async () => {
  await browser?.close()
  await new Promise((done) => other.close(done))
})

test('a name of a stranger that leads to this computer shows no desk', async () => {
  const page = await browser.newPage()
  const answer = await page.goto(`http://harbour.example:${desk.port}/`)
  expect([answer?.status(), await page.title()]).toEqual([421, ''])
  // The test itself reaches the other server by that name.
  await page.goto(`http://harbour.example${there}`)
  expect(await page.title()).toBe('Another page')
  await page.close()
})

/** What pages of others could try, in the page itself. */
const tries: Readonly<Record<string, string>> = {
  read: `fetch(desk + 'api/file?path=a.md', { headers: { Authorization: 'Bearer ' + token } }).then((r) => r.text())`,
  unread: `fetch(desk + 'api/file?path=a.md', { mode: 'no-cors' }).then((r) => r.type + r.status)`,
  write: `fetch(desk + 'api/file?path=a.md', { method: 'PUT', headers: { Authorization: 'Bearer ' + token, 'Content-Type': 'application/json' }, body: '{"text":"Theirs"}' }).then((r) => r.text())`,
  simple: `fetch(desk + 'api/picture?lesson=a.md&name=b', { method: 'POST', mode: 'no-cors', headers: { 'Content-Type': 'text/plain' }, body: 'x' }).then((r) => r.type + r.status)`,
  script: `new Promise((done) => { const e = document.createElement('script'); e.src = desk; e.onload = () => done('loaded'); e.onerror = () => done('refused'); document.body.append(e) })`,
}

test.each(['http://127.0.0.1', 'http://localhost', 'http://harbour.example'])(
  'a page at %s gets and changes nothing, not even when it knows the word of this start',
  async (host) => {
    const page = await browser.newPage()
    await page.goto(`${host}${there}`)
    const said: Record<string, unknown> = {}
    for (const [name, code] of Object.entries(tries))
      said[name] = await page.evaluate(
        `(() => { const desk = 'http://127.0.0.1:${desk.port}/'; const token = '${desk.token}'; return ${code} })().catch((error) => String(error))`,
      )
    expect(said).toMatchObject({
      read: 'TypeError: Failed to fetch',
      write: 'TypeError: Failed to fetch',
      script: 'refused',
    })
    // What comes back unseen is nothing, or could not even be had.
    for (const unseen of [said.unread, said.simple])
      expect(['opaque0', 'TypeError: Failed to fetch']).toContain(unseen)
    expect([readdirSync(folder), readFileSync(join(folder, 'a.md'), 'utf8')]).toEqual([['a.md'], 'Mine'])
    await page.close()
  },
)

test('another page cannot show the desk inside, or lead to it', async () => {
  const page = await browser.newPage()
  await page.goto(`http://harbour.example${there}`)
  const framed = page
    .waitForResponse((response) => response.url().startsWith(`http://127.0.0.1:${desk.port}/`), {
      timeout: 5000,
    })
    .then(
      (response) => response.status(),
      () => 0,
    )
  await page.evaluate(
    `(() => { const frame = document.createElement('iframe'); frame.src = 'http://127.0.0.1:${desk.port}/'; document.body.append(frame) })()`,
  )
  // Refused by the desk, or by the browser before it is asked.
  expect([403, 0]).toContain(await framed)
  for (const frame of page.frames()) expect(await frame.title().catch(() => '')).not.toBe('Desk')
  const [led] = await Promise.all([
    page.waitForNavigation(),
    page.evaluate(`location.href = 'http://127.0.0.1:${desk.port}/'`),
  ])
  expect(led?.status()).toBe(403)
  await page.close()
})

test('the desk itself, opened as a person opens it, is there', async () => {
  const page = await browser.newPage()
  await page.goto(desk.address)
  expect(await page.title()).toBe('Desk')
  const said = await page.evaluate(
    `fetch('/api/file?path=a.md', { headers: { Authorization: 'Bearer ' + location.hash.slice(1) } }).then((r) => r.json()).then((j) => j.text)`,
  )
  expect(said).toBe('Mine')
  await page.close()
})

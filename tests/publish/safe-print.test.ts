import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest'
import { printPdf } from '../../src/publish/pdf.ts'
import { openPdf, pageTexts } from './pdf-reading.ts'
import { withBrowser } from './with-browser.ts'

const browser = withBrowser()
let server: Server
let base = ''
let asked: string[] = []

beforeAll(async () => {
  server = createServer((request, response) => {
    asked.push(request.url ?? '')
    response.end('x')
  })
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready))
  base = `http://127.0.0.1:${(server.address() as AddressInfo).port}`
})
afterAll(() => new Promise((closed) => server.close(closed)))
beforeEach(() => {
  asked = []
})

const text = async (html: string) =>
  (await pageTexts(await openPdf(await printPdf(html, browser())))).join(' ')

test('the server would answer', async () => {
  await fetch(`${base}/hello`)
  expect(asked).toEqual(['/hello'])
})

test('a page without any policy of its own fetches nothing', async () => {
  const html = `<!doctype html><title>A</title><link rel="stylesheet" href="${base}/a.css"><style>@import "${base}/b.css";
    @font-face{font-family:f;src:url(${base}/f.woff2)} p{font-family:f;background:url(${base}/c.png)}</style>
    <p>Cut here</p><img src="${base}/d.png"><iframe src="${base}/e.html"></iframe><object data="${base}/g"></object>
    <video poster="${base}/h.png" src="${base}/i.mp4"></video><meta http-equiv="refresh" content="0;url=${base}/j">`
  expect(await text(html)).toContain('Cut here')
  expect(asked).toEqual([])
})

test('a script in a page does not run', async () => {
  const html = `<!doctype html><title>A</title><p id="a">Cut here</p>
    <script>document.getElementById('a').textContent = 'stolen'</script><img src="data:," onerror="document.body.textContent = 'stolen'">`
  const said = await text(html)
  expect(said).toContain('Cut here')
  expect(said).not.toContain('stolen')
})

test('a page that loads another one is not printed as that other one', async () => {
  const html = `<!doctype html><title>A</title><meta http-equiv="refresh" content="0;url=file:///etc/hostname"><p>Cut here</p>`
  expect(await text(html)).toContain('Cut here')
})

test('a browser that is gone is told in plain words', async () => {
  const gone = { newPage: () => Promise.reject(new Error('Connection closed.')) } as never
  await expect(printPdf('<p>A</p>', gone)).rejects.toMatchObject({
    name: 'PrintError',
    message: 'The browser ended while it printed the page',
  })
})

import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import type { Browser, Page } from 'puppeteer-core'

const here = fileURLToPath(new URL('.', import.meta.url))

/** The bench page on a server of its own: what a browser keeps belongs to an address. */
export async function serveBench(): Promise<{ readonly address: string; close(): Promise<void> }> {
  const folder = await mkdtemp(join(tmpdir(), 'keeping-bench-'))
  const out = join(folder, 'bench')
  await build({
    entryPoints: [`${here}bench-page.js`],
    bundle: true,
    format: 'esm',
    target: 'es2022',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    outfile: `${out}.js`,
    logLevel: 'warning',
  })
  const [script, style, colours] = await Promise.all([
    readFile(`${out}.js`, 'utf8'),
    readFile(`${out}.css`, 'utf8'),
    readFile(new URL('../../../src/desk/page/style/colours.css', import.meta.url), 'utf8'),
  ])
  await rm(folder, { recursive: true })
  const page = `<!doctype html><meta charset="utf-8"><title>Bench</title><style>${colours}${style}
body { font: 16px sans-serif; background: var(--desk); color: var(--ink) }
.unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%) }</style>
<div id="editor"></div><div id="both"></div><script type="module" src="/bench.js"></script>`
  const server: Server = createServer((request, response) => {
    const isScript = request.url === '/bench.js'
    response.setHeader('Content-Type', isScript ? 'text/javascript' : 'text/html')
    response.end(isScript ? script : page)
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const { port } = server.address() as AddressInfo
  return {
    address: `http://127.0.0.1:${port}/`,
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections()
        server.close(() => resolve())
      }),
  }
}

/** The bench page in a tab, when its keeper stands. */
export async function openBench(browser: Browser, address: string): Promise<Page> {
  const page = await browser.newPage()
  await page.goto(address)
  await page.waitForFunction('globalThis.ready')
  return page
}

/** What a piece of the page's own code gives. */
export const ask = <T>(page: Page, code: string): Promise<T> =>
  page.evaluate(`(async () => (${code}))()`) as Promise<T>

/** Waits until a piece of the page's own code gives something that holds. */
export const until = async (page: Page, code: string): Promise<void> => {
  await page.waitForFunction(`(async () => (${code}))()`, { timeout: 10_000, polling: 50 })
}

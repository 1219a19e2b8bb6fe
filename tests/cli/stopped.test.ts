import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { type IncomingMessage, request } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'esbuild'
import { afterAll, beforeAll, expect, test } from 'vitest'

const built = `node_modules/.cache/foldlore/stopped-${process.pid}`
const folder = mkdtempSync(join(tmpdir(), 'stopped-'))
beforeAll(async () => {
  await build({
    entryPoints: { foldlore: 'tests/cli/desk-program.ts' },
    bundle: true,
    splitting: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    outdir: built,
    logLevel: 'warning',
  })
})
afterAll(() => {
  for (const path of [built, folder]) rmSync(path, { recursive: true })
})

/** Whether the desk takes anything new in. */
const answers = (there: string): Promise<boolean> =>
  new Promise((done) => {
    const asked = request(there, { agent: false }, (response) => {
      response.resume().on('end', () => done(true))
    })
    asked.on('error', () => done(false)).end()
  })

test.each(['SIGINT', 'SIGTERM'] as const)(
  '%s ends the desk when what is being saved is saved',
  async (signal) => {
    const child = spawn(process.execPath, [`${built}/foldlore.js`, folder], {
      stdio: ['ignore', 'pipe', 'inherit'],
    })
    let out = ''
    child.stdout.on('data', (part: Buffer) => {
      out += part
    })
    while (!/#[\w-]{43}\n/.test(out)) await once(child.stdout, 'data')
    const [there = '', token = ''] = /http:\S+/.exec(out)?.[0].split('#') ?? []
    const text = `${signal} `.repeat(200_000)
    const gone = once(child, 'exit')
    const body = Buffer.from(JSON.stringify({ text }))
    const saving = request(`${there}api/file?path=${signal}.md`, {
      method: 'PUT',
      headers: {
        authorization: `Bearer ${token}`,
        'content-type': 'application/json',
        'content-length': body.length,
        expect: '100-continue',
      },
    })
    const answered = once(saving, 'response') as Promise<[IncomingMessage]>
    saving.flushHeaders()
    // The desk has taken the request in, and half of the text has been sent, when Ctrl-C is pressed.
    await once(saving, 'continue')
    saving.write(body.subarray(0, body.length >> 1))
    child.kill(signal)
    while (await answers(there)) await new Promise((done) => setTimeout(done, 20))
    saving.end(body.subarray(body.length >> 1))
    const [response] = await answered
    response.resume()
    expect(response.statusCode).toBe(200)
    expect(await gone).toEqual([0, null])
    expect(readFileSync(join(folder, `${signal}.md`), 'utf8')).toBe(text)
    expect(readdirSync(folder)).toContain(`${signal}.md`)
    expect(out).toContain('The desk is closed')
  },
)

import { mkdtempSync, realpathSync, rmSync } from 'node:fs'
import { type IncomingHttpHeaders, request } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll } from 'vitest'
import { policyOf } from '../../../src/desk/server/page.ts'
import { type DeskOptions, type OpenDesk, openDesk } from '../../../src/desk/server/serve.ts'

/** A page as small as one can be. */
export const smallPage =
  '<!doctype html><meta http-equiv="Content-Security-Policy" content="default-src \'none\'; connect-src \'self\'"><title>Desk</title>'

/** A folder that is gone behind the tests of a file. */
export function someFolder(): string {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'desk-')))
  afterAll(() => rmSync(folder, { recursive: true, force: true }))
  return folder
}

/** A desk at a free port, closed behind the tests of a file. */
export async function someDesk(folder: string, options: Partial<DeskOptions> = {}): Promise<OpenDesk> {
  const page = async () => ({ html: smallPage, policy: policyOf(smallPage) })
  const desk = await openDesk({ folder, page, version: '1.2.3', port: 0, ...options })
  afterAll(() => desk.close())
  return desk
}

/** What came back. */
export interface Answered {
  readonly status: number
  readonly headers: IncomingHttpHeaders
  readonly body: Buffer
  readonly json: () => Record<string, never>
}

/** How something is asked. */
export interface Asking {
  readonly method?: string
  readonly headers?: Readonly<Record<string, string>>
  readonly body?: string | Uint8Array
}

/** Asks the desk with what a request needs; `headers` say otherwise, and take out what they name as ''. */
export function ask(
  desk: OpenDesk,
  path: string,
  { method = 'GET', headers = {}, body }: Asking = {},
): Promise<Answered> {
  const type = typeof body === 'string' ? { 'content-type': 'application/json' } : {}
  const usual = { host: `127.0.0.1:${desk.port}`, authorization: `Bearer ${desk.token}`, ...type }
  const all = Object.entries({ ...usual, ...headers }).filter(([, value]) => value !== '')
  return new Promise((done, fail) => {
    const asked = request(
      {
        host: '127.0.0.1',
        port: desk.port,
        path,
        method,
        headers: Object.fromEntries(all),
        setHost: false,
        agent: false,
      },
      (response) => {
        const parts: Buffer[] = []
        response.on('data', (part: Buffer) => parts.push(part))
        response.on('error', fail)
        response.on('end', () => {
          const got = Buffer.concat(parts)
          const json = () => JSON.parse(got.toString())
          done({ status: response.statusCode ?? 0, headers: response.headers, body: got, json })
        })
      },
    )
    asked.on('error', fail)
    asked.end(body)
  })
}

export const put = (desk: OpenDesk, path: string, text: string, over?: string) =>
  ask(desk, `/api/file?path=${encodeURIComponent(path)}`, {
    method: 'PUT',
    body: JSON.stringify({ text, ...(over !== undefined && { over }) }),
  })

export const get = (desk: OpenDesk, path: string) => ask(desk, `/api/file?path=${encodeURIComponent(path)}`)

import { createHash, randomBytes } from 'node:crypto'
import { realpath, rm, stat } from 'node:fs/promises'
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import { basename } from 'node:path'
import { OutsideError } from '../../publish/problems.ts'
import { sendAnswer, sendRefusal, writeHead } from './answer.ts'
import { type Change, watchTexts } from './changes.ts'
import { type SavingDisk, savingDisk } from './disk.ts'
import { guardSender, guardToken } from './guard.ts'
import { inTurn } from './in-turn.ts'
import { findTexts } from './list-files.ts'
import { lister } from './listed.ts'
import type { DeskPage } from './page.ts'
import { listen } from './ports.ts'
import { Refused } from './refused.ts'
import { routes, type Served } from './routes.ts'
import { isDraft } from './save-whole.ts'

/** What the desk is opened with. */
export interface DeskOptions {
  /** The folder with the lessons. Nothing outside of it is read or written. */
  readonly folder: string
  /** The page, read anew each time that it is asked for. */
  readonly page: () => Promise<DeskPage>
  /** Version of foldlore. */
  readonly version: string
  /** The port, or 0 for any that is free; without it the usual one, or the next that is free. */
  readonly port?: number
  /** The browser that prints. */
  readonly browserPath?: string
  readonly disk?: SavingDisk
  /** How long a body may take to arrive, in ms. */
  readonly slowest?: number
  /** Hears of mistakes of ours. */
  readonly tell?: (text: string) => void
}

/** A desk that is open. */
export interface OpenDesk {
  /** With the word of this start behind `#`, which a browser sends to nobody. */
  readonly address: string
  readonly port: number
  readonly token: string
  /** Takes nothing new in, finishes what is being saved or printed, and ends. */
  close(): Promise<void>
}

/** What a save that was cut off has left is swept up after so long, in ms: another desk may be in the middle of one. */
const oldDraft = 60_000

/**
 * Opens the desk on this computer.
 *
 * @throws OutsideError when the folder is none, or no port is free.
 */
export async function openDesk(options: DeskOptions): Promise<OpenDesk> {
  const folder = await folderAt(options.folder)
  const { slowest = 20_000, browserPath, disk = savingDisk, tell = () => {} } = options
  const token = randomBytes(32).toString('base64url')
  const served: Served = {
    folder,
    name: basename(folder) || folder,
    id: createHash('sha256').update(folder).digest('hex').slice(0, 16),
    version: options.version,
    disk,
    turns: inTurn(),
    list: lister(folder),
    slowest,
    ...(browserPath && { browserPath }),
  }
  let port = 0
  const running = new Set<ServerResponse>()
  const streams = new Set<ServerResponse>()
  const answer = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    guardSender(request.headers, port)
    const { path, query } = addressOf(request)
    const { method = '' } = request
    if (path === '/') {
      allow(method, ['GET', 'HEAD'])
      const { html, policy } = await options.page()
      const headers = { 'Content-Security-Policy': policy }
      sendAnswer(response, { bytes: Buffer.from(html), type: 'text/html; charset=utf-8', headers })
      return
    }
    if (path === '/api/changes') {
      allow(method, ['GET'])
      guardToken(request.headers, token)
      streams.add(response.on('close', () => streams.delete(response)))
      streamChanges(folder, response)
      return
    }
    const methods = Object.hasOwn(routes, path) ? routes[path] : undefined
    if (!methods) throw new Refused(404, 'There is nothing at this address')
    const handler = Object.hasOwn(methods, method) ? methods[method] : undefined
    allow(method, Object.keys(methods))
    guardToken(request.headers, token)
    if (handler) sendAnswer(response, await handler({ request, query }, served))
  }
  const server = createServer((request, response) => {
    running.add(response.on('close', () => running.delete(response)))
    response.on('error', () => {})
    answer(request, response).catch((error: unknown) => sendRefusal(response, error, tell))
  })
  server.headersTimeout = slowest
  port = await listen(server, options.port)
  void sweep(folder)
  return {
    address: `http://127.0.0.1:${port}/#${token}`,
    port,
    token,
    async close() {
      const ended = new Promise((done) => server.close(done))
      for (const stream of streams) stream.end()
      server.closeIdleConnections()
      await Promise.all([...running].map((response) => new Promise((done) => response.on('close', done))))
      server.closeAllConnections()
      await ended
    },
  }
}

async function folderAt(path: string): Promise<string> {
  const place = await realpath(path).catch(() => undefined)
  const about = place === undefined ? undefined : await stat(place).catch(() => undefined)
  if (place !== undefined && about?.isDirectory()) return place
  throw new OutsideError(
    about ? `\`${path}\` is a file, not a folder` : `There is no folder \`${path}\``,
    about ? 'Name the folder that it lies in' : 'Make it, or name the folder with your lessons',
  )
}

function addressOf({ url = '/' }: IncomingMessage): { path: string; query: URLSearchParams } {
  const [path = '', ...query] = url.split('?')
  return { path, query: new URLSearchParams(query.join('?')) }
}

function allow(method: string, allowed: readonly string[]): void {
  if (allowed.includes(method)) return
  throw new Refused(405, `\`${method}\` is not done here`, { headers: { Allow: allowed.join(', ') } })
}

/** Tells of each file that changes, a line of JSON each, until whoever listens goes. The first line is empty. */
function streamChanges(folder: string, response: ServerResponse): void {
  writeHead(response, 200, 'application/x-ndjson; charset=utf-8')
  const tell = (change: Change): void => void response.write(`${JSON.stringify(change)}\n`)
  const stop = watchTexts(folder, tell, { ready: () => response.write('\n') })
  response.on('close', stop)
}

async function sweep(folder: string): Promise<void> {
  const { drafts } = await findTexts(folder, isDraft)
  for (const draft of drafts) {
    const about = await stat(draft).catch(() => undefined)
    if (about && Date.now() - about.mtimeMs > oldDraft) await rm(draft, { force: true }).catch(() => {})
  }
}

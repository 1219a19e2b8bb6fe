import { createHash, timingSafeEqual } from 'node:crypto'
import type { IncomingHttpHeaders } from 'node:http'
import { Refused } from './refused.ts'

const away = {
  suggestion: 'Open the address that `foldlore desk` shows when it starts',
} as const

/**
 * Lets a request through that comes from this computer's own page.
 *
 * `Host` tells what the browser believes to talk to: a foreign name that leads to this computer is refused by it (DNS
 * rebinding). `Origin` and `Sec-Fetch-Site` (Fetch Metadata Request Headers, W3C) tell which page asks: one of another
 * site, or of another program on this computer, is refused.
 *
 * @throws Refused
 */
export function guardSender(headers: IncomingHttpHeaders, port: number): void {
  const { host = '', origin, 'sec-fetch-site': site = 'none' } = headers
  if (host !== `127.0.0.1:${port}` && host !== `localhost:${port}`)
    throw new Refused(421, 'This is not an address of the desk', away)
  if (origin !== undefined && origin !== `http://${host}`)
    throw new Refused(403, 'Another page may not use the desk', away)
  if (site !== 'same-origin' && site !== 'none')
    throw new Refused(403, 'Another page may not lead to the desk', away)
}

/**
 * Lets a request through that knows the word of this start.
 *
 * @throws Refused
 */
export function guardToken(headers: IncomingHttpHeaders, token: string): void {
  const given = /^Bearer ([\w-]+)$/.exec(headers.authorization ?? '')?.[1] ?? ''
  if (timingSafeEqual(digest(given), digest(token))) return
  throw new Refused(401, 'This page was opened before the desk was started anew', {
    ...away,
    headers: { 'WWW-Authenticate': 'Bearer' },
  })
}

/** Digests are equally long, so comparing them tells nothing by the time it takes, not even a length. */
const digest = (text: string): Buffer => createHash('sha256').update(text).digest()

import type { ServerResponse } from 'node:http'
import { OutsideError } from '../../publish/problems.ts'
import { Refused } from './refused.ts'

/** What a request is answered with: a value as JSON, or bytes. */
export type Answer =
  | { readonly status?: number; readonly json: unknown }
  | { readonly bytes: Uint8Array; readonly type: string; readonly headers?: Readonly<Record<string, string>> }

/** What holds for every answer: nobody else shows it, keeps it or guesses what it is. */
const always = {
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Cache-Control': 'no-store',
  'Permissions-Policy': 'camera=(), microphone=(), geolocation=()',
} as const

/** An answer that is not the page itself, opened by itself, may do nothing. */
const nothing = "default-src 'none'; frame-ancestors 'none'; sandbox"

/** The head of an answer. */
export function writeHead(
  response: ServerResponse,
  status: number,
  type: string,
  headers: Readonly<Record<string, string>> = {},
): void {
  response.writeHead(status, {
    ...always,
    'Content-Security-Policy': nothing,
    'Content-Type': type,
    ...headers,
  })
}

/** Sends an answer. */
export function sendAnswer(response: ServerResponse, answer: Answer): void {
  if ('json' in answer) {
    sendJson(response, answer.status ?? 200, answer.json)
    return
  }
  writeHead(response, 200, answer.type, { 'Content-Length': String(answer.bytes.length), ...answer.headers })
  response.end(answer.bytes)
}

function sendJson(
  response: ServerResponse,
  status: number,
  value: unknown,
  headers: Readonly<Record<string, string>> = {},
): void {
  writeHead(response, status, 'application/json; charset=utf-8', headers)
  response.end(JSON.stringify(value))
}

/**
 * Says why something was not done. What was sent and not read is not waited for.
 *
 * @param tell hears of mistakes of ours.
 */
export function sendRefusal(response: ServerResponse, error: unknown, tell: (text: string) => void): void {
  if (response.headersSent) {
    response.destroy()
    return
  }
  const close = response.req.complete ? undefined : { Connection: 'close' }
  if (error instanceof Refused) {
    const { status, message: refused, suggestion, headers, more } = error
    sendJson(
      response,
      status,
      { refused, ...(suggestion && { suggestion }), ...more },
      { ...headers, ...close },
    )
  } else if (error instanceof OutsideError) {
    const { message: refused, suggestion } = error
    sendJson(response, 500, { refused, ...(suggestion && { suggestion }) }, close)
  } else {
    tell(`A mistake inside foldlore, not in your lesson\n${error instanceof Error ? error.stack : error}\n`)
    sendJson(response, 500, { refused: 'A mistake inside foldlore, not in your lesson' }, close)
  }
}

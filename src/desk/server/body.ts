import type { IncomingMessage } from 'node:http'
import { Refused } from './refused.ts'

/** How a body is taken in. */
export interface BodyLimits {
  /** The most bytes that are kept. */
  readonly most: number
  /** How long it may take, in ms. */
  readonly time: number
  /** What it is too large for: `a lesson`. */
  readonly what: string
}

/** So many bytes more are let through and thrown away, so that whoever sends them can hear that they are too many. */
const patience = 64_000_000

/**
 * The whole body of a request.
 *
 * @throws Refused when it is too large, takes too long or breaks off.
 */
export async function bodyOf(request: IncomingMessage, { most, time, what }: BodyLimits): Promise<Buffer> {
  const tooLarge = new Refused(413, `That is more than ${Math.floor(most / 1e6)} MB, too much for ${what}`, {
    suggestion: 'Make it smaller and try again',
  })
  if (Number(request.headers['content-length']) > patience) throw tooLarge
  const parts: Buffer[] = []
  let size = 0
  await new Promise<void>((done, fail) => {
    const end = setTimeout(
      () => fail(new Refused(408, 'What was sent did not arrive in time', { suggestion: 'Try again' })),
      time,
    )
    const settle = (settled: () => void) => () => {
      clearTimeout(end)
      settled()
    }
    request.on('data', (part: Buffer) => {
      size += part.length
      if (size <= most) parts.push(part)
      else parts.length = 0
      if (size > patience) settle(() => fail(tooLarge))()
    })
    request.on('end', settle(done))
    const brokenOff = () => fail(new Refused(400, 'What was sent broke off', { suggestion: 'Try again' }))
    request.on('error', settle(brokenOff))
    request.on('close', settle(brokenOff))
  })
  if (size > most) throw tooLarge
  return Buffer.concat(parts)
}

/** Checks the kind of a body. Throws Refused. */
export function checkKind(request: IncomingMessage, kinds: RegExp, wanted: string): void {
  const kind = (request.headers['content-type'] ?? '').split(';')[0]?.trim().toLowerCase() ?? ''
  if (!kinds.test(kind)) throw new Refused(415, `Expected ${wanted}, not \`${kind || 'nothing said'}\``)
}

/** The fields of a JSON object. Throws Refused. */
export function fieldsOf(body: Buffer): Readonly<Record<string, unknown>> {
  let value: unknown
  try {
    value = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(body))
  } catch {
    throw new Refused(400, 'What was sent is not well-formed JSON')
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new Refused(400, 'What was sent is no JSON object')
  return value as Record<string, unknown>
}

/** A text among the fields. Throws Refused. */
export function textField(fields: Readonly<Record<string, unknown>>, name: string): string {
  const value = optionalText(fields, name)
  if (value === undefined) throw new Refused(400, `\`${name}\` is missing`)
  return value
}

/** A text among the fields, which may be missing. Throws Refused. */
export function optionalText(fields: Readonly<Record<string, unknown>>, name: string): string | undefined {
  const value = Object.hasOwn(fields, name) ? fields[name] : undefined
  if (value === undefined || value === null || typeof value === 'string') return value ?? undefined
  throw new Refused(400, `\`${name}\` is no text`)
}

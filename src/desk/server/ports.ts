import type { Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { OutsideError } from '../../publish/problems.ts'

/** Where the desk is unless it is told otherwise: the same place each time, so that what a browser keeps is found again. */
export const usualPort = 3653

/** So many ports behind the usual one are tried. */
const tries = 20

/** Ports above the system's own that browsers open for no page. Source: Fetch Standard, "Port blocking". */
const blocked: ReadonlySet<number> = new Set([
  1719, 1720, 1723, 2049, 3659, 4045, 4190, 5060, 5061, 6000, 6566, 6665, 6666, 6667, 6668, 6669, 6679, 6697,
  10080,
])

/** Whether a browser opens pages at a port that anybody may use. */
export const isUsable = (port: number): boolean => port >= 1024 && port <= 65_535 && !blocked.has(port)

/**
 * Has a server listen on this computer only: nothing else in the network reaches it.
 *
 * @param asked the port, or 0 for any that is free; without it, the usual one or the next that is free.
 * @returns the port.
 * @throws OutsideError when there is none.
 */
export async function listen(server: Server, asked?: number): Promise<number> {
  const all = Array.from({ length: tries }, (_, i) => usualPort + i).filter(isUsable)
  for (const port of asked === undefined ? all : [asked])
    if (await listens(server, port)) return (server.address() as AddressInfo).port
  throw asked === undefined
    ? new OutsideError(
        `All ports from ${usualPort} to ${all.at(-1)} are taken`,
        'Choose another with `--port`',
      )
    : new OutsideError(
        `Port ${asked} is taken by another program`,
        'Choose another, or leave `--port` out: then the next free one is taken',
      )
}

/** False when another program listens there. */
const listens = (server: Server, port: number): Promise<boolean> =>
  new Promise((done, fail) => {
    const wrong = (error: NodeJS.ErrnoException): void => {
      server.off('listening', right)
      if (error.code === 'EADDRINUSE' || error.code === 'EACCES') done(false)
      else fail(new OutsideError(`The desk cannot be opened: ${error.message}`))
    }
    const right = (): void => {
      server.off('error', wrong)
      done(true)
    }
    server.once('error', wrong).once('listening', right).listen(port, '127.0.0.1')
  })

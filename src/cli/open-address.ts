import { spawn } from 'node:child_process'
import process from 'node:process'

/** What opens an address with the usual browser of a system. */
const openers: Readonly<Record<string, readonly [program: string, ...options: string[]]>> = {
  darwin: ['open'],
  win32: ['rundll32', 'url.dll,FileProtocolHandler'],
}

/** Opens an address in the usual browser; gives whether that could be started. No shell reads the address. */
export function openAddress(address: string, platform: string = process.platform): Promise<boolean> {
  const [program, ...options] = openers[platform] ?? ['xdg-open']
  return new Promise((done) => {
    const child = spawn(program, [...options, address], { stdio: 'ignore', detached: true })
    child.once('error', () => done(false))
    child.once('spawn', () => {
      child.unref()
      done(true)
    })
  })
}

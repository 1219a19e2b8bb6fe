import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { policyOf } from '../../src/desk/server/page.ts'
import { type OpenDesk, openDesk } from '../../src/desk/server/serve.ts'
import { deskFile } from './open-desk.ts'

/** A desk that is served from a folder of its own. */
export interface ServedDesk extends OpenDesk {
  readonly folder: string
  /** Closes it and takes the folder away. */
  end(): Promise<void>
}

/** Serves the page that the tests build, as `foldlore desk` does. */
export async function serveDesk(): Promise<ServedDesk> {
  const folder = await mkdtemp(join(tmpdir(), 'desk-'))
  const page = async () => {
    const html = await readFile(await deskFile(), 'utf8')
    return { html, policy: policyOf(html) }
  }
  const desk = await openDesk({ folder, page, version: '0' })
  return {
    ...desk,
    folder,
    async end() {
      await desk.close()
      await rm(folder, { recursive: true, force: true })
    },
  }
}

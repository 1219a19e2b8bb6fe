import { readFile } from 'node:fs/promises'
import { basename, dirname } from 'node:path'
import { fileURLToPath } from 'node:url'
import about from '../../../package.json' with { type: 'json' }
import { hashOf, hashOfFolder } from './hashes.ts'

/** Parts of the built program whose name is that of their content. */
const named = /^part-[\w-]+\.[cm]?js$/

/** What this program is: another version or another build prints everything again. */
export const programHash = async (): Promise<string> =>
  hashOf(
    about.version,
    await hashOfFolder(dirname(fileURLToPath(import.meta.url)), async (path) =>
      !/\.[cm]?js$/.test(path) || named.test(basename(path)) ? '' : readFile(path),
    ),
  )

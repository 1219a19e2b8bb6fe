import { homedir } from 'node:os'
import { join } from 'node:path'
import process from 'node:process'

/** The folder of this user's for what may be made again. Throws when the user has no home. */
export const ownCache = (): string =>
  join(process.env.XDG_CACHE_HOME || join(homedir(), '.cache'), 'foldlore')

import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { packageRoot } from './package-root.ts'
import { OutsideError } from './problems.ts'

/**
 * The program of a page, with all that it needs inside, as it is built.
 *
 * @param asset its name in `dist`.
 * @param what it does, for whoever lacks it.
 * @throws OutsideError when it has not been built.
 */
export async function pageScript(asset: string, what: string, root: string = packageRoot()): Promise<string> {
  try {
    return await readFile(join(root, 'dist', asset), 'utf8')
  } catch {
    throw new OutsideError(
      `The part of foldlore that ${what} is missing: \`dist/${asset}\``,
      'Install foldlore again, or run `npm run build` in its folder',
    )
  }
}

import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { packageRoot } from '../package-root.ts'
import { OutsideError } from '../problems.ts'

/** The name of the page's program in `dist`. */
const motionAsset = 'motion-page.js'

/**
 * The program that moves the card in the page, with all that it needs inside, as it is built.
 *
 * @throws OutsideError when it has not been built.
 */
export async function motionScript(root: string = packageRoot()): Promise<string> {
  try {
    return await readFile(join(root, 'dist', motionAsset), 'utf8')
  } catch {
    throw new OutsideError(
      `The part of foldlore that moves a card in a page is missing: \`dist/${motionAsset}\``,
      'Install foldlore again, or run `npm run build` in its folder',
    )
  }
}

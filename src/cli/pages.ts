import { basename, dirname, extname, join } from 'node:path'
import { slug } from '../publish/slug.ts'
import type { Options } from './flags.ts'
import type { Outside } from './outside.ts'
import { UsageError } from './problems.ts'

/** Where a print goes. */
export interface Pages {
  /** Path without its ending. */
  readonly out: string
  readonly html: boolean
  readonly pdf: boolean
}

/**
 * Where a print goes. `-o` may name a PDF file, an HTML file, or a folder for both. In a folder a print is named
 * after its lesson and after what was wished, so that two sizes of a lesson lie side by side.
 *
 * @param what a word behind the name, such as `kit`.
 * @throws UsageError when `-o` names another kind of file.
 */
export async function pagesFor(
  lesson: string,
  what: string,
  options: Options,
  outside: Outside,
): Promise<Pages> {
  const { output = dirname(lesson) } = options
  const ending = extname(output)
  if (ending !== '' && !/[\\/]$/.test(output) && !(await outside.isFolder(output))) {
    const [html, pdf] = ['.html', '.pdf'].map((kind) => ending.toLowerCase() === kind)
    if (html || pdf) return { out: output.slice(0, -ending.length), html: html === true, pdf: pdf === true }
    throw new UsageError(
      `Cannot print a \`${ending}\` file`,
      'Name a `.pdf` file, an `.html` file, or a folder for both',
    )
  }
  const name = [basename(lesson, extname(lesson)), what, ...wished(options)]
    .filter((part) => part !== '')
    .join('-')
  return { out: join(output, name), html: true, pdf: true }
}

export const wished = ({ closed, units, grid, paper, theme }: Options): string[] =>
  [closed?.text ?? '', units ?? '', grid ? 'ruler' : '', paper ?? '', theme ?? ''].map(slug)

import { join } from 'node:path'
import { disk, type Outside } from '../../publish/outside.ts'
import { packageRoot } from '../../publish/package-root.ts'
import { OutsideError } from '../../publish/problems.ts'

/** The page of the desk as it is served. */
export interface DeskPage {
  readonly html: string
  /** What it may load and do: its own policy, and that no other page may show it inside. */
  readonly policy: string
}

/**
 * Reads the page of the desk as it is built.
 *
 * @throws OutsideError when it has not been built.
 */
export async function deskPage(
  { read }: Pick<Outside, 'read'> = disk,
  root: string = packageRoot(),
): Promise<DeskPage> {
  try {
    const html = new TextDecoder().decode(await read(join(root, 'dist', 'desk.html')))
    return { html, policy: policyOf(html) }
  } catch {
    throw new OutsideError(
      'The page of the desk is missing: `dist/desk.html`',
      'Install foldlore again, or run `npm run build` in its folder',
    )
  }
}

/** The policy that stands in a page, for the header; a page without one may load nothing. */
export function policyOf(html: string): string {
  const [, content = "default-src 'none'"] =
    /<meta http-equiv="Content-Security-Policy" content="([^"]*)"/i.exec(html) ?? []
  const own = content
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&')
    .replace(/[;\s]+$/, '')
  return `${own.replace(/[\r\n]+/g, ' ')}; frame-ancestors 'none'`
}

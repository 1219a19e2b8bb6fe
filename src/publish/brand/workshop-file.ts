import { join } from 'node:path'
import { readYaml } from '../../card/yaml.ts'
import type { Finding } from '../../length/finding.ts'
import type { BrandWish } from '../../lesson/brand/brand.ts'
import { readBrand } from '../../lesson/brand/read-brand.ts'
import type { Outside } from '../outside.ts'

/** The file that speaks for all lessons of a folder. */
export const workshopName = 'workshop.yaml'

/** What such a file says, and where it is. Places of findings are in it. */
export interface WorkshopFile {
  readonly path: string
  readonly folder: string
  readonly wish: BrandWish
  readonly findings: readonly Finding[]
}

/**
 * Reads what a workshop says of all its prints: in the lesson's own folder, or else in the one above it.
 *
 * @returns undefined where neither has such a file.
 */
export async function readWorkshop(
  folder: string,
  outside: Pick<Outside, 'read'>,
): Promise<WorkshopFile | undefined> {
  for (const at of [folder, join(folder, '..')]) {
    const path = join(at, workshopName)
    const read = await textAt(path, outside)
    if (read === undefined) continue
    return { path, folder: at, ...('wish' in read ? read : workshopIn(read.text)) }
  }
  return undefined
}

async function textAt(
  path: string,
  outside: Pick<Outside, 'read'>,
): Promise<{ text: string } | Pick<WorkshopFile, 'wish' | 'findings'> | undefined> {
  const refused = (why: string, cure: string): Pick<WorkshopFile, 'wish' | 'findings'> => ({
    wish: {},
    findings: [{ rule: 'brand-unread', severity: 'warning', message: why, suggestion: cure }],
  })
  let bytes: Uint8Array
  try {
    bytes = await outside.read(path)
  } catch (error) {
    const { code } = error as { code?: string }
    if (code === 'ENOENT' || code === 'ENOTDIR') return undefined
    return refused('This file cannot be read', 'Look whether it is a file that you may read')
  }
  try {
    return { text: new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes) }
  } catch {
    return refused('This file is not UTF-8 text', 'Save it as UTF-8 in your editor')
  }
}

/**
 * What the text of such a file says.
 *
 * @param text YAML: the keys of a brand, at its top.
 */
export function workshopIn(text: string): Pick<WorkshopFile, 'wish' | 'findings'> {
  const begin = text.startsWith('\ufeff') ? 1 : 0
  const { top, findings } = readYaml({
    text: text.slice(begin).replace(/\r\n?/g, '\n'),
    place: { line: 1, column: 1, offset: begin },
  })
  const read = readBrand(top.value.fields, 'the workshop file')
  return {
    wish: read.wish,
    findings: [...findings.map((one) => ({ ...one, severity: 'warning' as const })), ...read.findings],
  }
}

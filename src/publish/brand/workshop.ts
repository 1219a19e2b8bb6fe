import { readYaml } from '../../card/yaml.ts'
import type { Finding } from '../../length/finding.ts'
import type { BrandWish } from '../../lesson/brand/brand.ts'
import { readBrand } from '../../lesson/brand/read-brand.ts'

/** The file that speaks for all lessons of a folder. */
export const workshopName = 'workshop.yaml'

/** What such a file says. Places of findings are in it. */
export interface WorkshopSays {
  readonly wish: BrandWish
  readonly findings: readonly Finding[]
}

/** What such a file says, and where it is. */
export interface WorkshopFile extends WorkshopSays {
  readonly path: string
  readonly folder: string
}

/** What one says that cannot be read: nothing, and why. */
export const unreadWorkshop = (message: string, suggestion: string): WorkshopSays => ({
  wish: {},
  findings: [{ rule: 'brand-unread', severity: 'warning', message, suggestion }],
})

/**
 * What the text of such a file says.
 *
 * @param text YAML: the keys of a brand, at its top.
 */
export function workshopIn(text: string): WorkshopSays {
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

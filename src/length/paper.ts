import { inches, type Length, mm, type Size } from './length.ts'

/**
 * Standard sheets, portrait, by name. ISO 216 A and B, ISO 269 C as coded in PWG 5101.1 (iso_a4 and so on);
 * the North American sheets likewise (na_letter, na_invoice, na_legal, na_ledger).
 * US envelope names (A2, A7 …) clash with ISO 216 and are not sheets: they are known by their series elsewhere.
 */
const iso: Record<string, readonly [number, number]> = {
  A2: [420, 594],
  A3: [297, 420],
  A4: [210, 297],
  A5: [148, 210],
  A6: [105, 148],
  A7: [74, 105],
  A8: [52, 74],
  B3: [353, 500],
  B4: [250, 353],
  B5: [176, 250],
  B6: [125, 176],
  B7: [88, 125],
  C3: [324, 458],
  C4: [229, 324],
  C5: [162, 229],
  C6: [114, 162],
  C7: [81, 114],
  DL: [110, 220],
}

const northAmerican: Record<string, readonly [Length, Length]> = {
  Letter: [inches(17, 2), inches(11)],
  'Half Letter': [inches(11, 2), inches(17, 2)],
  Legal: [inches(17, 2), inches(14)],
  Tabloid: [inches(11), inches(17)],
}

const sheets = new Map<string, Size>([
  ...Object.entries(iso).map(([name, [w, h]]) => [name, { width: mm(w), height: mm(h) }] as const),
  ...Object.entries(northAmerican).map(([name, [width, height]]) => [name, { width, height }] as const),
])

const byLowerName = new Map([...sheets].map(([name, size]) => [name.toLowerCase(), size]))

/** Names of the standard sheets, as they are usually written. */
export const sheetNames: readonly string[] = [...sheets.keys()]

/**
 * The size of a standard sheet.
 *
 * @param name such as `A6`, `A6 landscape` or `half letter portrait`; portrait when it does not say.
 * @returns undefined when no standard sheet has that name.
 */
export function sheetSize(name: string): Size | undefined {
  const [, sheet = '', turn = 'portrait'] = /^(.*?)(?:\s+(portrait|landscape))?$/i.exec(name.trim()) ?? []
  const size = byLowerName.get(sheet.toLowerCase().replace(/\s+/g, ' '))
  if (!size) return undefined
  return turn.toLowerCase() === 'landscape' ? { width: size.height, height: size.width } : size
}

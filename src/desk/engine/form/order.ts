import { foldStyles } from '../../../card/fold-styles.ts'
import { stockKeys } from '../../../card/stock.ts'

const stock = [...stockKeys]

/** The keys of each part of a card block in the order in which they are usually written. */
const keysOf: Readonly<Record<string, readonly string[]>> = {
  base: stock,
  layers: ['on', 'side', 'border', 'raise', ...stock],
  spans: ['height', 'at', 'from', 'to', 'width', 'raise', ...stock],
  apertures: ['on', 'size', 'left', 'bottom', 'rim'],
  lettering: ['on', 'letters', 'widths', 'margin', 'raise', ...stock],
  pieces: ['size', 'count', ...stock],
  boxes: ['on', 'height', 'depth', 'width', 'at'],
  envelope: ['make', 'clearance', 'seam', 'flap', ...stock],
}

const border = ['left', 'right', 'top', 'bottom', 'sides', 'ends', 'spine', 'opening']

/** Words, counts and lengths of any fold, each fold's in its own order. */
const foldKeys = [
  ...new Set(
    [...foldStyles.values()].flatMap(({ choices = {}, counts = {}, parameters }) => [
      ...Object.keys(choices),
      ...Object.keys(counts),
      ...Object.keys(parameters),
    ]),
  ),
]

const top = [
  'fold',
  'closed',
  ...foldKeys,
  'base',
  'boxes',
  'layers',
  'spans',
  'apertures',
  'lettering',
  'pieces',
  'envelope',
]

/** The order of the keys in the group that a path leads to. Names of parts have none: they go last. */
export function orderOf(path: readonly string[]): readonly string[] {
  const [key = '', , inner] = path
  if (path.length === 0) return top
  if (key === 'base' || key === 'envelope') return path.length === 1 ? (keysOf[key] ?? []) : []
  if (inner === 'border') return border
  return path.length === 2 ? (keysOf[key] ?? []) : []
}

export { keysOf }

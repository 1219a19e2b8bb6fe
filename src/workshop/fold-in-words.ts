import { foldStyles } from '../card/fold-styles.ts'
import type { FoldStyle } from '../card/style.ts'
import { formatSize } from '../length/format.ts'
import { literalsIn } from '../lesson/loose/literals.ts'

/** Names of folds that are everyday words too: they only count right before "card" or "fold". */
const everyday = new Set([
  'side',
  'letter',
  'z',
  'joy',
  'pocket',
  'slider',
  'swing',
  'endless',
  'shutter',
  'free',
])

/**
 * The fold that a text without a card block speaks of, if it names one more often than any other.
 *
 * @param text of a tutorial.
 */
export function foldInWords(text: string): FoldStyle | undefined {
  const counted = [...foldStyles.values()]
    .map((style) => ({ style, count: timesNamed(style.name, text) }))
    .filter(({ count }) => count > 0)
    .sort((a, b) => b.count - a.count || b.style.name.length - a.style.name.length)
  const [first, second] = counted
  return first && first.count > (second?.count ?? 0) ? first.style : undefined
}

/** "A gate card" says it; "the gate" by itself hardly. */
function timesNamed(name: string, text: string): number {
  const words = name.replace(/[\s-]+/g, '[\\s-]+')
  const times = (behind: string): number =>
    [...text.matchAll(new RegExp(`(?<![\\p{L}-])${words}${behind}(?![\\p{L}])`, 'giu'))].length
  return 10 * times('[\\s-]+(?:fold(?:ed)?[\\s-]+)?(?:card|fold)') + (everyday.has(name) ? 0 : times(''))
}

/** A card block to begin with: the fold's own, with the shut size that the text says. */
export function startingBlock({ starter }: Pick<FoldStyle, 'starter'>, text: string): string {
  const shut = text
    .split(/(?<=[.!?])\s/)
    .filter((sentence) => /\b(?:shut|closed|finished|folded|card)\b/i.test(sentence))
    .flatMap((sentence) => literalsIn(sentence.replace(/\s/g, ' ')))
    .find(({ kind }) => kind === 'size')
  const [width, height] = shut?.lengths ?? []
  const size =
    shut && width && height
      ? formatSize({ width, height }, shut.unit === 'in' || shut.unit === 'ft' ? 'in' : 'mm').replace(
          '×',
          'x',
        )
      : undefined
  const block = size === undefined ? starter : starter.replace(/^closed:.*$/m, `closed: ${size}`)
  return ['```card', block, '```'].join('\n')
}

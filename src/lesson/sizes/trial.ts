import { checkCard } from '../../card/check.ts'
import type { YamlBlock } from '../../card/yaml.ts'
import { proveCard } from '../../fold/prove-card.ts'
import { errorsIn, type Finding } from '../../length/finding.ts'
import type { Length, Size, Unit } from '../../length/length.ts'
import { applyEdits, type Edit } from '../edits.ts'

/** What a card is printed in. */
export interface Ruler {
  readonly unit: Unit
  readonly grid: Length
}

/** A card block as it would be after some changes; its place in the file is where it was. */
export function changed(block: YamlBlock, edits: readonly Edit[]): YamlBlock {
  const { offset } = block.place
  const inBlock = edits.map(({ start, end, text }) => ({ start: start - offset, end: end - offset, text }))
  return { ...block, text: applyEdits(block.text, inBlock) }
}

/** The mistakes of a card block itself, before anything is folded: quick to find. */
export const blockErrors = (block: YamlBlock, closed: Size, rulers: readonly Ruler[]): Finding[] =>
  rulers.flatMap((ruler) => errorsIn(checkCard(block, { ...ruler, closed }).findings))

/** All that keeps a card from working in a size, on every ruler. */
export const cardErrors = (block: YamlBlock, closed: Size, rulers: readonly Ruler[]): Finding[] =>
  rulers.flatMap((ruler) => errorsIn(proveCard(block, { ...ruler, closed }).findings))

/** Whether a card works in a size, on every ruler. Folding takes long, so what can be told without it comes first. */
export const works = (block: YamlBlock, closed: Size, rulers: readonly Ruler[]): boolean =>
  blockErrors(block, closed, rulers).length === 0 &&
  rulers.every((ruler) => cardErrors(block, closed, [ruler]).length === 0)

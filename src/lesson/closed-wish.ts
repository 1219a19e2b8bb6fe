import { plainSize, turnedTo } from '../card/shape.ts'
import { type Entry, readYaml, type YamlBlock } from '../card/yaml.ts'
import type { Finding } from '../length/finding.ts'
import type { Size } from '../length/length.ts'
import { mainCard } from './figure-target.ts'
import type { Wishes } from './lesson.ts'

/** `closed` of a card block as it is written, and as a size if it says one plainly. */
export function writtenClosed(block: YamlBlock): { entry?: Entry; size?: Size } {
  const entry = readYaml(block).top.value.fields.get('closed')?.value
  const size = plainSize(entry)
  return { ...(entry && { entry }), ...(size && { size }) }
}

/**
 * The closed size that is wished of the main card: the one that is given, or its own, turned. A card that stands as it
 * is wished already keeps its own.
 */
export function wishedSize(
  cards: readonly YamlBlock[],
  { closed, turned }: Pick<Wishes, 'closed' | 'turned'>,
): { closed?: Size; findings: Finding[] } {
  const block = mainCard(cards)
  if (closed || !turned || !block) return { ...(closed && { closed }), findings: [] }
  const { entry, size } = writtenClosed(block)
  if (size) {
    const other = turnedTo(size, turned)
    return { ...(other !== size && { closed: other }), findings: [] }
  }
  // No `closed` at all is told by the card itself.
  if (!entry) return { findings: [] }
  return {
    findings: [
      {
        rule: 'cannot-turn',
        severity: 'error',
        message: `The closed size is not written out here, so it cannot be turned to ${turned}`,
        suggestion: 'Write width and height, such as `closed: 7 x 5 in`',
        place: entry.place,
      },
    ],
  }
}

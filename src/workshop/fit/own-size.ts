import { checkCard } from '../../card/check.ts'
import type { YamlBlock } from '../../card/yaml.ts'
import type { Size } from '../../length/length.ts'
import { writtenClosed } from '../../lesson/closed-wish.ts'
import type { Lesson } from '../../lesson/lesson.ts'
import { gridFor } from '../../lesson/ruler.ts'
import { QuestionError } from './question.ts'

/**
 * The size that the card block says, not yet on a ruler: its proportions are what other sizes keep.
 *
 * @throws QuestionError when it cannot be worked out.
 */
export function ownSize(block: YamlBlock, { frontMatter }: Lesson): Size {
  const { size } = writtenClosed(block)
  if (size) return size
  // It may be worked out from other names.
  const { units: unit } = frontMatter
  const { card } = checkCard(block, { unit, grid: gridFor(frontMatter, unit) })
  if (card) return card.closed
  throw new QuestionError(
    'The size of the card cannot be worked out, so its proportions are not known',
    'Write it out, such as `closed: 7 x 5 in`, or see what `foldlore check` says',
  )
}

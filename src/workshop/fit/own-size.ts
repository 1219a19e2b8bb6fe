import { checkCard } from '../../card/check.ts'
import { readYaml, type YamlBlock } from '../../card/yaml.ts'
import { ExpressionError } from '../../length/expression.ts'
import { usualGrid } from '../../length/grid.ts'
import type { Size } from '../../length/length.ts'
import { readSize } from '../../length/text.ts'
import type { Lesson } from '../../lesson/lesson.ts'
import { QuestionError } from './question.ts'

/**
 * The size that the card block says, not yet on a ruler: its proportions are what other sizes keep.
 *
 * @throws QuestionError when it cannot be worked out.
 */
export function ownSize(block: YamlBlock, { frontMatter }: Lesson): Size {
  const entry = readYaml(block).top.value.fields.get('closed')?.value
  try {
    if (entry?.kind === 'text') return readSize(entry.text)
  } catch (error) {
    // It may be worked out from other names.
    if (!(error instanceof ExpressionError)) throw error
  }
  const { units: unit, grid = usualGrid[unit] } = frontMatter
  const { card } = checkCard(block, { unit, grid })
  if (card) return card.closed
  throw new QuestionError(
    'The size of the card cannot be worked out, so its proportions are not known',
    'Write it out, such as `closed: 7 x 5 in`, or see what `foldlore check` says',
  )
}

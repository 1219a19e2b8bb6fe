import { readYaml, type YamlBlock } from '../../card/yaml.ts'
import type { Length, Unit } from '../../length/length.ts'
import type { Asked } from './answer.ts'
import { envelopeLimit, envelopeNamed } from './envelope-limit.ts'
import type { Limit } from './limit.ts'
import { paperLimit, suppliesOf } from './paper-limit.ts'
import { type Question, QuestionError } from './question.ts'
import type { Trial } from './trial.ts'
import { wholeLimit, wholeOf } from './whole.ts'

/**
 * What is asked, in the words of this lesson, and what it comes to for a size.
 *
 * @param trials the lesson's own size first: the first at which it has a card says what its pieces and stocks are.
 * @throws QuestionError when the lesson has no such thing.
 */
export function understand(
  question: Question,
  block: YamlBlock,
  trials: readonly Trial[],
  { unit, grid }: { unit: Unit; grid: Length },
): { asked: Asked; limits: Limit[] } {
  const { lettering = false } = question
  if (lettering && !readYaml(block).top.value.fields.has('lettering'))
    throw new QuestionError(
      'The lesson has no lettering that could fit',
      'Leave `--lettering` out, or add `lettering:` to the card block',
    )
  const pieces = trials.find((trial) => trial.proven().card)?.proven().pieces
  // No card at any size: then why is all there is to say.
  if (!pieces) return { asked: { supplies: [], lettering }, limits: [] }
  const supplies = suppliesOf(question, [...new Set(pieces.map(({ stock }) => stock))])
  const envelope = question.envelope === undefined ? undefined : envelopeNamed(question.envelope)
  const whole = question.whole && wholeOf(question.whole, question, pieces)
  return {
    asked: { supplies, ...(envelope && { envelope }), ...(whole && { whole }), lettering },
    limits: [
      ...(envelope ? [envelopeLimit(envelope, unit, grid)] : []),
      ...(whole ? [wholeLimit(whole, unit, grid)] : []),
      ...supplies.map((supply) => paperLimit(supply, unit)),
    ],
  }
}

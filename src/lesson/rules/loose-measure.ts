import type { Finding } from '../../length/finding.ts'
import type { Unit } from '../../length/length.ts'
import { looseInLesson } from '../loose/in-lesson.ts'
import type { LooseNumber } from '../loose/loose-numbers.ts'
import { measureOf } from '../loose/proposal.ts'
import { partOf, valueOfName } from '../loose/saying.ts'
import type { Rule } from './rule.ts'

/** A plain number stands in the words: it stays as it is when the card gets another size or unit, or it is wrong already. */
export const looseMeasure: Rule = {
  docs: [
    {
      name: 'loose-measure',
      about:
        'A measure stands in the words as a plain number, so it stays when the card has another size, or it is not what the card needs. `check --fix` writes the names whose meaning is sure.',
      example: '1. Cut the backdrop to 5 3/8 x 5 in.\n2. Leave 2 mm for the glue.',
    },
  ],
  find(input) {
    // A card that cannot be built has no names yet.
    if (!input.complete) return []
    const { words, front } = looseInLesson(input)
    const unit = input.lesson.frontMatter.units
    return [...front.flatMap(inFrontMatter), ...words.map((number) => inWords(number, unit))]
  },
}

function inWords(number: LooseNumber, unit: Unit): Finding {
  const { words, place, proposal, mistake } = number
  const rest = { rule: 'loose-measure', severity: 'warning' as const, place }
  const meant = `\`:meant[${words}]\``
  if (mistake) {
    const { candidate, turned } = mistake
    const value = valueOfName(candidate, unit)
    const told = turned
      ? `\`${words}\` is ${partOf(candidate)} the other way round: it is ${value}, width first`
      : `\`${words}\` is not ${partOf(candidate)}, which is ${value}`
    return {
      ...rest,
      message: told,
      suggestion: `Write \`{${candidate.path}}\`, or ${meant} if something else is meant`,
    }
  }
  if (!proposal)
    return {
      ...rest,
      message: `\`${words}\` is a plain number, and the words do not say which piece it is of`,
      suggestion: `Write ${meant} if it is the same at every size, or the name of a piece and its part, such as \`{base.width}\``,
    }
  return {
    ...rest,
    message: `\`${words}\` is a plain number: it stays as it is when the card has another size or unit`,
    suggestion:
      proposal.confidence === 'sure'
        ? `Write \`${measureOf(proposal)}\``
        : `Write \`${measureOf(proposal)}\` if that is meant, or ${meant}`,
  }
}

/** Nothing is filled in there, so only a number that follows the card is told. */
function inFrontMatter({ words, place, proposal }: LooseNumber): Finding[] {
  if (!proposal) return []
  return [
    {
      rule: 'loose-measure',
      severity: 'warning',
      place,
      message: `\`${words}\` is ${partOf(proposal.candidate)}, and stays as it is when the card has another size or unit`,
      suggestion: `No name can stand here: leave the number out, or say it below as \`${measureOf(proposal)}\``,
    },
  ]
}

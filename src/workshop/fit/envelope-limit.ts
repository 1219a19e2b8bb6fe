import { tooDeep } from '../../card/envelopes/checks.ts'
import { fitIn } from '../../card/envelopes/fits.ts'
import { fullName, holdsOf, type Series, standardEnvelopes } from '../../card/envelopes/standard.ts'
import { ExpressionError } from '../../length/expression.ts'
import { suggestWord } from '../../length/finding.ts'
import { formatLength, formatSize } from '../../length/format.ts'
import { fitInside, mustCover } from '../../length/grid.ts'
import {
  type Length,
  larger,
  type Size,
  same,
  shorter,
  smaller,
  type Unit,
  zero,
} from '../../length/length.ts'
import { sheetSize } from '../../length/paper.ts'
import { readSize } from '../../length/text.ts'
import type { Limit, Miss } from './limit.ts'
import { QuestionError } from './question.ts'

/** The envelope that is asked about. Sizes have the shorter side first. */
export interface WantedEnvelope {
  /** `A7 (US trade)`, or the size as it was written. */
  readonly name: string
  readonly size: Size
  /** The largest flat card that goes in. */
  readonly holds: Size
  /** What else the name could mean. */
  readonly note?: string
}

/**
 * The envelope of that name or size. A name that is also an ISO sheet means the envelope, and says so; `A7 sheet` or
 * `A7 ISO` is an envelope as large as the sheet.
 *
 * @throws QuestionError when it is neither.
 */
export function envelopeNamed(text: string): WantedEnvelope {
  const [, name = '', series] =
    /^\s*(.*?)(?:\s+envelope)?\s*(?:\(?\b(US trade|US|ISO 269|ISO|sheet)\)?)?(?:\s+envelope)?\s*$/i.exec(
      text,
    ) ?? []
  const wanted = seriesIn(series)
  const known = standardEnvelopes.find(
    (e) => e.name.toLowerCase() === name.toLowerCase() && (wanted ?? e.series) === e.series,
  )
  const sheet = sheetSize(name)
  if (known) {
    const note =
      sheet && !sameSides(sheet, known.size)
        ? `${known.name} is the ${known.series} envelope here; for one as large as the ISO sheet write \`--envelope "${known.name} sheet"\`.`
        : undefined
    return { name: fullName(known), size: known.size, holds: known.holds, ...(note && { note }) }
  }
  const size = sheet ?? sizeIn(wanted === undefined ? text : name, text)
  const alike = standardEnvelopes.find((e) => sameSides(e.size, size) && e.series !== wanted)
  if (alike && !sheet) return { name: fullName(alike), size: alike.size, holds: alike.holds }
  const lying = { width: smaller(size.width, size.height), height: larger(size.width, size.height) }
  const holds = holdsOf(lying)
  if (!shorter(zero, holds.width))
    throw new QuestionError(`\`${text}\` is too small for an envelope`, 'Write for example `--envelope "C6"`')
  return {
    name: text.trim(),
    size: lying,
    holds,
    note: 'No list says what goes into an envelope of this size: 7 mm are kept free each way, as in the ISO envelopes.',
  }
}

/** Whose name it is, as far as the teacher says. */
function seriesIn(word: string | undefined): Series | 'sheet' | undefined {
  if (!word) return undefined
  return /^us/i.test(word) ? 'US trade' : /^iso/i.test(word) ? 'ISO 269' : 'sheet'
}

function sizeIn(size: string, text: string): Size {
  try {
    return readSize(size)
  } catch (error) {
    if (!(error instanceof ExpressionError)) throw error
    const near = suggestWord(
      size,
      standardEnvelopes.map((e) => e.name),
    )
    throw new QuestionError(
      `Unexpected envelope \`${text.trim()}\`, expected its name or its size`,
      `${near}, or a size such as \`5 1/4 x 7 1/4 in\``,
    )
  }
}

const sameSides = (a: Size, b: Size): boolean =>
  same(smaller(a.width, a.height), smaller(b.width, b.height)) &&
  same(larger(a.width, a.height), larger(b.width, b.height))

/** A size turned so that it lies as another does. */
export const lyingAs = ({ width, height }: Size, like: Size): Size =>
  shorter(width, height) === shorter(like.width, like.height)
    ? { width, height }
    : { width: height, height: width }

/** The card must go into this envelope with its real thickness, and without force. */
export function envelopeLimit(envelope: WantedEnvelope, unit: Unit, grid: Length): Limit {
  const { name, size, holds } = envelope
  const goesIn = (card: Size, thickness: Length): boolean =>
    fitIn({ size, holds }, card, thickness) !== undefined
  const miss = (message: string, suggestion = 'Take a larger envelope'): Miss[] => [
    { limit: 'envelope', message, suggestion },
  ]
  const most = { width: fitInside(holds.width, grid), height: fitInside(holds.height, grid) }
  return {
    tooLarge: (trial) => !goesIn(trial.size, zero),
    misses: (trial) => {
      const shut = formatSize(trial.size, unit)
      if (!goesIn(trial.size, zero))
        return miss(
          `${name} takes a flat card of ${formatSize(lyingAs(most, trial.size), unit)} at most, and this one is ${shut}`,
        )
      const { card, thickness } = trial.proven()
      if (!card || goesIn(trial.size, thickness)) return []
      const thick = formatLength(mustCover(thickness, grid), unit)
      if (tooDeep(trial.size, thickness))
        return miss(
          `Shut, the card is ${thick} deep and ${shut} across: it is a box, which goes into no envelope`,
          'Send it in a box',
        )
      return miss(
        `The card is ${thick} thick when shut, which takes more room than ${name} leaves round ${shut}`,
        'Take a larger envelope, or make the card thinner',
      )
    },
  }
}

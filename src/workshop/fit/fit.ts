import { fitIn } from '../../card/envelopes/fits.ts'
import { type Length, plus, type Size } from '../../length/length.ts'
import { mainCard } from '../../lesson/figure-target.ts'
import { fillLesson } from '../../lesson/fill.ts'
import type { Lesson, Wishes } from '../../lesson/lesson.ts'
import type { Answer, Asked, FoundSize, NextSize, SizeRange } from './answer.ts'
import { candidates } from './candidates.ts'
import { type Limit, missesOf } from './limit.ts'
import { otherShape } from './other-shape.ts'
import { ownSize } from './own-size.ts'
import { cuttingOf } from './paper-limit.ts'
import { type Question, QuestionError } from './question.ts'
import { type Beyond, best, largest, oneLarger, type Range, ranges, smallestMade } from './search.ts'
import { type Trial, trialsOf } from './trial.ts'
import { understand } from './understand.ts'
import { useOf, type Whole } from './whole.ts'

/**
 * Answers a question that is asked of a lesson the other way round: what size must the card have? Every size of the
 * ruler between the bounds is looked at, and none counts at which the lesson has errors.
 *
 * @param wishes another unit or ruler than the lesson's.
 * @throws QuestionError when the question cannot be asked of this lesson.
 */
export function fitLesson(lesson: Lesson, question: Question, wishes: Omit<Wishes, 'closed'> = {}): Answer {
  const block = mainCard(lesson.cards)
  if (!block) throw new QuestionError('The lesson has no card', 'Add a card block')
  const { unit, grid } = fillLesson(lesson, wishes)
  const own = ownSize(block, lesson)
  const { sizes, keeps } = candidates(own, question, grid)
  const trialAt = trialsOf(lesson, unit, grid)
  const trials = sizes.map(trialAt)
  const { asked, limits } = understand(question, block, [trialAt(own), ...trials], { unit, grid })
  const { whole } = asked
  const listed = asked.lettering ? ranges(trials, limits) : []
  const used = whole ? mostOf(whole, trials, limits, grid) : []
  const found = whole ? used.at(-1) : asked.lettering ? listed.at(-1)?.to : largest(trials, limits)
  const size = found && sizeFound(found, asked, grid)
  const shape =
    whole && !size?.use?.whole ? otherShape(found?.size ?? own, whole, trialAt, limits, grid) : undefined
  const next = found && nextSize(oneLarger(found, trials, limits))
  const [from = own, to = own] = [sizes[0], sizes.at(-1)]
  return {
    lesson: lesson.frontMatter.title,
    unit,
    grid,
    asked,
    searched: { from, to, sizes: sizes.length, keeps },
    ...(size && { found: size }),
    ...(next && { next }),
    alike: used.slice(0, -1).map((trial) => trial.size),
    ...(shape && { otherShape: sizeFound(shape, asked, grid) }),
    ranges: listed.map(rangeOf),
    ...(!found && { nearest: nearestTo(trials, own, limits) }),
  }
}

/** The sizes that use most of the sheet. */
const mostOf = (whole: Whole, trials: readonly Trial[], limits: readonly Limit[], grid: Length): Trial[] =>
  best(trials, limits, (trial, proven) => {
    const pieces = proven ? trial.proven().pieces : trial.draft()?.pieces
    return pieces && (useOf(whole, pieces, grid)?.share ?? 0)
  })

const nextSize = (beyond: Beyond): NextSize | undefined =>
  beyond && { closed: beyond.next.size, misses: beyond.misses }

function rangeOf({ from, to, below, above }: Range): SizeRange {
  const [smaller, larger] = [nextSize(below), nextSize(above)]
  return {
    from: from.size,
    to: to.size,
    ...(smaller && { below: smaller }),
    ...(larger && { above: larger }),
  }
}

/** The smallest size at which the card can be made at all comes nearest; where there is none, the one most like its own. */
function nearestTo(trials: readonly Trial[], own: Size, limits: readonly Limit[]): NextSize {
  const far = ({ size }: Trial): Length =>
    plus(...sides(size).map((x, i) => x.sub(sides(own)[i] ?? x).abs() as Length))
  const like = trials.reduce<Trial | undefined>((a, b) => (a && far(a).lte(far(b)) ? a : b), undefined)
  const trial = smallestMade(trials) ?? like
  return trial ? { closed: trial.size, misses: missesOf(trial, limits) } : { closed: own, misses: [] }
}

const sides = ({ width, height }: Size): Length[] => [width, height]

function sizeFound(trial: Trial, { supplies, envelope, whole }: Asked, grid: Length): FoundSize {
  const { thickness, pieces } = trial.proven()
  const room = envelope && fitIn(envelope, trial.size, thickness)?.room
  const use = whole && useOf(whole, pieces, grid)
  return {
    closed: trial.size,
    thickness,
    warnings: trial.checked().filter(({ severity }) => severity === 'warning'),
    cutting: supplies.map((supply) => {
      const cutting = cuttingOf(supply, pieces)
      return { supply, layouts: cutting.is === 'cut' ? cutting.layouts : [] }
    }),
    ...(room && { room }),
    ...(use && { use }),
  }
}

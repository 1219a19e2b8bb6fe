import type { Card } from '../../card/card.ts'
import { evaluate, type Lookup, lengthsOf, type Value } from '../../length/evaluate.ts'
import { ExpressionError } from '../../length/expression.ts'
import { type Length, same } from '../../length/length.ts'
import { parseMeasure } from '../../length/parse.ts'
import type { SaidMeasure, Sentence } from '../prose/sentence.ts'
import type { Course } from './course.ts'
import { looseScores } from './loose-scores.ts'
import { type Mark, scoreParts } from './marks.ts'

/** Tells whether a lesson says where a score of a piece is. */
export type IsSaid = (card: Card, piece: string, mark: Mark) => boolean

const scoring = /(?<![a-z])(?:scor|creas|fold|bend|bent|groov|emboss|indent|pleat)/i

/**
 * Reads which scores the steps say: by a name such as `{base.valleys}`, by any measure of the same length in a step that
 * scores or folds, by a plain length, as the fold in the middle, or by pointing at a figure or at another piece.
 */
export function saidScores(course: Course, lookup: Lookup): IsSaid {
  const steps = new Set(course.sentences.filter(isScoring).map(({ step }) => step))
  const said = course.sentences.filter(
    (sentence) =>
      sentence.kind !== 'caption' &&
      sentence.kind !== 'heading' &&
      sentence.callout !== 'variation' &&
      (sentence.step === undefined ? isScoring(sentence) : steps.has(sentence.step)),
  )
  const measures = said.flatMap((sentence) =>
    sentence.measures
      .filter(isLengths)
      .map((measure) => ({ sentence, measure, value: valueIn(measure, lookup) })),
  )
  const loose = looseScores(course)
  return (card, piece, mark) =>
    loose(card, piece, mark) ||
    measures.some(({ sentence, measure, value }) => says(measure, value, sentence, { card, piece, mark }))
}

/** Not a size or a number, which says no score. */
const isLengths = ({ paths }: SaidMeasure): boolean =>
  !paths.every((path) => ['size', 'sheet', 'inside', 'count', 'stock'].includes(path.at(-1) ?? ''))

const isScoring = ({ words }: Sentence): boolean => scoring.test(words)

function valueIn({ node: { value } }: SaidMeasure, lookup: Lookup): Value | undefined {
  try {
    return evaluate(parseMeasure(value.replace(/[\r\n]/g, ' ')).expression, lookup)
  } catch (error) {
    if (!(error instanceof ExpressionError)) throw error
    return undefined
  }
}

interface Wanted {
  readonly card: Card
  readonly piece: string
  readonly mark: Mark
}

function says(
  { paths }: SaidMeasure,
  value: Value | undefined,
  { words }: Sentence,
  { card, piece, mark }: Wanted,
): boolean {
  const path = paths.length === 1 ? (paths[0] ?? []) : []
  const own = path[0] === card.name && path.length > 2 ? path.slice(1) : path
  const [owner = '', part = ''] = own
  const isOf = scoreParts.get(part)
  const isPiece = card.structure.pieces.some(({ name }) => name === owner)
  if (isOf && isPiece && owner !== piece) return false
  if (part === 'slants') return isOf?.(mark) ?? false
  const isBothWays = /\bboth (?:ways|directions|edges|sides)\b/i.test(words)
  if (isOf && !isOf(mark) && !isBothWays) return false
  return (
    mark.at !== undefined && lengthsIn(value).some((length) => mark.at !== undefined && same(length, mark.at))
  )
}

const lengthsIn = (value: Value | undefined): readonly Length[] =>
  value && value.kind !== 'size' ? lengthsOf(value) : []

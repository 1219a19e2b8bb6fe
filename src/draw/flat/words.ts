import type { Score } from '../../card/scores.ts'
import { type Slant, slantText } from '../../card/slants.ts'
import type { Fold } from '../../card/structure.ts'
import { listOf } from '../../length/finding.ts'
import { formatLength, formatLengths, formatSize } from '../../length/format.ts'
import type { Length, Unit } from '../../length/length.ts'
import type { Entry } from '../legend.ts'
import type { Picked } from '../picked.ts'
import type { FlatParts } from './parts.ts'
import { measuredParts, picksFold } from './picked.ts'

/** Turning a piece over so that the edge that the marks are measured from stays where it is. */
const turnOver = { width: 'turn over top to bottom', height: 'turn over left to right' } as const
const from = { width: 'from the left edge', height: 'from the lower edge' } as const

interface Group {
  readonly fold: Fold
  readonly along: Score['along']
  readonly scores: readonly Score[]
}

/** Scores that are made in one go: of one fold, measured along one edge. What is scored on the face comes first. */
function groupsOf(scores: readonly Score[]): Group[] {
  const all = (['mountain', 'valley'] as const).flatMap((fold) =>
    (['width', 'height'] as const).map((along) => ({
      fold,
      along,
      scores: scores.filter((s) => s.fold === fold && s.along === along),
    })),
  )
  return all.filter((group) => group.scores.length > 0)
}

/** Whether a score does not run right across the piece. */
const isBroken = ({ along, from, to }: Score, { piece }: FlatParts): boolean =>
  from.gt(0) || to.lt(along === 'width' ? piece.size.height : piece.size.width)

/** Each length once, in ascending order. */
const distinct = (all: readonly Length[]): Length[] =>
  all.filter((x, i) => all.findIndex((other) => other.equals(x)) === i).sort((a, b) => a.compare(b))

const folds = ['mountain', 'valley'] as const

/** The folds whose lines are drawn without their numbers, where those of the other fold have theirs. */
const foldsLeftOut = ({ creases }: FlatParts, has: Picked): Fold[] =>
  folds.some((fold) => picksFold(has, fold))
    ? folds.filter((fold) => !picksFold(has, fold) && creases.some((crease) => crease.fold === fold))
    : []

/** Which side to score where; what is cut out. */
export function flatLegend(all: FlatParts, unit: Unit, has: Picked): Entry[] {
  const parts = measuredParts(all, has)
  const groups = groupsOf(parts.scores)
  const straight = groups.map(({ fold, along, scores }): Entry => {
    // A short list stays on one line; in a long one, a number keeps its fraction.
    const marks = distinct(scores.map((s) => s.at))
    const list = formatLengths(marks, unit)
    const at = marks.length > 4 ? list.replace(/(\d) (?=\d+\/)/g, '$1\u00a0') : list.replaceAll(' ', '\u00a0')
    const how =
      scores[0]?.side === 'face'
        ? `score this side at\u00a0${at}`
        : `${turnOver[along]}, score the back at\u00a0${at}`
    const far = scores.some((score) => isBroken(score, parts)) ? ', as far as drawn' : ''
    return { sample: fold, text: `${fold}: ${how}${far}` }
  })
  const slanting = (['mountain', 'valley'] as const).flatMap((fold): Entry[] => {
    const count = parts.slants.filter((slant) => slant.fold === fold).length
    const side = fold === 'mountain' ? 'this side' : 'the back'
    const lines = count > 1 ? 'slanting lines' : 'slanting line'
    return count > 0 ? [{ sample: fold, text: `${fold}: score ${side} along the ${lines}` }] : []
  })
  const cuts = has('cuts') ? cutsOf(parts) : []
  const solid = cuts.length > 0 ? [{ sample: 'cut' as const, text: `solid: ${listOf(cuts)}` }] : []
  const others = foldsLeftOut(all, has).map(
    (fold): Entry => ({ sample: fold, text: `${fold}: not in this step` }),
  )
  return [...straight, ...slanting, ...others, ...solid]
}

const cutsOf = (parts: FlatParts): string[] => [
  ...(parts.trimmed ? ['cut along the outline'] : []),
  ...(parts.holes.length > 0 ? ['cut the window out'] : []),
  ...(parts.slits.length > 0 ? [parts.slits.length > 1 ? 'cut the slits' : 'cut the slit'] : []),
]

/** What a sighted reader takes from the drawing of a flat piece. */
export function flatWords(all: FlatParts, unit: Unit, has: Picked): string {
  const parts = measuredParts(all, has)
  const { piece, plates, scores, inner } = parts
  const slanting = (line: Slant) =>
    `${slantText(line, piece.size, (x) => formatLength(x, unit))}, ${line.fold}, scored on ${line.side === 'face' ? 'this side' : 'the back'}`
  const reach = (s: Score) =>
    isBroken(s, parts)
      ? `, only from ${formatLength(s.from, unit)} to ${formatLength(s.to, unit)} across`
      : ''
  const said = (s: Score) =>
    `${formatLength(s.at, unit)} ${from[s.along]}${reach(s)}, ${s.fold}, scored on ${s.side === 'face' ? 'this side' : 'the back'}`
  const marks = (['width', 'height'] as const).flatMap((along) => {
    const own = inner.filter((m) => m.along === along && !m.slant).map((m) => m.at)
    const once = own
      .filter((m, i) => own.findIndex((other) => other.equals(m)) === i)
      .sort((a, b) => a.compare(b))
    return once.length > 0 ? [`${formatLengths(once, unit)} ${from[along]}`] : []
  })
  const leftOut = foldsLeftOut(all, has)
  const what = [
    ...(has('cuts') && parts.holes.length > 0 ? ['window edges'] : []),
    ...(has('cuts') && parts.trimmed ? ['corners of the outline'] : []),
    ...(has('cuts') && parts.slits.length > 0 ? ['slit ends'] : []),
    ...(has('marks') && parts.lettering.length > 0 ? ['left edges of the letters'] : []),
  ]
  return [
    `${sentence(piece.name)}, ${piece.stock.name}, laid flat${parts.creases.length > 0 ? ' with the inside face up' : ''}${has('size') ? `: ${formatSize(piece.size, unit)}, width first` : ''}.`,
    ...(has('names') && plates.length > 1 ? [`Panels: ${listOf(plates.map((p) => p.name))}.`] : []),
    ...(scores.length > 0 ? [`Score lines: ${scores.map(said).join('; ')}.`] : []),
    ...(parts.slants.length > 0 ? [`Slanting score lines: ${parts.slants.map(slanting).join('; ')}.`] : []),
    ...(leftOut.length > 0 ? [`Drawn without numbers: the ${listOf(leftOut)} folds.`] : []),
    ...(parts.lettering.length > 0
      ? [`Letters ${parts.lettering.map((l) => l.letters.join('')).join(' ')}.`]
      : []),
    ...(marks.length > 0 ? [`${sentence(listOf(what))} at ${listOf(marks)}.`] : []),
    ...(piece.stock.direction === 'upright' ? ['The pattern stands upright.'] : []),
    ...(piece.count > 1 ? [`Cut ${piece.count} of them.`] : []),
  ].join(' ')
}

export const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

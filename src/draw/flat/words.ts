import type { Score } from '../../card/scores.ts'
import { type Slant, slantText } from '../../card/slants.ts'
import type { Fold } from '../../card/structure.ts'
import type { Length } from '../../length/length.ts'
import type { Wording } from '../../wording/wording.ts'
import type { Entry } from '../legend.ts'
import { namesOf, sentence } from '../phrases.ts'
import type { Picked } from '../picked.ts'
import type { FlatParts } from './parts.ts'
import { measuredParts, picksFold } from './picked.ts'

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

/** Which side to score where; what is cut out. A piece is turned over so that the edge marks are measured from stays. */
export function flatLegend(all: FlatParts, wording: Wording, has: Picked): Entry[] {
  const { say } = wording
  const parts = measuredParts(all, has)
  const groups = groupsOf(parts.scores)
  const straight = groups.map(({ fold, along, scores }): Entry => {
    // A short list stays on one line; in a long one, a number keeps its fraction.
    const list = distinct(scores.map((s) => s.at))
    const said = wording.lengths(list)
    const marks =
      list.length > 4 ? said.replace(/(\d) (?=\d+\/)/g, '$1\u00a0') : said.replaceAll(' ', '\u00a0')
    const far = scores.some((score) => isBroken(score, parts)) ? 'part' : 'whole'
    const way = scores[0]?.side === 'face' ? 'face' : along
    return { sample: fold, text: say('figures.score-at', { fold, way, marks, far }) }
  })
  const slanting = folds.flatMap((fold): Entry[] => {
    const count = parts.slants.filter((slant) => slant.fold === fold).length
    return count > 0 ? [{ sample: fold, text: say('figures.score-slanting', { fold, count }) }] : []
  })
  const cuts = has('cuts') ? cutsOf(parts, wording) : []
  const solid =
    cuts.length > 0
      ? [{ sample: 'cut' as const, text: say('figures.solid', { cuts: wording.list(cuts) }) }]
      : []
  const others = foldsLeftOut(all, has).map(
    (fold): Entry => ({ sample: fold, text: say('figures.not-in-this-step', { fold }) }),
  )
  return [...straight, ...slanting, ...others, ...solid]
}

const cutsOf = (parts: FlatParts, { say }: Wording): string[] => [
  ...(parts.trimmed ? [say('figures.cut-outline')] : []),
  ...(parts.holes.length > 0 ? [say('figures.cut-window')] : []),
  ...(parts.slits.length > 0 ? [say('figures.cut-slits', { count: parts.slits.length })] : []),
]

/** What a sighted reader takes from the drawing of a flat piece. */
export function flatWords(all: FlatParts, wording: Wording, has: Picked): string {
  const { say } = wording
  const parts = measuredParts(all, has)
  const { piece, plates, scores } = parts
  const slanting = (line: Slant) =>
    say('figures.slanting-line', {
      run: slantText(line, piece.size, wording),
      fold: line.fold,
      side: line.side,
    })
  const straight = ({ at, along, fold, side, ...score }: Score) =>
    say('figures.score-line', {
      at: wording.length(at),
      along,
      fold,
      side,
      reach: isBroken({ at, along, fold, side, ...score }, parts) ? 'part' : 'whole',
      from: wording.length(score.from),
      to: wording.length(score.to),
    })
  const leftOut = foldsLeftOut(all, has)
  return [
    say('figures.laid-flat', {
      piece: sentence(wording.name(piece.name)),
      stock: wording.name(piece.stock.name),
      up: parts.creases.length > 0 ? 'inside' : 'either',
      sized: has('size') ? 'yes' : 'no',
      size: wording.size(piece.size),
    }),
    ...(has('names') && plates.length > 1
      ? [
          say('figures.panels', {
            panels: namesOf(
              plates.map((p) => p.name),
              wording,
            ),
          }),
        ]
      : []),
    ...(scores.length > 0 ? [say('figures.score-lines', { lines: scores.map(straight).join('; ') })] : []),
    ...(parts.slants.length > 0
      ? [say('figures.slanting-lines', { lines: parts.slants.map(slanting).join('; ') })]
      : []),
    ...(leftOut.length > 0 ? [say('figures.without-numbers', { fold: leftOut[0] ?? '' })] : []),
    ...(parts.lettering.length > 0
      ? [say('figures.letters-there', { letters: parts.lettering.map((l) => l.letters.join('')).join(' ') })]
      : []),
    ...marksSaid(parts, wording, has),
    ...(piece.stock.direction === 'upright' ? [say('figures.pattern-upright')] : []),
    ...(piece.count > 1 ? [say('figures.cut-of-them', { count: piece.count })] : []),
  ].join(' ')
}

/** Where edges of windows, ends of slits and the like are. */
function marksSaid({ inner, ...parts }: FlatParts, wording: Wording, has: Picked): string[] {
  const { say } = wording
  const marks = (['width', 'height'] as const).flatMap((along) => {
    const own = distinct(inner.filter((m) => m.along === along && !m.slant).map((m) => m.at))
    return own.length > 0 ? [say('figures.marks-along', { marks: wording.lengths(own), along })] : []
  })
  const what = [
    ...(has('cuts') && parts.holes.length > 0 ? [say('figures.window-edges')] : []),
    ...(has('cuts') && parts.trimmed ? [say('figures.outline-corners')] : []),
    ...(has('cuts') && parts.slits.length > 0 ? [say('figures.slit-ends')] : []),
    ...(has('marks') && parts.lettering.length > 0 ? [say('figures.letter-edges')] : []),
  ]
  return marks.length > 0
    ? [say('figures.marked', { what: sentence(wording.list(what)), marks: wording.list(marks) })]
    : []
}

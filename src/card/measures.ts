import Fraction from 'fraction.js'
import type { Value } from '../length/evaluate.ts'
import { type Length, type Size, same } from '../length/length.ts'
import type { Wording } from '../wording/wording.ts'
import type { Envelope, Lettering } from './card.ts'
import type { Cell, Scope } from './scope.ts'
import { type Score, scoresOf } from './scores.ts'
import { slantsOf, slantText } from './slants.ts'
import type { Hinge, Piece } from './structure.ts'

const length = (value: Length): Value => ({ kind: 'length', value })
const size = (value: Size): Value => ({ kind: 'size', value })
const lengths = (value: readonly Length[]): Value => ({ kind: 'lengths', value })
const number = (n: number): Value => ({ kind: 'number', value: new Fraction(n) })
const text = (value: string): Value => ({ kind: 'text', value })

/** Defines `owner.width`, `owner.height` and `owner.size`. */
export function defineSize(scope: Scope, owner: string, cell: Cell<Size>): void {
  scope.define(`${owner}.width`, () => length(cell().width))
  scope.define(`${owner}.height`, () => length(cell().height))
  scope.define(`${owner}.size`, () => size(cell()))
}

/** Defines for a panel by a further name what can be asked of it, and `name`, the word to print for it. */
export function defineAlias(scope: Scope, alias: string, name: string, wording: Wording): void {
  for (const part of ['width', 'height', 'size'])
    scope.define(`${alias}.${part}`, () => scope.lookup([name, part], { start: 0, end: 0 }))
  scope.define(`${alias}.name`, () => text(wording.name(name)))
}

/** Defines what can be asked of a piece. */
export function definePiece(scope: Scope, name: string, piece: Cell<Piece>, wording: Wording): void {
  defineSize(scope, name, () => piece().size)
  scope.define(`${name}.count`, () => number(piece().count))
  scope.define(`${name}.stock`, () => text(wording.name(piece().stock.name)))
  scope.define(`${name}.thickness`, () => length(piece().stock.caliper))
}

/**
 * Defines `scores`, those of one fold only: `valleys`, `mountains`, and those of one way only: `uprights`, from the left
 * edge, and `levels`, from the lower edge. Several lines at one mark are one score. And `edge`, a text that says which
 * edge the scores are measured from, and `slants`, one that says where slanting score lines run.
 */
export function defineScores(
  scope: Scope,
  name: string,
  hinges: Cell<readonly Hinge[]>,
  piece: Cell<Piece>,
  wording: Wording,
): void {
  const all: Cell<readonly Score[]> = () => scoresOf(hinges())
  const define = (part: string, wanted: (score: Score) => boolean): void =>
    scope.define(`${name}.${part}`, () => {
      const marks = all().filter(wanted)
      const once = marks.filter(
        ({ at, along }, i) => marks.findIndex((m) => m.along === along && same(m.at, at)) === i,
      )
      return lengths(once.map(({ at }) => at))
    })
  define('scores', () => true)
  define('valleys', ({ fold }) => fold === 'valley')
  define('mountains', ({ fold }) => fold === 'mountain')
  define('uprights', ({ along }) => along === 'width')
  define('levels', ({ along }) => along === 'height')
  scope.define(`${name}.edge`, () => {
    const ways = new Set(all().map(({ along }) => along))
    const edges = ways.size > 1 ? 'both' : ways.has('height') ? 'lower' : 'left'
    return text(wording.say('figures.scored-from', { edges }))
  })
  scope.define(`${name}.slants`, () => {
    const slants = slantsOf(hinges()).map((slant) => slantText(slant, piece().size, wording))
    return text(slants.length > 0 ? wording.list(slants) : wording.say('measures.none'))
  })
}

export function defineLettering(scope: Scope, name: string, cell: Cell<Lettering>): void {
  scope.define(`${name}.gap`, () => length(cell().gap))
  scope.define(`${name}.marks`, () => lengths(cell().marks))
  scope.define(`${name}.count`, () => number(cell().letters.length))
}

export function defineEnvelope(scope: Scope, cell: Cell<Envelope>, wording: Wording): void {
  defineSize(scope, 'envelope', () => cell().sheet)
  scope.define('envelope.sheet', () => size(cell().sheet))
  scope.define('envelope.score', () => length(cell().score))
  scope.define('envelope.inside', () => size(cell().inside))
  for (const [part, along] of [
    ['sides', 'width'],
    ['ends', 'height'],
  ] as const)
    scope.define(`envelope.${part}`, () =>
      lengths(
        cell()
          .scores.filter((s) => s.along === along)
          .map((s) => s.at),
      ),
    )
  scope.define('envelope.stock', () => text(wording.name(cell().stock.name)))
  scope.define('envelope.folding', () => text(wording.list(cell().folding.map(wording.name))))
}

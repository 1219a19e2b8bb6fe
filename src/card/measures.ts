import Fraction from 'fraction.js'
import type { Value } from '../length/evaluate.ts'
import type { Length, Size } from '../length/length.ts'
import type { Envelope, Lettering } from './card.ts'
import type { Cell, Scope } from './scope.ts'
import { type Score, scoresOf } from './scores.ts'
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

/** Defines what can be asked of a piece. */
export function definePiece(scope: Scope, name: string, piece: Cell<Piece>): void {
  defineSize(scope, name, () => piece().size)
  scope.define(`${name}.count`, () => number(piece().count))
  scope.define(`${name}.stock`, () => text(piece().stock.name))
  scope.define(`${name}.thickness`, () => length(piece().stock.caliper))
}

/** Defines `scores`, and those of one fold only: `valleys`, `mountains`. */
export function defineScores(scope: Scope, name: string, hinges: Cell<readonly Hinge[]>): void {
  const all: Cell<readonly Score[]> = () => scoresOf(hinges())
  const at = (scores: readonly Score[]) => scores.map((score) => score.at)
  scope.define(`${name}.scores`, () => lengths(at(all())))
  scope.define(`${name}.valleys`, () => lengths(at(all().filter((s) => s.fold === 'valley'))))
  scope.define(`${name}.mountains`, () => lengths(at(all().filter((s) => s.fold === 'mountain'))))
}

export function defineLettering(scope: Scope, name: string, cell: Cell<Lettering>): void {
  scope.define(`${name}.gap`, () => length(cell().gap))
  scope.define(`${name}.marks`, () => lengths(cell().marks))
  scope.define(`${name}.count`, () => number(cell().letters.length))
}

export function defineEnvelope(scope: Scope, cell: Cell<Envelope>): void {
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
  scope.define('envelope.stock', () => text(cell().stock.name))
}

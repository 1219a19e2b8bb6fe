import type { Value } from '../length/evaluate.ts'
import { ExpressionError } from '../length/expression.ts'
import { nearestWord, suggestWord } from '../length/finding.ts'
import type { Names } from './names.ts'

/** Thrown for a name whose own mistake has been reported already; never reported again. */
export class BrokenName extends ExpressionError {
  constructor(name: string) {
    super('broken-name', `\`${name}\` has a mistake of its own`, { start: 0, end: 0 })
  }
}

/** A value that is computed when it is first asked for, and then kept. Asking may throw ExpressionError. */
export type Cell<T> = () => T

/** The names of one card, computed on demand, so that they may stand in any order and a circle is found. */
export interface Scope extends Names {
  /** A kept computation. `compute` gives undefined when it has reported its own mistake. */
  cell<T>(name: string, compute: () => T | undefined): Cell<T>
  /** Computes everything that nobody has asked for yet, in the order of its making, so that all mistakes come to light. */
  settle(unplaced: (error: ExpressionError) => void): void
  /** Gives `path`, such as `sea wall.height`, a value. */
  define(path: string, value: Cell<Value>): void
}

const nowhere = { start: 0, end: 0 }

export function makeScope(): Scope {
  const values = new Map<string, Cell<Value>>()
  const running: string[] = []
  const cells: Cell<unknown>[] = []
  return {
    cell(name, compute) {
      let state: 'new' | 'running' | 'done' | 'broken' = 'new'
      let kept: ReturnType<typeof compute>
      const cell = () => {
        if (state === 'running') throw circle([...running.slice(running.indexOf(name)), name])
        if (state === 'new') {
          state = 'running'
          running.push(name)
          try {
            kept = compute()
          } finally {
            running.pop()
            state = kept === undefined ? 'broken' : 'done'
          }
        }
        if (state === 'broken') throw new BrokenName(name)
        return kept as Exclude<typeof kept, undefined>
      }
      cells.push(cell)
      return cell
    },
    settle(unplaced) {
      for (const cell of cells)
        try {
          cell()
        } catch (error) {
          if (!(error instanceof ExpressionError)) throw error
          if (!(error instanceof BrokenName)) unplaced(error)
        }
    },
    define(path, value) {
      values.set(path, value)
    },
    lookup(path, at) {
      const value = values.get(path.join('.'))
      const list = value ? undefined : values.get(path.slice(0, -1).join('.'))
      if (!value && !list) throw unknown(path, [...values.keys()], at)
      try {
        return value ? value() : nth((list as Cell<Value>)(), path)
      } catch (error) {
        // What went wrong on the way to this name has no place of its own yet: it is this name's place.
        if (!(error instanceof ExpressionError) || error instanceof BrokenName) throw error
        throw new ExpressionError(error.rule, error.message, at, error.suggestion)
      }
    },
    paths: () => [...values.keys()],
  }
}

/** `base.scores.2` is the second of `base.scores`. */
function nth(list: Value, path: readonly string[]): Value {
  const [word = '', owner] = [path.at(-1), path.slice(0, -1).join('.')]
  if (list.kind !== 'lengths' || !/^\d+$/.test(word))
    throw new ExpressionError(
      'unknown-name',
      `\`${owner}\` has no part \`${word}\``,
      nowhere,
      `Write \`${owner}\``,
    )
  const value = list.value[Number(word) - 1]
  if (value) return { kind: 'length', value }
  const count = list.value.length
  throw new ExpressionError(
    'unknown-name',
    `\`${owner}\` has ${count} of them, so there is no \`${word}\``,
    nowhere,
    count > 0 ? `Write a number from 1 to ${count}` : `Take \`.${word}\` out`,
  )
}

function circle(way: readonly string[]): ExpressionError {
  const names = way.filter((name, i) => name !== way[i - 1])
  return new ExpressionError(
    'name-circle',
    `\`${names[0]}\` needs itself: ${names.map((n) => `\`${n}\``).join(' needs ')}`,
    nowhere,
    `Give \`${names[0]}\` a length that does not depend on the others`,
  )
}

function unknown(
  path: readonly string[],
  known: readonly string[],
  at: { start: number; end: number },
): ExpressionError {
  const key = path.join('.')
  const owner = path[0] ?? ''
  const parts = known.filter((k) => k.startsWith(`${owner}.`)).map((k) => k.slice(owner.length + 1))
  if (parts.length > 0) {
    const rest = path.slice(1).join('.')
    const near = parts.includes(rest) ? undefined : nearestWord(rest, parts)
    const main = parts.filter((p) => !/\.\d+$/.test(p))
    const cure = near
      ? `Write \`${owner}.${near}\``
      : `Write ${suggestWord(
          '',
          main.map((p) => `${owner}.${p}`),
        ).replace('Choose one of ', '')}`
    const message =
      rest === ''
        ? `\`${owner}\` is a piece, not a measure, expected a part of it`
        : `Unexpected part \`${rest}\` of \`${owner}\``
    return new ExpressionError('unknown-name', message, at, cure)
  }
  const owners = [...new Set(known.map((k) => k.split('.')[0] ?? ''))]
  const near = nearestWord(owner, owners)
  const fixed = near === undefined ? undefined : [near, ...path.slice(1)].join('.')
  return new ExpressionError(
    'unknown-name',
    `Unexpected name \`${key}\`, expected a piece or a length of this card`,
    at,
    fixed ? `Write \`${fixed}\`` : suggestWord(owner, owners),
  )
}

import { type Expression, ExpressionError } from './expression.ts'
import type { Unit } from './length.ts'
import { type Token, tokens } from './tokens.ts'

/** An expression nested deeper than this is refused rather than followed. */
const deepest = 50

/** Longer than any sum that a teacher checks by eye; what is far longer takes very long to read. */
const longest = 1000

/** A measure as it stands in braces: an expression, and the unit it is to be printed in if it says `as mm`. */
export interface Measure {
  readonly expression: Expression
  readonly unit?: Unit
}

/**
 * Reads a measure: the one grammar for card blocks, attributes and braces.
 *
 *     measure := pair ('as' ('in' | 'mm'))?
 *     pair    := sum ('x' sum)?
 *     sum     := product (('+' | '-') product)*
 *     product := factor (('*' | '/') factor)*
 *     factor  := '-' factor | number unit? | name ('.' part)* | '(' pair ')'
 *
 * @throws ExpressionError with the place of what was not expected.
 */
export function parseMeasure(text: string): Measure {
  if (text.length > longest)
    throw new ExpressionError(
      'expression',
      `This measure is ${text.length} characters long, and ${longest} is the most`,
      { start: 0, end: text.length },
      'Give its parts names of their own',
    )
  const reader = new Reader(text)
  const expression = reader.pair(0)
  const unit = reader.unitWanted()
  reader.mustEnd()
  return unit ? { expression, unit } : { expression }
}

class Reader {
  private readonly list: Token[]
  private at = 0

  constructor(private_: string) {
    this.list = tokens(private_)
  }

  pair(depth: number): Expression {
    const width = this.sum(depth)
    if (!this.take('x')) return width
    const height = this.sum(depth)
    return { kind: 'size', width, height, start: width.start, end: height.end }
  }

  unitWanted(): Unit | undefined {
    if (!this.take('as')) return undefined
    const token = this.next()
    if (token.kind === 'name' && (token.text === 'in' || token.text === 'mm')) return token.text
    throw new ExpressionError(
      'unit',
      `Unexpected ${said(token)} after \`as\`, expected a unit`,
      token,
      'Write `as in` or `as mm`',
    )
  }

  mustEnd(): void {
    const token = this.peek()
    if (token.kind === 'end') return
    const before = this.list[this.at - 1]
    const cure =
      before?.kind === 'number' && token.kind === 'name'
        ? 'Units are `in`, `mm`, `cm`, `m` and `ft`'
        : before?.kind === 'number' && token.kind === 'sign' && token.text === ','
          ? 'Decimals have a point here: write `12.5` for 12 and a half'
          : 'Put a sign such as `+` or `*` between two measures'
    throw new ExpressionError(
      'expression',
      `Unexpected ${said(token)}, expected the measure to end here`,
      token,
      cure,
    )
  }

  private sum(depth: number): Expression {
    let left = this.product(depth)
    for (let sign = this.take('+', '-'); sign; sign = this.take('+', '-'))
      left = join(sign, left, this.product(depth))
    return left
  }

  private product(depth: number): Expression {
    let left = this.factor(depth)
    for (let sign = this.take('*', '/'); sign; sign = this.take('*', '/'))
      left = join(sign, left, this.factor(depth))
    return left
  }

  private factor(depth: number): Expression {
    const token = this.next()
    if (depth > deepest)
      throw new ExpressionError(
        'expression',
        'This measure is nested too deeply',
        token,
        'Give its parts names of their own',
      )
    if (token.kind === 'sign' && token.text === '-') {
      const of = this.factor(depth + 1)
      return { kind: 'negative', of, start: token.start, end: of.end }
    }
    if (token.kind === 'sign' && token.text === '(') {
      const inside = this.pair(depth + 1)
      if (this.take(')')) return inside
      throw new ExpressionError(
        'expression',
        `Unexpected ${said(this.peek())}, expected a closing bracket`,
        this.peek(),
        'Close the bracket with `)`',
      )
    }
    if (token.kind === 'number') {
      const unit = this.peek()
      if (unit.kind !== 'unit')
        return { kind: 'number', value: token.value, start: token.start, end: token.end }
      this.next()
      return { kind: 'length', value: token.value, unit: unit.unit, start: token.start, end: unit.end }
    }
    if (token.kind === 'name') return this.name(token)
    throw new ExpressionError(
      'expression',
      `Unexpected ${said(token)}, expected a length or a name`,
      token,
      'Write a length such as `5 7/8 in` or `149 mm`, or a name such as `base.width`',
    )
  }

  private name(first: Token & { kind: 'name' }): Expression {
    const path = [first.text]
    let end = first.end
    while (this.take('.')) {
      const part = this.next()
      if (part.kind === 'name') path.push(part.text)
      else if (part.kind === 'number') path.push(part.value.toString())
      else
        throw new ExpressionError(
          'expression',
          `Unexpected ${said(part)} after the dot, expected a part such as \`width\``,
          part,
          'Write for example `base.width`',
        )
      end = part.end
    }
    return { kind: 'name', path, start: first.start, end }
  }

  private peek(): Token {
    return this.list[this.at] as Token
  }

  private next(): Token {
    const token = this.peek()
    if (token.kind !== 'end') this.at++
    return token
  }

  private take<S extends string>(...signs: S[]): S | undefined {
    const token = this.peek()
    if (token.kind !== 'sign' || !(signs as string[]).includes(token.text)) return undefined
    this.at++
    return token.text as S
  }
}

const join = (sign: '+' | '-' | '*' | '/', left: Expression, right: Expression): Expression => ({
  kind: 'binary',
  sign,
  left,
  right,
  start: left.start,
  end: right.end,
})

function said(token: Token): string {
  if (token.kind === 'end') return 'end'
  if (token.kind === 'number') return `number \`${token.value.toFraction(true)}\``
  if (token.kind === 'unit') return `unit \`${token.unit}\``
  return `\`${token.text}\``
}

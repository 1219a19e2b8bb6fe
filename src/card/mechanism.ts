import { type Length, type Size, shorter, zero } from '../length/length.ts'
import { defineSize } from './measures.ts'
import { checkKeys, fieldsOf, lengthCell, type Reading, report, say } from './reading.ts'
import type { Cell } from './scope.ts'
import { stockKeys } from './stock.ts'
import type { Stock } from './structure.ts'
import type { Built, Chosen, Limit, ReadFold } from './style.ts'
import { targetOf } from './targets.ts'
import type { Fields } from './yaml.ts'

/** The bare mechanism: the fold's parameters read and put on the grid, its limits checked, its structure built. */
export function mechanismCell(
  reading: Reading,
  fields: Fields,
  { style, entries }: ReadFold,
  chosen: Chosen,
  closed: Cell<Size>,
  stockOf: (fields: Fields, usual: string) => Stock,
): Cell<Built> {
  const base = fieldsOf(
    reading,
    fields.get('base')?.value,
    '`base` wants a group of keys',
    'Write `base: {stock: white card, weight: 300 gsm}`',
  )
  checkKeys(reading, base, stockKeys, '`base`')
  const stock = stockOf(base, 'card')
  const lengths = Object.entries(style.parameters).map(
    ([name, { usual, round }]) => [name, lengthCell(reading, name, entries.get(name), usual, round)] as const,
  )
  const built = reading.scope.cell('base', () => {
    const input = {
      ...chosen,
      closed: closed(),
      lengths: Object.fromEntries(lengths.map(([name, cell]): [string, Length] => [name, cell()])),
      stock,
      grid: reading.grid,
      say: (x: Length) => say(reading, x),
    }
    const negative = Object.entries(input.lengths).flatMap(([about, x]) =>
      shorter(x, zero) ? [belowZero(about, input.say(x))] : [],
    )
    const limits = negative.length > 0 ? negative : style.limits(input)
    for (const { about, message, suggestion } of limits)
      report(
        reading,
        'impossible-size',
        entries.get(about)?.place ?? fields.get('closed')?.value.place ?? { line: 1, column: 1 },
        message,
        suggestion,
      )
    return limits.length === 0 ? style.build(input) : undefined
  })
  for (const [name, side] of Object.entries(style.panels))
    defineSize(reading.scope, name, () => {
      const plate = built().plates.find((p) => p.name === name)
      if (!plate)
        throw new Error(`The fold \`${style.name}\` names a panel \`${name}\` that it does not build`)
      return targetOf(plate, side).size
    })
  return built
}

const belowZero = (about: string, length: string): Limit<string> => ({
  about,
  message: `\`${about}\` is ${length}, which is less than nothing`,
  suggestion: 'Give it a length of 0 or more',
})

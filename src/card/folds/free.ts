import { suggestWord } from '../../length/finding.ts'
import { minus, plus, zero } from '../../length/length.ts'
import { checkKeys, fieldsOf, type Reading, report, wordOf } from '../reading.ts'
import { point, strip } from '../strip.ts'
import type { Bond, Fold, Side } from '../structure.ts'
import type { FoldStyle, Parameter, ReadFold } from '../style.ts'
import { targetOf } from '../targets.ts'
import type { Entry, Fields } from '../yaml.ts'

/** The keys of a free card that no named fold has. */
export const freeKeys = ['along', 'panels', 'creases', 'glue']

/** What the catalogue says of a fold that is not in it. */
export const free = {
  name: 'free',
  summary: 'Panels, creases and glue as the lesson lists them.',
  starter: `fold: free
closed: 4 x 6 in
base: {stock: white card, weight: 250 gsm}
panels:
  front: closed.width
  back: closed.width
  pocket: closed.width / 2
creases: [valley, valley]
layers:
  front mat:
    on: front
    side: outside
    border: 1/8 in
    stock: patterned paper`,
} satisfies Partial<FoldStyle>

/** One panel stuck on another: `{panel: tab, onto: wall, edge: left, side: face, over: false}`. */
interface Glue {
  readonly panel: string
  readonly onto: string
  readonly edge: 'left' | 'right'
  readonly side: Side
  readonly over: boolean
}

/**
 * Reads a fold that is not in the catalogue: `panels` with their lengths in order, the `creases` between them, and
 * what is glued to what.
 */
export function freeFold(reading: Reading, fields: Fields): ReadFold {
  const panels = fieldsOf(
    reading,
    fields.get('panels')?.value,
    '`panels` wants names with lengths',
    'Write one `name: length` a line',
  )
  const names = [...panels.keys()]
  if (names.length === 0)
    report(
      reading,
      'missing-key',
      (fields.get('panels') ?? fields.get('fold'))?.keyPlace ?? { line: 1, column: 1 },
      'A free card lists its panels',
      'Add `panels:` with one `name: length` a line, from left to right',
    )
  const folds = creasesIn(reading, fields.get('creases')?.value, names.length, fields)
  const along = wordOf(reading, fields.get('along')?.value, ['width', 'height'])
  const glue = glueIn(reading, fields.get('glue')?.value, names)
  const parameters = Object.fromEntries(
    names.map((name): [string, Parameter] => [
      `${name}.${along}`,
      { help: `length of ${name}`, usual: '0', round: 'nearest' },
    ]),
  )
  const style: FoldStyle = {
    ...free,
    parameters,
    panels: Object.fromEntries(names.map((name): [string, Side] => [name, 'face'])),
    limits: ({ lengths, say }) =>
      names.flatMap((name) => {
        const about = `${name}.${along}`
        const length = lengths[about] ?? zero
        return length.gt(0)
          ? []
          : [
              {
                about,
                message: `\`${name}\` is ${say(length)} long`,
                suggestion: 'Give every panel a length above zero',
              },
            ]
      }),
    build({ closed, lengths, stock }) {
      const base = strip({
        stock,
        panels: names.map((name) => ({ name, length: lengths[`${name}.${along}`] ?? zero })),
        folds,
        across: along === 'width' ? closed.height : closed.width,
        along,
      })
      const find = (name: string) => base.plates.find((plate) => plate.name === name)
      const bonds = glue.flatMap(({ panel, onto, edge, side, over }): Bond[] => {
        const [a, b] = [find(panel), find(onto)].map((plate) => plate && targetOf(plate, side))
        if (!a || !b) return []
        const start = (t: typeof a) => (along === 'width' ? t.left : t.bottom)
        const end = (t: typeof a) => plus(start(t), along === 'width' ? t.size.width : t.size.height)
        const meets = edge === 'left' ? start(b) : end(b)
        // Turned over, the panel's far edge comes first.
        const move =
          over === (edge === 'left')
            ? plus(meets, over ? end(a) : zero, over ? zero : minus(zero, end(a)))
            : over
              ? plus(meets, start(a))
              : minus(meets, start(a))
        const turn = over && along === 'height' ? 180 : 0
        return [
          {
            plate: panel,
            onto,
            side,
            over,
            turn,
            at: along === 'width' ? point(move, zero) : point(zero, move),
            height: zero,
          },
        ]
      })
      const hinges = base.hinges.map(({ between }) => ({ hinge: between, degrees: 90 }))
      return {
        ...base,
        bonds,
        stops: [],
        display: {
          angles: glue.length > 0 ? hinges.slice(0, 1) : hinges,
          plate: names[0] ?? '',
          rests: along === 'width' ? 'upright' : 'flat',
          turn: 0,
        },
      }
    },
  }
  const entries = new Map(
    names.flatMap((name) => {
      const entry = panels.get(name)?.value
      return entry ? [[`${name}.${along}`, entry] as const] : []
    }),
  )
  return { style, entries }
}

function creasesIn(reading: Reading, entry: Entry | undefined, panels: number, fields: Fields): Fold[] {
  const items = entry?.kind === 'list' ? entry.items : []
  if (panels > 0 && items.length !== panels - 1)
    report(
      reading,
      'value',
      entry?.place ?? fields.get('panels')?.keyPlace ?? { line: 1, column: 1 },
      `There are ${panels} panels and ${items.length} creases, expected a crease between each panel and the next`,
      `List ${panels - 1} creases, such as \`creases: [valley, mountain]\``,
    )
  return items.map((item) => wordOf<Fold>(reading, item, ['valley', 'mountain']))
}

function glueIn(reading: Reading, entry: Entry | undefined, names: readonly string[]): Glue[] {
  const items = entry?.kind === 'list' ? entry.items : []
  return items.flatMap((item): Glue[] => {
    const fields = fieldsOf(
      reading,
      item,
      '`glue` wants groups of keys',
      'Write `- {panel: tab, onto: wall}`',
    )
    checkKeys(reading, fields, ['panel', 'onto', 'edge', 'side', 'over'], 'a glued panel')
    const name = (key: string): string | undefined => {
      const value = fields.get(key)?.value
      if (value?.kind === 'text' && names.includes(value.text)) return value.text
      report(
        reading,
        'unknown-name',
        value?.place ?? item.place,
        `\`${key}\` wants the name of a panel`,
        suggestWord(value?.kind === 'text' ? value.text : '', names),
      )
      return undefined
    }
    const [panel, onto] = [name('panel'), name('onto')]
    if (!panel || !onto) return []
    return [
      {
        panel,
        onto,
        edge: wordOf(reading, fields.get('edge')?.value, ['left', 'right']),
        side:
          wordOf<'inside' | 'outside'>(reading, fields.get('side')?.value, ['inside', 'outside']) === 'inside'
            ? 'face'
            : 'back',
        over: wordOf(reading, fields.get('over')?.value, ['no', 'yes']) === 'yes',
      },
    ]
  })
}

import fc from 'fast-check'

/** Pieces that have a meaning somewhere, and numbers at the ends of what can be said. */
const pieces = [
  ...[
    '{',
    '}',
    '[',
    ']',
    '(',
    ')',
    ':',
    ',',
    '"',
    "'",
    '`',
    '```',
    '~~~',
    '|',
    '>',
    '&a ',
    '*a',
    '<<: *a',
    '!!int ',
  ],
  ...[
    '---\n',
    '...\n',
    '\n',
    '\n\n',
    '\r\n',
    '\r',
    '\t',
    '\0',
    '\ufeff',
    '\u2028',
    '\ud800',
    '\u202e',
    '  ',
    '    ',
  ],
  ...[
    '0',
    '-1',
    '1e9',
    '999999999999999999999',
    '0.000000000001',
    '1/0',
    '0/0',
    '1/3',
    '-5 in',
    '0 mm',
    '100 km',
  ],
  ...[
    ' in',
    ' mm',
    ' cm',
    '"',
    ' x ',
    ' × ',
    ' + ',
    ' - ',
    ' * ',
    ' / ',
    '½',
    '⅞',
    'A4',
    'A999',
    'landscape',
  ],
  ...[
    'base',
    'closed',
    'closed.width',
    '.size',
    '.scores.1',
    '.constructor',
    '__proto__',
    'toString',
    'layers:',
  ],
  ...[
    'fold: ',
    'fold: free',
    'fold: bridge',
    'count: ',
    'on: ',
    'stock: ',
    'each:',
    'people: ',
    'sheets:',
    'sizes: ',
  ],
  ...[
    ':minutes[5]',
    ':minutes[99999999]',
    ':drying[',
    '::figure[a]{show=flat of=base}',
    '::figure{show=sheet}',
    ':::tip\n',
    ':::\n',
  ],
  ...[
    '1. ',
    '99999999999. ',
    '- ',
    '# ',
    '<script>',
    '<!--',
    '{{',
    '{{{',
    '}}',
    '{{> x}}',
    '{{#each ',
    '{{/',
    '![a](b.png)',
  ],
  ...[
    ':a[b]{',
    '\\',
    '%',
    '$',
    '£',
    '0.1 + 0.2',
    'null',
    'true',
    '~',
    '2026-02-30',
    '25:61',
    '5 kg',
    '10 m',
    '1 per 0',
  ],
]

const piece = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom(...pieces) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 8 }) },
  {
    weight: 1,
    arbitrary: fc.tuple(fc.constantFrom(...pieces), fc.nat(3000)).map(([text, times]) => text.repeat(times)),
  },
  { weight: 1, arbitrary: fc.integer().map(String) },
)

/** A place in a text, as a share of it. */
const share = fc.double({ min: 0, max: 1, noNaN: true })

/** Changes a text: another good text is at hand to take from. */
type Change = (text: string, other: string) => string

const at = (text: string, where: number): number => Math.floor(where * text.length)
const numbers = /\d+(?:[./]\d+)?/g

const change: fc.Arbitrary<Change> = fc.oneof(
  fc.tuple(share, piece).map(
    ([where, put]): Change =>
      (text) =>
        text.slice(0, at(text, where)) + put + text.slice(at(text, where)),
  ),
  fc.tuple(share, fc.nat(40)).map(
    ([where, count]): Change =>
      (text) =>
        text.slice(0, at(text, where)) + text.slice(at(text, where) + count),
  ),
  fc.tuple(share, fc.nat(60), fc.integer({ min: 2, max: 30 })).map(
    ([where, count, times]): Change =>
      (text) => {
        const start = at(text, where)
        return (
          text.slice(0, start) + text.slice(start, start + count).repeat(times) + text.slice(start + count)
        )
      },
  ),
  fc.tuple(share, share, fc.nat(80)).map(
    ([where, from, count]): Change =>
      (text, other) =>
        text.slice(0, at(text, where)) +
        other.slice(at(other, from), at(other, from) + count) +
        text.slice(at(text, where)),
  ),
  // One of the numbers in it.
  fc.tuple(share, piece).map(
    ([where, put]): Change =>
      (text) => {
        const all = [...text.matchAll(numbers)]
        const found = all[Math.min(all.length - 1, Math.floor(where * all.length))]
        return found
          ? text.slice(0, found.index) + put + text.slice(found.index + found[0].length)
          : text + put
      },
  ),
  // One of the lines in it, elsewhere.
  fc.tuple(share, share).map(
    ([from, to]): Change =>
      (text) => {
        const lines = text.split('\n')
        const [line = ''] = lines.splice(Math.floor(from * lines.length), 1)
        lines.splice(Math.floor(to * lines.length), 0, line)
        return lines.join('\n')
      },
  ),
)

/** Good texts with a few changes, and texts of pieces alone. They shrink to few changes. */
export const textsLike = (good: readonly string[]): fc.Arbitrary<string> => {
  const known = good.length > 0 ? good : ['']
  return fc.oneof(
    {
      weight: 5,
      arbitrary: fc
        .tuple(
          fc.constantFrom(...known),
          fc.constantFrom(...known),
          fc.array(change, { minLength: 1, maxLength: 6 }),
        )
        .map(([text, other, changes]) => changes.reduce((changed, make) => make(changed, other), text)),
    },
    { weight: 1, arbitrary: fc.array(piece, { maxLength: 12 }).map((all) => all.join('')) },
  )
}

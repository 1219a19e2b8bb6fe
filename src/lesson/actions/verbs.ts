/** What a hand does in a step. */
export type ActionKind =
  /** Cutting a piece from its sheet, or cutting something out of it. */
  | 'cut'
  /** Trimming, rounding and snipping a piece that is there. */
  | 'shape'
  | 'score'
  | 'fold'
  /** With glue or tape. */
  | 'stick'
  /** Putting a thing somewhere, with or without glue. */
  | 'lay'
  | 'write'
  /** Turning, lifting, holding, rubbing: nothing of the card changes. */
  | 'handle'

/** What a verb says. Pressing is laying when it is on something. */
export type VerbKind = ActionKind | 'press'

/** How a verb stands in a sentence: `cut`, `cutting`, `was cut`. */
export type VerbForm = 'base' | 'ing' | 'done'

export interface VerbMeaning {
  readonly kind: VerbKind
  readonly forms: readonly VerbForm[]
}

/** Verbs whose other forms are made by rule, and after a colon those that are not: base, form with -ing, past form. */
const rows: readonly (readonly [VerbKind, string])[] = [
  ['cut', 'cut:cutting:cut die-cut:die-cutting:die-cut slice punch chop tear:tearing:torn carve guillotine'],
  ['shape', 'trim:trimming:trimmed snip:snipping:snipped clip:clipping:clipped round taper bevel scallop'],
  ['score', 'score crease emboss groove indent'],
  ['fold', 'fold bend:bending:bent pleat concertina'],
  [
    'stick',
    'stick:sticking:stuck adhere glue tape attach mount fix fasten affix paste secure staple sew:sewing:sewn pin:pinning:pinned bond',
  ],
  [
    'lay',
    'lay:laying:laid place put:putting:put set:setting:set position slip:slipping:slipped slide:sliding:slid insert wrap:wrapping:wrapped tuck add hang:hanging:hung join thread tie:tying:tied centre center align apply arrange raise fit:fitting:fitted pop:popping:popped stack hook feed:feeding:fed',
  ],
  ['press', 'press'],
  [
    'write',
    'write:writing:written letter draw:drawing:drawn stamp colour color paint print ink decorate mark pencil number sign',
  ],
  [
    'handle',
    'turn flip:flipping:flipped rotate stand:standing:stood hold:holding:held lift open push pull rub:rubbing:rubbed peel rest bring:bringing:brought smooth burnish shut:shutting:shut close run:running:run take:taking:taken line check',
  ],
]

/** Every form of every verb. */
export const verbs: ReadonlyMap<string, VerbMeaning> = new Map(
  rows.flatMap(([kind, list]) => formsOf(kind, list)),
)

function formsOf(kind: VerbKind, list: string): [string, VerbMeaning][] {
  return list.split(' ').flatMap((row) => {
    const [base = '', ing = regular(base, 'ing'), done = regular(base, 'ed')] = row.split(':')
    const forms = new Map<string, VerbForm[]>()
    for (const [word, form] of [
      [base, 'base'],
      [ing, 'ing'],
      [done, 'done'],
    ] as const)
      forms.set(word, [...(forms.get(word) ?? []), form])
    return [...forms].map(([word, all]): [string, VerbMeaning] => [word, { kind, forms: all }])
  })
}

function regular(base: string, end: 'ing' | 'ed'): string {
  return `${base.replace(/e$/, '')}${end}`
}

/** After these words a verb is one that the reader is to do. */
export const beforeBase: ReadonlySet<string> = new Set(
  'and then or but to now next you we please also again first finally should must may can will let lets just'.split(
    ' ',
  ),
)

/** After these a form with -ing is something that is done. */
export const beforeIng: ReadonlySet<string> = new Set('by after start begin keep finish and'.split(' '))

/** After these a past form tells of something that is done to what stands before it. */
export const beforeDone: ReadonlySet<string> = new Set(
  'is are be been being gets get has have having once when after and'.split(' '),
)

/** What follows them in a clause is not done, not yet, or only perhaps. */
export const notDone: ReadonlySet<string> = new Set(
  "before until till unless if without instead never not don't cannot can't rather avoid".split(' '),
)

/** What follows them tells of what stands before them, as in `the film that is scored`. */
export const relative: ReadonlySet<string> = new Set('that which what where who whose how'.split(' '))

/** With one of these behind it a verb is the first half of a noun, such as a fold line or a glue stick. */
export const nounTails: ReadonlySet<string> = new Set(
  'line lines stick sticks gun guns dots pads measure lap'.split(' '),
)

import { z } from 'zod'

/** The shapes that `--json` answers promise. Strict: a key that is not promised is an error too. */
export const length = z
  .strictObject({
    mm: z.number(),
    in: z.number(),
    text: z.string().regex(/^\d+( \d+\/\d+|\/\d+|\.\d+)? (in|mm)$/),
  })
  .refine(({ mm, in: inches }) => Math.abs(mm - 25.4 * inches) < 1e-4, 'both units are the same length')
export const size = z.strictObject({ width: length, height: length })

export const finding = z.strictObject({
  rule: z.string().min(1),
  severity: z.enum(['error', 'warning', 'hint']),
  line: z.int().min(1).optional(),
  column: z.int().min(1).optional(),
  message: z.string().min(1),
  suggestion: z.string().min(1).optional(),
})

const line = { x1: length, y1: length, x2: length, y2: length }

const piece = z.strictObject({
  name: z.string(),
  stock: z.string(),
  count: z.int().min(1),
  width: length,
  height: length,
  scores: z.array(
    z.strictObject({
      at: length,
      along: z.enum(['width', 'height']),
      from: length,
      to: length,
      fold: z.enum(['valley', 'mountain']),
      side: z.enum(['face', 'back']),
    }),
  ),
  slants: z
    .array(
      z.strictObject({
        ...line,
        fold: z.enum(['valley', 'mountain']),
        side: z.enum(['face', 'back']),
      }),
    )
    .min(1)
    .optional(),
  cuts: z.array(z.strictObject(line)),
})

const card = z.strictObject({
  name: z.string(),
  fold: z.string(),
  closed: size,
  standing: z.strictObject({ width: length, height: length, depth: length }).optional(),
  thickness: length.optional(),
  freedom: z.int().min(0).optional(),
  pieces: z.array(piece).min(1),
  lettering: z.array(
    z.strictObject({ name: z.string(), on: z.string(), gap: length, marks: z.array(length).min(1) }),
  ),
  envelope: z
    .strictObject({
      make: z.enum(['diagonal', 'side seam']),
      stock: z.string(),
      sheet: size,
      score: length,
      inside: size,
      scores: z.array(z.strictObject({ at: length, along: z.enum(['width', 'height']) })).optional(),
      slants: piece.shape.slants,
      cuts: piece.shape.cuts.min(1),
      folding: z.array(z.string()).length(4),
    })
    .optional(),
  fits: z
    .array(
      z.strictObject({
        name: z.string(),
        series: z.enum(['ISO 269', 'US trade']),
        size,
        room: size,
        tight: z.boolean(),
      }),
    )
    .optional(),
  post: z
    .array(
      z.strictObject({
        country: z.string(),
        class: z.string().min(1),
        inside: z.string().min(1),
        why: z.array(z.string().min(1)),
        weight: z.string().min(1).optional(),
        asOf: z.string().min(1),
      }),
    )
    .min(1)
    .optional(),
  findings: z.array(finding),
})

export const measuresShape = z.strictObject({
  lesson: z.string(),
  units: z.enum(['in', 'mm']),
  grid: z.string(),
  cards: z.array(card),
  findings: z.array(finding),
})

const named = { name: z.string().min(1), help: z.string().min(1) }

export const foldsShape = z.strictObject({
  folds: z.array(
    z.strictObject({
      name: z.string(),
      group: z.string().min(1),
      summary: z.string().min(1),
      remainder: z.string().optional(),
      parameters: z.array(z.strictObject({ ...named, usual: z.string().min(1) })),
      counts: z.array(
        z.strictObject({ ...named, usual: z.int(), least: z.int().min(0), most: z.int().min(1) }),
      ),
      choices: z.array(z.strictObject({ ...named, words: z.array(z.string().min(1)).min(2) })),
      parts: z.array(z.strictObject(named)).min(1).optional(),
      panels: z.array(z.strictObject({ name: z.string(), side: z.enum(['face', 'back']) })),
      pieces: z
        .array(z.strictObject({ name: z.string(), count: z.int().min(1), width: length, height: length }))
        .min(1),
      closed: size,
      box: z.boolean(),
      standing: z.strictObject({ width: length, height: length, depth: length }).optional(),
      thickness: length.optional(),
      freedom: z.int().min(0).optional(),
    }),
  ),
})

const area = z
  .strictObject({ cm2: z.number(), sqIn: z.number(), text: z.string().regex(/^\d+(\.\d)? (sq in|cm²)$/) })
  .refine(({ cm2, sqIn }) => Math.abs(cm2 - 6.4516 * sqIn) < 1e-4, 'both units are the same area')
const dose = z.union([z.strictObject({ g: z.number() }), z.strictObject({ ml: z.number() })])
const need = z.union([z.int(), length, area, dose, z.string()])
const quantity = {
  count: z.int().min(0).optional(),
  of: z.string().optional(),
  length: length.optional(),
  area: area.optional(),
  dose: dose.optional(),
  text: z.string().optional(),
}
const item = { item: z.string().min(1), card: z.string().optional() }
const supply = z.strictObject({ ...item, ...quantity, rule: z.string().optional() })

export const kitShape = z.strictObject({
  lesson: z.string(),
  people: z.int().min(1),
  spare: z.int().min(0),
  each: z.array(
    z.discriminatedUnion('kind', [
      z.strictObject({ ...item, kind: z.literal('piece'), count: z.int().min(1), size, stock: z.string() }),
      z.strictObject({ ...item, kind: z.literal('letters'), count: z.int().min(1), letters: z.string() }),
      z.strictObject({
        ...item,
        kind: z.literal('count'),
        count: z.int(),
        of: z.string().optional(),
        rule: z.string().optional(),
      }),
      z.strictObject({ ...item, kind: z.literal('length'), length }),
      z.strictObject({ ...item, kind: z.literal('area'), area }),
      z.strictObject({ ...item, kind: z.literal('dose'), dose }),
      z.strictObject({ ...item, kind: z.literal('text'), text: z.string() }),
    ]),
  ),
  shared: z.array(supply),
  tutor: z.array(supply),
  stocks: z.array(
    z.strictObject({
      stock: z.string(),
      pieces: z.array(z.strictObject({ ...item, count: z.int().min(1), size })).min(1),
    }),
  ),
  buy: z.array(
    z.strictObject({
      item: z.string(),
      need,
      sold: z.string().optional(),
      count: z.int().optional(),
      have: z.int().optional(),
      cost: z.number().optional(),
    }),
  ),
})

const fees = z.array(z.strictObject({ for: z.string(), amount: z.number() }))

/** What `kit CLASS --json` answers. */
export const classKitShape = z.strictObject({
  title: z.string().min(1),
  people: z.int().min(1),
  spare: z.int().min(0),
  each: z.array(z.looseObject({ item: z.string(), lesson: z.string() })),
  shared: z.array(supply),
  tables: z
    .array(
      z.strictObject({
        name: z.string(),
        people: z.int().min(1),
        kits: z.array(z.strictObject({ lesson: z.string(), count: z.int().min(1) })),
        shared: z.array(supply),
      }),
    )
    .min(1)
    .optional(),
  tutor: z.array(supply),
  buy: z.array(
    z.strictObject({
      item: z.string(),
      need,
      sheet: size.optional(),
      sold: z.string().min(1).optional(),
      count: z.int().min(0).optional(),
      have: need,
      cost: z.number().optional(),
      at: z.string().optional(),
    }),
  ),
  total: z.number(),
  aHead: z.number(),
  price: z
    .strictObject({
      materials: z.number(),
      fees,
      each: fees,
      cost: z.number(),
      paying: z.int().min(1),
      wantedMargin: z.number(),
      charge: z.number(),
      left: z.number(),
      margin: z.number(),
      paysFrom: z.int().min(0),
    })
    .optional(),
  weight: z.strictObject({
    stocks: z.array(
      z.strictObject({ stock: z.string(), gsm: z.number(), pieces: z.number(), sheets: z.number() }),
    ),
    perKit: z.array(z.strictObject({ lesson: z.string(), grams: z.number() })),
    unknown: z.array(z.string()),
  }),
  findings: z.array(finding),
})

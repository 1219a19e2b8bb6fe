import type { Card } from '../../card/card.ts'
import type { Hinge, Piece, Segment, Structure } from '../../card/structure.ts'
import { type Length, same, zero } from '../../length/length.ts'

/** Lengths of a card, each under a key that it has at every size. */
export type Values = ReadonlyMap<string, Length>

/** A number that a lesson prints of a card. */
export interface CardNumber {
  /** As it is asked for in braces, such as `base.scores.2`; plain words for what has no name. */
  readonly name: string
  /** The part of the card that it belongs to. */
  readonly owner: string
  /** The values that all come to this number: several lines may lie at one mark. */
  readonly keys: readonly string[]
}

const nowhere = { start: 0, end: 0 }
/** What scores are asked for by; each line is followed by the panels that it lies between instead. */
const scoreLists = ['scores', 'valleys', 'mountains', 'uprights', 'levels']

interface Line extends Segment {
  readonly piece: Piece
  readonly key: string
  readonly kind: 'score' | 'cut'
}

/** All lengths of a card: those with names, and where its lines run. */
export function valuesOf(card: Card): Values {
  const values = new Map(namedValues(card))
  for (const { key, from, to } of linesOf(card)) {
    values.set(`${key} x1`, from.x).set(`${key} y1`, from.y)
    values.set(`${key} x2`, to.x).set(`${key} y2`, to.y)
  }
  return values
}

/** All numbers of a card, the named ones first. */
export function numbersOf(card: Card): CardNumber[] {
  const named = [...namedValues(card).keys()].map((name) => ({ name, owner: ownerOf(name), keys: [name] }))
  const lines = linesOf(card)
  const pieces = new Map(lines.map(({ piece }) => [piece.name, piece]))
  return [...named, ...[...pieces.values()].flatMap((piece) => marksOf(piece, lines))]
}

const ownerOf = (name: string): string => (name.includes('.') ? (name.split('.')[0] ?? '') : 'card')

function namedValues({ names }: Card): Map<string, Length> {
  const paths = names.paths()
  const values = new Map<string, Length>()
  for (const path of paths) {
    const [owner = '', ...rest] = path.split('.')
    const part = rest.at(-1) ?? ''
    // What turns with the card has its numbers under the name of the panel; thickness is what paper is bought by.
    if (paths.includes(`${owner}.name`) || scoreLists.includes(part)) continue
    if (part === 'thickness' && owner !== 'card') continue
    const value = names.lookup(path.split('.'), nowhere)
    if (value.kind === 'length') values.set(path, value.value)
    if (value.kind === 'lengths')
      for (const [i, x] of value.value.entries()) values.set(`${path}.${i + 1}`, x)
    // The width and the height of all other sizes are names of their own.
    if (path === 'envelope.inside' && value.kind === 'size')
      values.set(`${path} width`, value.value.width).set(`${path} height`, value.value.height)
  }
  return values
}

/** The score lines and the cuts of all pieces. Those of the envelope follow from its named measures. */
function linesOf({ structure }: Card): Line[] {
  return structure.pieces.flatMap((piece) => [
    ...hingeLines(structure, piece),
    ...piece.cuts.map((cut, i): Line => ({ ...cut, piece, kind: 'cut', key: `cut ${piece.name} ${i}` })),
  ])
}

function hingeLines({ plates, hinges }: Structure, piece: Piece): Line[] {
  const own = new Set(plates.filter((plate) => plate.piece === piece.name).map(({ name }) => name))
  const count = new Map<string, number>()
  return hinges
    .filter(({ between }) => own.has(between[0]))
    .map(({ between, line }: Hinge): Line => {
      const panels = between.join(' and ')
      const n = count.get(panels) ?? 0
      count.set(panels, n + 1)
      return { ...line, piece, kind: 'score', key: `score ${piece.name} ${panels} ${n}` }
    })
}

/** Marks along the edges of a piece: of its scores, in their order, then of where slanting scores and cuts begin and end. */
function marksOf(piece: Piece, lines: readonly Line[]): CardNumber[] {
  const own = lines.filter((line) => line.piece.name === piece.name)
  const across: Mark[] = []
  const up: Mark[] = []
  const scores: Mark[] = []
  for (const line of own) {
    const { from, to, key, kind } = line
    const isUpright = same(from.x, to.x)
    const isLevel = same(from.y, to.y)
    if (kind === 'score' && isUpright) scores.push({ at: from.x, along: 'width', key: `${key} x1` })
    else if (kind === 'score' && isLevel) scores.push({ at: from.y, along: 'height', key: `${key} y1` })
    else {
      across.push({ at: from.x, key: `${key} x1` }, { at: to.x, key: `${key} x2` })
      up.push({ at: from.y, key: `${key} y1` }, { at: to.y, key: `${key} y2` })
    }
  }
  const marked = scores.sort((a, b) => a.at.compare(b.at))
  const byMark = gathered(marked).map((marks, i) => ({
    name: `${piece.name}.scores.${i + 1}`,
    owner: piece.name,
    keys: marks.map(({ key }) => key),
  }))
  const rest = (marks: readonly Mark[], along: 'width' | 'height'): CardNumber[] =>
    gathered(marks.toSorted((a, b) => a.at.compare(b.at)))
      .filter(([mark]) => mark && !same(mark.at, zero) && !same(mark.at, piece.size[along]))
      .map((all) => ({
        name: `${piece.name}, cuts ${along === 'width' ? 'across' : 'up'}`,
        owner: piece.name,
        keys: all.map(({ key }) => key),
      }))
  return [...byMark, ...rest(across, 'width'), ...rest(up, 'height')]
}

interface Mark {
  readonly at: Length
  readonly along?: 'width' | 'height'
  readonly key: string
}

/** Marks at one place of one edge together. */
function gathered(marks: readonly Mark[]): Mark[][] {
  const groups: Mark[][] = []
  for (const mark of marks) {
    const group = groups.find(([first]) => first && first.along === mark.along && same(first.at, mark.at))
    if (group) group.push(mark)
    else groups.push([mark])
  }
  return groups
}

import type { Length } from '../length/length.ts'
import type { Model } from './model.ts'
import type { MapCell, MappedSheet } from './pose.ts'
import { type Cell, outlineOf, type Shape, slicesOf } from './slices.ts'
import { lengthOf } from './whole.ts'

/** Plates and pads laid flat on each other. */
export interface Pile {
  readonly model: Model
  /** Places of the plates in the model, from front to back. */
  readonly order: readonly number[]
  /** Whether the face of a plate of the model looks at the viewer. */
  readonly isFaceUp: (plate: number) => boolean
  /** What the plates cover, in the same order, in mm. */
  readonly shapes: readonly Shape[]
  /** What the pads of the model cover, in mm. */
  readonly pads: readonly Shape[]
}

/** A sheet in a cell. */
export interface PileSheet {
  /** Its place in the model's plates. */
  readonly plate: number
  /** The foam and pads behind it, in the model's thin units. */
  readonly behind: number
}

/** A cell of the map with its thicknesses counted in the model's thin units. */
export interface PileCell {
  readonly outline: MapCell['outline']
  /** Foam and pads in front of all sheets. */
  readonly before: number
  /** From front to back. Cells with the same sheets have the same list. */
  readonly sheets: readonly PileSheet[]
}

/** Cuts a pile into cells that have the same sheets and pads everywhere. */
export function cellsOf(pile: Pile): PileCell[] {
  const stacks = new Map<Cell['shapes'], Omit<PileCell, 'outline'>>()
  const stackIn = ({ shapes }: Cell) => {
    const stack = stacks.get(shapes) ?? stackOf(pile, shapes)
    stacks.set(shapes, stack)
    return stack
  }
  return slicesOf([...pile.shapes, ...pile.pads], []).flatMap((slice) =>
    slice.cells.map((cell) => ({ outline: outlineOf(slice, cell), ...stackIn(cell) })),
  )
}

/** Foam counts between two plates that are both there, next to the one that it carries; a pad on the side it is on. */
function stackOf({ model, order, isFaceUp }: Pile, shapes: readonly number[]): Omit<PileCell, 'outline'> {
  const here = shapes.flatMap((shape) => order[shape] ?? [])
  const gaps = Array.from({ length: here.length + 1 }, () => 0)
  const add = (plate: number, inFront: boolean, height: number): void => {
    // A pad that hangs over its plate lies in front of everything where the plate is not.
    const gap = Math.max(0, here.indexOf(plate) + (inFront ? 0 : 1))
    gaps[gap] = (gaps[gap] ?? 0) + height
  }
  for (const { plate, onto, height } of model.bonds)
    if (here.includes(plate) && here.includes(onto))
      add(plate, here.indexOf(plate) > here.indexOf(onto), height)
  for (const shape of shapes) {
    const pad = model.pads[shape - order.length]
    if (pad) add(pad.onto, pad.front === isFaceUp(pad.onto), pad.height)
  }
  const [before = 0, ...behind] = gaps
  return { before, sheets: here.map((plate, i) => ({ plate, behind: behind[i] ?? 0 })) }
}

/** The map of a pile, exact in its thicknesses. */
export function mapOf(model: Model, cells: readonly PileCell[]): MapCell[] {
  const lengths = new Map<number, Length>()
  const length = (n: number): Length => {
    const known = lengths.get(n) ?? lengthOf(n, model.thinPerMm)
    lengths.set(n, known)
    return known
  }
  const caliper = (plate: number): number => model.plates[plate]?.caliper ?? 0
  const mapped = (sheets: readonly PileSheet[]): readonly MappedSheet[] =>
    sheets.map(({ plate, behind }) => ({
      plate: model.plates[plate]?.name ?? '',
      caliper: length(caliper(plate)),
      behind: length(behind),
    }))
  // A pile of many layers has many more cells than stacks: each stack is told once.
  const stacks = new Map<readonly PileSheet[], Omit<MapCell, 'outline'>>()
  return cells.map(({ outline, before, sheets }) => {
    const stack = stacks.get(sheets) ?? {
      sheets: mapped(sheets),
      thickness: length(sheets.reduce((sum, { plate, behind }) => sum + caliper(plate) + behind, before)),
    }
    stacks.set(sheets, stack)
    return { outline, ...stack }
  })
}

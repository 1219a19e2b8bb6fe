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

/** A cell of the map with its thicknesses counted in the model's thin units. */
export interface PileCell {
  readonly outline: MapCell['outline']
  /** Foam and pads in front of all sheets. */
  readonly before: number
  /** Places in the model's plates, from front to back, and the foam and pads behind each. */
  readonly sheets: readonly { readonly plate: number; readonly behind: number }[]
}

/** Cuts a pile into cells that have the same sheets and pads everywhere. */
export function cellsOf(pile: Pile): PileCell[] {
  const stacks = new Map<string, Omit<PileCell, 'outline'>>()
  const stackIn = ({ shapes }: Cell) => {
    const key = shapes.join()
    const stack = stacks.get(key) ?? stackOf(pile, shapes)
    stacks.set(key, stack)
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
  return cells.map(({ outline, before, sheets }) => {
    const caliper = (plate: number) => model.plates[plate]?.caliper ?? 0
    return {
      outline,
      sheets: sheets.map(
        ({ plate, behind }): MappedSheet => ({
          plate: model.plates[plate]?.name ?? '',
          caliper: length(caliper(plate)),
          behind: length(behind),
        }),
      ),
      thickness: length(sheets.reduce((sum, { plate, behind }) => sum + caliper(plate) + behind, before)),
    }
  })
}

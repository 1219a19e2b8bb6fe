import type { Area, Box } from './boxes.ts'

/** A piece as it lies on the sheet, from the sheet's left and lower edge. */
export interface Laid extends Area {
  readonly kind: number
  readonly x: number
  readonly y: number
  readonly turned: boolean
}

/** A cut from edge to edge of what is in hand. */
export interface Stroke {
  /** `width`: an upright cut, so far from the sheet's left edge; `height`: a level one, from its lower edge. */
  readonly across: 'width' | 'height'
  readonly at: number
  /** The same from the left or lower edge of what is in hand: where the trimmer is set. */
  readonly set: number
  readonly from: number
  readonly to: number
}

interface Spot {
  readonly box: Box
  readonly x: number
  readonly y: number
}

/** Where the pieces of a box lie on a sheet, at its lower left, and the cuts in the order in which a trimmer makes them. */
export function layOut(box: Box, sheet: Area): { laid: Laid[]; strokes: Stroke[] } {
  const laid: Laid[] = []
  const strokes: Stroke[] = []
  /** Cuts a box out of the lower left of what is in hand. */
  const trim = ({ box, x, y }: Spot, { width, height }: Area): void => {
    if (box.width < width)
      strokes.push({ across: 'width', at: x + box.width, set: box.width, from: y, to: y + height })
    if (box.height < height)
      strokes.push({ across: 'height', at: y + box.height, set: box.height, from: x, to: x + box.width })
    part({ box, x, y })
  }
  const part = ({ box, x, y }: Spot): void => {
    const { width, height, made } = box
    if (made.of === 'piece') {
      laid.push({ kind: made.kind, x, y, width, height, turned: made.turned })
      return
    }
    const { first, second, lies } = made
    if (lies === 'beside') {
      strokes.push({ across: 'width', at: x + first.width, set: first.width, from: y, to: y + height })
      trim({ box: first, x, y }, { width: first.width, height })
      trim({ box: second, x: x + first.width, y }, { width: second.width, height })
    } else {
      strokes.push({ across: 'height', at: y + first.height, set: first.height, from: x, to: x + width })
      trim({ box: first, x, y }, { width, height: first.height })
      trim({ box: second, x, y: y + first.height }, { width, height: second.height })
    }
  }
  trim({ box, x: 0, y: 0 }, sheet)
  return { laid, strokes }
}

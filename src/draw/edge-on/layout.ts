import type { LabelWord } from '../../lesson/label-words.ts'
import type { Wording } from '../../wording/wording.ts'
import { boxOf } from '../box.ts'
import { across, edges } from '../edge.ts'
import { type FigureOptions, fitted, leastAndMost, usualRoom } from '../fit.ts'
import { nameShare, point, usualText } from '../ink.ts'
import { legend } from '../legend.ts'
import type { Mark } from '../mark.ts'
import { nameMarks, thickMarks } from './marks.ts'
import type { Named, Target } from './names.ts'
import { seatNames } from './seats.ts'
import { isUpright, sideNames } from './sides.ts'

/** A section as it is drawn, from (0, 0) at its lower left corner, and what is to be said of it. In mm on paper. */
export interface Drawing {
  readonly shape: readonly Mark[]
  readonly names: readonly Named[]
  /** All that a line from a name may cross. */
  readonly solid: readonly Target[]
  readonly long: { readonly from: number; readonly to: number; readonly text: string }
  /** `until`: how far along the paper that which is so thick reaches. */
  readonly thick: {
    readonly low: number
    readonly high: number
    readonly text: string
    readonly until: number
  }
  /** How many times as thick as they are sheets are drawn. */
  readonly times: number
  readonly caption: readonly string[]
}

/** What the labels of a section follow from. */
export interface Labelling {
  readonly wording: Wording
  readonly options: FigureOptions
  /** The piece whose name is bold. */
  readonly of: string | undefined
}

/** A section with all that stands round it. */
interface Labelled {
  readonly marks: Mark[]
  readonly times: number
  /** Whether every name has a place. */
  readonly complete: boolean
}

/**
 * Draws a section with its labels as large as there is room for: with names above and below it, or, where these have no
 * room for all of them, beside it too.
 *
 * @param long of its longer side, in mm.
 */
export function fittedSection(
  draw: (scale: number) => Drawing,
  long: number,
  labelling: Labelling,
): Labelled {
  const { options } = labelling
  const size = (options.text ?? usualText) * point
  const attempt = (asides: boolean): Labelled | undefined => {
    const found = new Map<readonly Mark[], Labelled>()
    const marks = fitted(
      (scale) => {
        const one = labelled(draw(scale), labelling, asides)
        found.set(one.marks, one)
        return one.marks
      },
      { ...usualRoom, ...options },
      leastAndMost(long, size),
    )
    return found.get(marks)
  }
  const plain = attempt(false)
  return (plain?.complete ? plain : attempt(true)) ?? { marks: [], times: 1, complete: false }
}

/** Puts names, dimensions and the caption round a section. @param asides whether names may stand beside it. */
function labelled(drawing: Drawing, { options, of }: Labelling, asides: boolean): Labelled {
  const size = (options.text ?? usualText) * point
  const small = size * nameShare
  const { shape, long, thick } = drawing
  const shows = (word: LabelWord): boolean =>
    options.labels === undefined || options.labels.includes(word) || options.labels.includes('all')
  const box = boxOf(shape.map((mark) => mark.box))
  const wanted = shows('names') ? drawing.names : []
  const level = wanted.filter((name) => !isUpright(name))
  const seated = (over: number) =>
    seatNames(level, {
      above: [long.from, long.to + over],
      // Between the extension lines of the dimension.
      below: [long.from + 0.9, Math.max(long.to - 0.9, long.from + 12 * size)],
      size: small,
      crossed: (x, z, above) =>
        drawing.solid.filter((t) => x > t.from && x < t.to && (above ? t.z(x) > z + 0.01 : t.z(x) < z - 0.01))
          .length,
    })
  // The two lines of its text may be higher than the card is thick.
  const isOver = shows('thickness') && !asides && level.length === wanted.length
  const seats = seated(isOver && thick.high - thick.low > 2 * size ? besideThickness : 0)
  const unseated = wanted.filter((name) => !seats.some((seat) => seat.name === name))
  const names = nameMarks(seats, box, small, of)
  const sides = sideNames(asides ? unseated : wanted.filter(isUpright), box, small, of)
  const bottom = Math.max(box.bottom, ...names.map((mark) => mark.box.bottom))
  const right = Math.max(long.to, ...sides.map((mark) => mark.box.right))
  const marks = [
    ...shape,
    ...names,
    ...sides,
    ...(shows('size')
      ? across(edges.bottom(bottom), { ...long, size, inside: [bottom - box.bottom, bottom - box.bottom] })
      : []),
    ...(shows('thickness')
      ? thickMarks({ ...thick, from: right, size, clear: sides.map((mark) => mark.box) })
      : []),
  ]
  const caption = drawing.caption.map((text) => ({ text }))
  return {
    marks: [...marks, ...legend(marks, caption, size, (options.maxWidth ?? usualRoom.maxWidth) - 1.5)],
    times: drawing.times,
    complete: unseated.every(isUpright),
  }
}

/** Names above the drawing may reach over the room that the thickness takes beside it, in mm. */
const besideThickness = 12

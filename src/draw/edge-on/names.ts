import type { Card } from '../../card/card.ts'
import type { Plate } from '../../card/structure.ts'
import { groupBy } from '../../length/group-by.ts'
import type { Wording } from '../../wording/wording.ts'
import { type DrawnBar, heightAt } from './bars.ts'
import type { CutPad } from './section.ts'

/** A stretch of the drawing that a name may point at: z is the height of its middle, in mm on paper. */
export interface Target {
  readonly from: number
  readonly to: number
  readonly z: (x: number) => number
  /** An upright wall, from its foot to its top, is pointed at from the side. */
  readonly upright?: readonly [low: number, high: number]
}

/** A name, and everything that it is the name of. */
export interface Named {
  readonly text: string
  readonly piece: string | undefined
  /** The panel, where it is named by itself. */
  readonly panel?: string
  readonly targets: readonly Target[]
  /** One of the targets stands for all. */
  readonly any?: boolean
}

/** Whether a name is that of the piece, or the panel, that a figure is about. */
export const isMeant = ({ panel, piece }: Named, of: string | undefined): boolean =>
  of !== undefined && (piece === of || panel === of)

/** Names of plates where they are cut: of panels their own, of whole pieces that of the piece, once with their count. */
export function namesOfPlates(
  { structure }: Card,
  cut: readonly { readonly plate: string; readonly target: Target }[],
  wording: Wording,
): Named[] {
  // Beside its window a sheet is still one sheet: a name points at its longest part.
  const longest = [...groupBy(cut, ({ plate }) => plate).values()].flatMap((parts) =>
    parts.reduce((a, b) => (b.target.to - b.target.from > a.target.to - a.target.from ? b : a)),
  )
  const known = longest.flatMap(({ plate, target }) => {
    const found = structure.plates.find(({ name }) => name === plate)
    return found ? [{ name: nameOf(found, structure), piece: found.piece, target }] : []
  })
  return [...groupBy(known, ({ name }) => name)].map(([name, own]) => ({
    text: own.length > 1 ? `${own.length}\u00a0×\u00a0${wording.name(name)}` : wording.name(name),
    piece: own[0]?.piece,
    panel: name,
    targets: own.map(({ target }) => target),
  }))
}

/** The names of all that is cut of a flat card: of its plates, of letters as one, and of foam. */
export function namesOf(
  card: Card,
  bars: readonly DrawnBar[],
  pads: readonly { readonly pad: CutPad; readonly target: Target }[],
  foams: readonly Target[],
  wording: Wording,
): Named[] {
  const { say } = wording
  const letters = [...groupBy(pads, ({ pad }) => pad.pad.name)].map(([name, own]): Named => {
    const all = card.lettering.find((one) => one.name === name)?.letters.join('')
    const targets = own.map(({ target }) => target)
    return {
      text: all ? say('figures.letters', { letters: all }) : name,
      piece: undefined,
      targets,
      any: true,
    }
  })
  const foam =
    foams.length > 0 ? [{ text: say('figures.foam'), piece: undefined, targets: foams, any: true }] : []
  const plates = bars.map((bar) => ({ plate: bar.plate, target: targetOf(bar) }))
  return [...namesOfPlates(card, plates, wording), ...letters, ...foam]
}

/** A panel has a name of its own; a piece that is one plate is known by the piece. */
const nameOf = (plate: Plate, { plates, hinges }: Card['structure']): string =>
  hinges.some(({ between }) => between.includes(plate.name)) ||
  plates.some((other) => other.piece === plate.piece && !other.name.startsWith(plate.piece))
    ? plate.name
    : plate.piece

/** Not in the bends at its ends. */
const inner = (from: number, to: number) => {
  const inset = Math.min(3, (to - from) / 4)
  return { from: from + inset, to: to - inset }
}

/** Where a name may point at a bar. */
export const targetOf = (bar: DrawnBar): Target => ({
  ...inner(bar.middle[0]?.[0] ?? 0, bar.middle.at(-1)?.[0] ?? 0),
  z: (x) => heightAt(bar, x),
})

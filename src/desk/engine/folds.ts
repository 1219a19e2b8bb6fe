import { toHtml } from 'hast-util-to-html'
import { drawFigure } from '../../draw/draw.ts'
import type { Unit } from '../../length/length.ts'
import { type CatalogueFold, catalogue, groupsOf } from '../../workshop/catalogue.ts'
import { isShownShut } from '../../workshop/mechanism.ts'
import { provenStarter } from '../../workshop/starter-card.ts'

/** A fold to start from. Its picture is asked for apart: drawing all of them takes seconds. */
export interface FoldOffered {
  readonly name: string
  /** What it has in common with those beside it. */
  readonly group: string
  readonly summary: string
}

/** The standing card of a fold's starter lesson. */
export interface FoldPicture {
  /** An SVG that stands alone, without words in it. */
  readonly svg: string
  /** What a sighted reader takes from it; its measures are in the unit that was asked for. */
  readonly alternative: string
}

/** Every fold, in the order and under the headings of the catalogue. */
export const foldsOffered = (): FoldOffered[] =>
  groupsOf([...catalogue.values()]).flatMap(({ title, folds }) =>
    folds.map(({ name, summary }) => ({ name, group: title, summary })),
  )

/** The room of a picture, in mm of its own. */
const room = { maxWidth: 60, maxHeight: 48 }

/** @returns undefined for a fold that is not in the catalogue. */
export function foldPicture(name: string, unit: Unit): FoldPicture | undefined {
  const fold = catalogue.get(name)
  return fold && drawn(fold, unit)
}

function drawn(fold: CatalogueFold, unit: Unit): FoldPicture | undefined {
  const proven = provenStarter(fold, unit)
  const kind = isShownShut(proven.card.structure) ? 'closed' : 'standing'
  const figure = drawFigure(kind, proven, undefined, unit, { ...room, labels: [], legend: false })
  if ('findings' in figure) return undefined
  return { svg: toHtml(figure.svg), alternative: figure.alternative }
}

import { chosenIn, keysOf, styleFor } from '../../../card/chosen.ts'
import { foldStyles } from '../../../card/fold-styles.ts'
import { freeFold, freeKeys } from '../../../card/folds/free.ts'
import { turningNames } from '../../../card/panel-names.ts'
import type { Reading } from '../../../card/reading.ts'
import { makeScope } from '../../../card/scope.ts'
import { shapeIn } from '../../../card/shape.ts'
import { stockReader } from '../../../card/stock.ts'
import type { FoldStyle } from '../../../card/style.ts'
import type { Fields } from '../../../card/yaml.ts'
import { usualGrid } from '../../../length/grid.ts'
import type { Unit } from '../../../length/length.ts'
import { wordingOf } from '../../../wording/wording.ts'
import { starterCard } from '../../../workshop/starter-card.ts'

/** The fold of a card block with the panels that it has there, known before any length is. */
export interface FoldOfCard {
  readonly style: FoldStyle
  readonly panels: readonly string[]
  /** Further names of panels, for a card that is printed both ways. */
  readonly otherNames: readonly string[]
  /** The keys of the block that are its own. */
  readonly keys: readonly string[]
  /** Where strips reach from and to unless they say otherwise. */
  readonly hasSpans: boolean
}

/** @returns undefined for a block that names no fold, or one that nobody knows. */
export function foldOf(fields: Fields, unit: Unit): FoldOfCard | undefined {
  const entry = fields.get('fold')?.value
  const name = entry?.kind === 'text' ? entry.text.trim() : ''
  const shape = shapeIn(fields, usualGrid[unit], undefined)
  const reading: Reading = {
    scope: makeScope(),
    findings: [],
    unit,
    grid: usualGrid[unit],
    wording: wordingOf('en', unit),
    places: new Map(),
    ...(shape && { shape }),
  }
  const written = styleNamed(name, reading, fields)
  if (!written) return undefined
  const style = styleFor(written, chosenIn(reading, fields, written))
  return {
    style,
    panels: Object.keys(style.panels),
    otherNames: [...turningNames(style, style.panels).keys()],
    keys: name === 'free' ? freeKeys : keysOf(style),
    hasSpans: hasSpans(style),
  }
}

function styleNamed(name: string, reading: Reading, fields: Fields): FoldStyle | undefined {
  if (name === 'free') return freeFold(reading, fields, stockReader(reading, fields)).style
  const style = foldStyles.get(name)
  return style?.read ? style.read(reading, fields).style : style
}

const spanned = new Map<string, boolean>()

/** Whether its strips need not be told which panels they span. The fold itself says so once it is built. */
function hasSpans(style: FoldStyle): boolean {
  const known = spanned.get(style.name) ?? starterCard(style, 'in').span !== undefined
  spanned.set(style.name, known)
  return known
}

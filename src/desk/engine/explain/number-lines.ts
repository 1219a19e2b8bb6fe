import { listOf } from '../../../length/finding.ts'
import { formatGrid } from '../../../length/format.ts'
import type { Length } from '../../../length/length.ts'
import type { Explained } from '../../../workshop/explain/explained.ts'
import type { Follow } from '../../../workshop/explain/follows.ts'
import { shareOf } from '../../../workshop/explain/formula.ts'

/** Where a number comes from and what it changes with, as sentences. */
export function numberLines({ source, rounding, follows }: Explained, grid: Length): string[] {
  const rounded = roundingOf(rounding, formatGrid(grid))
  const from = sourceOf(source)
  return [
    ...(from ? [`${from}${rounded ? `, ${rounded}` : ''}.`] : []),
    ...(follows ? [followsOf(follows)] : []),
  ]
}

function sourceOf(source: Explained['source']): string | undefined {
  switch (source.kind) {
    case 'formula':
      return `Worked out as \`${source.text}\``
    case 'lengths':
      return source.names.length > 0
        ? `Worked out from ${listOf(source.names.map((name) => `\`${name}\``))}`
        : 'Read off the card'
    case 'folding':
      return 'Found by folding the card'
    case 'standing':
      return 'Found by standing the card up'
    case 'parameter':
      if (source.from === 'wished') return 'Asked for in this print'
      if (source.from === 'auto') return 'As much as the shut card needs there'
      if (source.from === 'usual') return `Not written; usually it is \`${source.text}\``
      return `Written in line ${source.place?.line ?? 1} as \`${source.text}\``
  }
}

function roundingOf(rounding: Explained['rounding'], grid: string): string {
  switch (rounding) {
    case 'down':
      return `and down to the next mark of the ruler, ${grid}`
    case 'up':
      return `and up to the next mark of the ruler, ${grid}`
    case 'nearest':
      return `and to the nearest mark of the ruler, ${grid}`
    case 'rest':
      return 'and what the ruler leaves over'
    case 'none':
      return ''
  }
}

const followed: Readonly<Record<Follow['of'], string>> = {
  width: 'the width of the shut card',
  height: 'the height of the shut card',
  size: 'the size of the shut card',
  thickness: 'how thick the card is',
  ruler: 'what does not divide on the ruler',
}

function followsOf(follows: readonly Follow[]): string {
  if (follows.length === 0) return 'It is the same at every size.'
  const grows = follows.filter(({ share }) => !share || share.gt(0))
  const shrinks = follows.filter(({ share }) => share?.lt(0))
  return [
    ...(grows.length > 0 ? [`It follows ${listOf(grows.map(partOf))}.`] : []),
    ...(shrinks.length > 0 ? [`It shrinks as ${listOf(shrinks.map(({ of }) => followed[of]))} grows.`] : []),
  ].join(' ')
}

/** `1/4 of the height of the shut card`. */
function partOf({ of, share }: Follow): string {
  if (!share || share.equals(1)) return followed[of]
  return share.lt(1) ? `${shareOf(share)} of ${followed[of]}` : `${shareOf(share)} times ${followed[of]}`
}

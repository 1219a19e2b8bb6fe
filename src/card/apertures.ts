import { nearest } from '../length/grid.ts'
import { type Length, minus, part, plus, type Size, shorter, zero } from '../length/length.ts'
import type { Workbench } from './parts.ts'
import { checkKeys, lengthCell, report, say } from './reading.ts'
import type { Cell } from './scope.ts'
import { sizeCell } from './sizes.ts'
import { someLeft } from './some-left.ts'
import { point, rectangle } from './strip.ts'
import type { Polygon } from './structure.ts'
import { type Target, targetsOn } from './targets.ts'
import type { Entry, Field } from './yaml.ts'

/** The keys of a window. */
export const apertureKeys = ['on', 'size', 'left', 'bottom', 'rim'] as const

/** A window cut out of one or more plates: the plate's name, and the hole in its piece's frame. */
export interface Aperture {
  readonly name: string
  readonly size: Size
  readonly holes: readonly { readonly plate: string; readonly hole: Polygon }[]
}

/** Reads a window. It sits in the middle unless `left` and `bottom` say how far its edges are from the panel's. */
export function apertureCell(bench: Workbench, { key: name, keyPlace, value }: Field): Cell<Aperture> {
  const fields = value.kind === 'map' ? value.fields : new Map()
  const get = (key: string): Entry | undefined => fields.get(key)?.value
  checkKeys(bench, fields, apertureKeys, `the aperture \`${name}\``)
  for (const key of ['on', 'size'])
    if (!fields.has(key))
      report(bench, 'missing-key', keyPlace, `The aperture \`${name}\` has no \`${key}\``, `Add \`${key}:\``)
  const size = sizeCell(bench, `${name}.size`, get('size'), 'down')
  const rim = lengthCell(bench, `${name}.rim`, get('rim'), '1/8 in', 'up')
  const place = (
    key: 'left' | 'bottom',
    all: (t: Target) => Length,
    own: () => Length,
  ): ((t: Target) => Length) => {
    if (!fields.has(key)) return (t) => nearest(part(minus(all(t), own()), 2), bench.grid)
    const cell = lengthCell(bench, `${name}.${key}`, get(key), '0', 'nearest')
    return () => cell()
  }
  const left = place(
    'left',
    (t) => t.size.width,
    () => size().width,
  )
  const bottom = place(
    'bottom',
    (t) => t.size.height,
    () => size().height,
  )

  return bench.scope.cell(name, () => {
    const targets = targetsOn(bench, get('on'), bench.find, bench.known)
    if (targets.length === 0 || !someLeft(bench, name, size(), get('size')?.place ?? keyPlace))
      return undefined
    const holes = targets.map((t) => {
      const [x, y] = [left(t), bottom(t)]
      const rims = [x, y, minus(t.size.width, x, size().width), minus(t.size.height, y, size().height)]
      const least = rims.reduce((a, b) => (b.lt(a) ? b : a))
      if (shorter(least, rim()))
        report(
          bench,
          'no-rim',
          get('size')?.place ?? keyPlace,
          shorter(least, zero)
            ? `\`${name}\` is larger than \`${t.plate}\``
            : `\`${name}\` leaves a rim of ${say(bench, least)} on \`${t.plate}\`, which will tear`,
          `Leave at least ${say(bench, rim())} all round`,
        )
      return { plate: t.plate, hole: rectangle(size(), point(plus(t.left, x), plus(t.bottom, y))) }
    })
    return { name, size: size(), holes }
  })
}

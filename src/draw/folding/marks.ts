import type { Card } from '../../card/card.ts'
import type { Vector } from '../../fold/pose.ts'
import { sum } from '../../fold/space.ts'
import type { Camera } from '../camera.ts'
import type { Corner, Face } from '../face/face.ts'
import { faceMarks } from '../face/marks.ts'
import { capHeight, label } from '../label.ts'
import type { Mark } from '../mark.ts'
import type { Spot } from '../num.ts'
import type { Palette } from '../stock.ts'
import { pathArrow, turnOverSign, turnSign } from './arrow-marks.ts'
import { creaseMark } from './creases.ts'
import type { DrawnStage } from './drawn.ts'
import { inset, lineStep, type Placed, type Sign } from './layout.ts'

/** How a strip is drawn. */
export interface Pen {
  readonly scale: number
  readonly size: number
  readonly palette: Palette
  readonly number: string
  readonly sign: Sign
}

/** The marks of a stage in its place: its picture, its number and words, and the sign before it. */
export function stageMarks(
  card: Card,
  camera: Camera,
  { faces, creases, paths }: DrawnStage,
  { x, y, left, base, tall, lines, sign: signAt }: Placed,
  { scale, size, palette, number, sign }: Pen,
): Mark[] {
  const onPage = ([u, v]: Spot): Spot => [x + u * scale, y + v * scale]
  // Faces are drawn where they are in space, so they are moved there.
  const by = sum(along(camera.right, x / scale), camera.up, -y / scale)
  const first = base + (0.45 + capHeight) * size
  const indent = inset(number, size)
  return [
    ...faceMarks(
      faces.map((face) => movedFace(face, by)),
      card,
      { camera, scale, palette, of: undefined },
    ),
    ...creases.map((crease) => creaseMark(crease, onPage)),
    ...paths.flatMap(({ spots, way }) => pathArrow(spots.map(onPage), way === 'away' ? 'half' : 'full')),
    label(number, [left, first], { class: 'stage', size, bold: true }),
    ...lines.map((text, i) =>
      label(text, [left + indent, first + i * lineStep * size], { class: 'legend', size }),
    ),
    ...(signAt !== undefined ? turnOverMarks(sign, signAt, base, tall, size) : []),
  ]
}

function turnOverMarks({ words, width }: Sign, at: number, base: number, tall: number, size: number): Mark[] {
  const middle = at + width / 2
  return [
    ...turnOverSign([middle - turnSign.width / 2, base - tall * 0.35]),
    ...words.map((word, i) =>
      label(word, [middle, base + (0.45 + capHeight + i * lineStep) * size], {
        class: 'legend turn',
        size,
        anchor: 'middle',
      }),
    ),
  ]
}

const along = ([x, y, z]: Vector, by: number): Vector => [x * by, y * by, z * by]

function movedFace(face: Face, by: Vector): Face {
  const moved = (loop: readonly Corner[]): Corner[] =>
    loop.map((corner) => ({ ...corner, at: sum(corner.at, by) }))
  return {
    ...face,
    place: { ...face.place, origin: sum(face.place.origin, by) },
    outline: moved(face.outline),
    holes: face.holes.map(moved),
  }
}

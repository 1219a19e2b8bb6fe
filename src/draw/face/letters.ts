import { s } from 'hastscript'
import type { Card } from '../../card/card.ts'
import { boxAround } from '../box.ts'
import { project } from '../camera.ts'
import { colours } from '../ink.ts'
import { letteringOn, setLetters } from '../letters.ts'
import type { Mark } from '../mark.ts'
import { num } from '../num.ts'
import { type Flat, flatLoop } from '../plane.ts'
import { dot, inSpace } from '../space.ts'
import type { Face } from './face.ts'
import type { View } from './marks.ts'

/** The letters on a face, slanted with it: nothing when it looks away. */
export function faceLetters(face: Face, card: Card, { camera, scale }: View): Mark[] {
  if (dot(face.place.normal, camera.eye) <= 0) return []
  const place = (p: Flat) => project(camera, inSpace(face.place, p), scale)
  const [r, u] = [project(camera, face.place.right, scale), project(camera, face.place.up, scale)]
  const corners = flatLoop(face.plate.outline)
  const [left, low] = [Math.min(...corners.map((c) => c[0])), Math.min(...corners.map((c) => c[1]))]
  return letteringOn(card, face.piece.name)
    .concat(face.plate.name === face.piece.name ? [] : letteringOn(card, face.plate.name))
    .flatMap((lettering) => {
      const set = setLetters(lettering, Math.max(...corners.map((c) => c[1])) - low)
      return set.letters.map(({ text, base, corner, width, height }): Mark => {
        const at = (x: number, y: number): Flat => [left + x, low + y]
        const foot = place(at(...base))
        const matrix = [r[0], r[1], -u[0], -u[1], foot[0], foot[1]].map((n) => num(n, 4)).join(' ')
        const node = () =>
          s(
            'text',
            {
              class: 'letter',
              transform: `matrix(${matrix})`,
              fill: colours.ink,
              'font-size': num(set.size),
              'font-weight': '600',
              'text-anchor': 'middle',
            },
            text,
          )
        const [x, y] = corner
        const room = [at(x, y), at(x + width, y), at(x + width, y + height), at(x, y + height)].map(place)
        return { node, box: boxAround(room) }
      })
    })
}

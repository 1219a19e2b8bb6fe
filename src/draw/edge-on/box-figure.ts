import type { Card } from '../../card/card.ts'
import type { Closed } from '../../fold/pose.ts'
import { nearest } from '../../length/grid.ts'
import { boxOf } from '../box.ts'
import type { Sheet } from '../frame.ts'
import { about, boxName, namesOf } from '../phrases.ts'
import type { Flat } from '../plane.ts'
import { cutBox } from './box.ts'
import { bentSheets } from './corners.ts'
import { type Drawing, fittedSection, type Labelling } from './layout.ts'
import { sheetMarks } from './marks.ts'
import { namesOfPlates } from './names.ts'
import { drawnWalls, targetOfWall } from './walls.ts'
import { asLength } from './words.ts'

/** A sheet of a box is drawn so thick, in mm on paper. */
const sheet = 0.5

/** A box shut, cut across its middle. Its distances are to scale; only its sheets are drawn thicker. */
export function drawEdgeOfBox(
  card: Card,
  closed: Closed,
  accented: readonly string[],
  labelling: Labelling,
): Sheet {
  const { wording, options, of } = labelling
  const { say } = wording
  const found = cutBox(card.structure, closed, accented)
  const spots = found.walls.flatMap(({ from, to }) => [from, to])
  const [left, low] = [Math.min(...spots.map(([x]) => x)), Math.min(...spots.map(([, z]) => z))]
  const [right, high] = [Math.max(...spots.map(([x]) => x)), Math.max(...spots.map(([, z]) => z))]
  const home = ([x, z]: Flat): Flat => [x - left, z - low]
  const cut = {
    ...found,
    walls: found.walls.map((wall) => ({ ...wall, from: home(wall.from), to: home(wall.to) })),
    corners: found.corners.map((corner) => ({ ...corner, at: home(corner.at) })),
  }
  const thin = Math.min(...cut.walls.map(({ caliper }) => caliper))
  const long = found.along === 'width' ? closed.size.width : closed.size.height
  const deep = about(nearest(asLength(high - low), card.grid), wording)
  const timesAt = (scale: number): number => Math.max(1, Math.round(sheet / (thin * scale)))
  const draw = (scale: number): Drawing => {
    const times = timesAt(scale)
    const walls = drawnWalls(cut, card.structure, scale, times)
    const targets = walls.map((wall) => ({ plate: wall.plate, target: targetOfWall(wall) }))
    const shape = sheetMarks(bentSheets(walls, cut, scale), card, accented)
    const box = boxOf(shape.map((mark) => mark.box))
    return {
      shape,
      names: namesOfPlates(card, targets, wording),
      solid: targets.map(({ target }) => target),
      // From outside to outside as it is drawn.
      long: { from: box.left, to: box.right, text: wording.length(long) },
      thick: { low: -box.bottom, high: -box.top, text: deep, until: box.right },
      caption: [say('figures.box-caption', { times })],
      times,
    }
  }
  const { marks, times } = fittedSection(draw, Math.max(right - left, high - low), labelling)
  const here = new Set(cut.walls.map(({ plate }) => plate))
  const missing = closed.order.filter((name) => !here.has(name))
  return {
    marks,
    title: say('figures.box-cut'),
    alternative: [
      say('figures.seen-cut-box', {
        box: boxName(card, wording),
        along: found.along,
        long: wording.length(long),
        deep,
        times,
      }),
      say('figures.cut-through', {
        panels: namesOf(
          closed.order.filter((name) => here.has(name)),
          wording,
        ),
      }),
      ...(missing.length > 0 ? [say('figures.not-in-this-cut', { panels: namesOf(missing, wording) })] : []),
      ...(of ? [say('figures.heavier', { piece: wording.name(of) })] : []),
    ].join(' '),
    ...(options.key !== undefined && { key: options.key }),
  }
}

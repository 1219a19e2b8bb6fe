import { plus } from '../../length/length.ts'
import { boxLimits, heightUnder } from '../making/box-limits.ts'
import {
  boxEntries,
  boxesIn,
  boxParameters,
  type ListedBox,
  measured,
  panelsOf,
  usualBox,
} from '../making/boxes.ts'
import { bySpine } from '../making/on-top.ts'
import { type Band, slitCard } from '../making/slits.ts'
import { chosenBefore, spineChoice, spineOf } from '../making/spine.ts'
import type { Side } from '../structure.ts'
import type { FoldStyle } from '../style.ts'

/**
 * front · V · back with boxes cut across the spine. Of a box of height h and depth d, between two slits: wall crease V
 * on the front at h from the spine, top d, edge M, front h, floor crease V on the back at d from the spine. Spine, wall
 * crease, edge and floor crease are a parallelogram, so the box opens with the card; shut, its edge lies h + d from the
 * spine, which may not be more than the panel.
 *
 * A box that stands on another has that one's wall crease for its spine, and that one's top for the back: again a
 * parallelogram. Shut, its edge lies at its h + d beyond that crease.
 */
const styleOf = (boxes: readonly ListedBox[], spine: 'left' | 'top'): FoldStyle<string> => ({
  name: 'box step',
  summary: 'A card with boxes that stand up in its fold, each between two slits.',
  parameters: boxParameters(boxes, spine),
  choices: { spine: spineChoice },
  keys: ['boxes'],
  panels: {
    front: 'back',
    back: 'face',
    ...Object.fromEntries(
      boxes.flatMap(({ name }) => panelsOf(name).map((panel): [string, Side] => [panel, 'face'])),
    ),
  },
  read(reading, fields) {
    const own = fields.get('boxes')?.value
    const listed = own ? boxesIn(reading, own) : [{ ...usualBox, fields }]
    const style = styleOf(listed, spineOf(chosenBefore(reading, fields, boxStep)))
    return { style, entries: boxEntries(listed) }
  },
  limits: (input) => boxLimits(measured(boxes, input.lengths), input),
  build(input) {
    const all = measured(boxes, input.lengths)
    const bands = all.map((box): Band => {
      const [top, front] = panelsOf(box.name)
      return {
        wall: 'front',
        height: plus(heightUnder(box, all), box.height),
        floor: box.on === undefined ? 'back' : panelsOf(box.on)[0],
        panels: [
          { name: top, length: box.depth },
          { name: front, length: box.height },
        ],
        from: box.at,
        to: plus(box.at, box.width),
      }
    })
    return bySpine(input, (panel) => slitCard({ stock: input.stock, panel }, bands, [['front', 'back']]))
  },
  starter: `fold: box step
closed: 5 x 7 in
base: {stock: white card, weight: 250 gsm}
layers:
  front mat:
    on: front
    border: 1/8 in
    stock: patterned paper
  box panel:
    on: step front
    border: 1/8 in
    stock: patterned paper
  ground:
    on: back
    border: {left: depth + 1/8 in, right: 1/8 in, top: 1/8 in, bottom: 1/8 in}
    stock: white paper`,
})

/** See `styleOf`. */
export const boxStep: FoldStyle<string> = styleOf([usualBox], 'left')

import type { Card } from '../../card/card.ts'
import type { Vector } from '../../fold/pose.ts'
import type { LabelWord } from '../../lesson/label-words.ts'
import type { ProvenCard } from '../../lesson/lesson.ts'
import type { Wording } from '../../wording/wording.ts'
import { boxAround, boxOf } from '../box.ts'
import { project } from '../camera.ts'
import { faceMarks } from '../face/marks.ts'
import type { FigureFinding } from '../figure.ts'
import { type FigureOptions, fitted, usualRoom } from '../fit.ts'
import type { Sheet } from '../frame.ts'
import { colours, dashes, point, usualText, weights } from '../ink.ts'
import { crease } from '../legend.ts'
import { line, type Mark, type Stroke } from '../mark.ts'
import { sentence } from '../phrases.ts'
import { makePalette } from '../stock.ts'
import { doesNotFold, nothingOnIt, notThere, standsAlone } from './findings.ts'
import { type Tagged, tags } from './labels.ts'
import { assemblyOrder } from './order.ts'
import { type Picture, pictureOf } from './picture.ts'
import { type Scene, sceneOf } from './scene.ts'
import { sceneWith } from './with.ts'
import { apartWords } from './words.ts'

/** The pieces of a card lifted off one another in the order in which they are put together. */
export function drawApart(
  { card, proof }: ProvenCard,
  of: string | undefined,
  wording: Wording,
  options: FigureOptions,
): Sheet | FigureFinding {
  const whole = sceneOf(card, proof)
  if (!whole) return doesNotFold
  if (whole.lifts.size === 0) return nothingOnIt
  const one = of === card.name ? undefined : of
  if (one !== undefined && !whole.parts.all.some(({ piece }) => piece === one)) return notThere(card, one)
  const scene = one === undefined ? whole : sceneWith(whole, one)
  if (!scene) return standsAlone(one ?? '')
  const room = { ...usualRoom, ...options }
  const size = (options.text ?? usualText) * point
  const order = assemblyOrder(card, whole)
  const picture = pictureOf(scene)
  const shapeAt = shapeOf(card, scene, picture, one)
  const lines = linesFor(card, wording, options.labels ?? ['names'])
  const draw = (scale: number): Mark[] => {
    const shape = shapeAt(scale)
    const names = order.flatMap((name, i): Tagged[] => {
      const at = picture.points.get(name)
      const own = lines(name)
      return at && own.length > 0 ? [{ number: i + 1, lines: own, at: project(scene.camera, at, scale) }] : []
    })
    return [...shape, ...tags(names, boxOf(shape.map(({ box }) => box)), size)]
  }
  const { left, right } = boxAround(
    picture.faces.flatMap(({ outline }) => outline.map(({ at }) => project(scene.camera, at, 1))),
  )
  const least = leastWidth / (right - left)
  return {
    marks: fitted(draw, room, { least, most: Math.min(Math.max(1, least), options.mostScale ?? 1) }),
    title: one
      ? wording.say('figures.piece-apart', { piece: sentence(wording.name(one)) })
      : wording.say('figures.pieces-apart'),
    alternative: apartWords(card, scene, order, one, wording),
    ...(options.key !== undefined && { key: options.key }),
  }
}

/** In mm: a narrower picture tells nothing. */
const leastWidth = 26

const dropStroke: Stroke = {
  class: 'drop',
  width: weights.dimension,
  colour: colours.slate,
  dash: dashes.hidden,
}

/** Everything but the names, at a scale. */
function shapeOf(card: Card, { camera }: Scene, picture: Picture, of: string | undefined) {
  const palette = makePalette(card.structure)
  return (scale: number): Mark[] => {
    const spot = (at: Vector) => project(camera, at, scale)
    return [
      ...faceMarks(picture.faces, card, { camera, scale, palette, of }),
      ...picture.creases.map(({ fold, ends: [a, b] }) => crease(fold, [spot(a), spot(b)])),
      ...picture.drops.map(([a, b]) => line(spot(a), spot(b), dropStroke)),
    ]
  }
}

/** What is written beside each piece. */
function linesFor(
  { structure }: Card,
  wording: Wording,
  words: readonly LabelWord[],
): (name: string) => readonly string[] {
  const has = (word: LabelWord): boolean =>
    !words.includes('none') && (words.includes('all') || words.includes(word))
  return (name) => {
    const piece = structure.pieces.find((p) => p.name === name)
    if (!piece || !(has('names') || has('size'))) return []
    const many = piece.count > 1 ? ` ×${piece.count}` : ''
    return [`${wording.name(name)}${many}`, ...(has('size') ? [wording.size(piece.size)] : [])]
  }
}

import type { Card } from '../card/card.ts'
import type { Vector } from '../fold/pose.ts'
import { sum } from '../fold/space.ts'
import { suggestWord } from '../length/finding.ts'
import { formatSize } from '../length/format.ts'
import type { Unit } from '../length/length.ts'
import type { LabelWord } from '../lesson/label-words.ts'
import type { ProvenCard } from '../lesson/lesson.ts'
import { dropsOf, withoutDoubles } from './apart-drops.ts'
import { creasesOf, flatFaces } from './apart-faces.ts'
import { boxOfMarks, type Tagged, tags } from './apart-labels.ts'
import { assemblyOrder } from './apart-order.ts'
import { type Scene, sceneOf, sceneWith } from './apart-scene.ts'
import { isSeen, pointsOn, screensOf, seenParts } from './apart-seen.ts'
import { lifted, offsetsAt, stepOf } from './apart-step.ts'
import { apartWords } from './apart-words.ts'
import { project } from './camera.ts'
import { type Face, facesOf } from './face.ts'
import { faceMarks } from './face-marks.ts'
import type { FigureFinding } from './figure.ts'
import { type FigureOptions, fitted, usualRoom } from './fit.ts'
import { sentence } from './flat-words.ts'
import type { Sheet } from './frame.ts'
import { colours, dashes, point, usualText, weights } from './ink.ts'
import { crease } from './legend.ts'
import { line, type Mark } from './mark.ts'
import { paintOrder } from './sort.ts'
import { dot } from './space.ts'
import { makePalette } from './stock.ts'

/** The pieces of a card lifted off one another in the order in which they are put together. */
export function drawApart(
  { card, proof }: ProvenCard,
  of: string | undefined,
  unit: Unit,
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
  const palette = makePalette(card.structure)
  const words: readonly LabelWord[] = options.labels ?? ['names']
  const has = (word: LabelWord) => words.includes('all') || words.includes(word)
  const named = !words.includes('none') && (has('names') || has('size'))
  const draw = (scale: number): Mark[] => {
    const spot = (at: Vector) => project(scene.camera, at, scale)
    const shape = [
      ...faceMarks(picture.faces, card, { camera: scene.camera, scale, palette, of: one }),
      ...picture.creases.map(({ fold, ends }) => crease(fold, [spot(ends[0]), spot(ends[1])])),
      ...picture.drops.map(([a, b]) =>
        line(spot(a), spot(b), {
          class: 'drop',
          width: weights.dimension,
          colour: colours.slate,
          dash: dashes.hidden,
        }),
      ),
    ]
    if (!named) return shape
    const all = order.flatMap((name, i): Tagged[] => {
      const at = picture.points.get(name)
      const piece = card.structure.pieces.find((p) => p.name === name)
      if (!at || !piece) return []
      const many = piece.count > 1 ? ` ×${piece.count}` : ''
      const lines = [`${name}${many}`, ...(has('size') ? [formatSize(piece.size, unit)] : [])]
      return [{ number: i + 1, lines, at: spot(at) }]
    })
    return [...shape, ...tags(all, boxOfMarks(shape), size)]
  }
  const marks = draw(1)
  const box = boxOfMarks(marks)
  const long = Math.max(box.right - box.left, box.bottom - box.top)
  return {
    marks: fitted(draw, room, { least: 20 / long, most: 1 }),
    title: one ? `${sentence(one)}, lifted apart` : 'The pieces of the card, lifted apart',
    alternative: apartWords(card, scene, order, one),
    ...(options.key !== undefined && { key: options.key }),
  }
}

/** What is drawn, whatever the scale. */
function pictureOf(scene: Scene) {
  const { structure, camera, pose, parts } = scene
  const palette = makePalette(structure)
  const isFilm = (face: Face): boolean => palette(face.piece.stock).film
  const still = scene.isFlat ? flatFaces(structure, pose) : facesOf(structure, pose)
  const step = stepOf(scene, still, isFilm)
  const offset = offsetsAt(scene, step)
  const by = (plate: string): Vector => offset(parts.partOf(plate))
  const faces = still.map((face) => lifted(face, by(face.plate.name)))
  const screens = screensOf(faces, camera, isFilm)
  const drops = dropsOf(structure, parts.holds, pose, by)
  const creases = scene.isFlat ? creasesOf(structure, pose) : []
  const points = new Map<string, Vector>()
  for (const face of faces)
    for (const at of pointsOn(face, 12)) {
      const best = points.get(face.piece.name)
      const right = dot(at, camera.right)
      if ((best === undefined || right > dot(best, camera.right)) && isSeen(at, screens, camera))
        points.set(face.piece.name, at)
    }
  return {
    step,
    faces: paintOrder(faces, structure, camera),
    drops: withoutDoubles(
      drops.flatMap((one) => seenParts(one, screens, camera)),
      camera,
    ),
    creases: creases.flatMap(({ plate, ends, fold, normal }) => {
      const moved = [sum(ends[0], by(plate)), sum(ends[1], by(plate))] as const
      const seen = dot(normal, camera.eye) > 0 ? fold : fold === 'valley' ? 'mountain' : 'valley'
      return seenParts(moved, screens, camera).map((part) => ({ fold: seen, ends: part }) as const)
    }),
    points,
  }
}

const nothingOnIt: FigureFinding = {
  rule: 'figure-not-drawn',
  severity: 'error',
  message: 'Nothing is stuck on this card, so there are no pieces to lift apart',
  suggestion: 'Show `flat` instead',
}

function notThere({ structure }: Card, of: string): FigureFinding {
  const loose = structure.pieces.some(({ name, kind }) => name === of && kind === 'loose')
  if (!loose)
    return {
      rule: 'unknown-name',
      severity: 'error',
      message: `Unexpected name \`${of}\`, expected a piece of this card`,
      suggestion: suggestWord(
        of,
        structure.pieces.filter(({ kind }) => kind !== 'loose').map(({ name }) => name),
      ),
    }
  return {
    rule: 'figure-not-drawn',
    severity: 'error',
    message: `\`${of}\` is a loose piece, and the card does not say where it goes`,
    suggestion: 'Show `flat` instead, or make it a layer of the card',
  }
}

const standsAlone = (of: string): FigureFinding => ({
  rule: 'figure-not-drawn',
  severity: 'error',
  message: `Nothing is stuck on \`${of}\`, and it is stuck on nothing`,
  suggestion: 'Show `flat` instead',
})

const doesNotFold: FigureFinding = {
  rule: 'figure-not-drawn',
  severity: 'error',
  message: 'This figure needs a card that folds, and this one does not yet',
  suggestion: 'Cure what the check says of its folding first',
}

import {
  ColorManagement,
  LinearSRGBColorSpace,
  type Material,
  Mesh,
  MeshBasicMaterial,
  OrthographicCamera,
  Quaternion,
  Scene,
  Vector3,
  WebGLRenderer,
} from 'three'
import type { Course } from './course.ts'
import { cornersAt, dot, type Eye, eyeAt, type Look } from './eye.ts'
import type { Framing } from './framing.ts'
import { isThere } from './framing.ts'
import { dimmed, lightFor, shaded, usualLight } from './light.ts'
import { setStroke } from './pen.ts'
import { isFilm, type PlateShown, plateShown, widths } from './plate.ts'
import { type Rigid, turned, type Vector } from './rigid.ts'
import { shadowsOf } from './shadow.ts'
import { spinesOf } from './spines.ts'
import type { CardTold } from './told.ts'

/** One picture: a moment, how it is looked at, and how large. */
export interface Picture {
  readonly moment: number
  readonly look: Look
  readonly framing: Framing
  /** 1 shows all of the card. */
  readonly zoom: number
}

/** What a picture was drawn with, for what lies over it. */
export interface Drawn {
  readonly eye: Eye
  readonly places: readonly Rigid[]
  /** Dots of the page (not of the screen) to a mm. */
  readonly scale: number
  readonly middle: Vector
  readonly width: number
  readonly height: number
}

export interface Stage {
  readonly draw: (picture: Picture) => Drawn
  readonly end: () => void
}

/** What is stuck on appears while the card goes so far. */
const fade = 0.05
/** Creases that are bent less than this, in radians, are still dashed as on the flat sheet. */
const flatBend = 0.35
/** Room round the card, as a share of the picture. */
const room = 0.86
/** The pen and the paper of the page. Throws when this browser has no WebGL. */
export function makeRenderer(canvas: HTMLCanvasElement): WebGLRenderer {
  // Colours are those of the figures, as they are written.
  ColorManagement.enabled = false
  const renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true, stencil: true })
  renderer.outputColorSpace = LinearSRGBColorSpace
  renderer.setClearColor(0x000000, 0)
  return renderer
}

/** A card on the stage. */
export function stageFor(renderer: WebGLRenderer, card: CardTold, course: Course): Stage {
  const scene = new Scene()
  const camera = new OrthographicCamera()
  const sharpest = Math.min(8, renderer.capabilities.getMaxAnisotropy())
  const shown = card.plates.map((_, i) => plateShown(card, i, sharpest))
  const shadows = shadowsOf(shown.map((plate) => plate?.shape))
  scene.add(...shadows.meshes)
  for (const plate of shown) if (plate) scene.add(plate.whole)
  const spines = spinesOf(card)
  scene.add(spines.mesh)

  return {
    draw({ moment, look, framing, zoom }) {
      const eye = eyeAt(look)
      const places = course.placesAt(moment)
      const { clientWidth: width, clientHeight: height } = renderer.domElement
      const ratio = Math.min(2, window.devicePixelRatio || 1)
      renderer.setPixelRatio(ratio)
      renderer.setSize(width, height, false)
      const scale = zoom * room * Math.min(width / framing.width, height / framing.height)
      aim(camera, eye, framing.middle, width / scale, height / scale)
      const towards = lightFor(eye, eyeAt(usualLight))
      const spots = cornersAt(card.plates, places, (i) => isThere(card, i, moment))
      const table = Math.min(...spots.map(([, y]) => y))
      for (const [i, plate] of shown.entries()) {
        const [place, told] = [places[i], card.plates[i]]
        if (!plate || !place || !told) continue
        const there = told.joins === 0 ? 1 : Math.min(1, Math.max(0, (moment - told.joins) / fade))
        plate.whole.visible = there > 0
        put(plate, place)
        shadows.cast(i, there > 0.5 && look.rise > 3, plate.whole.matrix, table)
        paint(plate, card, i, place, towards, there)
        for (const pen of plate.pens) pen.uniforms.pixel = { value: 1 / scale }
        strokes(plate, card, places, eye)
      }
      spines.follow(places, moment, towards)
      renderer.render(scene, camera)
      return { eye, places, scale, middle: framing.middle, width, height }
    },
    end() {
      scene.traverse((thing) => {
        if (!(thing instanceof Mesh)) return
        thing.geometry.dispose()
        const paint: Material = thing.material
        if (paint instanceof MeshBasicMaterial) paint.map?.dispose()
        paint.dispose()
      })
    },
  }
}

function aim(
  camera: OrthographicCamera,
  { right, up, eye }: Eye,
  middle: Vector,
  width: number,
  height: number,
): void {
  const far = 2000
  Object.assign(camera, {
    left: -width / 2,
    right: width / 2,
    top: height / 2,
    bottom: -height / 2,
    near: 1,
    far: 2 * far,
  })
  camera.updateProjectionMatrix()
  camera.matrixAutoUpdate = false
  camera.matrix
    .makeBasis(new Vector3(...right), new Vector3(...up), new Vector3(...eye))
    .setPosition(middle[0] + eye[0] * far, middle[1] + eye[1] * far, middle[2] + eye[2] * far)
  camera.matrixWorldNeedsUpdate = true
}

function put({ whole }: PlateShown, { at, turn }: Rigid): void {
  whole.position.set(...at)
  whole.quaternion.copy(new Quaternion(...turn))
  whole.updateMatrix()
}

function paint(
  { sides, rim, pens, whole }: PlateShown,
  card: CardTold,
  index: number,
  place: Rigid,
  towards: Vector,
  there: number,
): void {
  const plate = card.plates[index]
  const stock = plate && card.stocks[plate.stock]
  if (!plate || !stock) return
  const film = isFilm(card, plate)
  const normal = turned(place.turn, [0, 0, 1])
  for (const [k, side] of sides.entries()) {
    const dim = film ? 0 : dimmed(k === 0 ? normal : [-normal[0], -normal[1], -normal[2]], towards)
    const own = k === 0 ? stock.tint : stock.away
    const colour = side.map ? sharesOf(own, dim) : shaded(own, dim)
    side.color.setRGB(...colour)
    side.opacity = stock.opacity * there
    side.transparent = film || there < 1
    side.depthWrite = !film && there > 0.5
  }
  rim.opacity = there
  rim.transparent = there < 1
  for (const pen of pens) {
    pen.uniforms.opacity = { value: there }
    pen.transparent = there < 1
  }
  whole.renderOrder = there < 1 ? 1 : 0
}

/** What a hatched stock, whose colour is in its texture, is multiplied by. */
function sharesOf(colour: string, dim: number): [number, number, number] {
  const [lit, dark] = [shaded(colour, 0), shaded(colour, dim)]
  const part = (i: 0 | 1 | 2): number => (lit[i] > 0 ? dark[i] / lit[i] : 1)
  return [part(0), part(1), part(2)]
}

/** Creases are dashed while the sheet is flat, and heavier where the sheet turns away from the eye. */
function strokes(
  { lines, creases }: PlateShown,
  card: CardTold,
  places: readonly Rigid[],
  { eye }: Eye,
): void {
  for (const { crease, face, back } of creases) {
    const told = card.creases[crease]
    const [a, b] = (told?.between ?? []).map((i) => places[i])
    if (!told || !a || !b) continue
    const [p, q] = [turned(a.turn, [0, 0, 1]), turned(b.turn, [0, 0, 1])]
    const flat = Math.acos(Math.min(1, Math.max(-1, dot(p, q)))) < flatBend
    const rim = dot(p, eye) * dot(q, eye) < 0
    const width = rim ? widths.base : widths.crease
    const valley = told.fold === 'valley'
    setStroke(lines, face, { width, dashes: flat ? (valley ? 1 : 2) : 0 })
    setStroke(lines, back, { width, dashes: flat ? (valley ? 2 : 1) : 0 })
  }
}

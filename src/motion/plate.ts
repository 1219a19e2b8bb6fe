import {
  type BufferGeometry,
  Color,
  DoubleSide,
  FrontSide,
  Group,
  type InstancedBufferGeometry,
  Mesh,
  MeshBasicMaterial,
  type ShaderMaterial,
} from 'three'
import { letterGroup } from './letters.ts'
import { hatchTexture } from './paper.ts'
import { ink, type PenLine, penOf, penShape, setStroke } from './pen.ts'
import { isInside } from './polygon.ts'
import { sheetShapes } from './sheet-shape.ts'
import type { CardTold, Flat, PlateTold, StockTold } from './told.ts'

/** A plate to be moved about and drawn. */
export interface PlateShown {
  readonly whole: Group
  /** Its face and its back. */
  readonly sides: readonly [MeshBasicMaterial, MeshBasicMaterial]
  readonly rim: MeshBasicMaterial
  /** The shape of its face, which its shadow has too. */
  readonly shape: BufferGeometry
  readonly lines: InstancedBufferGeometry
  /** Where the lines of its creases begin among its lines: first all on the face, then all on the back. */
  readonly creases: readonly { readonly crease: number; readonly face: number; readonly back: number }[]
  readonly pens: readonly ShaderMaterial[]
}

/** Widths in dots of the screen. */
export const widths = { base: 1.7, layer: 1.3, crease: 1.1, glint: 1.1 } as const
const glintColour = '#5d7f8f'

export function plateShown(card: CardTold, index: number, sharpest: number): PlateShown | undefined {
  const plate = card.plates[index]
  const stock = plate && card.stocks[plate.stock]
  if (!plate || !stock) return undefined
  const whole = new Group()
  whole.matrixAutoUpdate = true
  const shapes = sheetShapes(plate, stock.hatch)
  const [face, back] = [sidePaint(stock, false, sharpest), sidePaint(stock, true, sharpest)]
  const rim = new MeshBasicMaterial({ color: stock.away, side: DoubleSide })
  for (const [shape, paint] of [
    [shapes.face, face],
    [shapes.back, back],
    [shapes.rim, rim],
  ] as const) {
    const mesh = new Mesh(shape, paint)
    if (stock.opacity < 1) mesh.renderOrder = 1
    whole.add(mesh)
  }
  const own = card.creases.flatMap(({ between, line }, crease) =>
    between.includes(index) ? [{ crease, line }] : [],
  )
  const half = plate.caliper / 2
  const onBoth = (line: PenLine['line']): PenLine[] => {
    const sheet = sheetBeside(line, plate)
    return [
      { line, side: 1, height: half, sheet },
      { line, side: -1, height: -half, sheet },
    ]
  }
  const lines = penShape([...plate.cuts, ...own.map(({ line }) => line)].flatMap(onBoth))
  for (let i = 0; i < 2 * plate.cuts.length; i++)
    setStroke(lines, i, { width: plate.base ? widths.base : widths.layer, dashes: 0 })
  const pen = penOf(ink)
  whole.add(drawn(lines, pen))
  const pens = [pen]
  if (plate.glints.length > 0) {
    const glints = penShape(plate.glints.flatMap(onBoth))
    for (let i = 0; i < 2 * plate.glints.length; i++) setStroke(glints, i, { width: widths.glint, dashes: 0 })
    const thin = penOf(glintColour)
    whole.add(drawn(glints, thin))
    pens.push(thin)
  }
  if (plate.letters.length > 0) whole.add(letterGroup(plate.letters, half, stock.opacity < 1 ? 2 : 0.5))
  const creases = own.map(({ crease }, i) => {
    const first = 2 * (plate.cuts.length + i)
    return { crease, face: first, back: first + 1 }
  })
  return { whole, sides: [face, back], rim, shape: shapes.face, lines, creases, pens }
}

/** On which side of a line the plate is. */
function sheetBeside([[x, y], [p, q]]: PenLine['line'], { outline, holes }: PlateTold): PenLine['sheet'] {
  const long = Math.hypot(p - x, q - y)
  const [nx, ny] = [(-(q - y) / long) * 0.01, ((p - x) / long) * 0.01]
  const has = (sign: number): boolean => {
    const spot: Flat = [(x + p) / 2 + sign * nx, (y + q) / 2 + sign * ny]
    return isInside(spot, outline) && !holes.some((hole) => isInside(spot, hole))
  }
  return has(1) === has(-1) ? 0 : has(1) ? 1 : -1
}

function drawn(shape: InstancedBufferGeometry, pen: ShaderMaterial): Mesh {
  const mesh = new Mesh(shape, pen)
  // Its lines are as wide as the screen says: how far it reaches is not known from its shape.
  mesh.frustumCulled = false
  return mesh
}

const sidePaint = (stock: StockTold, back: boolean, sharpest: number): MeshBasicMaterial => {
  const map = hatchTexture(stock, back, sharpest)
  const seeThrough = stock.opacity < 1
  return new MeshBasicMaterial({
    ...(map ? { map } : {}),
    color: new Color('#ffffff'),
    side: FrontSide,
    transparent: seeThrough,
    opacity: stock.opacity,
    depthWrite: !seeThrough,
  })
}

/** Whether a plate can be seen through. */
export const isFilm = ({ stocks }: CardTold, { stock }: PlateTold): boolean =>
  (stocks[stock]?.opacity ?? 1) < 1

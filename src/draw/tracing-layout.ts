import type { CutLines } from './cut-lines.ts'
import type { Flat } from './plane.ts'

/** A part of a piece in its place on a page of templates. */
export interface Traced {
  readonly piece: CutLines
  /** Turned by a quarter, counter-clockwise, because it fits so. */
  readonly turned: boolean
  /** The stretch of the piece, as it lies on the page, that is drawn: all of it, or one tile of it. */
  readonly window: { readonly x: number; readonly y: number; readonly width: number; readonly height: number }
  /** Where the lower left corner of the stretch lies on the page, y upwards. */
  readonly at: Flat
  /** Which tile, from 1, of how many, from the left and from below. */
  readonly tile?: {
    readonly column: number
    readonly columns: number
    readonly row: number
    readonly rows: number
  }
}

export interface Area {
  readonly width: number
  readonly height: number
}

/** Tiles lap by so much, in mm: room for glue, and for a printer that is a little off. Common practice, no source. */
export const lap = 10
/** Room for what is written under a piece, and the least width that it takes, in mm. */
export const caption = { height: 7.5, width: 46 } as const
const gap = 6

/**
 * Lays pieces out on pages at their real size: small ones beside each other, the tallest first; what is larger than a
 * page in tiles, one a page.
 *
 * @param area of a page that a printer can reach, in mm.
 */
export function tracingPages(pieces: readonly CutLines[], area: Area): Traced[][] {
  const small: { piece: CutLines; turned: boolean; size: Area }[] = []
  const tiled: Traced[][] = []
  for (const piece of pieces) {
    const turned = fits(piece, area) ? false : fits(turnedSize(piece), area) ? true : undefined
    if (turned === undefined) tiled.push(...tiles(piece, area))
    else small.push({ piece, turned, size: sizeOf(piece, turned) })
  }
  small.sort((a, b) => b.size.height - a.size.height || b.size.width - a.size.width)
  const pages: { shelves: Shelf[]; placed: Traced[] }[] = []
  for (const { piece, turned, size } of small) {
    const cell = { width: Math.max(size.width, caption.width), height: size.height + caption.height }
    const place = pages
      .map(({ shelves }, page) => ({ page, at: onShelves(shelves, cell, area) }))
      .find(({ at }) => at)
    const fresh = place ?? { page: pages.push({ shelves: [], placed: [] }) - 1, at: undefined }
    const own = pages[fresh.page]
    const at = fresh.at ?? (own && onShelves(own.shelves, cell, area))
    if (!own || !at) continue
    at.take()
    own.placed.push({ piece, turned, window: { x: 0, y: 0, ...size }, at: [at.x, at.y + caption.height] })
  }
  return [...pages.map(({ placed }) => placed), ...tiled]
}

const turnedSize = ({ width, height }: Area): Area => ({ width: height, height: width })
const sizeOf = (piece: Area, turned: boolean): Area =>
  turned ? turnedSize(piece) : { width: piece.width, height: piece.height }
const fits = (size: Area, area: Area): boolean =>
  size.width <= area.width && size.height + caption.height <= area.height

/** A row of pieces: from which level it hangs down, how high it is, and how much of it is taken. */
interface Shelf {
  readonly top: number
  readonly height: number
  used: number
}

/** The first place on the shelves that has room, or a new shelf below them; `y` is the lower edge of the cell. */
function onShelves(
  shelves: Shelf[],
  cell: Area,
  area: Area,
): { x: number; y: number; take: () => void } | undefined {
  const shelf = shelves.find(({ height, used }) => cell.height <= height && used + cell.width <= area.width)
  const top = shelf?.top ?? area.height - shelves.reduce((sum, { height }) => sum + height + gap, 0)
  if (!shelf && top < cell.height) return undefined
  const own = shelf ?? { top, height: cell.height, used: 0 }
  return {
    x: own.used,
    y: top - cell.height,
    take: () => {
      own.used += cell.width + gap
      if (!shelf) shelves.push(own)
    },
  }
}

/** A large piece as tiles of equal size that lap, turned if that takes fewer of them. */
function tiles(piece: CutLines, { width, height }: Area): Traced[][] {
  const room = { width, height: height - caption.height }
  const [upright, lying] = [false, true].map((turned) => grid(sizeOf(piece, turned), room))
  const turned = lying !== undefined && upright !== undefined && lying.count < upright.count
  const { columns, rows, tile } = (turned ? lying : upright) ?? grid(piece, room)
  return Array.from({ length: columns * rows }, (_, i): Traced[] => {
    const [column, row] = [i % columns, Math.floor(i / columns)]
    return [
      {
        piece,
        turned,
        window: { x: column * (tile.width - lap), y: row * (tile.height - lap), ...tile },
        at: [0, height - tile.height],
        tile: { column: column + 1, columns, row: row + 1, rows },
      },
    ]
  })
}

function grid(size: Area, room: Area): { columns: number; rows: number; count: number; tile: Area } {
  const [columns, width] = cutUp(size.width, room.width)
  const [rows, height] = cutUp(size.height, room.height)
  return { columns, rows, count: columns * rows, tile: { width, height } }
}

/** How many tiles a length takes, and how long each is. */
function cutUp(length: number, room: number): [count: number, each: number] {
  const count = length <= room ? 1 : Math.ceil((length - lap) / (room - lap))
  return [count, (length + (count - 1) * lap) / count]
}

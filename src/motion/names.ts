import { dot } from './eye.ts'
import { isThere } from './framing.ts'
import { area, isInside } from './polygon.ts'
import { inverse, type Rigid, spotOf, type Vector } from './rigid.ts'
import type { Drawn } from './stage.ts'
import type { CardTold, Flat, PlateTold } from './told.ts'

/** So many dots of the page round the dot of a name belong to its plate. */
const clear = 5

/** Writes the names of the plates that are seen over the picture, none on another. */
export function showNames(layer: HTMLElement, card: CardTold, moment: number, drawn: Drawn): void {
  const order = card.plates
    .map(({ outline, holes }, i) => ({
      i,
      area: area(outline) - holes.reduce((sum, hole) => sum + Math.abs(area(hole)), 0),
    }))
    .filter(({ i }) => isThere(card, i, moment))
    .sort((a, b) => b.area - a.area)
  const labels = card.plates.map((plate, i) => labelFor(layer, i, plate.name))
  const taken: DOMRect[] = []
  for (const label of labels) label.hidden = true
  for (const { i } of order) {
    const [plate, label] = [card.plates[i], labels[i]]
    if (!plate || !label) continue
    label.hidden = false
    const spot = spotsOn(plate).find((flat) => {
      if (!isOpen(card, i, flat, clear / drawn.scale, moment, drawn)) return false
      const place = drawn.places[i]
      if (!place) return false
      const [x, y] = onScreen(spotOf(place, [...flat, 0]), drawn)
      label.style.translate = `${x}px ${y}px`
      const words = label.getBoundingClientRect()
      // With its dot.
      const box = new DOMRect(words.left - 14, words.top, words.width + 14, words.height)
      const frame = layer.getBoundingClientRect()
      const free = !taken.some((other) => meets(other, box))
      const inside =
        box.left >= frame.left &&
        box.right <= frame.right &&
        box.top >= frame.top &&
        box.bottom <= frame.bottom
      if (free && inside) taken.push(box)
      return free && inside
    })
    label.hidden = spot === undefined
  }
}

export const hideNames = (layer: HTMLElement): void => layer.replaceChildren()

function labelFor(layer: HTMLElement, index: number, name: string): HTMLElement {
  const known = layer.children[index]
  if (known instanceof HTMLElement) {
    known.textContent = name
    return known
  }
  const label = document.createElement('span')
  label.textContent = name
  layer.append(label)
  return label
}

/** Where a point in space is in the picture, in dots of the page from its upper left corner. */
export function onScreen(
  spot: Vector,
  { eye, middle, scale, width, height }: Omit<Drawn, 'places'>,
): [number, number] {
  const from: Vector = [spot[0] - middle[0], spot[1] - middle[1], spot[2] - middle[2]]
  return [width / 2 + dot(from, eye.right) * scale, height / 2 - dot(from, eye.up) * scale]
}

/** Spots of a plate that its name may point to: those near its middle first. */
function spotsOn({ outline }: PlateTold): Flat[] {
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)]
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)]
  return shares
    .flatMap((y) => shares.map((x) => [x, y] as const))
    .sort((p, q) => fromMiddle(p) - fromMiddle(q))
    .map(([x, y]): Flat => [left + (right - left) * x, low + (high - low) * y])
}

const shares = [0.5, 0.35, 0.65, 0.2, 0.8, 0.07, 0.93]
const fromMiddle = ([x, y]: Flat): number => Math.hypot(x - 0.5, y - 0.5)

/** Whether a spot and what is round it, so many mm wide, is paper of its plate and seen. */
const isOpen = (
  card: CardTold,
  plate: number,
  [x, y]: Flat,
  round: number,
  moment: number,
  drawn: Drawn,
): boolean => {
  const { outline = [], holes = [] } = card.plates[plate] ?? {}
  return [
    [0, 0],
    [round, 0],
    [-round, 0],
    [0, round],
    [0, -round],
  ].every(([dx = 0, dy = 0]) => {
    const spot: Flat = [x + dx, y + dy]
    const isPaper = isInside(spot, outline) && !holes.some((hole) => isInside(spot, hole))
    return isPaper && isSeen(card, plate, spot, moment, drawn)
  })
}

/** Whether nothing but film is in front of a spot. */
function isSeen(
  card: CardTold,
  plate: number,
  flat: Flat,
  moment: number,
  { places, eye: { eye } }: Drawn,
): boolean {
  const own = places[plate]
  if (!own) return false
  const spot = spotOf(own, [...flat, 0])
  return card.plates.every(({ outline, holes, stock }, i) => {
    const place = places[i]
    if (i === plate || !place || !isThere(card, i, moment) || (card.stocks[stock]?.opacity ?? 1) < 1)
      return true
    const hit = hitOn(place, spot, eye)
    return !hit || !isInside(hit, outline) || holes.some((hole) => isInside(hit, hole))
  })
}

/** Where the line from a spot to the eye goes through the plane of a plate; nothing when that is behind the spot. */
function hitOn(place: Rigid, spot: Vector, eye: Vector): Flat | undefined {
  const back = inverse(place)
  const [x, y, z] = spotOf(back, spot)
  const [p, q, r] = spotOf(back, [spot[0] + eye[0], spot[1] + eye[1], spot[2] + eye[2]])
  if (Math.abs(r - z) < 1e-9) return undefined
  const far = -z / (r - z)
  return far > 0.05 ? [x + (p - x) * far, y + (q - y) * far] : undefined
}

const meets = (a: DOMRect, b: DOMRect): boolean =>
  a.left < b.right + 3 && b.left < a.right + 3 && a.top < b.bottom + 2 && b.top < a.bottom + 2

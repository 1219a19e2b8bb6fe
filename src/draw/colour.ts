/** A colour such as `#f4ecdd` with another laid over it: 0 leaves it, 1 hides it. */
export function laidOver(ground: string, over: string, opacity: number): string {
  const found = mixes.get(`${ground}${over}${opacity}`)
  if (found !== undefined) return found
  const mixed = channels(ground).map((c, i) => Math.round(c + ((channels(over)[i] ?? c) - c) * opacity))
  const colour = `#${mixed.map((c) => c.toString(16).padStart(2, '0')).join('')}`
  mixes.set(`${ground}${over}${opacity}`, colour)
  return colour
}

const mixes = new Map<string, string>()

const channels = (colour: string): number[] =>
  [1, 3, 5].map((i) => Number.parseInt(colour.slice(i, i + 2), 16))

/** A colour as six digits behind a `#`, in small letters: `#1b5e6b`. */
export type Colour = `#${string}`

/** What is read easily: text, WCAG 2.2, 1.4.3. Lines and other graphics want less: 3, 1.4.11. */
export const readable = 4.5

/** The colour that a text says: six digits, or three that are doubled, with or without `#`. Undefined for anything else. */
export function colourOf(text: string): Colour | undefined {
  const digits = /^#?([\da-f]{3}|[\da-f]{6})$/i.exec(text.trim())?.[1]?.toLowerCase()
  if (digits === undefined) return undefined
  return `#${digits.length === 3 ? [...digits].map((digit) => digit + digit).join('') : digits}`
}

/**
 * Contrast ratio of two colours, from 1 to 21.
 * WCAG 2.2, definition of "contrast ratio": https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio
 */
export function contrastOf(a: Colour, b: Colour): number {
  const [one, other] = [luminance(a), luminance(b)]
  return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05)
}

/** WCAG 2.2, definition of "relative luminance": https://www.w3.org/TR/WCAG22/#dfn-relative-luminance */
function luminance(colour: Colour): number {
  const [r, g, b] = channels(colour).map((channel) => {
    const share = channel / 255
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * (r ?? 0) + 0.7152 * (g ?? 0) + 0.0722 * (b ?? 0)
}

const channels = (colour: Colour): number[] =>
  [1, 3, 5].map((i) => Number.parseInt(colour.slice(i, i + 2), 16))

/** Towards the darkest or the lightest there is, in so many steps. */
const steps = 1000

/**
 * The colour itself where it is read easily on a ground, and else the nearest that is, on the straight way to black, or on
 * a dark ground to white.
 */
export function readableOn(colour: Colour, ground: Colour): Colour {
  const end = luminance(ground) > 0.18 ? 0 : 255
  for (let step = 0; step <= steps; step++) {
    const mixed = channels(colour).map((channel) => Math.round(channel + ((end - channel) * step) / steps))
    const tried: Colour = `#${mixed.map((channel) => channel.toString(16).padStart(2, '0')).join('')}`
    if (contrastOf(tried, ground) >= readable) return tried
  }
  return end === 0 ? '#000000' : '#ffffff'
}

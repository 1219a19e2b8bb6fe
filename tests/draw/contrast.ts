/**
 * Contrast ratio of two colours such as `#1d2a30`, from 1 to 21.
 * WCAG 2.2, definitions of "contrast ratio" and "relative luminance": https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio
 */
export function contrast(a: string, b: string): number {
  const [high = 0, low = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x)
  return (high + 0.05) / (low + 0.05)
}

export function luminance(colour: string): number {
  const [r = 0, g = 0, b = 0] = channels(colour).map((c) => {
    const share = c / 255
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}

const channels = (colour: string): number[] => {
  if (!/^#[\da-f]{6}$/.test(colour)) throw new Error(`\`${colour}\` is no colour`)
  return [1, 3, 5].map((i) => Number.parseInt(colour.slice(i, i + 2), 16))
}

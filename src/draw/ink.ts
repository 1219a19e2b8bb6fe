/**
 * The pen box: colours, line weights in mm at print size, and dashes. The same for every figure.
 * Text keeps a contrast of 4.5:1 and lines that carry meaning 3:1 on every tint (WCAG 2.2, 1.4.3 and 1.4.11).
 */
export const colours = {
  ink: '#1d2a30',
  rust: '#973722',
  slate: '#2f5d73',
  paper: '#fffdf8',
  /** Laid thinly over faces that look away from the light. */
  shade: '#43381f',
} as const

export const weights = {
  edge: 0.5,
  crease: 0.35,
  layer: 0.35,
  hidden: 0.25,
  dimension: 0.18,
} as const

/** Dash and gap lengths in mm. A valley is dashed, a mountain dash-dot; what is cut is solid. */
export const dashes = {
  valley: [2, 1],
  mountain: [4, 0.8, 0.3, 0.8],
  hidden: [1, 0.7],
} as const

/** Millimetres in a typographic point (1/72 in). */
export const point = 25.4 / 72

/** Text sizes in points, unless a large print asks for more. */
export const usualText = 8
/** Names inside a shape are a little smaller than its measures. */
export const nameShare = 0.94

export const font = "'Commissioner Variable', Commissioner, 'Hanken Grotesk', 'Noto Sans', Arial, sans-serif"

import { type Length, toMm } from '../../length/length.ts'

/** The lengths of a v-fold. */
export type VLengths = Readonly<Record<'apex' | 'run' | 'rise' | 'wing' | 'lift' | 'height' | 'tab', Length>>

/** How far something stands from the spine, and from the apex along the spine, towards which the V opens; in mm. */
export interface Spot {
  readonly out: number
  readonly up: number
}

/** The wings and their tabs in the shut card, in mm. */
export interface VReach {
  /** The top of the crease between the wings, the outer top corner of a wing, and the outer corner of its tab. */
  readonly tip: Spot
  readonly shoulder: Spot
  readonly tabEnd: Spot
  /** Cosine and sine of the angle between the spine and the crease between the wings. */
  readonly cos: number
  readonly sin: number
}

/**
 * Where the wings lie when the card is shut. The glue line stands at g to the spine (tan g = run/rise), and in the flat
 * piece at s to the crease between the wings (tan s = wing/lift). At an opening w of the card the crease between the
 * wings stands at p to the spine with cos g · cos p + sin g · sin p · cos(w/2) = cos s (Glassner, Interactive pop-up card
 * design, 2002). Shut (w = 0) that is cos(p - g) = cos s, so p = g + s; p = g - s would lie outside the card.
 */
export function vReach({ run, rise, wing, lift, height, tab }: Omit<VLengths, 'apex'>): VReach {
  const [x, y, half, up] = [toMm(run), toMm(rise), toMm(wing), toMm(lift)]
  const scale = Math.hypot(x, y) * Math.hypot(half, up)
  const [cos, sin] = [(y * up - x * half) / scale, (x * up + y * half) / scale]
  /** From the flat piece (across from the crease, up from the apex) to the shut card. */
  const shut = (across: number, along: number): Spot => ({
    out: along * sin - across * cos,
    up: along * cos + across * sin,
  })
  return {
    tip: shut(0, toMm(height)),
    shoulder: shut(half, toMm(height)),
    tabEnd: shut(half, up - toMm(tab)),
    cos,
    sin,
  }
}

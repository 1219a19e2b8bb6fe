import type { Fit } from '../card/envelopes/fits.ts'
import { asOfText, insideText, type Posting, whyText } from '../card/post.ts'
import type { Unit } from '../length/length.ts'
import { type SizeJson, sizeJson } from './length-json.ts'

/** A standard envelope that takes the shut card; sizes with the shorter side first. */
export interface FitJson {
  readonly name: string
  readonly series: string
  readonly size: SizeJson
  /** What its own size leaves over the card's, without allowance for seams. */
  readonly room: SizeJson
  /** Published inserts differ on whether the card goes in. */
  readonly tight: boolean
}

/** How the shut card posts in one country. */
export interface PostJson {
  readonly country: string
  readonly class: string
  /** The envelope it is posted in. */
  readonly inside: string
  /** Why it is not in the first class of letters; empty when it is. */
  readonly why: readonly string[]
  /** The heaviest that the class takes. */
  readonly weight?: string
  /** When the figures were published or read. */
  readonly asOf: string
}

export const fitJson = ({ envelope, room, tight }: Fit, unit: Unit): FitJson => ({
  name: envelope.name,
  series: envelope.series,
  size: sizeJson(envelope.size, unit),
  room: sizeJson(room, unit),
  tight,
})

export function postJson(posting: Posting): PostJson {
  const { country, name, weight, asOf } = posting
  return {
    country,
    class: name,
    inside: insideText(posting),
    why: whyText(posting),
    ...(weight !== undefined && { weight }),
    asOf: asOfText(asOf),
  }
}

import type { Wording } from '../../wording/wording.ts'
import { type Fit, snuggest } from './fits.ts'
import type { StandardEnvelope } from './standard.ts'

/** `A7 (US trade)`. */
export const envelopeWords = ({ name, series }: StandardEnvelope, { say }: Pick<Wording, 'say'>): string =>
  say('kit.series', { name, series: series === 'ISO 269' ? 'iso' : 'us' })

/** `C6 (ISO 269), A2 (US trade; tight) or A6 (US trade)`: the smallest that fit, of each series. */
export function fitsWords(fits: readonly Fit[], { say, list }: Wording): string {
  const names = (['ISO 269', 'US trade'] as const)
    .flatMap((series) => snuggest(fits, series))
    .map(({ envelope, tight }) =>
      tight
        ? say('kit.series-tight', {
            name: envelope.name,
            series: envelope.series === 'ISO 269' ? 'iso' : 'us',
          })
        : envelopeWords(envelope, { say }),
    )
  return names.length > 0 ? list(names, 'or') : say('kit.fits-none')
}

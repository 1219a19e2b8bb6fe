import type { Finding } from '../../length/finding.ts'
import { formatSize } from '../../length/format.ts'
import { type Size, shorter, smaller } from '../../length/length.ts'
import { mainCard } from '../figure-target.ts'
import type { FilledLesson } from '../lesson.ts'

/**
 * Loose pieces that lie within the shut card in the lesson's own size, as they are written, and not in this one: nothing
 * ties their size to the card, so they do not shrink with it.
 */
export function tooLarge(print: FilledLesson, own: FilledLesson): Finding[] {
  const [card, before] = [print, own].map(({ cards }) => mainCard(cards.map((proven) => proven.card)))
  if (!card || !before) return []
  const fitted = new Set(
    loose(before.structure).flatMap(({ name, size }) => (fits(size, before.closed) ? [name] : [])),
  )
  return loose(card.structure)
    .filter(({ name, size }) => fitted.has(name) && !fits(size, card.closed))
    .map(({ name, size }) => {
      const place = card.places.get(name)
      const most = {
        width: smaller(size.width, card.closed.width),
        height: smaller(size.height, card.closed.height),
      }
      return {
        rule: 'larger-than-card',
        severity: 'warning',
        message: `\`${name}\`, ${formatSize(size, print.unit)}, is larger than the shut card of ${formatSize(card.closed, print.unit)}`,
        suggestion: `Make \`${name}\` at most ${formatSize(most, print.unit)} there, or work its size out from the card's, such as \`${name}: {size: closed.width / 4 x closed.height / 2}\``,
        ...(place && { place }),
      }
    })
}

const loose = ({ pieces }: FilledLesson['cards'][number]['card']['structure']) =>
  pieces.filter(({ kind }) => kind === 'loose')

const fits = (size: Size, closed: Size): boolean =>
  !shorter(closed.width, size.width) && !shorter(closed.height, size.height)

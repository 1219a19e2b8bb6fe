import type { Card } from '../card/card.ts'
import type { Length } from '../length/length.ts'
import type { Wording } from '../wording/wording.ts'

/** What begins a sentence. */
export const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** How the card of a fold is called: `bridge card`, and `box card` as it is. */
export const cardName = ({ fold }: Card, { name, say }: Wording): string =>
  say(/\b(?:card|box|band)$/.test(fold) ? 'figures.fold-as-named' : 'figures.fold-card', { fold: name(fold) })

/** How a card is called that is a box when it is shut: `tray box`, and `match box` as it is. */
export const boxName = ({ fold }: Card, { name, say }: Wording): string =>
  say(/\bbox\b/.test(fold) ? 'figures.fold-as-named' : 'figures.fold-box', { fold: name(fold) })

/** `about 2.1 mm` */
export const about = (length: Length, wording: Wording): string =>
  wording.say('figures.about', { length: wording.length(length) })

/** Names as they are said in a list. */
export const namesOf = (names: readonly string[], { name, list }: Wording): string => list(names.map(name))

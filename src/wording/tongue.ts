import { once } from '../length/once.ts'
import { type MessageKey, messageOf, ownNames } from './catalogue.ts'
import { type Locale, localeFor } from './locales.ts'
import { type MessageValues, readMessage } from './message.ts'

export type Last = 'and' | 'or'

/** What is the same in all units of a language. */
interface Tongue {
  say(key: MessageKey, values?: MessageValues): string
  list(items: readonly string[], last?: Last): string
  /** A number that is written with a point, with the decimal sign of the language. */
  pointed(text: string): string
}

/** Made once for each language, for messages are read when they are first said. */
const tongues = new Map<Locale, Tongue>()

/** The messages, lists and decimal sign of a language. Lists and the sign are those of Unicode's locale data (CLDR). */
export function tongueOf(locale: Locale): Tongue {
  const known = tongues.get(locale)
  if (known) return known
  const tongue = makeTongue(locale)
  tongues.set(locale, tongue)
  return tongue
}

/** The same of a language tag (BCP 47); British English in a language whose words are not known. */
export const tongueFor = (lang: string): Tongue => tongueOf(localeFor(lang))

function makeTongue(locale: Locale): Tongue {
  const read = new Map<MessageKey, ReturnType<typeof readMessage>>()
  const lists = {
    and: once(() => new Intl.ListFormat(locale, { type: 'conjunction' })),
    or: once(() => new Intl.ListFormat(locale, { type: 'disjunction' })),
  }
  // Asked for when there is a decimal: the platform takes its time over the first one.
  const point = once(
    () =>
      new Intl.NumberFormat(locale).formatToParts(0.5).find(({ type }) => type === 'decimal')?.value ?? '.',
  )
  return {
    say: (key, values = {}) => {
      const write = read.get(key) ?? readMessage(messageOf(locale, key), locale)
      read.set(key, write)
      return write(values)
    },
    list: (items, last = 'and') => {
      // Where a comma stands within an item, such as `1,5`, a semicolon parts the items.
      const sign = items.some((item) => item.includes(',')) ? '; ' : ', '
      return lists[last]()
        .formatToParts(items)
        .map(({ type, value }) => (type === 'literal' && value === ', ' ? sign : value))
        .join('')
    },
    pointed: (text) => (text.includes('.') ? text.replace('.', point()) : text),
  }
}

/**
 * The name of a panel, a piece, a stock or a fold in a language. Several of a kind have a number in their name or behind
 * it: `bar 2 left tab`, `panel 4`. A layer that is on several panels is named after each: `picture on panel 4`; what
 * belongs to one of several cards may be, too: `box.lid`. Any other name is one that the lesson has given, and is in its language already.
 */
export function ownName(locale: Locale, name: string): string {
  const own = known(locale, name)
  if (own !== undefined) return own
  const [, card, ofCard] = /^([^.]+)\.(.+)$/.exec(name) ?? []
  if (card !== undefined && ofCard !== undefined) return `${card}.${ownName(locale, ofCard)}`
  const [, piece, panel] = /^(.+?) on (.+)$/.exec(name) ?? []
  if (piece === undefined || panel === undefined) return name
  return tongueOf(locale).say('figures.piece-on-panel', {
    piece: ownName(locale, piece),
    panel: ownName(locale, panel),
  })
}

/** A name of the catalogue; undefined when it has none like that. */
function known(locale: Locale, name: string): string | undefined {
  const names = ownNames(locale)
  const at = (key: string): string | undefined => (Object.hasOwn(names, key) ? names[key] : undefined)
  const [number] = /\d+/.exec(name) ?? []
  if (number === undefined) return at(name)
  const kind = at(name.replace(/ \d+$/, ''))
  return kind === undefined ? at(name.replace(number, '#'))?.replace('#', number) : `${kind} ${number}`
}

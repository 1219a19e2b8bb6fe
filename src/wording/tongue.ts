import { onceFor } from '../length/once.ts'
import { type MessageKey, messageOf, ownNames } from './catalogue.ts'
import { conventionsOf, type Last } from './conventions.ts'
import { localeFor } from './locales.ts'
import { type MessageValues, readMessage } from './message.ts'

/** What is the same in all units of a language. */
interface Tongue {
  say(key: MessageKey, values?: MessageValues): string
  list(items: readonly string[], last?: Last): string
  /** A number that is written with a point, with the decimal sign of the language. */
  pointed(text: string): string
  /** `February 2025`. */
  month(year: number, month: number): string
}

/**
 * The messages, lists, decimal sign and months of a language tag (BCP 47); of British English where its words are not
 * known.
 */
export const tongueFor: (lang: string) => Tongue = onceFor(makeTongue)

/** German as it is spelt in Switzerland and Liechtenstein has no `ß`. What is put into a message stays as it is. */
function spelt(text: string, lang: string): string {
  if (!text.includes('ß')) return text
  const { region = '' } = new Intl.Locale(lang)
  return region === 'CH' || region === 'LI' ? text.replaceAll('ß', 'ss') : text
}

function makeTongue(lang: string): Tongue {
  const locale = localeFor(lang)
  const read = new Map<MessageKey, ReturnType<typeof readMessage>>()
  const { listed, point, month } = conventionsOf(locale)
  return {
    say: (key, values = {}) => {
      const write = read.get(key) ?? readMessage(spelt(messageOf(locale, key), lang), locale)
      read.set(key, write)
      return write(values)
    },
    list: (items, last = 'and') => {
      // Where a comma stands within an item, such as `1,5`, a semicolon parts the items.
      const sign = items.some((item) => item.includes(',')) ? '; ' : ', '
      return listed(items, last)
        .map((part) => (part === ', ' ? sign : part))
        .join('')
    },
    pointed: (text) => (text.includes('.') ? text.replace('.', point()) : text),
    month,
  }
}

/**
 * The name of a panel, a piece, a stock or a fold in a language. Several of a kind have a number in their name or behind
 * it: `bar 2 left tab`, `panel 4`. A layer that is on several panels is named after each: `picture on panel 4`; what
 * belongs to one of several cards may be, too: `box.lid`. Any other name is one that the lesson has given, and is in its language already.
 */
export function ownName(lang: string, name: string): string {
  const own = known(lang, name)
  if (own !== undefined) return own
  const [, card, ofCard] = /^([^.]+)\.(.+)$/.exec(name) ?? []
  if (card !== undefined && ofCard !== undefined) return `${card}.${ownName(lang, ofCard)}`
  const [, piece, panel] = /^(.+?) on (.+)$/.exec(name) ?? []
  if (piece === undefined || panel === undefined) return name
  return tongueFor(lang).say('figures.piece-on-panel', {
    piece: ownName(lang, piece),
    panel: ownName(lang, panel),
  })
}

/** A name of the catalogue; undefined when it has none like that. */
function known(lang: string, name: string): string | undefined {
  const names = ownNames(localeFor(lang))
  const at = (key: string): string | undefined =>
    Object.hasOwn(names, key) ? spelt(names[key] ?? '', lang) : undefined
  const [number] = /\d+/.exec(name) ?? []
  if (number === undefined) return at(name)
  const kind = at(name.replace(/ \d+$/, ''))
  return kind === undefined ? at(name.replace(number, '#'))?.replace('#', number) : `${kind} ${number}`
}

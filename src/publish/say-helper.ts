import Handlebars from 'handlebars'
import { suggestWord } from '../length/finding.ts'
import { type MessageKey, messageKeys } from '../wording/catalogue.ts'
import { tongueFor } from '../wording/tongue.ts'

/**
 * Lets templates say messages of the catalogue in the language of the page: `{{say "handout.what-you-need"}}`,
 * `{{say "handout.letters-on" piece=on}}`. Our own HTML may be put in; texts are escaped.
 */
export function registerSay(handlebars: typeof Handlebars): void {
  handlebars.registerHelper('say', (key: MessageKey, { hash, data }: Handlebars.HelperOptions) => {
    const { lang } = data.root as { readonly lang: string }
    const markup: string[] = []
    const values = Object.fromEntries(
      Object.entries(hash as Readonly<Record<string, unknown>>).map(([name, value]) => [
        name,
        value instanceof Handlebars.SafeString ? hidden(markup.push(value.toHTML())) : plain(value),
      ]),
    )
    const text = Handlebars.escapeExpression(tongueFor(lang).say(key, values))
    return new Handlebars.SafeString(
      text.replace(/\ue000(\d+)\ue001/g, (_, n) => markup[Number(n) - 1] ?? ''),
    )
  })
}

const plain = (value: unknown): string | number => (typeof value === 'number' ? value : String(value ?? ''))

/** What stands for markup while the words around it are escaped: characters that no text has. */
const hidden = (number: number): string => `\ue000${number}\ue001`

/** What is wrong with the name of a message in a template; undefined when there is such a message. */
export function unknownMessage(key: string): { readonly suggestion: string } | undefined {
  const known = messageKeys()
  return known.includes(key) ? undefined : { suggestion: suggestWord(key, known).slice(0, 300) }
}

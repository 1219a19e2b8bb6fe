import type { AttributeSite } from './site.ts'

/** `::figure[caption]{show=flat of="sea` : the directive, its label, and its open braces up to the end. */
const open = /(?<![:\\]):{1,}([a-z]+)(?:\[[^\]]*\])?\{([^{}]*)$/

/** Where the end of a text stands in the braces of a directive; undefined when it does not. */
export function attributeSite(before: string, start: number): AttributeSite | undefined {
  const found = open.exec(before)
  if (!found) return undefined
  const [, directive = '', inside = ''] = found
  const end = start + before.length
  const said = Object.fromEntries(
    [...inside.matchAll(/([\w-]+)=(?:"([^"]*)"|'([^']*)'|([^\s"'}]+))(?=\s)/g)].map(
      ([, name = '', one, other, bare]) => [name, one ?? other ?? bare ?? ''],
    ),
  )
  const value = /(?:^|\s)([\w-]+)=(?:(["'])([^"']*)|([^\s"']*))$/.exec(inside)
  if (value) {
    const [, name = '', quote = '', quoted, bare] = value
    const word = quoted ?? bare ?? ''
    return { directive, name, quote, word, from: end - word.length, said }
  }
  const [word = ''] = /[\w-]*$/.exec(inside) ?? []
  return { directive, quote: '', word, from: end - word.length, said }
}

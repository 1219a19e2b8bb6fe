import type { Said } from './entries.ts'

/** Words that only a mistake of ours says, unless the text says them itself. */
const slips = [
  /\bundefined\b/,
  /\bNaN\b/,
  /\[object \w+\]/,
  /\bInfinity\b/,
  /\bnull\b/,
  /=> \{|\bfunction \(/,
]

/** A place in a message into which nothing was put. */
const unfilled = /(?<![{\\])\{[a-z]\w*(?:, (?:plural|select),|\})/

/** What is read of a page, or heard: neither its style sheet nor its program. */
const readIn = (page: string): string =>
  page
    .replaceAll(/<(style|script)\b[\s\S]*?<\/\1>/g, ' ')
    .replaceAll(/<[^>]*?\b(?:alt|aria-label|title)="([^"]*)"[^>]*>/g, ' $1 ')
    .replaceAll(/<[^>]*>/g, ' ')
    .replaceAll('&quot;', '"')
    .replaceAll('&lt;', '<')
    .replaceAll('&amp;', '&')

/** Rules about a lesson as a whole have no place. */
const ofAll = new Set(['no-card', 'no-steps', 'no-supplies', 'no-envelope-steps'])

/**
 * What must never be said about any text.
 *
 * @param text that came in.
 * @returns the first thing that is wrong; undefined when all is well.
 */
export function wrongWith(text: string, { texts, findings }: Said): string | undefined {
  for (const said of texts) {
    const ours = said.indexOf('A mistake inside foldlore')
    if (ours >= 0) return said.slice(ours, ours + 1500)
  }
  const isPage = (said: string): boolean => /^<(!|svg)/.test(said)
  const told = [...texts, ...findings.map(({ message }) => message)]
  for (const one of told) {
    const said = isPage(one) ? readIn(one) : one
    // Only a page has all its measures put in: a lesson that is written anew keeps its braces.
    for (const slip of isPage(one) ? [...slips, unfilled] : slips) {
      const [found] = slip.exec(said) ?? []
      // The words of the text itself may stand in it behind a figure: `3null`.
      if (found === undefined || text.includes(found)) continue
      const at = said.search(slip)
      return `It says "${found}": …${said.slice(Math.max(0, at - 80), at + 60)}…`
    }
  }
  // An entry may put a text in twice.
  const lines = 2 * text.split(/\r\n?|\n/).length + 60
  for (const { rule, message, line, column } of findings) {
    if (message.trim() === '') return `The rule ${rule} says nothing`
    if (line === undefined && ofAll.has(rule)) continue
    if (line === undefined || column === undefined) return `The rule ${rule} has no place: ${message}`
    if (!(line >= 1 && column >= 1 && line <= lines))
      return `The rule ${rule} is at ${line}:${column}: ${message}`
  }
  return undefined
}

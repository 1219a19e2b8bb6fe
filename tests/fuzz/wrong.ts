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
  for (const said of [...texts, ...findings.map(({ message }) => message)])
    for (const slip of slips) {
      const [found] = slip.exec(said) ?? []
      // A style sheet or a program inside a page may well have such words.
      if (found === undefined || slip.test(text) || said.startsWith('<!')) continue
      const at = said.search(slip)
      return `It says "${found}": …${said.slice(Math.max(0, at - 80), at + 60)}…`
    }
  const lines = text.split(/\r\n?|\n/).length + 60
  for (const { rule, message, line, column } of findings) {
    if (message.trim() === '') return `The rule ${rule} says nothing`
    if (line === undefined && ofAll.has(rule)) continue
    if (line === undefined || column === undefined) return `The rule ${rule} has no place: ${message}`
    if (!(line >= 1 && column >= 1 && line <= lines))
      return `The rule ${rule} is at ${line}:${column}: ${message}`
  }
  return undefined
}

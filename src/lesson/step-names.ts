import type { ListItem, Nodes, PhrasingContent, Root } from 'mdast'
import { visit } from 'unist-util-visit'
import type { Wording } from '../wording/wording.ts'
import { plainText } from './plain-text.ts'
import { type ClauseWords, clauseWords } from './step-name-words.ts'

/** A name is no longer than this where it can be cut between two clauses. */
const longest = 56

/**
 * A short name for each step, by its number: the first clause of what it says, without the numbers that it asks for.
 * `Cut the base to 8 1/2 × 5 in. Lay it …` is `Cut the base`.
 */
export function stepNames(tree: Root, wording: Wording): Map<number, string> {
  const names = new Map<number, string>()
  const words = clauseWords[wording.locale]
  visit(tree, 'listItem', ({ data, children }) => {
    const step = data?.step
    if (step !== undefined) names.set(step, nameOf(children, words) || wording.say('handout.step', { step }))
  })
  return names
}

function nameOf(blocks: ListItem['children'], words: ClauseWords): string {
  const first = blocks.find((block) => block.type === 'paragraph')
  if (!first) return ''
  const text = words.verbLast ? aroundNumbers(first.children, words) : beforeNumbers(first.children, words)
  return clauseOf(text, words)
}

/** The text up to the first length. How many of something there are belongs to its name. */
function beforeNumbers(nodes: readonly PhrasingContent[], words: ClauseWords): string {
  let text = ''
  for (const node of nodes) {
    if (hasLength(node)) return withoutLead(text, words)
    text += plainText(node)
  }
  return text
}

/** The text without the words at its end that lead to something, one after the other. */
function withoutLead(text: string, { before, next, articles }: ClauseWords): string {
  const leading = wordIn([...next, ...before, ...articles])
  return text.replace(new RegExp(`(?:[\\s,;:(]+${leading})*[\\s,;:(]*$`, 'iu'), '')
}

/** What stands for a measure while it is looked for: a character that no text has. */
const mark = '\ue000'

/** The text without its measures, and without what leads to them: its verb stands behind them. */
function aroundNumbers(nodes: readonly PhrasingContent[], { before, and }: ClauseWords): string {
  const text = nodes.map((node) => (hasLength(node) ? mark : plainText(node))).join('')
  const measure = `(?:${wordIn(before)}\\s+)?${mark}`
  const measures = `${measure}(?:\\s+(?:${wordIn(and)}\\s+)?${measure})*`
  return text
    .replace(new RegExp(`,\\s*${measures}\\s*(?:,|(?=[.;:!?]|$))|\\(${measures}\\)|${measures}`, 'giu'), '')
    .replace(/\s+(?=[.,;:!?])/g, '')
}

const wordIn = (words: readonly string[]): string => `(?<!\\p{L})(?:${words.join('|')})(?!\\p{L})`

const hasLength = (node: Nodes): boolean =>
  node.type === 'measure'
    ? /[\d{]/.test(plainText(node)) && !/^\d+$/.test(node.text ?? '')
    : 'children' in node && node.children.some(hasLength)

/** The first clause of a text, on one line, without what ends it. */
function clauseOf(text: string, { next }: ClauseWords): string {
  const line = text.replace(/\s+/g, ' ').trim()
  const [clause = ''] = /^.*?(?=[.!?:;,](?:\s|$)|$)/.exec(line) ?? []
  if (clause.length <= longest) return clause.trim()
  const cut = clause.search(new RegExp(` (?:${next.join('|')}) `))
  return cut > 0 ? clause.slice(0, cut) : clause
}

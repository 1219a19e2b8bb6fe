import { tags } from '@lezer/highlight'
import type { BlockContext, InlineContext, Line, MarkdownConfig } from '@lezer/markdown'

const fence = /^:{3,}[ \t]*(?:(tip|caution|ahead|variation)\b.*)?$/
const leaf = /^::(?:figure|scan)\b/
const inText = /^:(?:minutes|drying|meant)\[[^\]\n]*\]/

const isOurs = (text: string): boolean => leaf.test(text) || fence.test(text.trimEnd())

/** A line of ours stands by itself: its word, its caption, and what stands in its braces. */
function readLine(cx: BlockContext, line: Line): boolean {
  const text = line.text.slice(line.pos)
  if (!isOurs(text)) return false
  const from = cx.lineStart + line.pos
  const [word = ''] = /^:+[ \t]*[a-z]*/.exec(text) ?? []
  const parts = [cx.elt('DirectiveWord', from, from + word.length)]
  const braces = /\{[^{}]*\}\s*$/.exec(text)
  if (braces)
    parts.push(cx.elt('DirectiveSays', from + braces.index, from + braces.index + braces[0].trimEnd().length))
  cx.addElement(cx.elt('DirectiveLine', from, cx.lineStart + line.text.length, parts))
  cx.nextLine()
  return true
}

/** `{base.size}` in running text; a brace that is not closed is text. */
function readBrace(cx: InlineContext, next: number, pos: number): number {
  if (next !== 123) return -1
  const end = /^\{[^{}]*\}/.exec(cx.slice(pos, cx.end))
  return end ? cx.addElement(cx.elt('Measure', pos, pos + end[0].length)) : -1
}

function readInText(cx: InlineContext, next: number, pos: number): number {
  if (next !== 58) return -1
  const found = inText.exec(cx.slice(pos, cx.end))
  return found ? cx.addElement(cx.elt('DirectiveWord', pos, pos + found[0].length)) : -1
}

/** What a lesson has besides Markdown, for the colours of the editor. What it means is read elsewhere. */
export const lessonSyntax: MarkdownConfig = {
  defineNodes: [
    { name: 'DirectiveLine', block: true },
    { name: 'DirectiveWord', style: tags.keyword },
    { name: 'DirectiveSays', style: tags.attributeValue },
    { name: 'Measure', style: tags.special(tags.variableName) },
  ],
  parseBlock: [
    {
      name: 'DirectiveLine',
      parse: readLine,
      endLeaf: (_, line) => isOurs(line.text.slice(line.pos)),
      before: 'FencedCode',
    },
  ],
  parseInline: [
    { name: 'Measure', parse: readBrace, before: 'Link' },
    { name: 'DirectiveInText', parse: readInText, before: 'Link' },
  ],
}

import type { Code } from 'mdast'
import { report } from '../../card/reading.ts'
import type { YamlBlock } from '../../card/yaml.ts'
import { nearestWord } from '../../length/finding.ts'
import { placeOf, written } from '../source.ts'
import { fenced } from './fenced.ts'
import type { Handler } from './walk.ts'

const blockNames = ['card', 'supplies']

/** A fenced block `card`, `card NAME` or `supplies` is taken out of the tree and kept as YAML. */
export const block: Handler<Code> = (node, walk, at) => {
  const { lang } = node
  const place = placeOf(node.position)
  if (!lang || !blockNames.includes(lang)) {
    const near = lang && nearestWord(lang, blockNames)
    if (near)
      report(
        walk,
        'unknown-block',
        place,
        `Unexpected block \`${lang}\``,
        `Write \`${near}\` behind the backticks, if that is meant`,
        'warning',
      )
    return node
  }
  const content = fenced(written(walk.source, node.position))
  if (at.quoted || !content) {
    report(
      walk,
      at.quoted ? 'block-place' : 'open-block',
      place,
      at.quoted
        ? `A \`${lang}\` block cannot stand in a quotation`
        : `This \`${lang}\` block is never closed`,
      at.quoted ? 'Move it out, to the left edge' : 'Add a line with three backticks below its last line',
    )
    return node
  }
  if (!at.top)
    report(
      walk,
      'block-place',
      place,
      `A \`${lang}\` block stands by itself, not in a list or a call-out`,
      'Move it out, to the left edge',
      'warning',
    )
  const start = (place.offset ?? 0) + content.start
  const made: YamlBlock = {
    name: node.meta?.trim() || 'card',
    text: content.text,
    place: walk.source.place(start, start + content.text.length),
  }
  keep(made, lang, walk)
  return []
}

function keep(made: YamlBlock, lang: string, walk: Parameters<Handler>[1]): void {
  const list = lang === 'card' ? walk.cards : walk.supplies
  if (lang === 'supplies' && list.length > 0)
    report(
      walk,
      'second-supplies',
      made.place,
      'There is a second list of supplies',
      'Put both into one block',
    )
  else if (lang === 'card' && list.some(({ name }) => name === made.name))
    report(
      walk,
      'second-card',
      made.place,
      `There is a second card named \`${made.name}\``,
      'Give it a name of its own behind the word `card`, such as `card box`',
    )
  list.push(made)
}

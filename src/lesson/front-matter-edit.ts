import { type Entry, readYaml } from '../card/yaml.ts'
import { type Edit, lineEnding } from './edits.ts'
import type { Lesson } from './lesson.ts'
import { hasMark } from './parse.ts'

/** The change that gives `key` in the front matter a value: its own value, a line of its own, or front matter. */
export function frontMatterEdit(text: string, lesson: Lesson, key: string, value: string): Edit {
  const block = lesson.frontMatterBlock
  const ending = lineEnding(text)
  if (!block) {
    const at = hasMark(text) ? 1 : 0
    return { start: at, end: at, text: ['---', `${key}: ${value}`, '---', '', ''].join(ending) }
  }
  const field = readYaml(block).top.value.fields.get(key)
  if (field?.value.kind === 'text') {
    const [edit] = valueEdit(text, field.value, value)
    if (edit) return edit
  }
  const keyEnd = field?.keyPlace.end
  if (keyEnd !== undefined) {
    const colon = text.indexOf(':', keyEnd) + 1
    return { start: colon, end: colon, text: ` ${value}` }
  }
  const end = block.place.offset + block.text.length
  const line = `${key}: ${value}`
  return { start: end, end, text: block.text === '' ? line + ending : ending + line }
}

/** The change of one value of a YAML text; its quotation marks are kept. */
export function valueEdit(text: string, entry: Entry & { kind: 'text' }, value: string): Edit[] {
  const { offset, end } = entry.place
  if (offset === undefined || end === undefined) return []
  const mark = /^["']/.exec(text.slice(offset, end))?.[0]
  if (mark !== undefined && !value.includes(mark)) return [{ start: offset, end, text: mark + value + mark }]
  // A value over several lines is not one to replace.
  if (/[\r\n]/.test(text.slice(offset, end))) return []
  return [{ start: offset, end, text: value }]
}

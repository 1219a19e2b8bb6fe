import type { ListItem } from 'mdast'
import { visit } from 'unist-util-visit'
import type { Lesson } from '../../../lesson/lesson.ts'
import type { Healer } from '../cures.ts'

/** A time for a step that has none; five minutes, to be changed. */
export const timeStep: Healer = ({ message, from }, { lesson }) => {
  if (!/^Step \d/.test(message)) return []
  const end = endOfWords(stepAt(lesson, from))
  return end === undefined
    ? []
    : [{ words: 'Add `:minutes[5]`, to be changed', edits: [{ from: end, to: end, insert: ' :minutes[5]' }] }]
}

/** A time in the words that something dries, or that it is as it is. */
export const timeWords: Healer = ({ suggestion = '', from, to, was }, { lesson }) => {
  const [, drying] = /`(:drying\[[^`]+\])`/.exec(suggestion) ?? []
  const end = drying === undefined ? undefined : endOfWords(stepAt(lesson, from))
  const meant = `:meant[${was}]`
  const canBeMeant = suggestion.includes(`\`${meant}\``)
  return [
    ...(drying !== undefined && end !== undefined
      ? [{ words: `Add \`${drying}\``, edits: [{ from: end, to: end, insert: ` ${drying}` }] }]
      : []),
    ...(canBeMeant ? [{ words: 'It goes on meanwhile', edits: [{ from, to, insert: meant }] }] : []),
  ]
}

/** A longer class. */
export const timeClass: Healer = ({ suggestion = '', from, to, was }) => {
  const [, time] = /^Write `time: ([^`]+)`/.exec(suggestion) ?? []
  if (time === undefined || /[\r\n]/.test(was)) return []
  const mark = /^["']/.exec(was)?.[0] ?? ''
  return [{ words: `Make the class ${time} long`, edits: [{ from, to, insert: `${mark}${time}${mark}` }] }]
}

/** The innermost step that a place is in. */
function stepAt({ tree }: Lesson, at: number): ListItem | undefined {
  let found: ListItem | undefined
  visit(tree, 'listItem', (item) => {
    const { start, end } = item.position ?? {}
    if (
      item.data?.step !== undefined &&
      (start?.offset ?? Number.POSITIVE_INFINITY) <= at &&
      at <= (end?.offset ?? 0)
    )
      found = item
  })
  return found
}

/** Where the first words of a step end. */
function endOfWords(item: ListItem | undefined): number | undefined {
  const [first] = item?.children ?? []
  return first?.type === 'paragraph' ? first.position?.end.offset : undefined
}

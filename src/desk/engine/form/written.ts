import { isMap, isScalar, isSeq, parseDocument } from 'yaml'
import { isGroup, isList, type Plain } from './plain.ts'

const read = (text: string) => {
  const { contents, errors } = parseDocument(text, { version: '1.2', schema: 'failsafe', merge: false })
  return errors.length > 0 ? undefined : contents
}

/** Whether it may stand without quotation marks: as a value in brackets, or on a line of its own. */
export function isPlain(text: string, inBrackets: boolean): boolean {
  if (text === '' || text.trim() !== text) return false
  const list = read(inBrackets ? `[${text}]` : `- ${text}`)
  const [item, ...others] = isSeq(list) ? list.items : []
  const value = read(inBrackets ? `{k: ${text}}` : `k: ${text}`)
  const [pair] = isMap(value) ? value.items : []
  return (
    others.length === 0 &&
    isScalar(item) &&
    item.value === text &&
    isScalar(pair?.value) &&
    pair.value.value === text
  )
}

/** A text as a value: as it is, or in quotation marks where it needs them. */
export function written(text: string, inBrackets: boolean): string {
  if (isPlain(text, inBrackets)) return text
  return quoted(text, '"') ?? quoted(text, "'") ?? JSON.stringify(text)
}

/** A text in the given quotation marks, if it can stand in them as it is. */
export function quoted(text: string, mark: string): string | undefined {
  const stands = !text.includes(mark) && !/[\p{Cc}]/u.test(text) && !(mark === '"' && text.includes('\\'))
  return stands ? `${mark}${text}${mark}` : undefined
}

/** A value within a line. */
export function inLine(plain: Plain, inBrackets: boolean): string {
  if (plain === undefined) return ''
  if (isList(plain)) return `[${plain.map((item) => inLine(item, true)).join(', ')}]`
  if (isGroup(plain)) return `{${[...plain].map(([key, value]) => pairInLine(key, value)).join(', ')}}`
  return written(plain as string, inBrackets)
}

/** `key: value` in brackets. */
export const pairInLine = (key: string, value: Plain): string =>
  `${written(key, true)}: ${inLine(value, true)}`

/**
 * `key: value` as lines, without an indent of the first one.
 *
 * @param inner whether a group in it is written within its line.
 */
export function pairLines(
  key: string,
  value: Plain,
  indent: string,
  step: string,
  ending: string,
  inner: boolean,
): string {
  const name = written(key, false)
  if (!isGroup(value) || inner || value.size === 0) return `${name}: ${inLine(value, false)}`.trimEnd()
  const deeper = indent + step
  const lines = [...value].map(
    ([own, one]) => `${ending}${deeper}${pairLines(own, one, deeper, step, ending, true)}`,
  )
  return `${name}:${lines.join('')}`
}

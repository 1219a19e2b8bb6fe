import type { Entry } from '../../../card/yaml.ts'

/** What YAML says, without how and where it is written: a text, a list, a group of keys in their order, or nothing. */
export type Plain = string | readonly Plain[] | PlainMap | undefined
export type PlainMap = ReadonlyMap<string, Plain>

export const isGroup = (plain: Plain): plain is PlainMap => plain instanceof Map
export const isList = (plain: Plain): plain is readonly Plain[] => Array.isArray(plain)

export function plainOf(entry: Entry): Plain {
  switch (entry.kind) {
    case 'text':
      return entry.text
    case 'list':
      return entry.items.map(plainOf)
    case 'map':
      return new Map([...entry.fields].map(([key, { value }]) => [key, plainOf(value)]))
    default:
      return undefined
  }
}

export function at(plain: Plain, path: readonly string[]): Plain {
  const [key, ...rest] = path
  if (key === undefined) return plain
  if (isGroup(plain)) return at(plain.get(key), rest)
  return isList(plain) ? at(plain[Number(key)], rest) : undefined
}

export function has(plain: Plain, path: readonly string[]): boolean {
  const owner = at(plain, path.slice(0, -1))
  const key = path.at(-1) ?? ''
  return isGroup(owner) ? owner.has(key) : isList(owner) && owner[Number(key)] !== undefined
}

/** The same with one value put in; groups on the way to it are made. */
export function put(plain: Plain, path: readonly string[], value: Plain): Plain {
  const [key, ...rest] = path
  if (key === undefined) return value
  if (isList(plain)) return plain.map((item, i) => (String(i) === key ? put(item, rest, value) : item))
  const group = isGroup(plain) ? plain : new Map<string, Plain>()
  return new Map([...group, [key, put(group.get(key), rest, value)]])
}

/** The same without a key. */
export function without(plain: Plain, path: readonly string[]): Plain {
  const [key = '', ...rest] = path
  if (!isGroup(plain) || !plain.has(key)) return plain
  if (rest.length > 0) return put(plain, [key], without(plain.get(key), rest))
  return new Map([...plain].filter(([name]) => name !== key))
}

const isNothing = (plain: Plain): boolean => plain === undefined || (isGroup(plain) && plain.size === 0)

/** Whether both say the same. The order of keys says nothing, and no more does a group without any. */
export function isSame(a: Plain, b: Plain): boolean {
  if (isNothing(a) || isNothing(b)) return isNothing(a) && isNothing(b)
  if (isGroup(a) && isGroup(b))
    return a.size === b.size && [...a].every(([key, value]) => b.has(key) && isSame(value, b.get(key)))
  if (isList(a) && isList(b)) return a.length === b.length && a.every((item, i) => isSame(item, b[i]))
  return a === b
}

import type { Fields } from '../../../card/yaml.ts'
import { namedGroups } from '../vocabulary/card-words.ts'

/** Where the keys of a mapping are names that the teacher gives, at the top of the block. */
const groups: readonly string[] = [...namedGroups, 'sheets', 'strips', 'slits', 'lengths', 'panels', 'boxes']
/** The same within a sheet or a strip. */
const innerGroups: readonly string[] = ['panels', 'strips']
/** Whether the keys of the mapping at a path of a card block are names that the teacher gives. */
export const isNamePlace = (path: readonly string[]): boolean =>
  (path.length === 1 && groups.includes(path[0] ?? '')) ||
  (path.length > 1 && innerGroups.includes(path.at(-1) ?? ''))

/** The names that a card block gives. */
export const ownNames = (top: { readonly fields: Fields }): string[] =>
  namesAt(top, []).map(({ name }) => name)

/** The names with the group that each is given in. */
function namesAt(
  { fields }: { readonly fields: Fields },
  path: readonly string[],
): { name: string; group: string }[] {
  return [...fields.values()].flatMap(({ key, value }) => [
    ...(isNamePlace(path) ? [{ name: key, group: path.at(-1) ?? '' }] : []),
    ...(value.kind === 'map' ? namesAt(value, [...path, key]) : []),
  ])
}

/** What of a path is a card's own name: which of its words, and how much of that. */
export interface Hit {
  readonly at: number
  readonly name: string
}

/** Finds them with the card that they are of. */
export type Find = (path: readonly string[]) => readonly (Hit & { readonly card: string })[]

/** Finds the own names of a card in a path such as `sea wall.height`. */
export type Hits = (path: readonly string[]) => readonly Hit[]

/** Makes what finds the own names of a card block. */
export function hitsOf(top: { readonly fields: Fields }): Hits {
  const given = namesAt(top, [])
  const names = new Set(given.map(({ name }) => name))
  const of = (group: string): string[] => given.filter((one) => one.group === group).map(({ name }) => name)
  const [strips, panels, boxes] = [of('strips'), of('panels'), of('boxes')]
  return ([first = '', second = '']) => {
    // The panels of a box begin with its name: `tower front`.
    const box = boxes.find((name) => first.startsWith(`${name} `))
    const name = names.has(first) ? first : box
    if (name === undefined) return []
    // A panel of one strip of several: `upper.front`.
    const inStrip = strips.includes(first) && panels.includes(second)
    return [{ at: 0, name }, ...(inStrip ? [{ at: 1, name: second }] : [])]
  }
}

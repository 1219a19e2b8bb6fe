import { report } from '../../card/reading.ts'
import { nearestWord, type Place } from '../../length/finding.ts'
import { directiveNames } from '../syntax/directives.ts'
import { scanExample } from './scan.ts'
import type { Walk } from './walk.ts'

type Kind = keyof typeof directiveNames

const kinds = Object.keys(directiveNames) as Kind[]
const allNames: readonly string[] = kinds.flatMap((kind) => directiveNames[kind] as readonly string[])

type TextName = (typeof directiveNames.text)[number]

const textExamples: Record<TextName, string> = {
  minutes: ':minutes[5]',
  drying: ':drying[20 min]',
  meant: ':meant[2 mm]',
}

/** What stands in their brackets. */
const textContents: Record<TextName, string> = {
  minutes: 'the number of minutes',
  drying: 'how long it dries',
  meant: 'what is meant',
}

/** How many colons the directives of a kind take, and how one is written. */
const shapes = {
  text: { colons: 1, example: (name: string) => textExamples[name as TextName] },
  leaf: {
    colons: 2,
    example: (name: string) => (name === 'scan' ? scanExample : `::${name}[caption]{show=flat}`),
  },
  container: { colons: 3, example: (name: string) => `:::${name}` },
} satisfies Record<Kind, unknown>

const kindOf = (name: string): Kind | undefined =>
  kinds.find((kind) => (directiveNames[kind] as readonly string[]).includes(name))

export const isDirectiveName = (name: string): boolean => kindOf(name) !== undefined

/** The name of ours that a word was probably meant to be. */
export const nearestDirective = (name: string, colons: number): string | undefined =>
  nearestWord(name, colons === 1 ? directiveNames.text : allNames)

/** Something in the shape of a directive has a name that is none of ours. */
export function reportUnknown(walk: Walk, colons: number, name: string, place: Place): void {
  const near = nearestDirective(name, colons)
  const wanted = near === undefined ? undefined : kindOf(near)
  const choice = allNames.filter((n) => shapes[kindOf(n) ?? 'text'].colons === Math.min(colons, 3))
  report(
    walk,
    'unknown-directive',
    place,
    `Unexpected word \`${name}\` behind the colons`,
    near !== undefined && wanted
      ? `Write \`${shapes[wanted].example(near)}\``
      : `Write ${choice.map((n) => `\`${shapes[kindOf(n) ?? 'text'].example(n)}\``).join(' or ')}, or \`\\:\` for a colon that is meant as text`,
  )
}

/** Something has a name of ours, but is not written as that must be. */
export function reportShape(walk: Walk, colons: number, name: string, place: Place): void {
  const kind = kindOf(name) ?? 'text'
  const { example } = shapes[kind]
  const cure = {
    text: `Write \`${example(name)}\`, with ${textContents[name as TextName]}`,
    leaf: `Write \`${example(name)}\` on a line of its own`,
    container: `Write \`${example(name)}\` on a line of its own, the text below it, and \`:::\` below that`,
  }[kind]
  report(
    walk,
    'directive-shape',
    place,
    `\`${':'.repeat(colons)}${name}\` is not complete, or not in its place`,
    cure,
  )
}

import type { Structure } from '../../card/structure.ts'
import type { Act, Making } from '../../fold/pose.ts'
import { listOf } from '../../length/finding.ts'
import type { ActTold } from '../../motion/told.ts'

/** More creases than this are counted rather than named. */
const mostNamed = 2

/** What a hand does between flat and shut, and what the card does between shut and standing. */
export function actsTold(structure: Structure, making: Making | undefined, opens: boolean): ActTold[] {
  const acts = making?.acts ?? []
  return [
    ...acts.map((act, i): ActTold => {
      const [from, to] = [act.from, act.to]
      return { from, to, text: actWords(act, structure, i === acts.length - 1) }
    }),
    ...(opens ? [{ from: 1, to: 2, text: 'Open it, and it stands.' }] : []),
  ]
}

function actWords({ bends, joins }: Act, structure: Structure, last: boolean): string {
  const stuck =
    joins.length > 0 ? `Stick on ${listOf(piecesOf(joins, structure).map((name) => `the ${name}`))}` : ''
  const creases = [...new Map(bends.map((pair) => [[...pair].sort().join('\n'), pair])).values()]
  if (last && (stuck || creases.length > mostNamed))
    return stuck ? `${stuck}, and fold it shut.` : 'Fold it shut.'
  const folded = foldWords(creases, last)
  if (!stuck) return folded || 'The sheet lies ready.'
  return folded ? `${stuck}. ${folded}` : `${stuck}.`
}

function foldWords(creases: readonly (readonly [string, string])[], last: boolean): string {
  if (creases.length === 0) return ''
  const shut = last ? ', and it is shut' : ''
  if (creases.length > mostNamed) return `Fold its ${creases.length} creases.`
  const named = listOf(creases.map(([a, b]) => `between the ${a} and the ${b}`))
  return `Fold the crease${creases.length > 1 ? 's' : ''} ${named}${shut}.`
}

/** The pieces that plates are of; a piece that is there in part already is told by its plates. */
function piecesOf(joins: readonly string[], { plates }: Structure): string[] {
  const names = joins.map((name) => {
    const piece = plates.find((plate) => plate.name === name)?.piece ?? name
    const whole = plates.filter((plate) => plate.piece === piece).every((plate) => joins.includes(plate.name))
    return whole ? piece : name
  })
  return [...new Set(names)]
}

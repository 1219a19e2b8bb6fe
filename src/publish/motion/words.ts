import type { Structure } from '../../card/structure.ts'
import type { Act, Making } from '../../fold/pose.ts'
import { type ActTold, shares, type WordsTold } from '../../motion/told.ts'
import type { Wording } from '../../wording/wording.ts'

/** What the program of the page says by itself. */
export const wordsTold = ({ say }: Wording): WordsTold => ({
  flat: say('motion.flat'),
  shut: say('motion.shut'),
  standing: say('motion.standing'),
  folded: Object.fromEntries(shares.map((share) => [share, say('motion.folded', { share })])),
  open: Object.fromEntries(shares.map((share) => [share, say('motion.open', { share })])),
  stands: say('motion.it-stands'),
  isShut: say('motion.it-is-shut'),
  play: say('motion.play'),
  pause: say('motion.pause'),
})

/** More creases than this are counted rather than named. */
const mostNamed = 2

/** What a hand does between flat and shut, and what the card does between shut and standing. */
export function actsTold(
  structure: Structure,
  making: Making | undefined,
  opens: boolean,
  wording: Wording,
): ActTold[] {
  const acts = making?.acts ?? []
  return [
    ...acts.map((act, i): ActTold => {
      const [from, to] = [act.from, act.to]
      return { from, to, text: actWords(act, structure, i === acts.length - 1, wording) }
    }),
    ...(opens ? [{ from: 1, to: 2, text: wording.say('motion.open-it') }] : []),
  ]
}

function actWords({ bends, joins }: Act, structure: Structure, last: boolean, wording: Wording): string {
  const { say, name, list } = wording
  const pieces = list(
    piecesOf(joins, structure).map((piece) => say('figures.the-piece', { piece: name(piece) })),
  )
  const creases = [...new Map(bends.map((pair) => [[...pair].sort().join('\n'), pair])).values()]
  if (last && joins.length > 0) return say('motion.stick-on-fold-shut', { pieces })
  if (last && creases.length > mostNamed) return say('motion.fold-shut')
  const done = [
    ...(joins.length > 0 ? [say('motion.stick-on', { pieces })] : []),
    ...(creases.length > 0 ? [foldWords(creases, last, wording)] : []),
  ]
  return done.length > 0 ? done.join(' ') : say('motion.sheet-ready')
}

function foldWords(
  creases: readonly (readonly [string, string])[],
  last: boolean,
  { say, name, list }: Wording,
): string {
  const count = creases.length
  if (count > mostNamed) return say('motion.fold-its-creases', { count })
  return say('motion.fold-creases', {
    count,
    creases: list(
      creases.map(([one, other]) => say('motion.crease-between', { one: name(one), other: name(other) })),
    ),
    last: last ? 'yes' : 'no',
  })
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

import type { Structure } from '../card/structure.ts'
import type { Proof } from '../fold/pose.ts'
import type { Wording } from '../wording/wording.ts'

/** How a card moves, in words: how many of its creases a hand can bend each on its own. */
export function movementWords(structure: Structure, { freedom, findings }: Proof, { say }: Wording): string {
  const creases = creasesThatBend(structure)
  if (findings.some(({ rule }) => rule === 'floppy')) return say('kit.floppy', { ways: freedom })
  if (freedom === 0) return say('kit.rigid')
  if (freedom === 1) return creases === 1 ? say('kit.bends-at-one') : say('kit.moves-as-one')
  return freedom < creases
    ? say('kit.freely-some', { free: freedom, creases })
    : say('kit.freely', { creases })
}

/** Creases between parts that no bond holds together; two between the same parts bend as one. */
function creasesThatBend({ plates, hinges, bonds }: Structure): number {
  const held = new Map(plates.map(({ name }): [string, string] => [name, name]))
  for (const { plate, onto } of bonds) {
    const [from, to] = [held.get(plate), held.get(onto)]
    for (const [name, part] of held) if (part === from && to !== undefined) held.set(name, to)
  }
  const pairs = hinges.map(({ between }) => between.map((name) => held.get(name) ?? name).sort())
  return new Set(pairs.filter(([one, other]) => one !== other).map((pair) => pair.join('\n'))).size
}

import type { Finding } from '../length/finding.ts'
import { type Affine, after, apply, determinant, identity, inverse, sameLinear, sameMap } from './affine.ts'
import type { Model, ModelBond, ModelHinge } from './model.ts'
import { sayLength, sayNames } from './say.ts'

/** Plates that bonds make one rigid thing. */
export interface Bodies {
  /** Which body each plate is part of. */
  readonly of: readonly number[]
  /** The plates of each body from its back to its front, in the order in which they were stuck together. */
  readonly stacks: readonly (readonly number[])[]
  /** From each plate's piece into the flat frame of its body. */
  readonly maps: readonly Affine[]
}

/**
 * Sticks plates together bond by bond, as a hand would: what is stuck on goes outside everything that is there
 * already. Bonds that contradict each other, and creases that a bond holds, are reported.
 */
export function bodiesOf(model: Model, findings: Finding[]): Bodies {
  const { plates, hinges, bonds } = model
  const of = plates.map((_, i) => i)
  const stacks: number[][] = plates.map((_, i) => [i])
  const maps: Affine[] = plates.map(() => identity)
  for (const bond of bonds) {
    const [onto, target] = [maps[bond.onto] ?? identity, after(maps[bond.onto] ?? identity, bond.map)]
    const [mine, host] = [of[bond.plate] ?? 0, of[bond.onto] ?? 0]
    const there = maps[bond.plate] ?? identity
    if (mine === host) {
      if (!sameMap(there, target)) findings.push(mismatch(model, bond, there, target))
      continue
    }
    const move = after(target, inverse(there))
    const stuck = stacks[mine] ?? []
    if (determinant(move) < 0) stuck.reverse()
    for (const i of stuck) {
      maps[i] = after(move, maps[i] ?? identity)
      of[i] = host
    }
    const inFront = bond.front === determinant(onto) > 0
    const before = stacks[host] ?? []
    stacks[host] = inFront ? [...before, ...stuck] : [...stuck, ...before]
    stacks[mine] = []
  }
  const bodies = { of, stacks, maps }
  for (const hinge of hinges) if (of[hinge.p] === of[hinge.q]) checkHeld(model, bodies, hinge, findings)
  return bodies
}

/** A crease within a body is held. That is fine where it is held shut, as in a hem that is folded over and glued. */
function checkHeld(model: Model, { of, stacks, maps }: Bodies, hinge: ModelHinge, findings: Finding[]): void {
  const [p, q] = [maps[hinge.p] ?? identity, maps[hinge.q] ?? identity]
  const [from, to] = hinge.line
  const meets = [from, to].every((point) => String(apply(p, point)) === String(apply(q, point)))
  const names = [hinge.p, hinge.q].map((i) => model.plates[i]?.name ?? '')
  if (meets && !sameLinear(p, q)) return
  const across = (stacks[of[hinge.p] ?? 0] ?? []).filter(
    (i) => sticksTo(model.bonds, i, hinge.p) && sticksTo(model.bonds, i, hinge.q),
  )
  const strips = sayNames(across.map((i) => model.plates[i]?.name ?? ''))
  findings.push(
    meets
      ? {
          rule: 'stuck-across-a-crease',
          severity: 'error',
          message: `${strips || 'Something'} is stuck on both ${sayNames(names)}, so the crease between them cannot fold`,
          suggestion: strips
            ? `Cut ${strips} in two at the crease, or stick it on one side of the crease only`
            : 'Stick it on one side of the crease only',
        }
      : {
          rule: 'bond-mismatch',
          severity: 'error',
          message: `What is stuck on ${sayNames(names)} pulls them apart at the crease between them`,
          suggestion: strips ? `Take ${strips} off one of the two` : 'Leave one of the bonds out',
        },
  )
}

const sticksTo = (bonds: readonly ModelBond[], a: number, b: number): boolean =>
  bonds.some((bond) => (bond.plate === a && bond.onto === b) || (bond.plate === b && bond.onto === a))

function mismatch({ plates, perMm }: Model, bond: ModelBond, there: Affine, target: Affine): Finding {
  const [plate, onto] = [plates[bond.plate]?.name, plates[bond.onto]?.name]
  const [right, up] = [Math.abs(target.e - there.e), Math.abs(target.f - there.f)]
  const apart = [right, up].filter((n) => n > 0).map((n) => sayLength(n, perMm))
  const by = sameLinear(there, target)
    ? `: they are ${apart.join(' and ')} apart`
    : ': it is turned otherwise'
  return {
    rule: 'bond-mismatch',
    severity: 'error',
    message: `\`${plate}\` cannot be stuck on \`${onto}\` there, because the two are held together elsewhere already${by}`,
    suggestion: `Move \`${plate}\` by that much, or leave one of the bonds out`,
  }
}

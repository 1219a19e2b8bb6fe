import type { Finding } from '../length/finding.ts'
import type { Assembly } from './assembly.ts'
import { type Closing, closesAtAll, closingsOf } from './closings.ts'
import { frontToBack, layerOrdersOf, type SearchReport, worstClash } from './layer-order.ts'
import type { Clash, LayerProblem } from './layer-problem.ts'
import { layerProblemOf } from './layer-rules.ts'
import { layingsOf } from './layings.ts'
import { type Layout, layOut } from './layout.ts'
import { liesOpen, missesOf } from './misses.ts'
import type { Rings } from './rings.ts'
import { sayNames } from './say.ts'
import type { Section } from './section.ts'
import { missesInSpace } from './vertices.ts'

/** The card shut, seen with the face of the plate that stays put towards the viewer. */
export interface Shut {
  readonly layout: Layout
  /** Plates of the assembly from front to back. */
  readonly order: readonly number[]
}

/** Closings whose layers are tried before giving up, and orders of one closing that might go in a circle. */
const mostClosings = 200
const mostOrders = 50

/** Shuts a card whose creases are all parallel, exactly. Without a way, findings say what is in it. */
export function shutSection(section: Section, rings: Rings, findings: Finding[]): Shut | undefined {
  if (closesAtAll(section, rings)) return firstShut(section, rings, closingsOf(section, rings), findings)
  findings.push(...missesOf(section, rings))
  return undefined
}

/** Shuts any other card that is laid flat. */
export function shutInSpace(assembly: Assembly, rings: Rings, findings: Finding[]): Shut | undefined {
  const layings = layingsOf(assembly, rings)
  if (layings.length > 0 || rings.cycles.length === 0) return firstShut(assembly, rings, layings, findings)
  findings.push(...missesInSpace(assembly, rings))
  return undefined
}

/** The first closing that the layers allow. */
function firstShut(
  assembly: Assembly,
  rings: Rings,
  closings: Iterable<Closing>,
  findings: Finding[],
): Shut | undefined {
  let first: { layout: Layout; clash: Clash } | undefined
  let tried = 0
  let gaveUp = false
  for (const closing of closings) {
    const layout = layOut(assembly, closing)
    const loose = tried === 0 ? stuckNowhere(layout) : []
    findings.push(...loose)
    if (loose.length > 0) return undefined
    const problem = layerProblemOf(layout)
    const report: SearchReport = { blame: new Map(), gaveUp: false }
    const order = firstOrder(problem, report)
    if (order) return { layout, order }
    first ??= { layout, clash: worstClash(report.blame) ?? { plates: [] } }
    gaveUp ||= report.gaveUp
    if (++tried < mostClosings) continue
    gaveUp = true
    break
  }
  if (gaveUp) findings.push(tooManyWays())
  else findings.push(first ? layersCross(first.layout, first.clash) : liesOpen(assembly, rings))
  return undefined
}

function firstOrder(problem: LayerProblem, report: SearchReport): number[] | undefined {
  let tried = 0
  for (const value of layerOrdersOf(problem, report)) {
    const order = frontToBack(problem, value)
    if (order) return order
    if (++tried < mostOrders) continue
    report.gaveUp = true
    return undefined
  }
  return undefined
}

/** Bonds between plates that do not lie on each other: true of one closing, true of all. */
function stuckNowhere({ assembly, groups }: Layout): Finding[] {
  const { model, plates } = assembly
  const numbers = new Map(plates.map(({ index }, i) => [index, i]))
  return model.bonds.flatMap(({ plate, onto }): Finding[] => {
    const [i, j] = [numbers.get(plate), numbers.get(onto)]
    if (i === undefined || j === undefined) return []
    if (groups.some((shapes) => shapes.includes(i) && shapes.includes(j))) return []
    const [one, other] = [model.plates[plate]?.name, model.plates[onto]?.name]
    return [
      {
        rule: 'stuck-nowhere',
        severity: 'error',
        message: `\`${one}\` is stuck on \`${other}\`, but does not lie on it anywhere`,
        suggestion: `Move \`${one}\` so that it lies on \`${other}\``,
      },
    ]
  })
}

function tooManyWays(): Finding {
  return {
    rule: 'too-many-ways',
    severity: 'warning',
    message:
      'This card can be laid flat in more ways than were tried, and in those its layers cross, so whether it shuts is not known',
    suggestion: 'Fold a sample before the class, and compare its closed size',
  }
}

function layersCross({ assembly }: Layout, { plates, crease }: Clash): Finding {
  const nameOf = (i: number): string => assembly.model.plates[assembly.plates[i]?.index ?? 0]?.name ?? ''
  const names = plates.map(nameOf)
  const [one = '', ...others] = names
  const ends = crease ? [nameOf(crease.p), nameOf(crease.q)] : []
  const past = crease && names.length > 2
  return {
    rule: 'layers-cross',
    severity: 'error',
    message: past
      ? `When the card is shut, \`${one}\` would have to pass through the crease between ${sayNames(ends)}`
      : `When the card is shut, ${sayNames(names)} would have to pass through each other`,
    suggestion: past
      ? `Make \`${one}\` shorter so that it ends before that crease, or turn one of the two creases the other way`
      : `Turn one of the creases at ${sayNames(others.length > 0 ? others : names)} the other way, or stick it on the other side`,
  }
}

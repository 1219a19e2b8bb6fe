import type { Finding } from '../length/finding.ts'
import type { Assembly } from './assembly.ts'
import { type Crossing, crossingsAt, evenly } from './crossings.ts'
import type { Motion } from './motion.ts'
import { sayLength } from './say.ts'

/**
 * Which plates would have to run through each other when the card opens. Where nothing leads the creases only the end
 * counts, since a hand can fold them one after the other.
 */
export function crossingsWhileOpening(assembly: Assembly, { linkage, foldsAt, isLed }: Motion): Finding[] {
  const moments = isLed ? evenly(foldsAt) : [foldsAt(1)].filter((folds) => folds !== undefined)
  return crossingsAt(assembly, linkage, moments).map((crossing) => told(assembly, crossing))
}

function told({ model, plates }: Assembly, { through, wall, by }: Crossing): Finding {
  const [one, other] = [through, wall].map((i) => model.plates[plates[i]?.index ?? 0]?.name ?? '')
  // Solved for, so a hair above a whole number of units is that number.
  const amount = sayLength(Math.ceil(by * Number(model.perMm) - 1e-4), model.perMm)
  return {
    rule: 'plates-cross',
    severity: 'error',
    message: `When the card opens, \`${one}\` would have to run through \`${other}\`, by ${amount}`,
    suggestion: `Make \`${one}\` ${amount} shorter on that side, or put it farther from \`${other}\``,
  }
}

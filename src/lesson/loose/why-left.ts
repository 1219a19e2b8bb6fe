import type { Unit } from '../../length/length.ts'
import type { LooseNumber } from './loose-numbers.ts'
import { measureOf } from './proposal.ts'
import { partOf, valueOfName } from './saying.ts'

/** Why a plain number was left as it is, and what to do, in one sentence. */
export function whyLeft({ words, proposal, mistake }: LooseNumber, unit: Unit): string {
  if (mistake)
    return `The words ask for ${partOf(mistake.candidate)}, which is ${valueOfName(mistake.candidate, unit)}: write \`{${mistake.candidate.path}}\` if that is meant`
  if (proposal) return `It may be \`${measureOf(proposal)}\`: write that if it is meant`
  return `The words do not say which piece it is of: write \`:meant[${words}]\` if it is the same at every size`
}

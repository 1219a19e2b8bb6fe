import type { Card } from '../card/card.ts'
import { type CardWishes, checkCard } from '../card/check.ts'
import type { Structure } from '../card/structure.ts'
import type { YamlBlock } from '../card/yaml.ts'
import type { Finding, Place } from '../length/finding.ts'
import { formatSize } from '../length/format.ts'
import { inCreaseOf } from './in-crease.ts'
import type { Proof } from './pose.ts'
import { foldCard } from './prove.ts'

/** A card block checked, built and folded. */
export interface Proven {
  /** Missing when the block has errors of its own. */
  readonly card?: Card
  readonly proof?: Proof
  /** Of the block, of the folding, and whether it closes to the size it declares; all with their places. */
  readonly findings: readonly Finding[]
}

/** Checks a card block, folds what it builds, and compares the result with what the block declares. */
export function proveCard(block: YamlBlock, wishes: Omit<CardWishes, 'thickness' | 'inCreases'>): Proven {
  const proofs = new Map<Structure, Proof>()
  const prove = (structure: Structure): Proof => {
    const proof = proofs.get(structure) ?? foldCard(structure)
    proofs.set(structure, proof)
    return proof
  }
  const { card, findings } = checkCard(block, {
    ...wishes,
    thickness: (structure) => prove(structure).closed?.thickness,
    inCreases: (structure) => {
      const { closed } = prove(structure)
      return closed && inCreaseOf(closed)
    },
  })
  if (!card) return { findings }
  const proof = prove(card.structure)
  const folding = [...proof.findings, ...closedSize(card, proof)]
  return {
    card,
    proof,
    findings: [...findings, ...folding.map((f) => ({ ...f, place: f.place ?? placeOf(f, card) }))],
  }
}

/** Shut, the card has exactly the size that the lesson declares. */
function closedSize({ closed, unit, fold }: Card, { closed: shut }: Proof): Finding[] {
  if (!shut || (shut.size.width.equals(closed.width) && shut.size.height.equals(closed.height))) return []
  const [computed, declared] = [formatSize(shut.size, unit), formatSize(closed, unit)]
  return [
    {
      rule: 'closed-size',
      severity: 'error',
      message: `Shut, this card is ${computed}, but the lesson says ${declared}`,
      suggestion:
        fold === 'free'
          ? `Write \`closed: ${computed.replace('×', 'x')}\`, or change the panels`
          : `Make the card ${computed}`,
    },
  ]
}

/** A finding about the folding stands where the part that it names first is described, or else at the fold. */
function placeOf(finding: Finding, { places }: Card): Place {
  for (const [, name = ''] of finding.message.matchAll(/`([^`]+)`/g)) {
    const place = places.get(name) ?? places.get(name.replace(/ on .*$/, ''))
    if (place) return place
  }
  return places.get('fold') ?? { line: 1, column: 1 }
}

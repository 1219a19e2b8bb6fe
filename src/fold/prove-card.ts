import type { Card } from '../card/card.ts'
import { type CardWishes, checkCard } from '../card/check.ts'
import type { Structure } from '../card/structure.ts'
import type { YamlBlock } from '../card/yaml.ts'
import type { Finding, Place } from '../length/finding.ts'
import { formatLength, formatSize } from '../length/format.ts'
import { inCreaseOf } from './in-crease.ts'
import { mechanismBox, sizeOfBox } from './overhangs.ts'
import type { Closed, Proof } from './pose.ts'
import { foldCard, shutCard } from './prove.ts'
import { stickingOut } from './sticking-out.ts'

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
  let whole: { structure: Structure; proof: Proof } | undefined
  const { card, findings } = checkCard(block, {
    ...wishes,
    thickness: (structure) => {
      whole = { structure, proof: foldCard(structure) }
      return whole.proof.closed?.thickness
    },
    inCreases: (structure) => {
      // Asked of the bare mechanism too, of which only how it lies shut matters.
      const closed = whole?.structure === structure ? whole.proof.closed : shutCard(structure)
      return closed && inCreaseOf(closed)
    },
  })
  if (!card || !whole) return { findings }
  const { proof } = whole
  const { closed } = proof
  const shut = closed ? [...closedSize(card, closed), ...stickingOut(card, closed)] : []
  const folding = [...proof.findings, ...shut]
  return {
    card,
    proof,
    findings: [...findings, ...folding.map((f) => ({ ...f, place: f.place ?? placeOf(f, card) }))],
  }
}

/** Shut, the card without what is stuck on has exactly the size that the lesson declares. */
function closedSize({ closed, unit, fold, structure, span }: Card, shut: Closed): Finding[] {
  const box = mechanismBox(structure, shut)
  const size = box ? sizeOfBox(box) : shut.size
  if (size.width.equals(closed.width) && size.height.equals(closed.height)) return []
  const [computed, declared] = [formatSize(size, unit), formatSize(closed, unit)]
  return [
    {
      rule: 'closed-size',
      severity: 'error',
      message: `Shut, this card is ${computed}, but the lesson says ${declared}`,
      suggestion:
        span && !structure.pieces.some(({ kind }) => kind === 'span')
          ? `Add a span from \`${span.from}\` to \`${span.to}\`, ${formatLength(span.width, unit)} wide: without one nothing holds them together`
          : fold === 'free'
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

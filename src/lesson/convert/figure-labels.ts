import type { LeafDirective } from 'mdast-util-directive'
import { report } from '../../card/reading.ts'
import { listOf, type Place, type Severity, suggestWord } from '../../length/finding.ts'
import { labelsOfKind } from '../figures/labels-of-kind.ts'
import { type LabelWord, labelWords } from '../label-words.ts'
import type { FigureKind } from '../nodes.ts'
import { attributePlace, valuePlace } from './attributes.ts'
import type { Walk } from './walk.ts'

/**
 * The words of `label="scores size"`, with spaces or commas between them. One that is no word, or that this kind of
 * figure has nothing for, is told and left out.
 *
 * @returns undefined when there is no `label`, or nothing is left of it.
 */
export function readLabels(node: LeafDirective, kind: FigureKind, walk: Walk): LabelWord[] | undefined {
  const value = node.attributes?.label
  if (value === undefined || value === null) return undefined
  const known = labelsOfKind(kind)
  const found = [...value.matchAll(/[^\s,]+/g)].map(({ 0: word, index }) => ({ word, index }))
  if (found.length === 0)
    tell(attributePlace(node, 'label'), 'This does not say which numbers and names to show', choice(known))
  const labels = found.flatMap(({ word, index }): LabelWord[] => {
    const label = labelWords.find((one) => one === word)
    if (label && known.includes(label)) return [label]
    tell(
      placeOf(word, index),
      label ? `A figure that shows \`${kind}\` has no \`${label}\`` : `Unexpected label \`${word}\``,
      label ? choice(known) : suggestWord(word, known),
    )
    return []
  })
  const alone = labels.find((label) => label === 'all' || label === 'none')
  if (alone && found.length > 1) {
    const at = found.find(({ word }) => word === alone)
    tell(
      placeOf(alone, at?.index ?? 0),
      `\`${alone}\` and other words say different things`,
      `Write \`label=${alone}\`, or take \`${alone}\` out`,
      'warning',
    )
  }
  return labels.length > 0 ? labels : undefined

  function tell(place: Place, message: string, suggestion: string, severity: Severity = 'error'): void {
    report(walk, 'unknown-label', place, message, suggestion, severity)
  }
  /** The very word, where the value stands in the file as it is; the whole value where it is written in another way. */
  function placeOf(word: string, index: number): Place {
    const whole = valuePlace(node, 'label', walk)
    const { offset, end } = whole
    if (offset === undefined || end === undefined) return whole
    const isAsWritten = walk.source.text.slice(offset, end) === value
    return isAsWritten ? walk.source.place(offset + index, offset + index + word.length) : whole
  }
}

const choice = (known: readonly string[]): string =>
  `Choose from ${listOf(
    known.map((word) => `\`${word}\``),
    'and',
  )}`

import type { Literal } from './literal.ts'
import type { Said } from './parts.ts'

const goods =
  '(?:tape|foam|pads?|drill|punch|ribbon|thread|wire|brads?|beads?|(?:pearl|glue|foam|sticky) dots?|ruler|holes?|pens?|cord|string|twine|elastic|needle|nib|brush|squares|stripes|grid|magnets?|buttons?|eyelets?|die|dies|nails?|glue|lace|trim|buffer)'
const behindIt = new RegExp(
  `^-?(?: (?:wide|thick|deep|high|round|clear|thin|double-sided|sticky|masking|foam|satin|waxed))* ${goods}\\b`,
)
const beforeIt = new RegExp(`\\b${goods}(?: (?:of|that (?:is|are)|which (?:is|are)|about))? $`)
const bound =
  /\b(?:at least|at most|no (?:more|less|wider|higher|thicker|longer) than|not (?:more|less) than|more than|less than|under|over|up to|below|above|within|longer than|wider than|shorter than|every|by even|to the nearest|even) $/
const sheet = /^ (?:\w+[ -]){0,3}(?:sheets?|pads?|packs?|blocks?)\b/
const fromSheet = /\b(?:one|two|three|\d|from|out of|of|per|each|a|an) (?:\w+ )?$/

/** Whether the words say that a number belongs to a tool, to a sheet that is bought, or is only a bound. */
export function unrelated(
  literal: Literal,
  { before, behind }: Said,
): 'goods' | 'bound' | 'sheet' | undefined {
  if (behindIt.test(behind) || beforeIt.test(before)) return 'goods'
  if (bound.test(before)) return 'bound'
  if ((literal.kind === 'size' || literal.kind === 'sheet') && sheet.test(behind) && fromSheet.test(before))
    return 'sheet'
  return undefined
}

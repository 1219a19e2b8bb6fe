import { isRefused } from '../../prose/refused.ts'
import type { Ways } from '../way.ts'

export const en: Ways = {
  isRefused,
  isPicture: (before, after) =>
    /\b(?:paper|card|cardboard|felt|drawn|painted|printed|stamped|cut-out|die-cut)[ -]$/i.test(before) ||
    /\b(?:draw|sketch|paint|colour|color|trace|stamp|print|cut out)(?: an?| the| some| your| each)?(?: [a-z]{2,9})? $/i.test(
      before,
    ) ||
    /^[ -](?:paper|card(?:stock)?|stamp|die|stencil|template|shape|pattern|motif|outline|sticker|picture|drawing|image|design|print)s?\b/i.test(
      after,
    ),
  /** `light a match`; but not `a lighter blue`. */
  isUsed: (before, after) =>
    /\b(?:with|use|using|take|light|strike|pour|mix)(?: an?| the| your| some)? $/i.test(before) &&
    /^(?:$|[.,;:!?)]| (?:and|to|on|over|at|until|for|from|into)\b)/.test(after),
  adult: /\b(?:adults?|grown-?(?: )?ups?|teachers?|tutors?|parents?|helpers?|supervis[a-z]*)\b/i,
}

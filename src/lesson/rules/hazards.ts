/** A tool that can hurt, by the words a lesson may name it with, and what its caution should say. */
export interface Hazard {
  readonly tool: RegExp
  readonly caution: string
}

/**
 * Knives: NSEAD, health and safety, cutting tools. Glue guns: NSTA Science Scope, October 2010. Sprays, contact glue and
 * instant glue: NSEAD, adhesives and fixatives. Heat tools, rotary cutters and irons: common practice, no source.
 */
export const hazards: readonly Hazard[] = [
  {
    tool: /\b(?:(?:craft|hobby|utility|trimming|art|snap-off|precision) kni(?:fe|ves)|scalpels?|kni(?:fe|ves))\b/i,
    caution: 'cut on a mat, and keep the hand that holds the paper behind the blade',
  },
  { tool: /\brotary cutters?\b/i, caution: 'close the blade whenever it is put down' },
  {
    tool: /\b(?:hot[- ])?glue guns?\b|\bhot glue\b/i,
    caution: 'the nozzle and the glue burn skin at any setting',
  },
  {
    tool: /\b(?:heat|embossing) (?:tools?|guns?)\b|\bheat-embossing tools?\b/i,
    caution: 'an adult holds it, away from the hands and from loose paper',
  },
  { tool: /\b(?:soldering|clothes|craft|mini) irons?\b/i, caution: 'it stays hot for a while after use' },
  {
    tool: /\bspray (?:adhesives?|glues?|mounts?|fixatives?|varnish(?:es)?)\b|\b(?:adhesive|fixative) sprays?\b/i,
    caution: 'use it only where there is plenty of fresh air',
  },
  {
    tool: /\bcontact (?:adhesives?|glues?|cements?)\b/i,
    caution: 'use it only where there is plenty of fresh air',
  },
  {
    tool: /\b(?:super ?glues?|instant glues?|cyanoacrylates?)\b/i,
    caution: 'it is not for children, and it sticks skin at once',
  },
]

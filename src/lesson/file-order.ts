import type { Finding } from '../length/finding.ts'

/** Findings in the order of the file; those without a place come last. */
export const inFileOrder = (findings: readonly Finding[]): Finding[] =>
  [...findings].sort(
    ({ place: a }, { place: b }) =>
      (a?.line ?? Number.MAX_SAFE_INTEGER) - (b?.line ?? Number.MAX_SAFE_INTEGER) ||
      (a?.column ?? 0) - (b?.column ?? 0),
  )

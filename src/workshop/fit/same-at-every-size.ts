import type { Finding } from '../../length/finding.ts'

const rules = new Set(['yaml', 'unknown-name', 'unknown-key', 'unknown-fold', 'missing-key', 'no-card'])

/** The errors that another size of the card cannot cure: something is misspelt, or missing. */
export const sameAtEverySize = (findings: readonly Finding[]): Finding[] =>
  findings.filter(({ rule, severity }) => severity === 'error' && rules.has(rule))

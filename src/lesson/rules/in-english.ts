import type { RuleInput } from './rule.ts'

/** Whether the words of a lesson can be read: the lists of words are English. */
export const isInEnglish = ({ filled: { frontMatter } }: Pick<RuleInput, 'filled'>): boolean =>
  /^en(?:-|$)/i.test(frontMatter.lang)

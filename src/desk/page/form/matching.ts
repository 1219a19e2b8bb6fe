import type { FoldOffered } from '../../engine/folds.ts'

/** The folds that have to do with all of some words, by name, heading or summary; half a word finds it too. */
export function matching(folds: readonly FoldOffered[], words: string): readonly FoldOffered[] {
  const wanted = words.toLowerCase().split(/\s+/).filter(Boolean).map(stem)
  return folds.filter(({ name, group, summary }) => {
    const said = `${name} ${group} ${summary}`.toLowerCase()
    return wanted.every((word) => said.includes(word))
  })
}

/** `doors` finds a door, and `boxes` a box. */
const stem = (word: string): string => (word.length > 3 ? word.replace(/(?:(?<=x|ch|sh|s)es|s)$/, '') : word)

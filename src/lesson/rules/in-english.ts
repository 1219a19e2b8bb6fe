import type { FrontMatter } from '../lesson.ts'

/** Whether the words of a lesson can be read: the lists of words are English. */
export const isInEnglish = ({
  filled: { frontMatter },
}: {
  readonly filled: { readonly frontMatter: Pick<FrontMatter, 'lang'> }
}): boolean => /^en(?:-|$)/i.test(frontMatter.lang)

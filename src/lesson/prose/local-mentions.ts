import type { Wording } from '../../wording/wording.ts'
import { type FindMentions, mentionFinder } from './mentions.ts'
import type { Named } from './named.ts'

/** Finds mentions also by what the language calls panels and pieces of foldlore's own, such as `Grundkarte`. */
export function localMentionFinder(all: readonly Named[], { name }: Pick<Wording, 'name'>): FindMentions {
  const meant = new Map<Named, Named>()
  for (const own of all) {
    const local = name(own.name)
    if (local.toLowerCase() !== own.name.toLowerCase()) meant.set({ ...own, name: local }, own)
  }
  const find = mentionFinder([...all, ...meant.keys()])
  return (sentence) =>
    find(sentence).map((mention) => ({ ...mention, named: meant.get(mention.named) ?? mention.named }))
}

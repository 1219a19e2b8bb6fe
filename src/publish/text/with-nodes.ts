import type { PhrasingContent } from 'mdast'
import type { MessageKey } from '../../wording/catalogue.ts'
import type { Wording } from '../../wording/wording.ts'
import { text } from './phrases.ts'

/** What stands in a message for words that are more than text: a character that no text has. */
const mark = '\ue000'

/**
 * A message with words of the lesson in it, which may be strong or a link.
 *
 * @param name of what they are put in for.
 */
export const sayWith = (
  wording: Wording,
  key: MessageKey,
  name: string,
  words: readonly PhrasingContent[],
): PhrasingContent[] =>
  wording
    .say(key, { [name]: mark })
    .split(mark)
    .flatMap((part, i) => [...(i > 0 ? words : []), ...(part === '' ? [] : [text(part)])])

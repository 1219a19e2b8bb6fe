import type { Root } from 'mdast'
import type { Wording } from '../../wording/wording.ts'
import type { FrontMatter } from '../lesson.ts'
import type { NamedDanger } from './dangers-of.ts'
import { hazards } from './hazards.ts'
import { spokenOf } from './spoken-of.ts'

/** A caution that a lesson's tools and supplies call for, and that the lesson does not give itself. */
export interface Caution {
  /** Name of the hazard, or `children` for what every lesson for children is told. */
  readonly about: string
  /** How it is headed in print. */
  readonly title: string
  /** Whole sentences. */
  readonly text: string
  /** Whether the lesson has a caution of its own about it, which leaves out what an adult does where children work. */
  readonly adultsOnly: boolean
  /** What called for it, and where that stands; missing when that is whom the lesson is for. */
  readonly because?: Omit<NamedDanger, 'hazard'>
}

/** Nobody who writes a program knows the room, the group or the tools: this stands below whatever it prints. */
export const closingAdvice = ({ wording }: { readonly wording: Pick<Wording, 'say'> }): string =>
  wording.say('cautions.closing')

/**
 * What every lesson for children says. To show a tool and to think of age and ability before it is used: NSEAD, health and
 * safety, cutting tools. How many adults there must be is no fact: schools publish different numbers.
 */
const withChildren = ({ say }: Wording): Caution => ({
  about: 'children',
  title: say('cautions.children-title'),
  adultsOnly: false,
  text: say('cautions.children'),
})

/**
 * The cautions that are printed before the first step, in the language of the lesson. A caution in the lesson about the
 * same hazard takes the place of the general one; in a lesson for children what an adult does is still printed, unless
 * that caution says it too.
 */
export function cautionsOf(
  dangers: readonly NamedDanger[],
  tree: Root,
  { for: whom }: Pick<FrontMatter, 'for'>,
  wording: Wording,
): Caution[] {
  const { topics, withAdult } = spokenOf(tree, wording.locale)
  const children = whom === 'children'
  const called = hazards.flatMap((hazard): Caution[] => {
    const danger = dangers.find((other) => other.hazard === hazard)
    if (!danger) return []
    const { name } = hazard
    const text = [
      ...(topics.has(name) ? [] : [wording.say(`cautions.${name}`)]),
      ...(children && !withAdult.has(name) ? [wording.say(`cautions.${name}-children`)] : []),
    ].join(' ')
    if (text === '') return []
    const title = wording.say(`cautions.${name}-title`)
    const { word, place } = danger
    return [{ about: name, title, text, adultsOnly: topics.has(name), because: { word, place } }]
  })
  return [...(children && !topics.has('children') ? [withChildren(wording)] : []), ...called]
}

/** Something about tools and supplies that can hurt, and what a lesson says about it. */
export interface Hazard {
  /** What a caution calls it: `:::caution{about=hot-glue}`. */
  readonly name: string
  /** How the print calls it. */
  readonly title: string
  /** The tools and supplies that have it, in the singular. */
  readonly words: readonly string[]
  /** Words that mean something else as often: they count alone in a list of supplies, or behind `with a`. */
  readonly alone?: readonly string[]
  /** Tools and supplies that have it for children only. */
  readonly forChildren?: readonly string[]
  /** What holds one of the words and does not have the hazard. */
  readonly not?: readonly string[]
  /** Whether the thing is often only a picture on a card: a paper balloon, a candle that is drawn. */
  readonly pictured?: boolean
  /** Further words by which a caution speaks of it. */
  readonly also?: readonly string[]
  /** What can happen, and what to do about it: whole sentences. */
  readonly caution: string
  /** What an adult does instead, or watches over, where children work. */
  readonly children: string
}

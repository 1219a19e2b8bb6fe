/** What a caution calls a hazard: `:::caution{about=hot-glue}`. Its texts have this name in the catalogue of messages. */
export type HazardName =
  | 'blades'
  | 'trimmers'
  | 'scissors'
  | 'points'
  | 'punches'
  | 'wire'
  | 'film'
  | 'heat'
  | 'hot-glue'
  | 'flames'
  | 'sprays'
  | 'solvents'
  | 'instant-glue'
  | 'resin'
  | 'powders'
  | 'small-parts'
  | 'magnets'
  | 'button-cells'
  | 'balloons'
  | 'allergies'

/** The words of a language that name a hazard. */
export interface HazardWords {
  /** The tools and supplies that have it, in the singular. */
  readonly words: readonly string[]
  /** Words that mean something else as often: they count alone in a list of supplies, or behind `with a`. */
  readonly alone?: readonly string[]
  /** Tools and supplies that have it for children only. */
  readonly forChildren?: readonly string[]
  /** What holds one of the words and does not have the hazard. */
  readonly not?: readonly string[]
  /** Further words by which a caution speaks of it. */
  readonly also?: readonly string[]
}

/** Something about tools and supplies that can hurt. Its own words are English; those of other languages are in `words/`. */
export interface Hazard extends HazardWords {
  readonly name: HazardName
  /** Whether the thing is often only a picture on a card: a paper balloon, a candle that is drawn. */
  readonly pictured?: boolean
}

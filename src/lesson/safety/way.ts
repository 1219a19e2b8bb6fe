/** How a language speaks of a tool or a supply: what the words before and behind it make of it. */
export interface Ways {
  /** It is not used: `without a knife`. */
  readonly isRefused: (before: string, after: string) => boolean
  /** It is only shown: `a paper balloon`, `balloon stickers`, `draw a balloon`. */
  readonly isPicture: (before: string, after: string, word: string) => boolean
  /** A word that means something else as often is this tool: `press it with an iron`. */
  readonly isUsed: (before: string, after: string) => boolean
  /** That an adult is spoken of. */
  readonly adult: RegExp
}

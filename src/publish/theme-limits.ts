/** What no theme needs: more is told with its file. Sizes of files are in bytes. */
export const themeLimits = {
  /** What comes with foldlore has a tenth of it at most; reading one takes longer than in line with its size. */
  template: 100_000,
  /** Blocks within each other. */
  blocks: 50,
  /** Fonts and pictures are in it as data. */
  styleSheet: 10_000_000,
  settings: 100_000,
  partials: 200,
  /** Partials within each other. */
  depth: 100,
} as const

/** How many bytes a file of a theme may have, by its name. */
export const mostBytes = (name: string): number =>
  name.endsWith('.css')
    ? themeLimits.styleSheet
    : name.endsWith('.hbs')
      ? themeLimits.template
      : themeLimits.settings

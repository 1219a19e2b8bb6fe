/** Types that are tried, in points: as large as fits on one page, and not too small to read on a wall. */
const types = [12, 11.5, 11, 10.5, 10, 9.5, 9, 8.5, 8, 7.5, 7, 6.5] as const
/** What a page is set in before anybody has tried which type fits. */
const usualType = 8.5

const nameOf = (type: number): string => `type-${10 * type}`

/** The settings of a chart, as classes of the root; each takes no more room than the one before it. */
export const chartSettings: readonly string[] = types.map(nameOf)

/** What these settings say, on top of the style sheet of a theme. */
export const chartTypes = [
  `:root{--chart-type:${usualType}pt}`,
  ...types.map((type) => `:root.${nameOf(type)}{--chart-type:${type}pt}`),
].join('\n')

/** Types that are tried for a lesson on one page, in points: as large as fits, and not too small to read by lamplight. */
const types = [10, 9.5, 9, 8.5, 8, 7.5, 7, 6.5, 6] as const
/** What a page is set in before anybody has tried which type fits. */
const usualType = 8

/** The smallest type that is tried, in points. */
export const smallestType = Math.min(...types)

const nameOf = (type: number): string => `page-type-${10 * type}`

/** The settings of a handout on one page, as classes of the root; each takes no more room than the one before it. */
export const onePageSettings: readonly string[] = types.map(nameOf)

/** What these settings say, on top of the style sheet of a theme. */
export const onePageTypes = [
  `:root{--page-type:${usualType}pt}`,
  ...types.map((type) => `:root.${nameOf(type)}{--page-type:${type}pt}`),
].join('\n')

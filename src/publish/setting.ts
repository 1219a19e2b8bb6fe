/** How the text of a print falls on its pages. */
export interface Layout {
  readonly pages: number
  /** Share of the last page's height that is above the end of the text. */
  readonly lastFill: number
  /**
   * Share of the height that is left over below the last end, of each page but the last; the largest first. Pages
   * without an end of anything, such as those in the middle of a long list, are not counted.
   */
  readonly gaps: readonly number[]
}

/**
 * Settings that a theme offers besides its usual one, as classes of the root: `tight` takes a little less room, `apart`
 * starts the last stage on a page of its own.
 */
export type Setting = 'tight' | 'apart' | 'tight apart'

/** A setting that was tried: where things fall in it, and how far that is from what a careful hand would make. */
export interface Tried {
  readonly layout: Layout
  readonly flaws: number
  /** Missing for the usual setting. */
  readonly setting?: Setting
}

/**
 * The setting whose pages fall best. When the last page would hold next to nothing, or another page would end early
 * because what follows does not fit, the theme's other settings are tried.
 *
 * @param layoutIn lays the page out in a setting, without it in the usual one.
 */
export async function bestLayout(layoutIn: (setting?: Setting) => Promise<Layout> | Layout): Promise<Tried> {
  const tryOut = async (setting?: Setting): Promise<Tried> => {
    const layout = await layoutIn(setting)
    const counted = setting?.endsWith('apart') ? withStageApart(layout) : layout
    return { layout, flaws: flaws(counted), ...(setting && { setting }) }
  }
  const usual = await tryOut()
  if (usual.flaws === 0) return usual
  const tight = await tryOut('tight')
  if (tight.layout.pages < usual.layout.pages || tight.flaws === 0) return tight
  // If the last page is all that is wrong with one of the two, a whole stage on it may cure that.
  const apart = await tryOut(gapsOf(tight) < gapsOf(usual) ? 'tight apart' : 'apart')
  const tried = [usual, tight, apart].filter(({ layout }) => layout.pages <= usual.layout.pages)
  return tried.reduce((best, other) => (other.flaws < best.flaws ? other : best))
}

const gapsOf = ({ layout }: Tried): number => flaws({ ...layout, lastFill: 1 })

/** A last page that is filled less than this looks like a mistake, and costs a sheet for every reader. */
const leastFill = 0.35
/** Below the text of a page there is its margin, and what the next step would not fit in. */
const usualGap = 0.2

/** How far a layout is from what a careful hand would make: 0 is as it should be. A page more weighs most. */
export const flaws = ({ lastFill, gaps, pages }: Layout): number =>
  (pages > 1 && lastFill < leastFill ? 0.2 + leastFill - lastFill : 0) +
  gaps.reduce((sum, gap) => sum + Math.max(0, gap - usualGap), 0)

/** A stage on a page of its own is no left-over, however short, and the page before it is meant to end early. */
export const withStageApart = (layout: Layout): Layout => ({
  ...layout,
  lastFill: layout.lastFill < 0.2 ? layout.lastFill : 1,
  gaps: layout.gaps.slice(1),
})

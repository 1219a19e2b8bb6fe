import { browserSetting } from '../publish/browser.ts'
import type { Options } from './flags.ts'
import type { Outside } from './outside.ts'

/** How something is printed, from the options and the setting that names a browser. */
export const printSettings = (
  { paper = 'a4', theme = 'step-sheet', force = false }: Options,
  { env }: Outside,
) => {
  const browserPath = env[browserSetting]
  return { paper, theme, force, ...(browserPath && { browserPath }) }
}

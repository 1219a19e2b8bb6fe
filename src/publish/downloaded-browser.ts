import { homedir } from 'node:os'
import { join } from 'node:path'
import process from 'node:process'
import {
  Browser,
  getInstalledBrowsers,
  getVersionComparator,
  type InstalledBrowser,
} from '@puppeteer/browsers'

/** Programs without a window first: they start in half the time. */
const kinds = [Browser.CHROMEHEADLESSSHELL, Browser.CHROME, Browser.CHROMIUM]

/** Where puppeteer keeps the browsers that it downloads. */
const usualFolder = (): string => process.env.PUPPETEER_CACHE_DIR || join(homedir(), '.cache', 'puppeteer')

/**
 * The newest browser that puppeteer was told to download, such as with `npx puppeteer browsers install chrome`.
 *
 * @param folder where puppeteer keeps them.
 * @returns the path of its program; undefined when there is none.
 */
export async function downloadedBrowser(folder: string = usualFolder()): Promise<string | undefined> {
  let all: readonly InstalledBrowser[]
  try {
    all = await getInstalledBrowsers({ cacheDir: folder })
  } catch {
    // A folder with anything else in it has no browser for us.
    return undefined
  }
  for (const kind of kinds) {
    const newer = getVersionComparator(kind)
    const [newest] = all.filter(({ browser }) => browser === kind).sort((a, b) => newer(b.buildId, a.buildId))
    if (newest) return newest.executablePath
  }
  return undefined
}

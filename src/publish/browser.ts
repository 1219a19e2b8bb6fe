import { stat } from 'node:fs/promises'
import { homedir } from 'node:os'
import { join, posix, win32 } from 'node:path'
import process from 'node:process'
import { packagedBrowser } from './packaged-browser.ts'
import { NoBrowserError } from './problems.ts'

/** This computer, as far as finding a browser needs it. */
export interface Computer {
  readonly platform: NodeJS.Platform
  readonly env: Readonly<Record<string, string | undefined>>
  readonly home: string
  isFile(path: string): Promise<boolean>
  /** A browser that puppeteer was told to download, if there is one. */
  downloaded(): Promise<string | undefined>
  /** The browser of the optional package, unpacked, if it is installed. */
  packaged(): Promise<string | undefined>
}

export const thisComputer: Computer = {
  platform: process.platform,
  env: process.env,
  home: homedir(),
  isFile: (path) =>
    stat(path).then(
      (found) => found.isFile(),
      () => false,
    ),
  downloaded: async () => (await import('./downloaded-browser.ts')).downloadedBrowser(),
  packaged: packagedBrowser,
}

/** The setting that names a browser. */
export const browserSetting = 'FOLDLORE_BROWSER'

/**
 * Finds a browser to print with: the one that is asked for, or else one that is installed, or else one that puppeteer
 * has downloaded, or else the one of an optional package.
 *
 * @param asked path of a browser; else the setting FOLDLORE_BROWSER counts.
 * @returns the path of its program.
 * @throws NoBrowserError
 */
export async function findBrowser(asked?: string, computer: Computer = thisComputer): Promise<string> {
  const setting = asked ?? computer.env[browserSetting]
  if (setting !== undefined && setting !== '') {
    if (await computer.isFile(setting)) return setting
    throw new NoBrowserError(
      `There is no browser at \`${setting}\``,
      asked === undefined
        ? `Set ${browserSetting} to the path of Chrome, Edge or Chromium, or take it out`
        : 'Give the path of Chrome, Edge or Chromium',
    )
  }
  for (const path of usualPlaces(computer)) if (await computer.isFile(path)) return path
  for (const find of [computer.downloaded, computer.packaged]) {
    const path = await find()
    if (path !== undefined && (await computer.isFile(path))) return path
  }
  throw new NoBrowserError(
    'No browser was found that can make a PDF',
    `Install Chrome, Edge or Chromium, or set ${browserSetting} to the path of one; the HTML page needs none`,
  )
}

/** Programs without a window first: they start in half the time. */
const linuxNames = [
  'chrome-headless-shell',
  'chromium-headless-shell',
  'google-chrome-stable',
  'google-chrome',
  'chromium',
  'chromium-browser',
  'microsoft-edge-stable',
  'microsoft-edge',
]

/** Where browsers are usually installed, the best first. */
export function usualPlaces({ platform, env, home }: Pick<Computer, 'platform' | 'env' | 'home'>): string[] {
  if (platform === 'win32') {
    const programs = [
      'Google\\Chrome\\Application\\chrome.exe',
      'Microsoft\\Edge\\Application\\msedge.exe',
      'Chromium\\Application\\chrome.exe',
    ]
    const roots = [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA].filter(
      (root) => root !== undefined,
    )
    return programs.flatMap((program) => roots.map((root) => win32.join(root, program)))
  }
  if (platform === 'darwin') {
    const programs = ['Google Chrome', 'Microsoft Edge', 'Chromium']
    const roots = ['/Applications', posix.join(home, 'Applications')]
    return programs.flatMap((name) => roots.map((root) => `${root}/${name}.app/Contents/MacOS/${name}`))
  }
  const folders = [...(env.PATH ?? '').split(':'), '/usr/local/bin', '/usr/bin', '/snap/bin'].filter((f) =>
    f.startsWith('/'),
  )
  const places = linuxNames.flatMap((name) => [...new Set(folders)].map((folder) => join(folder, name)))
  return [...places, '/opt/google/chrome/chrome', '/opt/microsoft/msedge/msedge']
}

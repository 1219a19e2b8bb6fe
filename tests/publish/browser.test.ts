import { expect, test } from 'vitest'
import { type Computer, findBrowser, usualPlaces } from '../../src/publish/browser.ts'
import { startBrowser } from '../../src/publish/launch.ts'
import { NoBrowserError, OutsideError } from '../../src/publish/problems.ts'

const computer = (files: readonly string[], more: Partial<Computer> = {}): Computer => ({
  platform: 'linux',
  env: { PATH: '/opt/bin:/usr/bin' },
  home: '/home/me',
  isFile: async (path) => files.includes(path),
  downloaded: async () => undefined,
  packaged: async () => undefined,
  ...more,
})

test('the one that is asked for comes first, then the setting', async () => {
  const all = computer(['/a', '/b', '/usr/bin/chromium'], {
    env: { FOLDLORE_BROWSER: '/b', PATH: '/usr/bin' },
  })
  expect(await findBrowser('/a', all)).toBe('/a')
  expect(await findBrowser(undefined, all)).toBe('/b')
  expect(await findBrowser(undefined, { ...all, env: { FOLDLORE_BROWSER: '' } })).toBe('/usr/bin/chromium')
})

test('then an installed one, a downloaded one, and the one of the package', async () => {
  const more = { downloaded: async () => '/cache/chrome', packaged: async () => '/cache/chromium' }
  const files = ['/usr/bin/google-chrome', '/cache/chrome', '/cache/chromium']
  expect(await findBrowser(undefined, computer(files, more))).toBe('/usr/bin/google-chrome')
  expect(await findBrowser(undefined, computer(files.slice(1), more))).toBe('/cache/chrome')
  expect(await findBrowser(undefined, computer(files.slice(2), more))).toBe('/cache/chromium')
})

test('a setting that leads nowhere is told, and nothing else is taken', async () => {
  const lost = computer(['/usr/bin/chromium'], { env: { FOLDLORE_BROWSER: '/nowhere', PATH: '/usr/bin' } })
  const error = await findBrowser(undefined, lost).catch((e: unknown) => e)
  expect(error).toBeInstanceOf(NoBrowserError)
  expect(error).toBeInstanceOf(OutsideError)
  expect(error).toMatchObject({
    message: 'There is no browser at `/nowhere`',
    suggestion: 'Set FOLDLORE_BROWSER to the path of Chrome, Edge or Chromium, or take it out',
  })
})

test('no browser at all: what to do', async () => {
  await expect(findBrowser(undefined, computer([]))).rejects.toMatchObject({
    name: 'NoBrowserError',
    suggestion: expect.stringContaining('Install Chrome, Edge or Chromium'),
  })
})

test('a program that is no browser does not start one', async () => {
  await expect(startBrowser('/bin/false')).rejects.toMatchObject({
    name: 'NoBrowserError',
    message: expect.stringMatching(/^The browser `\/bin\/false` does not start: /),
  })
})

test.each([
  [
    'win32',
    { PROGRAMFILES: 'C:\\Program Files', LOCALAPPDATA: 'C:\\Users\\me\\AppData\\Local' },
    [
      'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
      'C:\\Program Files\\Microsoft\\Edge\\Application\\msedge.exe',
    ],
  ],
  [
    'darwin',
    {},
    [
      '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
      '/home/me/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
      '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
    ],
  ],
  ['linux', { PATH: 'bin:/opt/bin' }, ['/opt/bin/chromium', '/usr/bin/google-chrome', '/snap/bin/chromium']],
] as const)('on %s it is looked for where it usually is', (platform, env, places) => {
  const found = usualPlaces({ platform, env, home: '/home/me' })
  for (const place of places) expect(found).toContain(place)
  // A relative folder in PATH is somebody else's trap.
  expect(found.filter((place) => place.startsWith('bin'))).toEqual([])
})

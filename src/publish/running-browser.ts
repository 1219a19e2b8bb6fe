/**
 * A browser that runs: what `launch` of puppeteer gives. It stands for puppeteer's own type in the types of the package,
 * so that those need none of puppeteer's.
 */
export interface RunningBrowser {
  readonly connected: boolean
  newPage(): Promise<object>
  close(): Promise<void>
}

import { pageScript } from '../page-script.ts'

/** The program that moves the card in the page. Throws OutsideError when it has not been built. */
export const motionScript = (root?: string): Promise<string> =>
  pageScript('motion-page.js', 'moves a card in a page', root)

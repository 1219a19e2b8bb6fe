import { motionPage } from './motion-page.js'

/**
 * What runs in the page for the screen of a class: likewise one text with all that it needs inside.
 * @type {import('esbuild').BuildOptions}
 */
export const screenPage = { ...motionPage, entryPoints: { 'screen-page': 'src/screen/main.ts' } }

/**
 * What runs in the page of the fold in motion: one text with all that it needs inside, for any browser of the last years.
 * It is written into an element of the page, so nothing in it ends one.
 * @type {import('esbuild').BuildOptions}
 */
export const motionPage = {
  bundle: true,
  minify: true,
  format: 'iife',
  platform: 'browser',
  target: 'es2022',
  charset: 'ascii',
  legalComments: 'none',
  entryPoints: { 'motion-page': 'src/motion/main.ts' },
  logLevel: 'warning',
}

// Builds the command and the library into dist/. With a path behind it, writes there what the command is made of.
import { mkdir, rm, writeFile } from 'node:fs/promises'
import process from 'node:process'
import { build } from 'esbuild'
import { buildDesk } from './desk-page.js'
import { motionPage } from './motion-page.js'

/** @type {import('esbuild').BuildOptions} */
const options = {
  bundle: true,
  splitting: true,
  minify: true,
  format: 'esm',
  platform: 'node',
  target: 'node20.19',
  // Builds of these that need no `require`.
  alias: {
    yaml: './node_modules/yaml/browser/index.js',
    handlebars: './node_modules/handlebars/dist/cjs/handlebars.js',
  },
  // `highs` finds its WebAssembly beside its own script.
  external: ['puppeteer', '@sparticuz/chromium', 'highs'],
  outdir: 'dist',
  chunkNames: 'part-[hash]',
  // Some of what is bundled asks for Node's own modules by `require`.
  banner: { js: "import{createRequire}from'node:module';const require=createRequire(import.meta.url);" },
  logLevel: 'warning',
}

await rm('dist', { recursive: true, force: true })
// Apart from each other, so that the command is a few files only: each one costs time when it starts.
const [{ metafile }] = await Promise.all([
  build({ ...options, entryPoints: { foldlore: 'src/cli/main.ts' }, metafile: true }),
  build({
    ...options,
    // Whoever uses the library has it installed; the command starts sooner with one file than with hundreds.
    external: [...options.external, 'puppeteer-core'],
    entryPoints: { index: 'src/index.ts', remark: 'src/lesson/plugin.ts' },
  }),
  build({ ...motionPage, outdir: 'dist' }),
  mkdir('dist', { recursive: true }).then(() => buildDesk('dist/desk.html')),
])
const [about] = process.argv.slice(2)
if (about) await writeFile(about, JSON.stringify(metafile))

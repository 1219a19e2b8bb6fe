import { createHash } from 'node:crypto'
import { readFile, writeFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'
import Handlebars from 'handlebars'
import { build } from 'vite'

const root = fileURLToPath(new URL('../src/desk/page', import.meta.url))
const inPackage = (path) => fileURLToPath(new URL(`../node_modules/${path}`, import.meta.url))

/** Templates of themes, made into functions here: the page may not make functions of texts. */
const templates = {
  name: 'templates',
  transform(text, id) {
    if (!id.endsWith('.hbs')) return null
    // As `src/publish/template.ts` makes them.
    const made = Handlebars.precompile(text, { strict: true, preventIndent: true })
    return { code: `export default ${made}`, map: null }
  },
}

/** WebAssembly, packed: a page that stands alone carries it inside. */
const packedWasm = {
  name: 'packed-wasm',
  enforce: 'pre',
  async load(id) {
    if (!id.endsWith('.wasm')) return null
    return `export default ${JSON.stringify(gzipSync(await readFile(id), { level: 9 }).toString('base64'))}`
  },
}

/** The solver as it is written looks for its file beside itself; here it is given what stands in the page. */
const solverAlone = {
  name: 'solver-alone',
  enforce: 'pre',
  transform(text, id) {
    if (!id.endsWith('highs/build/highs.mjs')) return null
    return text.replaceAll('import.meta.url', '"file:///"').replace('await import("node:module")', '{}')
  },
}

const alias = [
  { find: /^highs$/, replacement: `${root}/solver.ts` },
  { find: 'highs-as-it-is', replacement: inPackage('highs/build/highs.mjs') },
  { find: 'highs-wasm', replacement: inPackage('highs/build/highs.wasm') },
  { find: /^handlebars$/, replacement: inPackage('handlebars/dist/cjs/handlebars.runtime.js') },
  // The one for browsers asks the document, which a worker has none of.
  {
    find: 'decode-named-character-reference',
    replacement: inPackage('decode-named-character-reference/index.js'),
  },
  { find: /^yaml$/, replacement: inPackage('yaml/browser/index.js') },
]

/** All is in one file, so nobody asks where a part of it is; and times are for whoever looks for them. */
const checks = { pluginTimings: false, emptyImportMeta: false }

/** Tells of each file that goes into the page; what style sheets point to is in no module. */
const telling = (tell) => ({
  name: 'telling',
  enforce: 'pre',
  moduleParsed: ({ id }) => tell(id),
  transform(text, id) {
    if (id.endsWith('.css'))
      for (const [, path] of text.matchAll(/url\("([^"./][^":]*)"\)/g)) tell(inPackage(path))
    return null
  },
})

/** @param {boolean} minify */
const settings = (minify, tell) => ({
  root,
  configFile: false,
  logLevel: 'warn',
  resolve: { alias },
  plugins: [packedWasm, solverAlone, templates, telling(tell)],
  worker: {
    format: 'iife',
    plugins: () => [packedWasm, solverAlone, templates, telling(tell)],
    rollupOptions: { checks },
  },
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  build: {
    write: false,
    minify,
    target: 'es2022',
    modulePreload: false,
    assetsInlineLimit: Number.MAX_SAFE_INTEGER,
    chunkSizeWarningLimit: 20_000,
    reportCompressedSize: false,
    rollupOptions: {
      checks,
      input: `${root}/main.tsx`,
      output: {
        format: 'iife',
        entryFileNames: 'desk.js',
        assetFileNames: 'desk.[ext]',
        codeSplitting: false,
      },
    },
  },
})

/** Nothing is fetched but from the local server, nothing is made of texts, and nothing else may show the page. */
const policyFor = (script) =>
  [
    "default-src 'none'",
    `script-src 'sha256-${createHash('sha256').update(script).digest('base64')}' 'wasm-unsafe-eval'`,
    'worker-src blob:',
    "style-src 'unsafe-inline'",
    'font-src data:',
    'img-src data: blob:',
    "connect-src 'self'",
    "frame-src 'self' blob:",
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ')

/**
 * Builds the page on which lessons are written: one file that stands alone.
 *
 * @param {string} path where to write it
 * @returns {Promise<string[]>} the files that are in it
 */
export async function buildDesk(path, { minify = true } = {}) {
  const files = new Set()
  const made = await build(settings(minify, (file) => files.add(file)))
  const { output } = Array.isArray(made) ? made[0] : made
  const code = output.find((file) => file.type === 'chunk').code
  const css = output.find((file) => file.fileName.endsWith('.css'))?.source ?? ''
  // What could end the element that it stands in is written as its number.
  const script = code.replace(/<\/(script)/gi, '<\\/$1').replaceAll('<!--', '<\\!--')
  const page = await readFile(`${root}/index.html`, 'utf8')
  const parts = {
    policy: policyFor(script),
    style: String(css).replace(/<\/(style)/gi, '<\\/$1'),
    script,
  }
  await writeFile(
    path,
    page.replace(/%(policy|style|script)%/g, (_, part) => parts[part]),
  )
  return [...files]
}

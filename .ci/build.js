// Builds the command and the library into dist/, or into the folder behind `--out`. With a path behind it, writes there
// what the command is made of.
import { mkdir, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { build } from 'esbuild'
import { buildCommand } from './command.js'
import { writeDeclarations } from './declarations.js'
import { buildDesk } from './desk-page.js'
import { bundledPackages, licenceText } from './licences.js'
import { motionPage } from './motion-page.js'
import { screenPage } from './screen-page.js'

const {
  values: { out },
  positionals: [about],
} = parseArgs({ options: { out: { type: 'string', default: 'dist' } }, allowPositionals: true })

/** @type {import('esbuild').BuildOptions} */
const options = {
  bundle: true,
  splitting: true,
  minify: true,
  format: 'esm',
  // What Node 20 speaks. By its name the patterns with `\p{L}` in them would be made anew wherever they are used.
  target: 'es2023',
  // Builds of these that need no `require`.
  alias: {
    yaml: './node_modules/yaml/browser/index.js',
    handlebars: './node_modules/handlebars/dist/cjs/handlebars.js',
  },
  // `highs` finds its WebAssembly beside its own script.
  external: ['@sparticuz/chromium', 'highs'],
  outdir: out,
  outExtension: { '.js': '.mjs' },
  chunkNames: 'part-[hash]',
  logLevel: 'warning',
  metafile: true,
}

/** @type {import('esbuild').BuildOptions} */
const onNode = {
  ...options,
  platform: 'node',
  // Some of what is bundled asks for Node's own modules by `require`.
  banner: { js: "import{createRequire}from'node:module';const require=createRequire(import.meta.url);" },
}

/** What stands in the types of the library: whoever uses it has them installed. */
const shared = ['unified', 'vfile', 'fraction.js']
const external = [...options.external, ...shared]

await rm(out, { recursive: true, force: true })
await mkdir(out, { recursive: true })
const [command, ...others] = await Promise.all([
  buildCommand(out, options),
  build({ ...onNode, external, entryPoints: { index: 'src/index.ts' } }),
  // Not a module, which Node takes longer to start with.
  build({
    ...options,
    splitting: false,
    platform: 'node',
    format: 'cjs',
    outExtension: {},
    entryPoints: { foldlore: 'src/cli/main.ts' },
  }),
  // These two run anywhere.
  build({
    ...options,
    external,
    platform: 'neutral',
    mainFields: ['module', 'main'],
    entryPoints: { remark: 'src/lesson/plugin.ts', figures: 'src/draw/in-tree.ts' },
  }),
  build({ ...motionPage, outdir: out, metafile: true }),
  build({ ...screenPage, outdir: out, metafile: true }),
])
const [inDesk] = await Promise.all([buildDesk(join(out, 'desk.html')), writeDeclarations(join(out, 'types'))])
await Promise.all([
  writeFile(join(out, 'package.json'), '{ "type": "commonjs" }\n'),
  writeFile(join(out, 'types', 'package.json'), '{ "type": "module" }\n'),
])

const root = fileURLToPath(new URL('..', import.meta.url))
const inBundles = [
  ...Object.values(command).flatMap(({ inputs }) => inputs),
  ...others.flatMap(({ metafile }) => Object.keys(metafile.inputs)),
]
const packages = await bundledPackages([...inBundles.map((file) => join(root, file)), ...inDesk])
await writeFile(join(out, 'LICENSES.txt'), licenceText(packages))
if (about) await writeFile(about, JSON.stringify(command))

import { execFile } from 'node:child_process'
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { dirname, join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'

const root = fileURLToPath(new URL('..', import.meta.url))
const specifier = /(\bfrom |\bimport |\bimport\()'(\.[^']+)\.ts'/g

/** Where the types of each entry of the package are, under the folder of types. */
export const typeEntries = ['index.d.ts', 'lesson/plugin.d.ts', 'draw/in-tree.d.ts']

/**
 * Writes the types of the library: what its entries bring along, and no more.
 *
 * @param {string} folder where to write them
 */
export async function writeDeclarations(folder) {
  const drafts = await mkdtemp(join(tmpdir(), 'types-'))
  try {
    const tsc = join(root, 'node_modules/typescript/bin/tsc')
    await promisify(execFile)(process.execPath, [tsc, '-p', join(root, '.ci/types.json'), '--outDir', drafts])
    const seen = new Set()
    for (const entry of typeEntries) await take(entry, drafts, folder, seen)
  } finally {
    await rm(drafts, { recursive: true })
  }
}

async function take(path, from, to, seen) {
  if (seen.has(path)) return
  seen.add(path)
  const text = withoutPuppeteer(await readFile(join(from, path), 'utf8'), path)
  await mkdir(dirname(join(to, path)), { recursive: true })
  // Whoever uses the package has no sources to look at.
  await writeFile(
    join(to, path),
    text.replace(specifier, (_, before, module) => `${before}'${module}.js'`),
  )
  for (const [, , module] of text.matchAll(specifier))
    await take(join(dirname(path), `${module}.d.ts`), from, to, seen)
}

/** A browser that is passed in is told in words of our own: nobody has to install puppeteer for its types. */
function withoutPuppeteer(text, path) {
  const ours = relative(dirname(path), 'publish/running-browser')
  const told = text.replace(
    "import type { Browser } from 'puppeteer-core'",
    `import type { RunningBrowser as Browser } from '${ours.startsWith('.') ? ours : `./${ours}`}.ts'`,
  )
  if (told.includes("'puppeteer-core'")) throw new Error(`The types of ${path} need those of puppeteer-core`)
  return told
}

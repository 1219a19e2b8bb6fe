// Builds the command into a folder.
import { relative } from 'node:path'
import { fileURLToPath } from 'node:url'
import { transform } from 'esbuild'
import { rolldown } from 'rolldown'

const root = fileURLToPath(new URL('..', import.meta.url))
const inRoot = (path) => fileURLToPath(new URL(`../${path}`, import.meta.url))

const program = inRoot('src/cli/main.ts')
/** What most commands begin with. Files cost more than lines when a program starts, so all that it brings is one file. */
const reading = inRoot('src/cli/commands/reading.ts')

/** Small, and in ASCII: a text with other letters in it takes a program twice the room, and longer to read. */
const small = {
  name: 'small',
  async renderChunk(text) {
    const { code } = await transform(text, { minify: true, format: 'esm', target: 'node20.19' })
    return { code, map: null }
  },
}

/**
 * @typedef {object} Part a file that was built
 * @property {string} [entryPoint] the source file that it is imported for
 * @property {string[]} inputs the source files that it is made of
 * @property {{ path: string, kind: 'import-statement' | 'dynamic-import' }[]} imports the parts that it imports
 */

/**
 * Builds the command with all that it brings along.
 *
 * @param {string} out folder to write to
 * @param {{ alias: Record<string, string>, external: string[] }} options
 * @returns {Promise<Record<string, Part>>} its parts, by file; paths are relative to the project
 */
export async function buildCommand(out, { alias, external }) {
  /** @type {Set<string>} */
  const brought = new Set()
  const bundle = await rolldown({
    input: { foldlore: program },
    cwd: root,
    platform: 'node',
    external,
    resolve: { alias: Object.fromEntries(Object.entries(alias).map(([name, path]) => [name, inRoot(path)])) },
    plugins: [
      {
        name: 'reading',
        buildEnd() {
          const walk = (id) => {
            if (brought.has(id)) return
            brought.add(id)
            for (const next of this.getModuleInfo(id)?.importedIds ?? []) walk(next)
          }
          walk(reading)
        },
      },
      small,
    ],
  })
  const { output } = await bundle.write({
    dir: out,
    format: 'esm',
    entryFileNames: '[name].js',
    chunkFileNames: 'part-[hash].js',
    codeSplitting: {
      groups: [
        // What every command begins with stays by itself: the help reads no lesson. It is imported by the others, so it
        // must not wait for them, as the program itself does.
        { name: 'start', tags: ['$initial'], test: (id) => id !== program, priority: 2 },
        { name: 'reading', test: (id) => brought.has(id), priority: 1 },
      ],
    },
  })
  await bundle.close()
  const named = (path) => relative(root, path)
  return Object.fromEntries(
    output
      .filter(({ type }) => type === 'chunk')
      .map((chunk) => [
        chunk.fileName,
        {
          ...(chunk.facadeModuleId && { entryPoint: named(chunk.facadeModuleId) }),
          inputs: chunk.moduleIds.map(named),
          imports: [
            ...chunk.imports.map((path) => ({ path, kind: 'import-statement' })),
            ...chunk.dynamicImports.map((path) => ({ path, kind: 'dynamic-import' })),
          ],
        },
      ]),
  )
}

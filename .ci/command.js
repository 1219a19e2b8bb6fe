// Builds the command into a folder.
import { readFile, writeFile } from 'node:fs/promises'
import { join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'
import { characterEntities } from 'character-entities'
import { transform } from 'esbuild'
import { rolldown } from 'rolldown'

const root = fileURLToPath(new URL('..', import.meta.url))
const inRoot = (path) => fileURLToPath(new URL(`../${path}`, import.meta.url))

const program = inRoot('src/cli/program.ts')
/** What reads a lesson. Files cost more than lines when a program starts, so all that it brings is one file. */
const reading = inRoot('src/cli/commands/measure.ts')

/** Small, and in ASCII: a text with other letters in it takes a program twice the room, and longer to read. */
const small = async (text) => {
  const { code } = await transform(text, {
    minify: true,
    charset: 'ascii',
    target: 'es2023',
    format: 'cjs',
    platform: 'node',
    // Code that was kept compiled cannot import; what is not built in is required.
    supported: { 'dynamic-import': false },
  })
  // In patterns it leaves letters as they are.
  return code.replace(/[^\0-\x7f]/g, (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`)
}

/**
 * A CommonJS module that is a function of what it is given, and that calls itself where Node loads it: so what loads it
 * otherwise need not put anything around it.
 */
const callable = (text) =>
  `(f=>typeof module=="object"?f(exports,require,module,__filename,__dirname):f)((function(exports,require,module,__filename,__dirname){${text}\n}))`

/**
 * Tables of many words, which are quicker read as one text than as a program, and those of HTML not before a text has one.
 * @type {import('rolldown').Plugin}
 */
const tables = {
  name: 'tables',
  async load(id) {
    if (/[\\/]messages[\\/].*\.json$/.test(id))
      return { code: `export default ${parsed(JSON.parse(await readFile(id, 'utf8')))}`, moduleType: 'js' }
    if (/[\\/]decode-named-character-reference[\\/]index\.js$/.test(id))
      return `let all
        export function decodeNamedCharacterReference(name) {
          all ??= new Map(Object.entries(${parsed(characterEntities)}))
          return all.get(name) ?? false
        }`
  },
}

const parsed = (table) => `JSON.parse(${JSON.stringify(JSON.stringify(table))})`

/**
 * @typedef {object} Part a file that was built
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
    input: { program },
    cwd: root,
    platform: 'node',
    external,
    resolve: { alias: Object.fromEntries(Object.entries(alias).map(([name, path]) => [name, inRoot(path)])) },
    plugins: [
      tables,
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
    ],
  })
  const { output } = await bundle.generate({
    format: 'cjs',
    entryFileNames: '[name].cjs',
    chunkFileNames: 'part-[hash].cjs',
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
  await Promise.all(
    output.map(async (chunk) => writeFile(join(out, chunk.fileName), callable(await small(chunk.code)))),
  )
  const named = (path) => relative(root, path)
  return Object.fromEntries(
    output
      .filter(({ type }) => type === 'chunk')
      .map((chunk) => [
        chunk.fileName,
        {
          inputs: chunk.moduleIds.map(named),
          imports: [
            ...chunk.imports.map((path) => ({ path, kind: 'import-statement' })),
            ...chunk.dynamicImports.map((path) => ({ path, kind: 'dynamic-import' })),
          ],
        },
      ]),
  )
}

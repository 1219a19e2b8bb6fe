import { readdir, readFile } from 'node:fs/promises'
import { join, resolve } from 'node:path'

/** Licences under which what is bundled may be passed on in an MIT package. */
const allowed = new Set([
  'MIT',
  'ISC',
  'BSD-2-Clause',
  'BSD-3-Clause',
  '0BSD',
  'Apache-2.0',
  'OFL-1.1',
  'Zlib',
  'CC0-1.0',
  'Unlicense',
])

/**
 * @typedef {object} Bundled a package of which something is in a bundle
 * @property {string} name
 * @property {string} version
 * @property {string} licence as an SPDX expression
 * @property {string} text what its licence file says; without one, who wrote it
 */

/**
 * The packages that files are of.
 *
 * @param {Iterable<string>} files that went into a bundle; those outside `node_modules` are our own
 * @returns {Promise<Bundled[]>} by name
 * @throws {Error} when one has no licence, or one that does not let us pass it on
 */
export async function bundledPackages(files) {
  const folders = new Set()
  for (const file of files) {
    const [, folder] = /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(plain(file)) ?? []
    if (folder) folders.add(resolve(folder))
  }
  const found = new Map()
  for (const folder of folders) {
    const one = await about(folder)
    found.set(`${one.name} ${one.version}`, one)
  }
  return [...found.keys()].sort().map((key) => found.get(key))
}

/** Without what bundlers write before and behind a path. */
const plain = (file) => file.replace(/^\0/, '').replace(/\?.*$/, '').replaceAll('\\', '/')

async function about(folder) {
  const { name, version, license, licenses, author } = JSON.parse(
    await readFile(join(folder, 'package.json'), 'utf8'),
  )
  // Old packages have a list of those that one may choose from.
  const choices = [license ?? licenses ?? []].flat().map((one) => (typeof one === 'string' ? one : one.type))
  const licence = choices.join(' OR ') || 'none'
  if (!mayPass(licence)) throw new Error(`${name} ${version} may not be bundled: its licence is ${licence}`)
  const all = (await readdir(folder)).sort()
  const reads = (pattern) =>
    Promise.all(all.filter((file) => pattern.test(file)).map((file) => textOf(folder, file)))
  const text = (await reads(/^(licen[cs]e|copying|notice)/i)).join('\n\n').trim()
  const [, told = ''] = /^#* *licen[cs]e\b.*\n([\s\S]*)/im.exec((await reads(/^readme/i)).join('\n')) ?? []
  const by = typeof author === 'string' ? author : author?.name
  return {
    name,
    version,
    licence,
    text: text || told.trim() || `Copyright ${by ?? `the authors of ${name}`}`,
  }
}

const textOf = async (folder, file) => {
  const text = await readFile(join(folder, file), 'utf8').catch(() => '')
  return text.replaceAll('\r\n', '\n')
}

/** Of `(MIT OR GPL-3.0)` one is enough; of `MIT AND ISC` all are needed. */
const mayPass = (licence) =>
  licence
    .replace(/[()]/g, ' ')
    .split(' OR ')
    .some((choice) => choice.split(' AND ').every((one) => allowed.has(one.trim())))

/**
 * The list that goes with the bundles.
 *
 * @param {readonly Bundled[]} packages
 */
export const licenceText = (packages) =>
  [
    'What is built into foldlore, besides its own work, and under which licence.',
    ...packages.map(
      ({ name, version, licence, text }) => `${'-'.repeat(72)}\n${name} ${version}\n${licence}\n\n${text}`,
    ),
    '',
  ].join('\n\n')

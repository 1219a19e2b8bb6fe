import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { bundledPackages, licenceText } from '../../.ci/licences.js'

const folder = mkdtempSync(join(tmpdir(), 'licences-'))
afterAll(() => rmSync(folder, { recursive: true }))

/** A package of which one file is bundled. */
function withLicence(name: string, about: object, files: Record<string, string> = {}): string {
  const place = join(folder, 'node_modules', name)
  mkdirSync(place, { recursive: true })
  writeFileSync(join(place, 'package.json'), JSON.stringify({ name, version: '1.0.0', ...about }))
  for (const [file, text] of Object.entries(files)) writeFileSync(join(place, file), text)
  return join(place, 'index.js')
}

test.each(['GPL-3.0-only', 'AGPL-3.0', 'LGPL-2.1', 'UNLICENSED', 'SEE LICENSE IN x', 'MIT AND GPL-2.0'])(
  'what is under %s is not bundled',
  async (license) => {
    await expect(bundledPackages([withLicence('strict', { license })])).rejects.toThrow(
      `strict 1.0.0 may not be bundled: its licence is ${license}`,
    )
  },
)

test('what has no licence at all is not bundled', async () => {
  await expect(bundledPackages([withLicence('silent', {})])).rejects.toThrow('its licence is none')
})

test('where one may choose, one good licence is enough', async () => {
  const files = [
    withLicence('two', { license: '(MIT OR GPL-3.0)' }),
    withLicence('@old/one', { licenses: [{ type: 'MIT' }] }),
  ]
  expect((await bundledPackages(files)).map(({ name, licence }) => [name, licence])).toEqual([
    ['@old/one', 'MIT'],
    ['two', '(MIT OR GPL-3.0)'],
  ])
})

test('the words of a licence are kept, from a file of its own or from the readme', async () => {
  const own = withLicence('own', { license: 'ISC' }, { LICENSE: 'Copyright Ann\n\nDo as you like.\n' })
  const told = withLicence(
    'told',
    { license: 'MIT' },
    { 'readme.md': '# told\n\n## License\n\nMIT, by Bo\n' },
  )
  const bare = withLicence('bare', { license: 'MIT', author: { name: 'Cy' } })
  const text = licenceText(await bundledPackages([own, told, bare, own]))
  expect(text.match(/^(bare|own|told) 1\.0\.0$/gm)).toEqual(['bare 1.0.0', 'own 1.0.0', 'told 1.0.0'])
  for (const words of ['Copyright Ann\n\nDo as you like.', 'MIT, by Bo', 'Copyright Cy'])
    expect(text).toContain(words)
})

test('files of our own, and what bundlers write round a path, are no trouble', async () => {
  const [one, ...others] = await bundledPackages([
    resolve('src/index.ts'),
    `\0${withLicence('plain', { license: 'MIT' })}?worker`,
  ])
  expect([one?.name, others]).toEqual(['plain', []])
})

import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import about from '../../package.json' with { type: 'json' }
import { commands } from '../../src/cli/commands.ts'
import { flagNames, flags } from '../../src/cli/flags.ts'
import { flagUsage } from '../../src/cli/help.ts'
import { manual, withManual } from '../../src/cli/manual.ts'
import { foldlore } from './memory.ts'

test('the help tells every command, every option and every exit code', async () => {
  const { code, out, err } = await foldlore(['--help'])
  expect([code, err]).toEqual([0, ''])
  const lines = out.split('\n').map((line) => line.trim())
  const told = (start: string, text: string) =>
    expect(
      lines.find((line) => line.startsWith(`${start} `) && line.endsWith(` ${text}`)),
      start,
    ).toBeDefined()
  for (const name of flagNames) told(flagUsage(name), flags[name].help)
  for (const [name, { operands, help }] of Object.entries(commands)) told(`${name} ${operands}`, help)
  for (const exit of [0, 1, 2, 3]) expect(lines.some((line) => line.startsWith(`${exit}  `))).toBe(true)
})

test.each(Object.keys(commands))('the help of %s tells its options and no other', async (name) => {
  const { code, out } = await foldlore([name, '--help'])
  expect(code).toBe(0)
  const told = flagNames.filter((flag) => new RegExp(`--${flag}\\b`).test(out))
  expect(told.sort()).toEqual([...(commands[name]?.flags ?? [])].sort())
})

test('every option belongs to a command, or to the whole program', () => {
  const taken = new Set(Object.values(commands).flatMap(({ flags }) => flags))
  expect(flagNames.filter((flag) => !taken.has(flag))).toEqual(['help', 'version'])
})

test('without a command the help goes to the error stream: nothing was done', async () => {
  const { code, out, err } = await foldlore([])
  expect([code, out]).toEqual([2, ''])
  expect(err).toContain('Usage: foldlore COMMAND LESSON [options]')
})

test('--version is the version of the package', async () => {
  expect(await foldlore(['--version'])).toMatchObject({ code: 0, out: `${about.version}\n` })
})

test('the manual goes between its marks, and a second time changes nothing', () => {
  const readme = withManual('# Title\n\n<!-- manual -->\n<!-- /manual -->\n\nThe end\n')
  expect(readme).toBe(`# Title\n\n<!-- manual -->\n\n${manual()}\n\n<!-- /manual -->\n\nThe end\n`)
  expect(withManual(readme)).toBe(readme)
})

test('the manual in the README is what `npm run manual` writes', () => {
  const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8')
  expect(withManual(readme)).toBe(readme)
})

test('a README without the marks is refused rather than cut', () => {
  expect(() => withManual('# Title\n')).toThrow('Expected the lines `<!-- manual -->`')
})

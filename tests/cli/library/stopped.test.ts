import { readFileSync, writeFileSync } from 'node:fs'
import { hostname } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { small } from '../lessons.ts'
import { brokenFiles, filesIn, folderOf, until, withProgram } from './program.ts'

const { run, start } = withProgram()

/** Enough lessons that there is time to stop them. */
const many = (n: number): Record<string, string> =>
  Object.fromEntries(
    Array.from({ length: n }, (_, i) => [`tide-${i}.md`, small.replace('Low tide', `Low tide ${i}`)]),
  )

const pdfs = (out: string): string[] => filesIn(out).filter((path) => path.endsWith('.pdf'))

test('killed at any moment it leaves no broken file, and goes on from there', async () => {
  const folder = folderOf(many(8))
  const out = join(folder, 'prints')
  // Once while it begins, once in the middle.
  for (const after of [1, 4]) {
    const { child, ended } = start(['library', folder, '--quiet'])
    await until(() => pdfs(out).length >= after)
    child.kill('SIGKILL')
    await ended
    expect(brokenFiles(out)).toEqual([])
  }
  const left = pdfs(out).length
  expect(left).toBeLessThan(8)
  const { code, out: said } = await run('library', folder, '--json')
  const { made, kept } = JSON.parse(said)
  expect([code, made + kept]).toEqual([0, 8])
  // What was noted before the second end, a second after it began at the latest, is not made again.
  expect(kept).toBeLessThanOrEqual(left)
  expect([pdfs(out).length, brokenFiles(out)]).toEqual([8, []])
  expect(filesIn(out).filter((path) => /\.part$|\.lock/.test(path))).toEqual([])
}, 300_000)

test('Ctrl-C ends it with what is done, and the next run goes on', async () => {
  const folder = folderOf(many(6))
  const out = join(folder, 'prints')
  const { child, ended, said } = start(['library', folder, '--jobs', '1'])
  await until(() => said().includes('2 of 6'))
  child.kill('SIGINT')
  const { code, err } = await ended
  expect(code).toBe(3)
  const done = Number(/Stopped: (\d+) prints? made/.exec(err)?.[1])
  expect(done).toBeGreaterThanOrEqual(2)
  expect(filesIn(out).filter((path) => /\.part$|\.lock/.test(path))).toEqual([])
  expect(brokenFiles(out)).toEqual([])
  const again = JSON.parse((await run('library', folder, '--json')).out)
  expect([again.made, again.kept]).toEqual([6 - done, done])
}, 300_000)

test('two cannot print into one folder, and a lock of one that has ended is taken over', async () => {
  const folder = folderOf(many(3))
  const out = join(folder, 'prints')
  const first = start(['library', folder, '--quiet'])
  await until(() => filesIn(folder).includes('prints/.foldlore-library.lock'))
  const second = await run('library', folder)
  expect(second.code).toBe(3)
  expect(second.err).toMatch(
    /^foldlore: Another foldlore prints into this folder \(process \d+ on .+\)\n {2}Wait until it is done/,
  )
  expect((await first.ended).code).toBe(0)
  const held = JSON.stringify({ pid: first.child.pid, host: hostname(), token: 'old' })
  writeFileSync(join(out, '.foldlore-library.lock'), held)
  expect((await run('library', folder, '--quiet')).code).toBe(0)
  expect(filesIn(out)).not.toContain('.foldlore-library.lock')
}, 300_000)

test('with --watch it prints again what is saved, until Ctrl-C', async () => {
  const folder = folderOf(many(1))
  const { child, ended, said } = start(['library', folder, '--watch'])
  await until(() => said().includes('Waiting for changes'))
  writeFileSync(join(folder, 'tide-0.md'), small.replace('Low tide', 'High water'))
  await until(() => said().includes('1 of 1: High water, 1 print'))
  await until(() => readFileSync(join(folder, 'prints/index.html'), 'utf8').includes(' water'))
  writeFileSync(join(folder, 'new.md'), small.replace('Low tide', 'Slack water'))
  await until(() => said().includes('1 of 1: Slack water, 1 print'))
  child.kill('SIGINT')
  expect((await ended).code).toBe(0)
}, 300_000)

import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, readdirSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { expect } from 'vitest'

/** Runs a program; its output. Fails the test when the program fails. */
export function output(folder: string, program: string, ...argv: string[]): string {
  const { status, stdout, stderr } = spawnSync(program, argv, { cwd: folder, encoding: 'utf8' })
  expect([status, stderr], `${program} ${argv.join(' ')}\n${stdout}`).toEqual([0, expect.any(String)])
  return stdout
}

/**
 * Builds the package in a folder of its own, apart from the `dist` that other tests use, and packs it.
 *
 * @returns the path of the packed file.
 */
export function packed(folder: string): string {
  const source = join(folder, 'source')
  mkdirSync(source)
  output('.', process.execPath, '.ci/build.js', '--out', join(source, 'dist'))
  for (const part of ['package.json', 'README.md', 'LICENSE', 'themes'])
    cpSync(part, join(source, part), { recursive: true })
  output(source, 'npm', 'pack', '--pack-destination', folder, '--ignore-scripts')
  const name = readdirSync(folder).find((file) => file.endsWith('.tgz')) ?? 'none.tgz'
  return resolve(folder, name)
}

import { existsSync, readFileSync, rmSync, watch, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { isOurs } from '../../../src/publish/write.ts'
import { small } from '../lessons.ts'
import { filesIn, folderOf, withProgram } from '../library/program.ts'
import { gone, noting, pidsIn } from './noted-browser.ts'

const { start, run } = withProgram()

/** A picture of so many bytes, as far as its first bytes tell. */
const picture = (bytes: number): Buffer => {
  const all = Buffer.alloc(bytes)
  Buffer.from('\x89PNG\r\n\x1a\n', 'latin1').copy(all)
  return all
}

/** A lesson whose page takes its time to be written. */
function heavy(): { folder: string; argv: string[] } {
  const names = ['a', 'b', 'c']
  const folder = folderOf({
    'small.md': `${small}\n${names.map((name) => `![Tide](${name}.png)`).join('\n')}\n`,
  })
  for (const name of names) writeFileSync(join(folder, `${name}.png`), picture(8_000_000))
  return { folder, argv: ['handout', join(folder, 'small.md'), '-o', join(folder, 'out/page.html')] }
}

const drafts = (folder: string): string[] =>
  filesIn(join(folder, 'out')).filter((name) => name.endsWith('.part'))

/** Comes when a file is being written into a folder. */
const writing = (folder: string): Promise<void> =>
  new Promise((done) => {
    const watcher = watch(folder, (_, name) => {
      if (!name?.endsWith('.part')) return
      watcher.close()
      done()
    })
  })

test.each(['SIGKILL', 'SIGINT', 'SIGTERM'] as const)(
  '%s in the middle of writing leaves the old page whole',
  async (signal) => {
    const { folder, argv } = heavy()
    const page = join(folder, 'out/page.html')
    expect(await run(...argv)).toMatchObject({ code: 0 })
    const old = readFileSync(page)
    expect(isOurs(old)).toBe(true)
    const { child, ended } = start([...argv, '--units', 'mm'])
    await writing(join(folder, 'out'))
    child.kill(signal)
    await ended
    // A shell calls the end by a signal 128 and its number: 130 for Ctrl-C.
    expect([child.exitCode, child.signalCode]).toEqual([null, signal])
    expect(readFileSync(page).equals(old)).toBe(true)
    // Nobody hears SIGKILL; what is left then is hidden, and named as what it is.
    if (signal === 'SIGKILL') expect(drafts(folder)).toHaveLength(1)
    else expect(drafts(folder)).toEqual([])
    expect(await run(...argv, '--units', 'mm')).toMatchObject({ code: 0 })
    expect(readFileSync(page).equals(old)).toBe(false)
  },
  120_000,
)

test('Ctrl-C while the browser prints leaves nothing, and no browser', async () => {
  const folder = folderOf({ 'small.md': small })
  const browsers = join(folder, 'browsers')
  const { child, ended } = start(
    ['handout', join(folder, 'small.md'), '-o', join(folder, 'out')],
    noting(folder, browsers),
  )
  while (!existsSync(browsers)) await new Promise((done) => setTimeout(done, 5))
  child.kill('SIGINT')
  await ended
  // Puppeteer ends the program once it knows of the browser; before that the signal does, which a shell calls 130 too.
  expect(child.exitCode ?? child.signalCode).toBeOneOf([130, 'SIGINT'])
  expect(filesIn(join(folder, 'out'))).toEqual([])
  for (const pid of pidsIn(browsers)) await gone(pid)
}, 120_000)

test('two at once in one folder: both say that it is written, and it is whole', async () => {
  const { folder, argv } = heavy()
  const both = await Promise.all([run(...argv), run(...argv), run(...argv, '--units', 'mm')])
  expect(both.map(({ code }) => code)).toEqual([0, 0, 0])
  expect(filesIn(join(folder, 'out'))).toEqual(['page.html'])
  const page = readFileSync(join(folder, 'out/page.html'), 'utf8')
  expect([page.startsWith('<!doctype html>'), page.trimEnd().endsWith('</html>')]).toEqual([true, true])
  rmSync(join(folder, 'out'), { recursive: true })
  const kits = await Promise.all(
    ['3', '4'].map((people) =>
      run('kit', join(folder, 'small.md'), '--people', people, '-o', join(folder, 'out/kit.html')),
    ),
  )
  expect(kits.map(({ code }) => code)).toEqual([0, 0])
  expect(filesIn(join(folder, 'out'))).toEqual(['kit.html'])
}, 120_000)

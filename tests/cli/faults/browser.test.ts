import { join } from 'node:path'
import process from 'node:process'
import { expect, test } from 'vitest'
import { small } from '../lessons.ts'
import { filesIn, folderOf, until, withProgram } from '../library/program.ts'
import { gone, mute, noting, pidsIn, script } from './noted-browser.ts'

const { start, run } = withProgram()

/** A lesson, a place for what is made of it, and a browser whose processes are noted. */
function desk() {
  const folder = folderOf({
    'small.md': small,
    'class.yaml': 'lesson: small.md\npeople: 4\nsheets:\n  white card: A4\n  patterned paper: A4\n',
  })
  const browsers = join(folder, 'browsers')
  return {
    folder,
    browsers,
    env: noting(folder, browsers),
    lesson: join(folder, 'small.md'),
    out: join(folder, 'out'),
  }
}

/** Sends a signal to each browser of a program as soon as it prints, to so many of them. */
async function strike(
  browsers: string,
  signal: NodeJS.Signals,
  times: number,
  ended: Promise<unknown>,
): Promise<number> {
  let over = false
  void ended.then(() => {
    over = true
  })
  for (let n = 0; n < times; n++) {
    while (pidsIn(browsers).length <= n) {
      if (over) return n
      await new Promise((done) => setTimeout(done, 5))
    }
    // It has been spoken to by then, and is not done yet.
    await new Promise((done) => setTimeout(done, 250))
    try {
      process.kill(pidsIn(browsers)[n] ?? 0, signal)
    } catch {
      // It was quicker.
      return n
    }
  }
  return times
}

test.concurrent('one that is killed while it prints is started again, and the PDF is there', async () => {
  const { browsers, env, lesson, out } = desk()
  const { ended } = start(['handout', lesson, '-o', out], env)
  expect(await strike(browsers, 'SIGKILL', 1, ended)).toBe(1)
  const { code, err } = await ended
  expect([code, err]).toEqual([0, `Wrote ${out}/small.html\nWrote ${out}/small.pdf\n`])
  const pids = pidsIn(browsers)
  expect(pids).toHaveLength(2)
  for (const pid of pids) await gone(pid)
}, 180_000)

test.concurrent('one that ends again and again is told in plain words, and the page is there', async () => {
  const { browsers, env, lesson, out } = desk()
  const { ended } = start(['handout', lesson, '-o', out], env)
  await strike(browsers, 'SIGKILL', 4, ended)
  const { code, err } = await ended
  expect(code).toBe(3)
  expect(err).toMatch(
    /^foldlore: The browser (`.*` does not start: .*|ended while it printed the page)\n {2}(Try again|Start it)/m,
  )
  expect(err).not.toMatch(/^ +at /m)
  expect(filesIn(out)).toEqual(['small.html'])
  for (const pid of pidsIn(browsers)) await gone(pid)
}, 180_000)

test.concurrent('one that stands still is given up, and none is left behind', async () => {
  const { browsers, env, lesson, out } = desk()
  const began = Date.now()
  const { ended } = start(['kit', lesson, '--people', '3', '-o', out], env)
  await strike(browsers, 'SIGSTOP', 2, ended)
  const { code, err } = await ended
  expect(err).toMatch(/^foldlore: The browser (`.*` )?did not answer within 30 s\n {2}/m)
  expect([code, filesIn(out)]).toEqual([3, ['small-kit.html']])
  expect(Date.now() - began).toBeLessThan(150_000)
  for (const pid of pidsIn(browsers)) await gone(pid)
}, 180_000)

test.concurrent('one that stands still while it prints is followed by another, and the PDF is there', async () => {
  const { folder, browsers, lesson, out } = desk()
  const began = Date.now()
  const { code, err } = await start(['handout', lesson, '-o', out], mute(folder, browsers)).ended
  expect(Date.now() - began).toBeGreaterThan(30_000)
  expect([code, err]).toEqual([0, `Wrote ${out}/small.html\nWrote ${out}/small.pdf\n`])
  const pids = pidsIn(browsers)
  expect(pids).toHaveLength(2)
  for (const pid of pids) await gone(pid)
}, 180_000)

test.concurrent('one that never gets as far as to answer is told once, and the page is there', async () => {
  const { folder, browsers, lesson, out } = desk()
  const browser = script(folder, `echo $$ >> '${browsers}'\nexec sleep 600`)
  const began = Date.now()
  const { ended } = start(['handout', lesson, '-o', out], { FOLDLORE_BROWSER: browser })
  const { code, err } = await ended
  expect(err).toMatch(`foldlore: The browser \`${browser}\` did not answer within 30 s\n  Start it by hand`)
  expect([code, filesIn(out)]).toEqual([3, ['small.html']])
  expect(Date.now() - began).toBeLessThan(60_000)
  const pids = pidsIn(browsers)
  expect(pids).toHaveLength(1)
  for (const pid of pids) await gone(pid)
}, 180_000)

test.concurrent('a class without a browser that works has all of its pages', async () => {
  const { folder, out } = desk()
  const { ended } = start(['class', join(folder, 'class.yaml'), '-o', out, '--within', '1 s'], {
    FOLDLORE_BROWSER: script(folder, 'exit 7'),
  })
  const { code, err } = await ended
  expect(code).toBe(3)
  expect(err).toMatch(/foldlore: The browser `.*` does not start: /)
  expect(filesIn(out)).toContain('class-class.html')
  expect(filesIn(out).filter((name) => name.endsWith('.pdf'))).toEqual([])
}, 180_000)

test.concurrent.each([
  ['that ends at once', 'exit 7', 'Target closed'],
  ['that is no program of this computer', undefined, 'it is no program that you may run'],
])(
  'a browser %s is told, and the page is there',
  async (_, lines, why) => {
    const { folder, lesson, out } = desk()
    const browser = lines === undefined ? lesson : script(folder, lines)
    const { ended } = start(['handout', lesson, '-o', out], { FOLDLORE_BROWSER: browser })
    const { code, err } = await ended
    expect(err).toContain(`foldlore: The browser \`${browser}\` does not start: `)
    expect(err).toContain(why)
    expect([code, filesIn(out)]).toEqual([3, ['small.html']])
  },
  180_000,
)

test.concurrent('the pages of a library are there when the browser of each print ends', async () => {
  const { folder, browsers, env } = desk()
  const { ended } = start(['library', folder, '-o', join(folder, 'out')], env)
  await strike(browsers, 'SIGKILL', 4, ended)
  const { code, err } = await ended
  expect([0, 3]).toContain(code)
  expect(err).not.toMatch(/^ +at /m)
  expect(filesIn(join(folder, 'out')).some((name) => name.endsWith('.html'))).toBe(true)
  for (const pid of pidsIn(browsers)) await gone(pid)
  // The next run makes what is missing.
  expect((await run('library', folder, '-o', join(folder, 'out'), '--quiet')).code).toBe(0)
  await until(() => filesIn(join(folder, 'out')).some((name) => name.endsWith('.pdf')))
}, 180_000)

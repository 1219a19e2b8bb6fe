import { spawn, spawnSync } from 'node:child_process'
import { appendFileSync, mkdirSync, openSync, symlinkSync, writeFileSync, writeSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { harbour, small } from '../lessons.ts'
import { folderOf, withProgram } from '../library/program.ts'

const { run, program } = withProgram()
const folder = folderOf({ 'small.md': small })
const at = (name: string): string => join(folder, name)
const utf16 = Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(small, 'utf16le')])
symlinkSync(at('round.md'), at('round.md'))
mkdirSync(at('folder.md'))
writeFileSync(at('latin.md'), Buffer.from(`${small}\nA caf\u00e9 by the sea\n`, 'latin1'))
writeFileSync(at('utf16.md'), utf16)
writeFileSync(at('utf16-big.md'), Buffer.from(utf16).swap16())
writeFileSync(at('tail.md'), Buffer.concat([Buffer.from('# A\n\n'), Buffer.from([0xe2, 0x80])]))

test.concurrent.each([
  ['round.md', 'its links lead round in a circle\n  Name the file itself'],
  ['folder.md', 'it is a folder\n  Name a file in it'],
  ['none/a.md', 'there is no such file\n  Check the folder and the name'],
  ['small.md/a.md', 'part of the path is a file, not a folder\n  Check the path'],
  ['/dev/zero', 'it is larger than 20 MB\n  Check that it is the file that you mean'],
  ['utf16.md', 'it is UTF-16 text, not UTF-8\n  Save it as UTF-8 in your editor'],
  ['utf16-big.md', 'it is UTF-16 text, not UTF-8\n  Save it as UTF-8 in your editor'],
  [
    'latin.md',
    `it is not UTF-8 text: the letter at ${small.split('\n').length + 1}:6 is written in another way\n  Save it as UTF-8 in your editor`,
  ],
  [
    'tail.md',
    'it is not UTF-8 text: the letter at 3:1 is written in another way\n  Save it as UTF-8 in your editor',
  ],
])('%s is told, with a cure', async (name, told) => {
  const path = name.startsWith('/') ? name : at(name)
  expect(await run('check', path)).toEqual({
    code: 3,
    out: '',
    err: `foldlore: Cannot read \`${path}\`: ${told}\n`,
  })
})

test.skipIf(process.platform === 'win32')(
  'a pipe that nobody writes into is not waited for without end',
  async () => {
    spawnSync('mkfifo', [at('pipe.md')])
    const { code, err } = await run('check', at('pipe.md'))
    expect([code, err]).toEqual([
      3,
      `foldlore: Cannot read \`${at('pipe.md')}\`: it is a pipe, and nothing comes through it\n  Name a file\n`,
    ])
    const line = `sleep 1; cat ${at('small.md')} > ${at('pipe.md')}`
    spawn('sh', ['-c', line], { stdio: 'ignore' })
    expect(await run('check', at('pipe.md'))).toMatchObject({ code: 0, out: 'No findings in 1 lesson.\n' })
  },
)

test('a lesson that comes in through a pipe is read', () => {
  const line = `cat '${at('small.md')}' | '${process.execPath}' '${program()}' measure /dev/stdin --json`
  const { stdout, stderr } = spawnSync('sh', ['-c', line], { encoding: 'utf8' })
  expect([JSON.parse(stdout).lesson, stderr]).toEqual(['Low tide', ''])
})

test('a file that is being written is read when that is done', async () => {
  const path = at('growing.md')
  const parts = harbour.split('\n')
  const file = openSync(path, 'w')
  writeSync(file, `${parts.slice(0, 20).join('\n')}\n`)
  const said = run('measure', path, '--json')
  // The program starts while this goes on, and ends when it is over.
  for (const part of parts.slice(20)) {
    appendFileSync(path, `${part}\n`)
    await new Promise((done) => setTimeout(done, 10))
  }
  expect(JSON.parse((await said).out).lesson).toBe('Harbour lights')
})

test.each([
  ['its answer', 'measure', '>'],
  ['a text', 'text', '>'],
])('a disk without room for %s is told as that', (_, command, sign) => {
  const line = `'${process.execPath}' '${program()}' ${command} '${at('small.md')}' ${sign} /dev/full`
  const { status, stderr } = spawnSync('sh', ['-c', line], { encoding: 'utf8' })
  expect([status, stderr]).toEqual([
    3,
    'foldlore: Cannot write the answer: the disk is full\n  Make some room and try again\n',
  ])
})

test.each(['folds', 'check', 'measure --json', 'text', 'check --json'])(
  'whoever reads only the start of `%s` is told nothing',
  (command) => {
    const line = `'${process.execPath}' '${program()}' ${command} ${command === 'folds' ? '' : `'${at('small.md')}'`} | head -c 1`
    const { stdout, stderr } = spawnSync('sh', ['-c', line], { encoding: 'utf8' })
    expect([stdout.length, stderr]).toEqual([1, ''])
  },
)

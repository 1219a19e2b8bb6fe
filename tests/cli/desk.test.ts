import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import about from '../../package.json' with { type: 'json' }
import { run } from '../../src/cli/run.ts'
import { packageRoot } from '../../src/publish/package-root.ts'
import { small } from './lessons.ts'
import { foldlore, memory } from './memory.ts'

const folder = mkdtempSync(join(tmpdir(), 'desk-'))
writeFileSync(join(folder, 'low-tide.md'), small)
afterAll(() => rmSync(folder, { recursive: true }))

const page = join(packageRoot(), 'dist', 'desk.html')
const built = { [page]: '<!doctype html><title>The desk</title>' }

/** Opens the desk, does something with its address, and presses Ctrl-C. */
async function desk(
  argv: readonly string[],
  use: (address: string) => Promise<void> = async () => {},
  openAddress: (address: string) => Promise<boolean> = async () => false,
  files: Readonly<Record<string, string>> = {},
) {
  const world = memory({ ...built, ...files })
  const stopped = () => use(/http:\S+/.exec(world.out())?.[0] ?? '')
  const code = await run(['desk', ...argv], { ...world.outside, stopped, openAddress })
  return { code, out: world.out(), err: world.err() }
}

test('the desk is open at the address that it shows, with the lessons of the folder, until Ctrl-C', async () => {
  let origin = ''
  const { code, out, err } = await desk([folder], async (address) => {
    const [there = '', token = ''] = address.split('#')
    origin = there
    expect(await (await fetch(there)).text()).toContain('<title>The desk</title>')
    const ask = async (path: string, init: RequestInit = {}) =>
      (
        await fetch(`${there}api/${path}`, {
          ...init,
          headers: { ...init.headers, authorization: `Bearer ${token}` },
        })
      ).json()
    expect(await ask('about')).toMatchObject({ version: about.version })
    expect(await ask('files')).toMatchObject({ files: [{ path: 'low-tide.md', title: 'Low tide' }] })
    const headers = { 'content-type': 'application/json' }
    await ask('file?path=new.md', { method: 'PUT', headers, body: JSON.stringify({ text: 'New' }) })
  })
  expect([code, err]).toEqual([0, ''])
  expect(out).toMatch(
    /^The desk is open, with the lessons in `.*`:\n\n {2}http:\/\/127\.0\.0\.1:\d+\/#[\w-]{43}\n\n/,
  )
  expect(out).toMatch(/The desk is closed\n$/)
  expect(readFileSync(join(folder, 'new.md'), 'utf8')).toBe('New')
  await expect(fetch(origin)).rejects.toThrow('fetch failed')
})

test('a browser is opened only when that is wished', async () => {
  const opened: string[] = []
  const open = async (address: string) => {
    opened.push(address)
    return true
  }
  await desk([folder], undefined, open)
  expect(opened).toEqual([])
  const { out, err } = await desk([folder, '--open'], undefined, open)
  expect([opened.length, out.includes(opened[0] ?? '-'), err]).toEqual([1, true, ''])
  const none = await desk([folder, '--open'])
  expect([none.code, none.err]).toEqual([
    0,
    'No browser could be opened from here: copy the address into yours\n',
  ])
})

test('a `workshop.yaml` above the folder is not read, which is said where a command would read it', async () => {
  const [above, within] = [join(folder, '..', 'workshop.yaml'), join(folder, 'workshop.yaml')]
  const told = async (files: Readonly<Record<string, string>>) =>
    (await desk([folder], undefined, undefined, files)).err
  expect(await told({ [above]: 'name: A' })).toMatch(/^The `workshop\.yaml` above `.*` is not read here/)
  expect(await told({ [above]: 'name: A', [within]: 'name: B' })).toBe('')
})

test('a port can be asked for, if a browser opens pages there', async () => {
  let first = ''
  await desk([folder], async (address) => {
    first = new URL(address).port
    const second = await desk([folder, '--port', first])
    expect([second.code, second.err]).toEqual([
      3,
      `foldlore: Port ${first} is taken by another program\n  Choose another, or leave \`--port\` out: then the next free one is taken\n`,
    ])
  })
  const again = await desk([folder, '--port', first])
  expect([again.code, again.out.includes(`:${first}/#`)]).toEqual([0, true])
  for (const port of ['80', '6000', '70000', 'home', '-1', '0'])
    expect([port, (await desk([folder, `--port=${port}`])).code]).toEqual([port, 2])
})

test('a folder that is none is told', async () => {
  expect(await desk([join(folder, 'none')])).toMatchObject({
    code: 3,
    out: '',
    err: `foldlore: There is no folder \`${join(folder, 'none')}\`\n  Make it, or name the folder with your lessons\n`,
  })
  expect(await desk([join(folder, 'low-tide.md')])).toMatchObject({
    code: 3,
    err: `foldlore: \`${join(folder, 'low-tide.md')}\` is a file, not a folder\n  Name the folder that it lies in\n`,
  })
})

test('a page that has not been built is told before anything is opened', async () => {
  const { code, out, err } = await foldlore(['desk', folder])
  expect([code, out]).toEqual([3, ''])
  expect(err).toBe(
    'foldlore: The page of the desk is missing: `dist/desk.html`\n  Install foldlore again, or run `npm run build` in its folder\n',
  )
})

test('the folder is the current one unless it is named', async () => {
  const { code, out } = await desk([])
  expect([
    code,
    out.startsWith('The desk is open, with the lessons in `.`:'),
    existsSync('package.json'),
  ]).toEqual([0, true, true])
})

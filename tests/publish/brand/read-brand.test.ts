import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { darkGround } from '../../../src/publish/brand/brand-of.ts'
import { readBrand } from '../../../src/publish/brand/read-brand.ts'
import { contrast } from '../../draw/contrast.ts'
import { plainLesson } from '../lesson.ts'

const svg = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 2"><path d="M0 0h4v2z"/></svg>'

/** What is read for a lesson in `table/lessons`, whose disk holds these files alone. */
async function read(files: Readonly<Record<string, string | Uint8Array>>, front = '') {
  const asked: string[] = []
  const outside = {
    async read(path: string) {
      asked.push(path)
      const file = files[path.replaceAll('\\', '/')]
      if (file === undefined) throw Object.assign(new Error('no such file'), { code: 'ENOENT' })
      return typeof file === 'string' ? new TextEncoder().encode(file) : file
    },
  }
  const { brand } = plainLesson('1. Cut.', front).frontMatter
  return { ...(await readBrand(brand, 'table/lessons', outside)), asked }
}

test('without a word of it there is none', async () => {
  const { brand, findings, asked } = await read({})
  expect([brand, findings]).toEqual([undefined, []])
  // Both are known to have been looked for, so that a file that comes later is noticed.
  expect(asked).toEqual(['table/lessons/workshop.yaml', 'table/workshop.yaml'])
})

test.each(['table/lessons', 'table'])('a `workshop.yaml` in %s speaks for the lesson', async (folder) => {
  const { brand, findings } = await read({
    [`${folder}/workshop.yaml`]:
      'logo: marks/quill.svg\nname: Quillhaven paper table\naccent: "#1b5e6b"\nfooter: At the old lamp house\n',
    [`${folder}/marks/quill.svg`]: svg,
  })
  expect(findings).toEqual([])
  expect(brand).toMatchObject({
    logo: { alternative: 'Quillhaven paper table' },
    accent: { onPaper: '#1b5e6b' },
    footer: 'At the old lamp house',
  })
  const [, data = ''] = brand?.logo?.data.split('base64,') ?? []
  expect(Buffer.from(data, 'base64').toString()).toBe(svg)
})

test('the lesson wins key by key, and the file that is nearer', async () => {
  const { brand } = await read(
    {
      'table/lessons/workshop.yaml': 'accent: "#1b5e6b"\nfooter: The folder’s own\n',
      'table/workshop.yaml': 'accent: "#000000"\nsecond: "#6a3d7c"\nfooter: The one above\n',
    },
    'brand: {footer: The lesson’s own}\n',
  )
  expect(brand).toMatchObject({ accent: { onPaper: '#1b5e6b' }, footer: 'The lesson’s own' })
  expect(brand).not.toHaveProperty('second')
})

test('a colour is light enough for a dark screen too, whose ground the theme has', async () => {
  const { brand } = await read({}, 'brand: {accent: "#1b1b6b"}\n')
  expect(contrast(brand?.accent?.onDark ?? '', darkGround)).toBeGreaterThanOrEqual(4.5)
  const dark = readFileSync('themes/step-sheet/screen.css', 'utf8').split('[data-light="dark"] {')[1] ?? ''
  expect(/--paper: (#\w+);/.exec(dark)?.[1]).toBe(darkGround)
})

test('what is wrong in the workshop file is told with the file, the line and the column', async () => {
  const { brand, findings } = await read({
    'table/workshop.yaml': 'acent: "#1b5e6b"\nsecond: teal\nfooter: At the old lamp house\nlogo: gone.svg\n',
  })
  expect(brand).toEqual({ footer: 'At the old lamp house' })
  expect(findings.map(({ severity, message, suggestion }) => [severity, message, suggestion])).toEqual([
    [
      'warning',
      'In `table/workshop.yaml`, line 1, column 1: Unexpected key `acent` in the workshop file',
      'Write `accent`',
    ],
    [
      'warning',
      'In `table/workshop.yaml`, line 2, column 9: `teal` is no colour',
      'Write six digits in quotes, such as `second: "#1b5e6b"`',
    ],
    [
      'warning',
      'In `table/workshop.yaml`, line 4, column 7: The picture `gone.svg` cannot be read',
      'Check the name of the file, counted from the folder of `table/workshop.yaml`',
    ],
  ])
})

test.each([
  ['../mark.svg', 'picture-outside'],
  ['gone.svg', 'picture-missing'],
  ['words.svg', 'picture-kind'],
  ['huge.svg', 'picture-heavy'],
  ['https://quillhaven.example/mark.svg', 'picture-far'],
])('the logo %s: %s, and the lesson is printed without', async (logo, rule) => {
  const files = {
    'table/mark.svg': svg,
    'table/lessons/words.svg': 'a password',
    'table/lessons/huge.svg': `${svg}${' '.repeat(1_000_000)}`,
  }
  const { brand, findings } = await read(files, `brand: {logo: "${logo}", name: Quillhaven}\n`)
  expect(brand).toBeUndefined()
  expect(findings).toMatchObject([{ rule, severity: 'warning', place: { line: 5, column: 15 } }])
})

test('a logo without a name is told: nobody reads it out', async () => {
  const { brand, findings } = await read({ 'table/lessons/mark.svg': svg }, 'brand: {logo: mark.svg}\n')
  expect(brand?.logo?.alternative).toBe('')
  expect(findings).toMatchObject([{ rule: 'brand-unnamed', place: { line: 5, column: 15 } }])
})

test('a footer that is longer than the foot is told with its length', async () => {
  const footer = 'Quillhaven paper table, at the old lamp house on the harbour wall, Saturdays from ten'
  const { brand, findings } = await read({}, `brand: {footer: "${footer}"}\n`)
  expect(brand).toBeUndefined()
  expect(findings).toMatchObject([
    {
      rule: 'long-footer',
      message: expect.stringMatching(
        /^The footer is 1\d\d mm long, and the foot of a page has room for 90 mm, so it is left out$/,
      ),
      suggestion: expect.stringMatching(/^Write it with \d\d letters or fewer$/),
    },
  ])
  const most = Number(/\d+/.exec(findings[0]?.suggestion ?? '')?.[0])
  expect((await read({}, `brand: {footer: "${footer.slice(0, most - 3)}"}\n`)).findings).toEqual([])
})

test.each([
  ['a file that is no text', new Uint8Array([0xff, 0xfe, 0xff])],
  ['a file that is no YAML', 'logo: [\n'],
  ['a list', '- logo\n'],
])('%s is told, and nothing else of the lesson suffers', async (_, file) => {
  const { brand, findings } = await read({ 'table/lessons/workshop.yaml': file })
  expect(brand).toBeUndefined()
  expect(findings.length).toBeGreaterThan(0)
  for (const { severity, message } of findings) {
    expect(severity).toBe('warning')
    expect(message).toMatch(/^In `table\/lessons\/workshop\.yaml`, line \d+, column \d+: /)
  }
})

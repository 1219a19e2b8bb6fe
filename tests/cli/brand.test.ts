import { expect, test } from 'vitest'
import { small } from './lessons.ts'
import { foldlore } from './memory.ts'

const mark = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 2"><path d="M0 0h4v2z"/></svg>'
const workshop =
  'logo: mark.svg\nname: Quillhaven paper table\naccent: "#1b5e6b"\nfooter: At the old lamp house\n'
const table = { 'lessons/small.md': small, 'workshop.yaml': workshop, 'mark.svg': mark }
const saturday =
  'title: Saturday\nlesson: small.md\npeople: 4\nsheets: {white card: {size: 12 x 12 in}, patterned paper: {size: 12 x 12 in}}\n'

test.each([
  [['handout', 'lessons/small.md', '-o', 'page.html'], true],
  [['sizes', 'lessons/small.md', '-o', 'page.html'], true],
  [['kit', 'lessons/small.md', '--people', '4', '-o', 'page.html'], true],
  [['kit', 'lessons/saturday.yaml', '-o', 'page.html'], true],
  [['sheets', 'lessons/saturday.yaml', '-o', 'page.html'], true],
  [['runsheet', 'lessons/saturday.yaml', '-o', 'page.html'], true],
  [['template', 'lessons/small.md', '-o', 'page.html'], false],
])('%j has what the workshop puts on all its prints', async (argv, withLogo) => {
  const { code, err, text } = await foldlore(argv, { ...table, 'lessons/saturday.yaml': saturday })
  expect([code, err]).toEqual([0, expect.not.stringContaining('workshop')])
  const page = text('page.html')
  expect(page.includes('alt="Quillhaven paper table"')).toBe(withLogo)
  expect(page.includes('--brand-accent:#1b5e6b')).toBe(true)
  expect(/@bottom-center\{content:[^}]*At the old lamp house/.test(page)).toBe(true)
})

test('`check` and a print tell what is wrong with it, in the file where it stands', async () => {
  const files = { ...table, 'workshop.yaml': `${workshop}second: "#ffee00"\n` }
  const told =
    /^lessons\/small\.md:1:1 warning In `workshop\.yaml`, line 5, column 9: `second` has a contrast of 1\.2:1 on white, and words want 4\.5:1, so `#[\da-f]{6}` is printed \(faint-colour\)\n {2}Write `second: "#[\da-f]{6}"`/m
  const { code, out } = await foldlore(['check', 'lessons/small.md'], files)
  expect([code, out]).toEqual([0, expect.stringMatching(told)])
  const print = await foldlore(['handout', 'lessons/small.md', '-o', 'page.html'], files)
  expect([print.code, print.err]).toEqual([0, expect.stringMatching(told)])
  const kit = await foldlore(['kit', 'lessons/small.md', '--people', '4', '-o', 'page.html'], files)
  expect([kit.code, kit.err]).toEqual([0, expect.stringMatching(told)])
})

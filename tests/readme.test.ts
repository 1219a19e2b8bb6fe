import { existsSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import rehypeStringify from 'rehype-stringify'
import remarkParse from 'remark-parse'
import remarkRehype from 'remark-rehype'
import { unified } from 'unified'
import { describe, expect, test } from 'vitest'
import { withManual } from '../src/cli/manual.ts'
import { figure } from '../src/draw/in-tree.ts'
import { fillLesson } from '../src/lesson/fill.ts'
import remarkFoldlore from '../src/lesson/plugin.ts'
import { readLesson } from '../src/lesson/read.ts'
import { workshopIn } from '../src/publish/brand/workshop.ts'
import { readClass } from '../src/workshop/class/read-class.ts'

const root = fileURLToPath(new URL('..', import.meta.url))
const readme = readFileSync(`${root}README.md`, 'utf8')
const example = /````markdown\n([\s\S]*?)````/.exec(readme)?.[1] ?? ''
const frontMatter = '---\ntitle: An example\nlevel: beginner\nunits: in\n---\n\n'

describe('the README is true', () => {
  test('its manual is the one of this program', () => expect(withManual(readme)).toBe(readme))

  test('its example lesson checks without a word', () => {
    expect(example).toContain('fold: bridge')
    expect(fillLesson(readLesson(frontMatter + example)).findings).toEqual([])
  })

  test('its class file reads without a word', () => {
    const text = /```yaml\n(title:[\s\S]*?)```/.exec(readme)?.[1] ?? ''
    const { file, findings } = readClass(text)
    expect(findings).toEqual([])
    expect([file.people, file.lessons.length, file.sheets.size]).toEqual([14, 2, 2])
  })

  test('its workshop file reads without a word', () => {
    const text = /```yaml\n(logo:[\s\S]*?)```/.exec(readme)?.[1] ?? ''
    const { wish, findings } = workshopIn(text)
    expect(findings).toEqual([])
    expect(Object.keys(wish)).toEqual(['logo', 'name', 'accent', 'second', 'footer'])
  })

  test('its pipeline fills the measures in', async () => {
    const processor = unified()
      .use(remarkParse)
      .use(remarkFoldlore, { figure })
      .use(remarkRehype)
      .use(rehypeStringify)
    const file = await processor.process(frontMatter + example)
    expect(file.messages).toEqual([])
    expect(String(file)).toContain('Cut the base to 8 1/2 × 5 in and score it at 3/4, 1 1/2, 7 and 7 3/4 in.')
  })

  test('every picture and file it links to is there', () => {
    const links = [...readme.matchAll(/\]\(((?!https?:)[^)]+)\)/g)].map(([, path = '']) => path)
    expect(links.length).toBeGreaterThan(3)
    for (const path of links) expect(existsSync(`${root}${path}`), path).toBe(true)
  })
})

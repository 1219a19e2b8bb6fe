import { readFileSync } from 'node:fs'
import rehypeStringify from 'rehype-stringify'
import remarkParse from 'remark-parse'
import remarkRehype from 'remark-rehype'
import { unified } from 'unified'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { figuresOf } from '../../src/publish/figures-of.ts'
import { handoutHtml } from '../../src/publish/html.ts'
import { loadTheme } from '../../src/publish/theme.ts'
import { handoutView } from '../../src/publish/view.ts'
import { inTurn, type Ratio } from './ratio.ts'

/** Lesson to page in a program that runs already, against Markdown to HTML of the same file and nothing else. */
export async function benchHtml(lesson: string, runs: number): Promise<Ratio> {
  const text = readFileSync(lesson, 'utf8')
  const theme = await loadTheme('step-sheet')
  const plain = unified().use(remarkParse).use(remarkRehype).use(rehypeStringify).freeze()
  const ours = async () => {
    const filled = fillLesson(readLesson(text))
    const { view } = handoutView(filled, figuresOf(filled))
    return handoutHtml(view, theme, { paper: 'a4' })
  }
  const floor = () => String(plain.processSync(text))
  // Both run many times in one program, as they would in a server: let the machine learn them first.
  for (let i = 0; i < 30; i++) {
    await ours()
    floor()
  }
  return {
    what: 'lesson to HTML, warm',
    against: 'remark and rehype',
    ...(await inTurn(runs, ours, floor)),
  }
}

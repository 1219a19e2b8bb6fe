import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { makeHandout } from '../../src/publish/handout.ts'
import { ThemeError } from '../../src/publish/problems.ts'
import { loadTheme } from '../../src/publish/theme.ts'
import { foldlore } from '../cli/memory.ts'
import { steady } from './steady.ts'
import { withThemeFile } from './theme-folder.ts'

/** What the program said about a text, and what it printed. */
export interface Said {
  readonly texts: readonly string[]
  /** As `--json` gives them, each with the file it is in. */
  readonly findings: readonly { line?: number; column?: number; message: string; rule: string }[]
}

/** Runs command lines, each on a disk that has only these files. */
async function commands(
  files: Readonly<Record<string, string>>,
  ...lines: readonly (readonly string[])[]
): Promise<Said> {
  const texts: string[] = []
  const findings: Said['findings'][number][] = []
  for (const line of lines) {
    const { out, err, code } = await foldlore(line, files)
    texts.push(out, err)
    if (line[0] === 'check' && code < 2) findings.push(...findingsIn(JSON.parse(out)))
  }
  return { texts, findings }
}

/** Everything in an answer that has a rule and a message, however deep. */
function findingsIn(answer: unknown): Said['findings'][number][] {
  if (typeof answer !== 'object' || answer === null) return []
  if ('rule' in answer && 'message' in answer) return [answer as Said['findings'][number]]
  return Object.values(answer).flatMap(findingsIn)
}

const checkJson = ['check', 'a.md', '--json'] as const

const lesson = (text: string) =>
  commands(
    { 'a.md': text },
    checkJson,
    ['measure', 'a.md'],
    ['tie', 'a.md'],
    ['resize', 'a.md', '--closed', '150 x 100 mm'],
  )

async function print(text: string): Promise<Said> {
  const filled = fillLesson(readLesson(text))
  const read = () => Promise.reject(Object.assign(new Error('none'), { code: 'ENOENT' }))
  const { page, findings } = await makeHandout(filled, { paper: 'a4', theme: 'step-sheet' }, { read })
  return {
    texts: [page?.html ?? ''],
    findings: findings.map(({ place, ...rest }) => ({ ...rest, ...place })),
  }
}

/** Each thing that a stranger's text can come in by. */
export const entries: Readonly<Record<string, (text: string) => Promise<Said>>> = {
  lesson,
  print,
  'card block': (text) => lesson(`# A\n\n\`\`\`card\n${text}\n\`\`\`\n\n1. Cut the base to {base.size}.\n`),
  'front matter': (text) => lesson(`---\n${text}\n---\n\n${steady}`),
  measure: (text) => lesson(`${steady}\n2. Cut it to {${text}} and {base.width + ${text}}.\n`),
  expression: (text) =>
    lesson(
      steady.replace(
        'closed: 5 x 7 in',
        `closed: 5 x 7 in\nmine: ${text}\nbase: {stock: card, width: ${text}}`,
      ),
    ),
  directives: (text) => lesson(`${steady}\n${text}\n`),
  class: (text) =>
    commands(
      { 'c.yaml': text, 'harbour-lights.md': steady, 'low-tide-z-card.md': steady, 'a.md': steady },
      ['kit', 'c.yaml', '--within', '1 s'],
      ['sheets', 'c.yaml', '--within', '1 s'],
      ['prepare', 'c.yaml', '--within', '1 s'],
      ['runsheet', 'c.yaml'],
    ),
  sizes: (text) =>
    commands(
      { 'a.md': steady },
      ['measure', 'a.md', '--closed', text],
      ['measure', 'a.md', '--grid', text],
      ['fit', 'a.md', '--sheet', text],
      ['fit', 'a.md', '--envelope', text],
      ['fit', 'a.md', '--scraps', text, '--wide', text],
    ),
  theme: (text) => withThemeFile('handout.hbs', text, themed),
  'theme settings': (text) => withThemeFile('theme.yaml', text, themed),
}

/** A broken theme is told as one, with its file. */
async function themed(folder: string): Promise<Said> {
  try {
    await loadTheme(folder)
    const read = () => Promise.reject(Object.assign(new Error('none'), { code: 'ENOENT' }))
    const { page } = await makeHandout(
      fillLesson(readLesson(steady)),
      { paper: 'a4', theme: folder },
      { read },
    )
    return { texts: [page?.html ?? ''], findings: [] }
  } catch (error) {
    if (!(error instanceof ThemeError)) throw error
    return { texts: [error.message, error.suggestion ?? ''], findings: [] }
  }
}

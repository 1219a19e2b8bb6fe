import { readSettings } from '../../src/cli/library/settings.ts'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { makeHandout } from '../../src/publish/handout.ts'
import { ThemeError } from '../../src/publish/problems.ts'
import { screenHtml } from '../../src/publish/screen/screen.ts'
import { loadTheme } from '../../src/publish/theme.ts'
import { foldlore, memory } from '../cli/memory.ts'
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
    const { out, err, code, disk } = await foldlore(line, files)
    texts.push(out, err)
    // What it has written: drawings and data, as text.
    for (const [path, data] of disk) if (!(path in files)) texts.push(new TextDecoder().decode(data))
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

/** What a lesson is on paper and on the screen of a class, beside these files. */
async function print(text: string, files: Readonly<Record<string, string>> = {}): Promise<Said> {
  const filled = fillLesson(readLesson(text))
  const { read } = memory(files).outside
  const paper = { paper: 'a4', theme: 'step-sheet', folder: '.' } as const
  const { page, findings } = await makeHandout(filled, paper, { read })
  const screen = await screenHtml(filled, { ...paper, script: '' }, { read })
  return {
    texts: [page?.html ?? '', screen.html ?? ''],
    findings: findings.map(({ place, ...rest }) => ({ ...rest, ...place })),
  }
}

/** The languages that have words of their own, American English for its spelling. */
const languages = ['de', 'fr', 'es', 'en-US', 'de-CH'] as const

/** A lesson in one of the languages: the same one for the same text. */
const translated = (text: string): string => {
  const lang = languages[text.length % languages.length] ?? 'de'
  return text.startsWith('---\n')
    ? text.replace(/^lang:.*\n/m, '').replace('---\n', `---\nlang: ${lang}\n`)
    : `---\nlang: ${lang}\n---\n\n${text}`
}

/** Each thing that a stranger's text can come in by. */
export const entries: Readonly<Record<string, (text: string) => Promise<Said>>> = {
  lesson,
  print: (text) => print(text),
  language: (text) => print(translated(text)),
  'language tag': (text) => print(`---\ntitle: A\nlang: ${text}\n---\n\n${steady}`),
  // Whatever a lesson calls its things goes into messages of each language.
  names: (text) => {
    const name = JSON.stringify(text)
    const named = steady.replace(
      'base: {stock: card}',
      `base: {stock: ${name}}\nlayers:\n  ${name}: {on: front, border: 1/8 in, stock: ${name}}`,
    )
    return print(translated(`---\ntitle: ${name}\nsummary: ${name}\n---\n\n${named}`))
  },
  text: (text) =>
    commands(
      { 'a.md': text },
      ['text', 'a.md'],
      ['text', 'a.md', '--as', 'md', '--with', 'sizes', '--limit', '600'],
      ['text', 'a.md', '--with', 'chapters', '--units', 'mm'],
    ),
  export: (text) =>
    commands(
      { 'a.md': text },
      ['export', 'a.md', '--as', 'svg', '-o', 'out'],
      ['export', 'a.md', '--as', 'dxf', '-o', 'out', '--units', 'mm'],
      ['export', 'a.md', '--as', 'fold', '-o', 'out'],
    ),
  library: async (text) => {
    const { findings, title } = await readSettings('.', memory({ 'library.yaml': text }).outside)
    return { texts: [title], findings: findings.map(({ place, ...rest }) => ({ ...rest, ...place })) }
  },
  workshop: (text) => print(steady, { 'workshop.yaml': text }),
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

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { foldStyles } from '../../src/card/fold-styles.ts'
import { starterLesson } from '../../src/workshop/starter.ts'
import { steady } from './steady.ts'

const filesIn = (folder: string, ending: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith(ending))
    .sort()
    .map((file) => readFileSync(join(folder, file), 'utf8'))

const parts = (texts: readonly string[], pattern: RegExp): string[] =>
  texts.flatMap((text) => [...text.matchAll(pattern)].map(([, part = '']) => part))

const readme = readFileSync('README.md', 'utf8')
const lessons = [
  ...filesIn('lessons', '.md'),
  ...filesIn('tests/lesson/fixtures', '.md'),
  ...[...foldStyles.values()].map(starterLesson),
  ...parts([readme], /````markdown\n([\s\S]*?)````/g),
  steady,
]
const measures = parts(lessons, /\{([a-z][^{}\n:]*)\}/g)

/** Good texts for each entry, from what is there: lessons, starters, examples of the manual, themes. */
export const corpus: Readonly<Record<string, readonly string[]>> = {
  lesson: lessons,
  print: lessons,
  language: lessons,
  'language tag': [
    'de',
    'fr',
    'es',
    'en-US',
    'de-CH-1901',
    'zh-Hant-TW',
    'sl-rozaj-biske',
    'x-tide',
    'i-klingon',
    'und',
  ],
  names: [
    'sea wall',
    'picture on panel 4',
    'bar 2 left tab',
    '{piece}',
    "l'abri",
    '<b>',
    '#',
    'größer',
    'base.width',
  ],
  text: lessons,
  export: lessons,
  library: [
    'title: Quillhaven harbour\nsizes: [own, offered, A6 landscape]\nunits: [in, mm]\npapers: [a4, letter]\nthemes: [step-sheet, large-print]\nleave out: [drafts, old.md]\n',
    ...parts([readme], /```yaml\n((?:title|sizes|units|papers|themes|leave out):[\s\S]*?)```/g),
  ],
  workshop: [
    'logo: harbour-mark.svg\nname: Quillhaven paper table\naccent: "#1b5e6b"\nsecond: "#555"\nfooter: At the old lamp house\n',
  ],
  'card block': parts(lessons, /```card.*\n([\s\S]*?)```/g),
  'front matter': parts(lessons, /^---\n([\s\S]*?)\n---/g),
  measure: measures,
  expression: [...measures, ...parts(lessons, /: (\d[^,}\n]*)/g)],
  directives: [...parts(lessons, /^( *:{1,3}[a-z]+[^\n]*)/gm), ...parts(lessons, /(:::[\s\S]*?:::)/g)],
  class: [...filesIn('lessons', '.yaml'), ...parts([readme], /```yaml\n(title:[\s\S]*?)```/g)],
  sizes: [
    '7 x 5 in',
    'A6 landscape',
    '180 x 120 mm',
    'white card: A4, vellum: A5',
    '5 7/8 in',
    '8 x 8 in, A5',
    'C6',
  ],
  theme: filesIn('themes', 'handout.hbs'),
  'theme settings': filesIn('themes', '.yaml'),
}

import { attempt, checkKeys, type Reading, readCardSize, report } from '../../card/reading.ts'
import { type Entry, readYaml } from '../../card/yaml.ts'
import { type Finding, suggestWord } from '../../length/finding.ts'
import type { OtherSize } from '../../lesson/lesson.ts'
import { readingOf, textsOf } from '../../lesson/yaml-reading.ts'
import { type LibraryFile, type LibraryTheme, libraryPapers } from './library-file.ts'

const keys = ['title', 'sizes', 'units', 'papers', 'themes', 'leave out'] as const
const units = ['own', 'in', 'mm'] as const
const start = { line: 1, column: 1 }

/**
 * Reads what a library says of its lessons. What is wrong is told with its place, and the rest is read all the same.
 *
 * @param text of the file: YAML. An empty one asks for the sizes that each lesson has, in its own unit, on A4.
 */
export function readLibrary(text: string): { file: LibraryFile; findings: readonly Finding[] } {
  const begin = text.startsWith('\ufeff') ? 1 : 0
  const { top, findings } = readYaml({
    text: text.slice(begin).replace(/\r\n?/g, '\n'),
    place: { line: 1, column: 1, offset: begin },
  })
  const { fields } = top.value
  const reading = readingOf(findings)
  checkKeys(reading, fields, keys, 'the library file')
  const entry = (key: (typeof keys)[number]): Entry | undefined => fields.get(key)?.value
  const [title] = textsOf(reading, entry('title'), '`title` wants a text', 'Write `title: Our lessons`')
  const themes = textsOf(reading, entry('themes'), 'A theme is wanted here', 'Write `themes: [step-sheet]`')
  const left = textsOf(reading, entry('leave out'), 'A file or a folder is wanted here', 'Write its path')
  return {
    file: {
      ...(title && { title: title.text.trim() }),
      sizes: sizesIn(reading, entry('sizes')),
      units: wordsIn(reading, entry('units'), units),
      papers: wordsIn(reading, entry('papers'), libraryPapers),
      themes: themes.length > 0 ? themesOf(themes) : [{ text: 'step-sheet', place: start }],
      leftOut: left.map((item) => item.text.trim()),
    },
    findings,
  }
}

/** Words of a list, each once; without a list the first of them. */
function wordsIn<W extends string>(
  reading: Reading,
  entry: Entry | undefined,
  words: readonly [W, ...W[]],
): W[] {
  const found = new Set<W>()
  for (const { text, place } of textsOf(reading, entry, 'A word is wanted here', suggestWord('', words))) {
    const word = words.find((one) => one === text.trim().toLowerCase())
    if (word) found.add(word)
    else report(reading, 'value', place, `Unexpected \`${text.trim()}\``, suggestWord(text, words))
  }
  return found.size > 0 ? [...found] : [words[0]]
}

function sizesIn(reading: Reading, entry: Entry | undefined): LibraryFile['sizes'] {
  const cure = 'Write for example `sizes: [own, offered, A6 landscape]`'
  const texts = textsOf(reading, entry, 'A size is wanted here', cure)
  if (texts.length === 0) return { own: true, offered: true, more: [] }
  const words = texts.map(({ text }) => text.trim().toLowerCase())
  const more = texts.flatMap((item, i): OtherSize[] => {
    if (words[i] === 'own' || words[i] === 'offered') return []
    const size = attempt(reading, item, readCardSize)
    return size ? [{ text: item.text.trim(), size, place: item.place }] : []
  })
  return { own: words.includes('own'), offered: words.includes('offered'), more }
}

const themesOf = (texts: readonly (Entry & { kind: 'text' })[]): LibraryTheme[] => [
  ...new Map(texts.map(({ text, place }) => [text.trim(), { text: text.trim(), place }])).values(),
]

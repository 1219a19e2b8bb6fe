import type { Root } from 'mdast'
import { attempt, checkKeys, fieldsOf, type Reading, readCardSize, report, wordOf } from '../card/reading.ts'
import { type Entry, type Fields, readYaml, type YamlBlock } from '../card/yaml.ts'
import { evaluateLength } from '../length/evaluate.ts'
import { ExpressionError } from '../length/expression.ts'
import { type Finding, nearestWord } from '../length/finding.ts'
import { inches, type Length, type Unit } from '../length/length.ts'
import { parseMeasure } from '../length/parse.ts'
import { localeOf } from '../wording/locales.ts'
import { allowedIn } from './allowed.ts'
import { readBrand } from './brand/read-brand.ts'
import { langIn } from './lang-key.ts'
import type { FrontMatter } from './lesson.ts'
import { checkLinkLength, isLink } from './link.ts'
import { minutesIn } from './minutes-in.ts'
import { sheetsOf } from './sheets.ts'
import { placeOf, type Source, written } from './source.ts'
import { readingOf, textsOf } from './yaml-reading.ts'

/** The keys of the front matter. */
export const frontMatterKeys = [
  'title',
  'summary',
  'level',
  'units',
  'grid',
  'sizes',
  'sheets',
  'for',
  'time',
  'allow',
  'lang',
  'video',
  'credits',
  'brand',
] as const

/** The keys of the front matter that want one of a few words; the first is usual. */
export const frontMatterWords = {
  level: ['beginner', 'improver', 'advanced'],
  units: ['in', 'mm'],
  for: ['anyone', 'children'],
} as const

/** The front matter of a parsed file, as YAML with its place; undefined when there is none. */
export function frontMatterBlock(tree: Root, source: Source): YamlBlock | undefined {
  const [node] = tree.children
  if (node?.type !== 'yaml') return undefined
  const raw = written(source, node.position)
  const first = /\r\n?|\n/.exec(raw)
  const from = first ? first.index + first[0].length : raw.length
  const to = Math.max(from, raw.search(/(?:\r\n?|\n)[^\r\n]*$/))
  const start = (placeOf(node.position).offset ?? 0) + from
  return {
    name: 'front matter',
    text: raw.slice(from, to).replace(/\r(?!\n)/g, '\n'),
    place: source.place(start, start + to - from),
  }
}

/** Checks the front matter. What is missing or wrong is told, and has its usual value. */
export function readFrontMatter(
  block: YamlBlock | undefined,
  source: Source,
): { frontMatter: FrontMatter; findings: Finding[] } {
  const { top, findings } = block ? readYaml(block) : { top: undefined, findings: [] }
  const fields: Fields = top?.value.fields ?? new Map()
  const reading = readingOf(findings)
  checkKeys(reading, fields, frontMatterKeys, 'the front matter')
  const nearTitle = [...fields.keys()].some((key) => nearestWord(key, frontMatterKeys) === 'title')
  if (!nearTitle) reportNoTitle(reading, block, source)
  const entry = (key: (typeof frontMatterKeys)[number]): Entry | undefined => fields.get(key)?.value
  const text = (key: (typeof frontMatterKeys)[number], cure: string): string | undefined =>
    textsOf(reading, entry(key), `\`${key}\` wants a text`, cure)
      .map((t) => t.text.trim())
      .join(', ') || undefined
  const title = text('title', 'Write `title: Harbour lights`')
  const summary = text('summary', 'Write one sentence')
  const credits = text('credits', 'Write the names')
  const lang = langIn(reading, entry('lang'), 'the lesson')
  const video = checked(reading, entry('video'), isLink, 'a link', 'the whole address, with `https://`')
  if (video) checkLinkLength(reading, video, entry('video')?.place ?? { line: 1, column: 1 })
  return {
    frontMatter: {
      title: title ?? 'Untitled lesson',
      ...(summary && { summary }),
      level: wordOf(reading, entry('level'), frontMatterWords.level),
      units: unitsOf(reading, entry('units'), lang ?? 'en'),
      ...gridOf(reading, entry('grid')),
      sizes: sizesOf(reading, entry('sizes')),
      ...sheetsOf(reading, entry('sheets')),
      for: wordOf(reading, entry('for'), frontMatterWords.for),
      ...timeOf(reading, entry('time')),
      allow: allowedIn(reading, entry('allow')),
      lang: lang ?? 'en',
      ...(video && { video }),
      ...(credits && { credits }),
      ...brandOf(reading, entry('brand')),
    },
    findings,
  }
}

/** Where nothing is said: inches where the lesson is in English, millimetres where people learn in those. */
const unitsOf = (reading: Reading, entry: Entry | undefined, lang: string): Unit =>
  entry
    ? wordOf(reading, entry, frontMatterWords.units)
    : localeOf(lang)?.startsWith('en') === false
      ? 'mm'
      : 'in'

function brandOf(reading: Reading, entry: Entry | undefined): Pick<FrontMatter, 'brand'> {
  if (entry === undefined) return {}
  const cure =
    'Write for example `brand: {logo: harbour-mark.svg, accent: "#1b5e6b", footer: Quillhaven paper table}`'
  const { wish, findings } = readBrand(fieldsOf(reading, entry, '`brand` wants keys', cure), '`brand`')
  reading.findings.push(...findings)
  return { brand: wish }
}

function reportNoTitle(reading: Reading, block: YamlBlock | undefined, source: Source): void {
  const start = source.place(source.text.startsWith('\ufeff') ? 1 : 0, 0)
  const open = !block && /^\ufeff?---[ \t]*[\r\n]/.test(source.text)
  const place = block?.place ?? { ...start, end: start.offset }
  if (open)
    report(
      reading,
      'open-front-matter',
      place,
      'The front matter is never closed',
      'Add a line `---` below its last line',
    )
  else
    report(
      reading,
      'missing-key',
      place,
      'The lesson has no title',
      block
        ? 'Add `title:`'
        : 'Start the file with a line `---`, a line `title:` with the title, and a line `---`',
    )
}

function gridOf(reading: Reading, entry: Entry | undefined): { grid: Length; gridUnit: Unit } | object {
  const [text] = textsOf(reading, entry, '`grid` wants a length', 'Write `grid: 1/16 in` or `grid: 1 mm`')
  return (text && attempt(reading, text, readGrid)) ?? {}
}

/** A ruler grid, and the unit it is written in. Throws ExpressionError. */
function readGrid(text: string): { grid: Length; gridUnit: Unit } {
  const { expression } = parseMeasure(text)
  const grid = evaluateLength(expression)
  if (grid.lte(0) || grid.gt(inches(1)))
    throw new ExpressionError(
      'value',
      `\`${text.trim()}\` is no ruler, expected what a hand can cut`,
      expression,
      'Write `grid: 1/16 in` or `grid: 1 mm`',
    )
  return { grid, gridUnit: expression.kind === 'length' && /^(?:in|ft)$/.test(expression.unit) ? 'in' : 'mm' }
}

function timeOf(reading: Reading, entry: Entry | undefined): Pick<FrontMatter, 'time'> {
  const cure = 'Write for example `time: 90 min`, `time: 2 h` or `time: 1 h 30 min`'
  const [text] = textsOf(reading, entry, '`time` wants how long the class is', cure)
  if (!text) return {}
  const minutes = minutesIn(text.text)
  if (minutes !== undefined && minutes > 0) return { time: { minutes, place: text.place } }
  report(reading, 'value', text.place, `\`${text.text.trim()}\` does not say how long the class is`, cure)
  return {}
}

function sizesOf(reading: Reading, entry: Entry | undefined): FrontMatter['sizes'] {
  const texts = textsOf(reading, entry, 'A size is wanted here', 'Write a size such as `7 x 5 in`')
  return texts.flatMap((item) => {
    const size = attempt(reading, item, readCardSize)
    return size ? [{ text: item.text.trim(), size, place: item.place }] : []
  })
}

function checked(
  reading: Reading,
  entry: Entry | undefined,
  test: (text: string) => boolean,
  wanted: string,
  example: string,
): string | undefined {
  const [item] = textsOf(reading, entry, `This wants ${wanted}`, `Write ${example}`)
  const text = item?.text.trim()
  if (!item || !text || test(text)) return text
  report(reading, 'value', item.place, `\`${text}\` is not ${wanted}`, `Write ${example}`)
  return undefined
}

import { basename, dirname, extname, relative, sep } from 'node:path'
import { toHtml } from 'hast-util-to-html'
import { s } from 'hastscript'
import type { Root } from 'mdast'
import { visit } from 'unist-util-visit'
import { hasErrors } from '../../length/finding.ts'
import { fillLesson } from '../../lesson/fill.ts'
import type { FilledLesson } from '../../lesson/lesson.ts'
import { readLesson } from '../../lesson/read.ts'
import { rooms } from '../../publish/figure.ts'
import { figuresOf } from '../../publish/figures-of.ts'
import { makeHandout } from '../../publish/handout.ts'
import { disk } from '../../publish/outside.ts'
import { wordingOf } from '../../wording/wording.ts'
import { findingJson } from '../../workshop/finding-json.ts'
import { readText } from '../read-text.ts'
import { hashOf } from './hashes.ts'
import type { LessonNews, LessonWork } from './lesson-work.ts'
import { keyOf } from './records.ts'
import { findingsOf, wantedSizes } from './wanted.ts'

/**
 * Makes the pages of a lesson: reads it, fills it in for each size and unit, draws it. No browser takes part.
 *
 * @param tell hears of each thing as soon as it is known.
 * @throws ThemeError; OutsideError when the lesson is no UTF-8 text.
 */
export async function makeLesson(work: LessonWork, tell: (news: LessonNews) => void): Promise<void> {
  const lesson = readLesson(await readText(work.path, { read: async () => work.bytes }))
  const own = fillLesson(lesson)
  const broken = hasErrors(own.findings)
  const wanted = broken ? [] : wantedSizes(lesson, own, basename(work.place, extname(work.place)), work)
  const keysOf = (works: boolean): string[] =>
    wanted.flatMap(({ print, prints }) =>
      hasErrors(print.print.findings) !== works ? prints.map(keyOf) : [],
    )
  const works = new Set(keysOf(true))
  const picture = broken ? undefined : pictureOf(own, work.path)
  tell({
    kind: 'about',
    about: aboutOf(own),
    ...(picture !== undefined && { picture }),
    wanted: wanted.flatMap(({ prints }) => prints).filter((print) => works.has(keyOf(print))),
    ...(!broken && { broken: keysOf(false) }),
    findings: findingsOf(lesson, own, wanted).map(findingJson),
  })
  const reads: Record<string, string | null> = {}
  const outside = { read: noted(work.folder, reads) }
  const have = new Set(work.have)
  const told = new Set(own.findings)
  for (const { print, prints } of wanted)
    for (const one of prints) {
      const theme = work.themes.find(({ text }) => text === one.theme)?.theme
      if (theme === undefined || have.has(keyOf(one)) || !works.has(keyOf(one))) continue
      const options = { paper: one.paper, theme, folder: dirname(work.place) }
      const { page, findings } = await makeHandout(print.print, options, outside)
      const drawn = findings.filter((found) => !told.has(found) && !print.print.findings.includes(found))
      const news = { kind: 'print', print: one, findings: drawn.map(findingJson), reads } as const
      tell({ ...news, ...(page && { made: page }) })
    }
}

/** Reads files, and notes what they were. */
const noted =
  (folder: string, reads: Record<string, string | null>) =>
  async (path: string): Promise<Uint8Array> => {
    const name = relative(folder, path).split(sep).join('/')
    reads[name] = null
    const bytes = await disk.read(path)
    reads[name] = hashOf(bytes)
    return bytes
  }

function aboutOf({ frontMatter, tree, cards, unit }: FilledLesson) {
  const { title, summary, level, lang } = frontMatter
  const names = cards.flatMap(({ card }) => [
    card.name,
    ...card.structure.pieces.flatMap(({ name, stock }) => [name, stock.name]),
  ])
  return {
    title,
    ...(summary !== undefined && { summary }),
    // These pages speak to whoever keeps the library.
    level: wordingOf('en', unit).say('handout.level', { level }),
    lang,
    words: wordsOf([title, summary ?? '', level, textOf(tree), ...names].join(' ')),
  }
}

/** All words of a text, each once, as they are searched: in small letters, without accents. */
const wordsOf = (text: string): string =>
  [
    ...new Set(
      text
        .normalize('NFD')
        .replaceAll(/\p{M}/gu, '')
        .toLowerCase()
        .match(/[\p{L}\p{N}]+/gu) ?? [],
    ),
  ].join(' ')

function textOf(tree: Root): string {
  const texts: string[] = []
  visit(tree, 'text', ({ value }) => void texts.push(value))
  return texts.join(' ')
}

/** The card as it stands, or else as it is shut, as an SVG that stands alone. */
function pictureOf(own: FilledLesson, path: string): string | undefined {
  const draw = figuresOf(own)
  for (const show of ['standing', 'closed'] as const) {
    // The index shows many of them in one page, so each has names of its own.
    const drawn = draw(show, undefined, { ...rooms.cover, key: `card-${hashOf(path)}` })
    if ('findings' in drawn) continue
    const svg = { ...drawn.svg, children: [s('metadata', 'foldlore'), ...drawn.svg.children] }
    return toHtml(svg, { space: 'svg', closeEmptyElements: true })
  }
  return undefined
}

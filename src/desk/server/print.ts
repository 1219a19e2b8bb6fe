import { posix } from 'node:path'
import { type Finding, hasErrors } from '../../length/finding.ts'
import type { Unit } from '../../length/length.ts'
import { readBrand } from '../../publish/brand/read-brand.ts'
import { workshopName } from '../../publish/brand/workshop.ts'
import { browserUnderWay } from '../../publish/launch.ts'
import type { Outside } from '../../publish/outside.ts'
import { type Paper, papers } from '../../publish/page-css.ts'
import { themeNames } from '../../publish/theme-folder.ts'
import { learnFor } from '../../wording/learn-for.ts'
import { findingJson } from '../../workshop/finding-json.ts'
import { lessonAt, readClosed } from '../engine/kept-lesson.ts'
import { optionalText, textField } from './body.ts'
import { pictureAt } from './pictures.ts'
import { Refused } from './refused.ts'
import { mostText } from './text-file.ts'
import { workshopBytes } from './workshop.ts'

/** What can be printed. */
const whats = ['handout', 'template', 'sizes'] as const

/** What is asked to be printed, checked. */
export interface Wish {
  /** Path of the lesson from the folder; empty for one that is in none yet. */
  readonly path: string
  readonly text: string
  readonly what: (typeof whats)[number]
  readonly closed?: string
  readonly units?: Unit
  readonly paper: Paper
  readonly theme: string
}

/** Checks a wish. Only the themes that come with foldlore can be asked for. Throws Refused. */
export async function wishIn(fields: Readonly<Record<string, unknown>>): Promise<Wish> {
  const text = textField(fields, 'text')
  if (Buffer.byteLength(text) > mostText)
    throw new Refused(413, 'That is more than 2 MB, too much for a lesson')
  const closed = optionalText(fields, 'closed')
  const size = readClosed(closed)
  if (typeof size === 'object' && 'refused' in size)
    throw new Refused(422, size.refused, { ...(size.suggestion && { suggestion: size.suggestion }) })
  const units = optionalText(fields, 'units')
  return {
    path: optionalText(fields, 'path') ?? '',
    text,
    what: oneOf(fields, 'what', whats),
    ...(closed && { closed }),
    ...(units !== undefined && { units: oneOf(fields, 'units', ['in', 'mm'] as const) }),
    paper: oneOf(fields, 'paper', Object.keys(papers) as Paper[]),
    theme: oneOf(fields, 'theme', await themeNames()),
  }
}

function oneOf<W extends string>(
  fields: Readonly<Record<string, unknown>>,
  name: string,
  words: readonly W[],
): W {
  const given = textField(fields, name)
  const word = words.find((one) => one === given)
  if (word !== undefined) return word
  throw new Refused(400, `\`${name}\` is none of ${words.map((one) => `\`${one}\``).join(', ')}`)
}

/** A PDF, and what its making has shown, as whole sentences. */
export interface Printed {
  readonly pdf: Uint8Array
  readonly notes: readonly string[]
}

/**
 * Prints a lesson as it is sent. No script runs, nothing is fetched, and pictures come from the lesson's folder only.
 *
 * @throws Refused with the findings when the lesson has errors; what publishing a handout throws.
 */
export async function printWish(wish: Wish, folder: string, browserPath?: string): Promise<Printed> {
  await learnFor(wish.text)
  const { lesson, filled } = lessonAt(wish.text, wish)
  refuseErrors(filled.findings)
  const lessonFolder = posix.dirname(wish.path)
  const sheets = onlyRemembered(folder)
  const brandOf = async () => (await readBrand(filled.frontMatter.brand, lessonFolder, sheets)).brand
  const { browser, stop } = await browserUnderWay(browserPath)
  try {
    const { paper, theme } = wish
    if (wish.what === 'handout') {
      const { publishHandout } = await import('../../publish/handout.ts')
      const settings = {
        paper,
        theme,
        out: 'handout',
        force: true,
        html: false,
        folder: lessonFolder,
        browser,
      }
      const { findings } = await publishHandout(filled, settings, sheets)
      refuseErrors(findings)
      return { pdf: await sheets.read('handout.pdf'), notes: findings.flatMap(noteOf) }
    }
    if (wish.what === 'template') {
      const { tracingHtml, tracingPdf } = await import('../../publish/tracing.ts')
      const html = await tracingHtml(filled, paper, theme, await brandOf())
      return { pdf: await tracingPdf(html, browser), notes: [] }
    }
    const [
      { sizeChart },
      { unitsOf },
      { sizeChartView },
      { sizeChartHtml, sizeChartPdf },
      { loadSizeChartTheme },
    ] = await Promise.all([
      import('../../workshop/size-chart.ts'),
      import('../../lesson/sizes/offered.ts'),
      import('../../publish/size-chart-view.ts'),
      import('../../publish/size-chart.ts'),
      import('../../publish/theme.ts'),
    ])
    const units = wish.units ? [wish.units] : unitsOf(filled.frontMatter)
    const brand = await brandOf()
    const view = { ...sizeChartView(sizeChart(lesson, filled, units, []), filled), ...(brand && { brand }) }
    const html = await sizeChartHtml(view, await loadSizeChartTheme(theme), paper)
    return { pdf: await sizeChartPdf(view, html, paper, browser), notes: [] }
  } finally {
    await stop()
  }
}

/** What only a print shows; all else that is found stands beside the lesson. */
const noteOf = ({ rule, message, suggestion = '' }: Finding): string[] =>
  rule === 'too-long-for-one-page'
    ? [`${message}. ${suggestion.replace('`--theme booklet`', 'the theme `booklet`')}.`]
    : []

function refuseErrors(findings: readonly Finding[]): void {
  if (!hasErrors(findings)) return
  throw new Refused(422, 'The lesson has errors, so its numbers cannot be relied on', {
    suggestion: 'Cure what is marked in the lesson, then print again',
    more: { findings: findings.map(findingJson) },
  })
}

/** A disk that has the pictures and the `workshop.yaml` of a folder, and otherwise only remembers what is written. */
function onlyRemembered(folder: string): Outside {
  const files = new Map<string, Uint8Array>()
  return {
    async read(path) {
      const known = files.get(path)
      if (known) return known
      const asked = posix.normalize(path.replaceAll('\\', '/'))
      return posix.basename(asked) === workshopName
        ? workshopBytes(asked, folder)
        : (await pictureAt(asked, folder)).bytes
    },
    async create(path, data) {
      files.set(path, data)
    },
    async rename(from, to) {
      const data = files.get(from)
      if (data) files.set(to, data)
      files.delete(from)
    },
    async remove(path) {
      files.delete(path)
    },
    async makeFolder() {},
  }
}

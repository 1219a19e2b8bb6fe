import { join } from 'node:path'
import { disk } from '../../publish/outside.ts'
import { type FileToWrite, mayWrite, writeWhole } from '../../publish/write.ts'
import { type FindingJson, findingJson } from '../../workshop/finding-json.ts'
import { removeOld } from './clean.ts'
import type { LessonNews, LessonWork } from './lesson-work.ts'
import { cardPicture, fileOf, folderOf, lessonPage } from './places.ts'
import { keysOf, type LessonPlan, printOf } from './plan.ts'
import type { Printer } from './printer.ts'
import type { Problems } from './problems.ts'
import { keyOf, type LessonRecord, type PrintRecord } from './records.ts'
import type { Settings } from './settings.ts'
import type { Team } from './team.ts'

/** What prints are made with, and where they go. */
export interface Workshop {
  readonly folder: string
  readonly out: string
  readonly force: boolean
  readonly settings: Settings
  readonly team: Team
  readonly printer: Printer
  readonly problems: Problems
  /** Whether the whole is being ended. */
  readonly stop: AbortSignal
  /** Hears of everything that is known anew of a lesson. */
  readonly note: (lesson: string, record: LessonRecord) => void
}

/** What came of a lesson. */
export interface MadePrints {
  readonly made: number
  readonly removed: number
}

/**
 * Makes the prints of a lesson that are not there. What cannot be made is collected, and the rest is made all the same.
 *
 * @returns what comes when the pages are made: the prints, some of which may still be in the browser then.
 */
export async function makePrints(
  plan: LessonPlan,
  shop: Workshop,
): Promise<{ printed: Promise<MadePrints> }> {
  const { path } = plan.lesson
  let record = firstRecord(plan)
  let broken: readonly string[] | undefined
  let isWhole = true
  let made = 0
  const note = (change: Partial<LessonRecord>): void => {
    record = { ...record, ...change }
    shop.note(path, record)
  }
  const failed = (error: unknown): void => {
    isWhole = false
    shop.problems.add(error, path)
  }
  const undrawn = new Set<string>()
  const prints: Promise<void>[] = []
  const hear = (news: LessonNews): void => {
    if (news.kind === 'about') {
      broken = news.broken
      const kept = keepWanted(record, news.wanted.map(keyOf))
      note({ about: news.about, findings: news.findings, ...kept })
      if (news.picture !== undefined)
        prints.push(write([fileAt(shop, path, cardPicture, news.picture)], shop).catch(failed))
      return
    }
    const { print, made: page, findings, reads } = news
    note({ reads: { ...record.reads, ...reads } })
    if (!page) {
      undrawn.add(keyOf(print))
      note({ findings: [...record.findings, ...findings] })
      return
    }
    const of = printOf(plan.of, shop.settings, print.theme)
    const told = (html: number, pdf: number, found: readonly FindingJson[] = []): void => {
      const others = (list: readonly PrintRecord[]) => list.filter(({ name }) => name !== print.name)
      const one = { ...print, of, html, pdf, findings: [...findings, ...found] }
      note({ prints: [...others(record.prints), one], older: others(record.older) })
    }
    const files = ['.html', '.pdf'].map((ending) => join(shop.out, fileOf(path, print.name, ending)))
    const [html = '', pdf = ''] = files
    prints.push(
      (async () => {
        for (const file of files) await mayWrite(file, shop.force, disk)
        try {
          const printed = await shop.printer.print(page)
          const text = new TextEncoder().encode(printed.html)
          await writeWhole(
            [
              { path: html, data: text },
              { path: pdf, data: printed.pdf },
            ],
            disk,
          )
          told(text.length, printed.pdf.length, printed.findings.map(findingJson))
          made++
        } catch (error) {
          if (shop.stop.aborted) throw error
          failed(error)
          // Any browser can print the page: the work is not lost.
          const text = new TextEncoder().encode(page.html)
          await writeWhole([{ path: html, data: text }], disk)
          told(text.length, 0)
        }
      })().catch(failed),
    )
  }
  await shop.team.make(workOf(plan, shop), hear).catch(failed)
  const printed = Promise.all(prints).then(async () => {
    const stands = (print: PrintRecord): boolean =>
      broken === undefined || broken.includes(keyOf(print)) || undrawn.has(keyOf(print)) || !isWhole
    note({ complete: isWhole, older: record.older.filter(stands) })
    const names = [...record.prints, ...record.older].map(({ name }) => name)
    const keep = [cardPicture, lessonPage, ...names.flatMap((name) => [`${name}.html`, `${name}.pdf`])]
    return { made, removed: await removeOld(shop.out, path, new Set(keep)) }
  })
  return { printed }
}

/** What is known of a lesson before it is made: no print counts that is not made of what it is now. */
export const firstRecord = ({ of, wish, before, current }: LessonPlan): LessonRecord => ({
  of,
  wish,
  complete: false,
  ...(before?.about && { about: before.about }),
  reads: current.length > 0 ? (before?.reads ?? {}) : {},
  prints: current,
  older: [...(before?.prints ?? []), ...(before?.older ?? [])].filter(
    (print, i, all) =>
      !current.some(({ name }) => name === print.name) &&
      all.findIndex(({ name }) => name === print.name) === i,
  ),
  findings: before?.findings ?? [],
})

/** A print that nobody wants any more is one of an earlier time. */
function keepWanted({ prints, older }: LessonRecord, wanted: readonly string[]) {
  const isWanted = (print: PrintRecord): boolean => wanted.includes(keyOf(print))
  return {
    prints: prints.filter(isWanted),
    older: [...older, ...prints.filter((print) => !isWanted(print))],
  }
}

const workOf = ({ lesson, current }: LessonPlan, { folder, settings }: Workshop): LessonWork => ({
  path: lesson.path,
  place: lesson.place,
  folder,
  bytes: lesson.bytes,
  sizes: { ...settings.file.sizes, more: settings.file.sizes.more.map(({ text }) => text) },
  units: settings.file.units,
  papers: settings.file.papers,
  themes: settings.themes.map(({ text, theme }) => ({ text, theme })),
  have: keysOf(current),
})

const fileAt = ({ out }: Workshop, lesson: string, name: string, text: string): FileToWrite => ({
  path: join(out, folderOf(lesson), name),
  data: new TextEncoder().encode(text),
})

async function write(files: readonly FileToWrite[], { force }: Workshop): Promise<void> {
  for (const { path } of files) await mayWrite(path, force, disk)
  await writeWhole(files, disk)
}

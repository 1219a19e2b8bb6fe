import { readFile, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { indexHtml, reportName } from '../../publish/library/index-page.ts'
import { lessonHtml } from '../../publish/library/lesson-page.ts'
import type { LibraryLesson, LibraryView } from '../../publish/library/library-view.ts'
import { reportHtml } from '../../publish/library/report-page.ts'
import { disk } from '../../publish/outside.ts'
import { writeWhole } from '../../publish/write.ts'
import { hashOf } from './hashes.ts'
import { inTurns } from './in-turns.ts'
import { cardPicture, folderOf, lessonPage } from './places.ts'
import type { LessonRecord, PrintRecord, Records } from './records.ts'

/** The page that leads to all prints. */
export const indexName = 'index.html'

/** What the pages of a library show, apart from pictures. */
export function viewOf(
  title: string,
  records: Records,
  { findings, problems }: Pick<LibraryView, 'findings' | 'problems'>,
): LibraryView {
  return { title, lessons: [...records].map(([path, record]) => lessonOf(path, record)), findings, problems }
}

function lessonOf(path: string, { about, prints, older, findings }: LessonRecord): LibraryLesson {
  const usual = { title: path, level: '', lang: 'en', words: path.toLowerCase() }
  return {
    path,
    folder: folderOf(path),
    ...usual,
    ...about,
    prints: prints.map(printOf),
    older: older.map(printOf),
    findings: [...findings, ...unique(prints.flatMap((print) => print.findings))],
  }
}

const printOf = ({ name, size, unit, paper, theme, pdf }: PrintRecord) => ({
  name,
  size,
  unit,
  paper,
  theme,
  pdf: pdf > 0,
})

/** What is found in several prints is told once. */
const unique = (findings: PrintRecord['findings']): PrintRecord['findings'] => [
  ...new Map(findings.map((finding) => [JSON.stringify(finding), finding])).values(),
]

/**
 * Writes the pages that have changed, and those that are not there.
 *
 * @param before hashes of what each page was made of, the last time.
 * @returns those of now.
 */
export async function writePages(
  out: string,
  view: LibraryView,
  program: string,
  before: Readonly<Record<string, string>>,
): Promise<Record<string, string>> {
  const now: Record<string, string> = {}
  const write = async (name: string, of: unknown, html: () => Promise<string>): Promise<void> => {
    now[name] = hashOf(program, JSON.stringify(of))
    if (before[name] === now[name] && (await isFile(join(out, name)))) return
    await writeWhole([{ path: join(out, name), data: new TextEncoder().encode(await html()) }], disk)
  }
  const pictured = async (lesson: LibraryLesson): Promise<LibraryLesson> => {
    const path = join(out, lesson.folder, cardPicture)
    const picture = await readFile(path, 'utf8').catch(() => undefined)
    return picture === undefined ? lesson : { ...lesson, picture }
  }
  for (const lesson of view.lessons)
    await write(`${lesson.folder}/${lessonPage}`, [lesson, view.title], async () =>
      lessonHtml(await pictured(lesson), view.title),
    )
  await write(reportName, view, () => reportHtml(view))
  await write(indexName, view, async () =>
    indexHtml({ ...view, lessons: await inTurns(view.lessons, pictured) }),
  )
  return now
}

const isFile = (path: string): Promise<boolean> =>
  stat(path).then(
    (found) => found.isFile(),
    () => false,
  )

import { resolve } from 'node:path'
import { hasErrors } from '../../length/finding.ts'
import { reportName } from '../../publish/library/index-page.ts'
import type { LibraryView } from '../../publish/library/library-view.ts'
import { disk } from '../../publish/outside.ts'
import { mayWrite } from '../../publish/write.ts'
import { findingJson } from '../../workshop/finding-json.ts'
import type { Outside } from '../outside.ts'
import { removeDrafts, removeOld } from './clean.ts'
import { type FoundLessons, findLessons } from './find-lessons.ts'
import { inTurns } from './in-turns.ts'
import { type Keeping, keepState } from './keep-state.ts'
import { firstRecord, makePrints, type Workshop } from './make-prints.ts'
import { type LessonPlan, planLesson } from './plan.ts'
import { makePrinter } from './printer.ts'
import { collectProblems, type Problem } from './problems.ts'
import { programHash } from './program-hash.ts'
import { readSettings, type Settings } from './settings.ts'
import { readState } from './state.ts'
import { makeTeam } from './team.ts'
import { indexName, viewOf, writePages } from './write-pages.ts'

/** What a library is printed with. */
export interface BuildOptions {
  /** Whole paths. */
  readonly folder: string
  readonly out: string
  readonly jobs: number
  readonly force: boolean
  readonly browserPath?: string
  /** Ends it; what is whole by then stays. */
  readonly stop: AbortSignal
  /** Hears of each lesson that is done. */
  readonly progress: (done: number, of: number, title: string, made: number) => void
}

/** What came of it. */
export interface Built {
  readonly view: LibraryView
  readonly problems: readonly Problem[]
  readonly made: number
  readonly kept: number
  readonly removed: number
  readonly stopped: boolean
  /** Folders that a change in them concerns. */
  readonly watched: readonly string[]
}

/**
 * Prints the lessons of a folder: what is not there yet, and what is made of something that has changed.
 *
 * @throws OutsideError when a folder cannot be read or written, NotOursError when one of its pages is somebody else's.
 */
export async function buildLibrary(options: BuildOptions, outside: Outside): Promise<Built> {
  const { folder, out, stop } = options
  const settings = await readSettings(folder, outside)
  for (const name of [indexName, reportName]) await mayWrite(resolve(out, name), options.force, disk)
  const { leftOut } = settings.file
  const [found, program, before] = await Promise.all([
    findLessons(folder, [out, ...leftOut]),
    programHash(),
    readState(out),
  ])
  const watched = [...found.folders, ...settings.themes.map((theme) => theme.folder)]
  const problems = collectProblems()
  for (const { path, error } of found.missed) problems.add(error, path)
  const keeping = keepState(out, before)
  const findings = settings.findings.map(findingJson)
  const result = (counts: Pick<Built, 'made' | 'kept' | 'removed'>): Built => ({
    view: viewOf(settings.title, inOrder(keeping, found.lessons), { findings, problems: problems.list() }),
    problems: stop.aborted ? [] : problems.list(),
    ...counts,
    stopped: stop.aborted,
    watched,
  })
  // Half of what it says is not what it means.
  if (hasErrors(settings.findings)) return result({ made: 0, kept: 0, removed: 0 })
  const plans = await inTurns(found.lessons, (lesson) =>
    planLesson(lesson, before.lessons.get(lesson.path), settings, { folder, out, program }),
  )
  await removeDrafts(out)
  let removed = await removeLost(out, keeping, found)
  const todo = plans.filter(({ isDone }) => !isDone)
  const kept = plans.reduce((sum, plan) => sum + plan.current.length, 0)
  let made = 0
  if (todo.length > 0) {
    for (const plan of todo) keeping.note(plan.lesson.path, firstRecord(plan))
    // What is begun is noted before it is begun: what a power cut leaves can then be found.
    await keeping.flush()
    const counts = await makeAll(todo, settings, keeping, problems, options)
    made = counts.made
    removed += counts.removed
  }
  const built = result({ made, kept, removed })
  const pages = stop.aborted ? before.pages : await writePages(out, built.view, program, before.pages)
  if (todo.length > 0 || removed > 0 || JSON.stringify(pages) !== JSON.stringify(before.pages))
    await keeping.flush(pages)
  return built
}

/** Lessons in the order of their paths, whenever they were made. */
const inOrder = ({ lessons }: Keeping, found: readonly { path: string }[]) =>
  new Map(
    found.flatMap(({ path }) => {
      const record = lessons.get(path)
      return record ? [[path, record] as const] : []
    }),
  )

/** Lessons that are gone lose their prints. */
async function removeLost(out: string, keeping: Keeping, { lessons, missed }: FoundLessons): Promise<number> {
  const there = new Set(lessons.map(({ path }) => path))
  // What cannot be read just now is not gone.
  const isThere = (one: string): boolean =>
    there.has(one) || missed.some(({ path }) => one === path || one.startsWith(`${path}/`))
  let removed = 0
  for (const path of [...keeping.lessons.keys()].filter((one) => !isThere(one))) {
    removed += await removeOld(out, path, new Set())
    keeping.forget(path)
  }
  return removed
}

/** Makes what is not there, several lessons and prints beside each other. */
async function makeAll(
  todo: readonly LessonPlan[],
  settings: Settings,
  keeping: Keeping,
  problems: Workshop['problems'],
  { folder, out, force, jobs, browserPath, stop, progress }: BuildOptions,
): Promise<{ made: number; removed: number }> {
  const team = makeTeam(Math.min(jobs, todo.length))
  // One page more than hands, so that none of them waits for what is being written.
  const printer = makePrinter({ pages: jobs + 1, ...(browserPath !== undefined && { browserPath }) })
  const end = (): Promise<unknown> => Promise.all([team.close(), printer.close()])
  const onStop = (): void => void end()
  stop.addEventListener('abort', onStop)
  const shop: Workshop = { folder, out, force, settings, team, printer, problems, stop, note: keeping.note }
  const counts = { made: 0, removed: 0 }
  const waiting = todo.values()
  const finishing = new Set<Promise<void>>()
  let done = 0
  try {
    const hands = Array.from({ length: Math.min(jobs, todo.length) }, async () => {
      for (const plan of waiting) {
        if (stop.aborted) return
        const { printed } = await makePrints(plan, shop)
        // While its prints are in the browser, the next lesson is made; but not all of them, which would fill the memory.
        const finish = printed.then(({ made, removed }) => {
          counts.made += made
          counts.removed += removed
          const { about } = keeping.lessons.get(plan.lesson.path) ?? {}
          if (!stop.aborted) progress(++done, todo.length, about?.title ?? plan.lesson.path, made)
        })
        finishing.add(finish)
        void finish.finally(() => finishing.delete(finish)).catch(() => {})
        while (finishing.size > jobs + 1) await Promise.race(finishing)
      }
    })
    await Promise.all(hands)
    await Promise.all(finishing)
    return counts
  } finally {
    stop.removeEventListener('abort', onStop)
    await end()
  }
}

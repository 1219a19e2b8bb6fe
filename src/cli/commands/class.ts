import { dirname, extname } from 'node:path'
import { type Finding, hasErrors } from '../../length/finding.ts'
import { browserUnderWay } from '../../publish/launch.ts'
import { BrowserError } from '../../publish/problems.ts'
import { mayWrite, writeWhole } from '../../publish/write.ts'
import { type ClassWork, workOut } from '../../workshop/class/class-work.ts'
import { tellWritten } from '../answer.ts'
import { classFrom, tellClass } from '../class-from.ts'
import { type ClassPrint, classPrints, type Press } from '../class-prints.ts'
import { classTables } from '../class-tables.ts'
import type { Action } from '../commands.ts'
import { dayPage } from '../day-page.ts'
import type { Options } from '../flags.ts'
import { holdFiles } from '../held-files.ts'
import { tellFindings } from '../lesson-file.ts'
import type { Outside } from '../outside.ts'
import { pagesFor } from '../pages.ts'
import { planProgress } from '../plan-progress.ts'
import { printSettings } from '../print-settings.ts'
import { exitCodes, UsageError } from '../problems.ts'
import { tellStopped } from '../tell-stopped.ts'
import { timeLimit } from '../time-limit.ts'
import { writeWorkbook } from '../write-workbook.ts'

/**
 * `class CLASS -o FOLDER`: everything for the day, as pages and PDFs, a workbook, and a page that leads to them. The
 * files appear together when the last of them is made; without a browser there are no PDFs, and the rest appears.
 */
export const wholeClass: Action = async ([path = ''], options, outside) => {
  await mustBeFolder(options, outside)
  const read = await classFrom(path, options, outside)
  const [first] = read.lessons
  if (!tellClass(read, options, outside) || !first) return exitCodes.lessonErrors
  const signal = timeLimit(options.within)
  const work = await workOut(path, read, first, planProgress(options, outside), signal)
  tellStopped(signal, work.plan, options, outside)
  const found: Finding[] = []
  const prints = classPrints(work, (lesson, findings) => {
    found.push(...findings)
    tellFindings(lesson, findings, options, outside)
  })
  const noBrowser = await makeAll(work, prints, options, outside)
  const findings = [...work.kit.findings, ...work.run.findings]
  tellFindings(path, findings, options, outside)
  if (noBrowser) throw noBrowser
  return hasErrors([...findings, ...found]) ? exitCodes.lessonErrors : exitCodes.done
}

/** Makes all files and writes them together; gives the mistake when no browser was there to make the PDFs. */
async function makeAll(
  work: ClassWork,
  prints: readonly ClassPrint[],
  options: Options,
  outside: Outside,
): Promise<BrowserError | undefined> {
  const held = holdFiles(outside)
  const own = await browserUnderWay(printSettings(options, outside).browserPath)
  try {
    const press = { options: { ...options, quiet: true }, outside: held.outside, browser: own.browser }
    const noBrowser = await printAll(prints, press, (print, i) => {
      if (!options.quiet) outside.stderr(`Printing ${i + 1} of ${prints.length}: ${print.title}\n`)
    })
    const { out } = await pagesFor(work.path, 'class', options, outside)
    await writeWorkbook(
      `${out}.xlsx`,
      work.title,
      classTables(work),
      work.wording,
      press.options,
      press.outside,
    )
    await mayWrite(`${out}.html`, options.force === true, outside)
    const page = await dayPage(work, prints, held.files(), options, outside)
    const files = [{ path: `${out}.html`, data: page }, ...held.files()]
    await writeWhole(files, outside)
    tellWritten(
      files.map((file) => file.path),
      options,
      outside,
    )
    return noBrowser
  } finally {
    await own.stop()
  }
}

/**
 * Prints one thing after the other. That a browser was not found, or failed, is told when the pages of all of them are
 * there.
 */
async function printAll(
  prints: readonly ClassPrint[],
  press: Press,
  tell: (print: ClassPrint, i: number) => void,
): Promise<BrowserError | undefined> {
  let noBrowser: BrowserError | undefined
  let { browser } = press
  for (const [i, print] of prints.entries()) {
    tell(print, i)
    await print.print({ ...press, browser }).catch((error: unknown) => {
      if (!(error instanceof BrowserError)) throw error
      noBrowser = error
      // One that failed is not waited for again and again.
      browser = Promise.reject(error)
      browser.catch(() => {})
    })
  }
  return noBrowser
}

/** Many files do not go into one. */
async function mustBeFolder({ output = '' }: Options, outside: Outside): Promise<void> {
  if (!/^\.(pdf|html?|xlsx|csv|md|txt)$/i.test(extname(output)) || (await outside.isFolder(output))) return
  const { length } = extname(output)
  throw new UsageError(
    '`class` fills a folder with files',
    `Name the folder, such as \`-o ${output.slice(0, -length) || dirname(output)}\``,
  )
}

import { dirname, normalize } from 'node:path'
import { type Finding, hasErrors, listOf } from '../../length/finding.ts'
import { groupBy } from '../../length/group-by.ts'
import { directiveOf } from '../../lesson/figures/directive.ts'
import type { Offered } from '../../lesson/figures/offered.ts'
import { inFileOrder } from '../../lesson/file-order.ts'
import { fillLesson } from '../../lesson/fill.ts'
import type { Placed } from '../../lesson/loose/edits.ts'
import { measureOf } from '../../lesson/loose/proposal.ts'
import { readLesson } from '../../lesson/read.ts'
import { stepByStep } from '../../lesson/rules/step-without-figure.ts'
import { sizeFindings } from '../../lesson/sizes/findings.ts'
import { canDraw } from '../../publish/offered-figures.ts'
import { OutsideError } from '../../publish/problems.ts'
import { writeWhole } from '../../publish/write.ts'
import { findingJson } from '../../workshop/finding-json.ts'
import { placedJson } from '../../workshop/tied-json.ts'
import { asJson } from '../answer.ts'
import { type CheckedFile, drawingFindings } from '../checked-file.ts'
import { isClassFile } from '../class-from.ts'
import type { Action } from '../commands.ts'
import { findingsText } from '../findings.ts'
import type { Options } from '../flags.ts'
import { wishesOf } from '../lesson-file.ts'
import type { Outside } from '../outside.ts'
import { exitCodes, UsageError } from '../problems.ts'
import { readText } from '../read-text.ts'
import { told } from '../told.ts'

interface Checked extends CheckedFile {
  /** With `--fix`: the plain numbers that have a name now. */
  readonly fixed?: readonly Placed[]
  /** With `--figures auto`: the figures that steps have now. */
  readonly drawn?: readonly Offered[]
}

/**
 * `check LESSON…`, class files too, with their lessons in the size and unit of the class. What cannot be read does not
 * keep the others from being checked.
 */
export const check: Action = async (paths, options, outside) => {
  mustBeLessons(paths, options)
  const checked: Checked[] = []
  const unread: OutsideError[] = []
  for (const file of paths) {
    try {
      if (isClassFile(file)) {
        const { checkClass } = await import('../check-class.ts')
        checked.push(...(await checkClass(file, options, outside)))
        continue
      }
      const fixed = options.fix ? await fixFile(file, outside) : undefined
      const drawn = options.figures === 'auto' ? await putFigures(file, outside) : undefined
      const findings = await allFindings(file, options, outside)
      checked.push({ file, kind: 'lesson', findings, ...(fixed && { fixed }), ...(drawn && { drawn }) })
    } catch (error) {
      if (!(error instanceof OutsideError)) throw error
      unread.push(error)
    }
  }
  const files = byFile(checked)
  if (options.json) {
    const [classes, lessons] = (['class', 'lesson'] as const).map((kind) =>
      files.filter((one) => one.kind === kind).map(checkedJson),
    )
    outside.stdout(asJson({ ...(classes?.length && { classes }), lessons }))
  } else {
    for (const { file, fixed = [], drawn = [], findings } of files) {
      if (!options.quiet) outside.stdout(fixedText(file, fixed) + drawnText(file, drawn))
      outside.stdout(findingsText(file, findings, options))
    }
    if (!options.quiet && files.length > 0) outside.stdout(`${summary(files)}\n`)
  }
  for (const error of unread) outside.stderr(`foldlore: ${told(error)}\n`)
  if (unread.length > 0) return exitCodes.outside
  return checked.some(({ findings }) => hasErrors(findings)) ? exitCodes.lessonErrors : exitCodes.done
}

/** What changes files changes lessons only. */
function mustBeLessons(paths: readonly string[], { fix, figures }: Options): void {
  const path = paths.find(isClassFile)
  if (path !== undefined && (fix || figures !== undefined))
    throw new UsageError(
      `\`${fix ? '--fix' : '--figures'}\` is for lessons, and \`${path}\` is a class file`,
      'Name its lessons',
    )
}

/** A lesson may be named by itself and in a class, or twice in one: each finding is told once. */
function byFile(checked: readonly Checked[]): Checked[] {
  const files = groupBy(checked, ({ file }) => normalize(file))
  return [...files.values()].flatMap(([first, ...others]) => {
    if (!first || others.length === 0) return first ? [first] : []
    const all = [first, ...others].flatMap(({ findings }) => findings)
    const told = new Map(all.map((finding) => [JSON.stringify(finding), finding]))
    return [{ ...first, findings: inFileOrder([...told.values()]) }]
  })
}

const checkedJson = ({ file, fixed, drawn, findings }: Checked) => ({
  file,
  ...(fixed && { fixed: fixed.map(placedJson) }),
  ...(drawn && { figures: drawn.map(figureJson) }),
  findings: findings.map(findingJson),
})

/** Puts names in a lesson's file where they are sure. The file is written whole or not at all, and not if nothing changes. */
async function fixFile(file: string, outside: Outside): Promise<readonly Placed[]> {
  const { fixLesson } = await import('../../lesson/loose/fix.ts')
  const { text, placed } = fixLesson(await readText(file, outside))
  if (placed.length > 0) await writeWhole([{ path: file, data: new TextEncoder().encode(text) }], outside)
  return placed
}

/** Places are those before anything was changed. */
function fixedText(file: string, fixed: readonly Placed[]): string {
  if (fixed.length === 0) return ''
  const lines = fixed.map(
    ({ number: { place, words }, proposal }) =>
      `${file}:${place.line}:${place.column} fixed \`${words}\` is \`${measureOf(proposal)}\` now: ${proposal.reason}\n`,
  )
  return `${lines.join('')}${file}: ${number(fixed.length, 'number')} ${fixed.length === 1 ? 'has a name' : 'have names'} now\n`
}

/** Puts figures into a lesson's file, for the steps that are offered one. The file is written whole or not at all. */
async function putFigures(file: string, outside: Outside): Promise<readonly Offered[]> {
  const { putFiguresIn } = await import('../../lesson/figures/put-in.ts')
  const { text, placed } = putFiguresIn(await readText(file, outside), canDraw)
  if (placed.length > 0) await writeWhole([{ path: file, data: new TextEncoder().encode(text) }], outside)
  return placed
}

const drawnText = (file: string, drawn: readonly Offered[]): string =>
  drawn.map((one) => `${file}: step ${one.step} has a figure now: \`${directiveOf(one)}\`\n`).join('')

const figureJson = (one: Offered) => ({ step: one.step, directive: directiveOf(one) })

/** Those of the lesson in each size that it is offered in, and, when its cards can be relied on, those of drawing its figures and reading its pictures. */
async function allFindings(file: string, options: Options, outside: Outside): Promise<readonly Finding[]> {
  const read = readLesson(await readText(file, outside))
  const filled = fillLesson(read, wishesOf(options))
  const lesson = options.figures === 'list' ? { ...filled, findings: stepByStep(read, filled) } : filled
  // Whoever names a size or a unit wants to know of that one alone.
  const ofSizes = options.closed || options.units ? [] : sizeFindings(read, lesson)
  if (hasErrors(lesson.findings)) return inFileOrder([...lesson.findings, ...ofSizes])
  return [
    ...inFileOrder([...lesson.findings, ...ofSizes]),
    ...(await drawingFindings(lesson, dirname(file), outside)),
  ]
}

function summary(checked: readonly Checked[]): string {
  const all = checked.flatMap(({ findings }) => findings)
  const kinds = (['error', 'warning', 'hint'] as const).flatMap((severity) => {
    const n = all.filter((f) => f.severity === severity).length
    return n === 0 ? [] : [number(n, severity)]
  })
  const where = (['class', 'lesson'] as const).flatMap((kind) => {
    const n = checked.filter((one) => one.kind === kind).length
    return n === 0 ? [] : [number(n, kind === 'class' ? 'class file' : kind)]
  })
  return `${kinds.length === 0 ? 'No findings' : listOf(kinds)} in ${listOf(where)}.`
}

const number = (n: number, word: string): string => `${n} ${word}${n === 1 ? '' : 's'}`

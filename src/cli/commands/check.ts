import { dirname } from 'node:path'
import { type Finding, hasErrors, listOf } from '../../length/finding.ts'
import { directiveOf } from '../../lesson/figures/directive.ts'
import type { Offered } from '../../lesson/figures/offered.ts'
import { inFileOrder } from '../../lesson/file-order.ts'
import { fillLesson } from '../../lesson/fill.ts'
import type { Placed } from '../../lesson/loose/edits.ts'
import { measureOf } from '../../lesson/loose/proposal.ts'
import { readLesson } from '../../lesson/read.ts'
import { stepByStep } from '../../lesson/rules/step-without-figure.ts'
import { sizeFindings } from '../../lesson/sizes/findings.ts'
import { figuresOf } from '../../publish/handout.ts'
import { canDraw } from '../../publish/offered-figures.ts'
import { readPictures } from '../../publish/pictures.ts'
import { OutsideError } from '../../publish/problems.ts'
import { handoutView } from '../../publish/view.ts'
import { writeWhole } from '../../publish/write.ts'
import { findingJson } from '../../workshop/finding-json.ts'
import { placedJson } from '../../workshop/tied-json.ts'
import { asJson } from '../answer.ts'
import type { Action } from '../commands.ts'
import { findingsText } from '../findings.ts'
import type { Options } from '../flags.ts'
import { wishesOf } from '../lesson-file.ts'
import type { Outside } from '../outside.ts'
import { exitCodes } from '../problems.ts'
import { readText } from '../read-text.ts'

interface Checked {
  readonly file: string
  readonly findings: readonly Finding[]
  /** With `--fix`: the plain numbers that have a name now. */
  readonly fixed?: readonly Placed[]
  /** With `--figures auto`: the figures that steps have now. */
  readonly drawn?: readonly Offered[]
}

/** `check LESSON…`. A lesson that cannot be read does not keep the others from being checked. */
export const check: Action = async (paths, options, outside) => {
  const checked: Checked[] = []
  const unread: OutsideError[] = []
  for (const file of paths) {
    try {
      const fixed = options.fix ? await fixFile(file, outside) : undefined
      const drawn = options.figures === 'auto' ? await putFigures(file, outside) : undefined
      const findings = await allFindings(file, options, outside)
      checked.push({ file, findings, ...(fixed && { fixed }), ...(drawn && { drawn }) })
    } catch (error) {
      if (!(error instanceof OutsideError)) throw error
      unread.push(error)
    }
  }
  if (options.json) {
    const lessons = checked.map(({ file, fixed, drawn, findings }) => ({
      file,
      ...(fixed && { fixed: fixed.map(placedJson) }),
      ...(drawn && { figures: drawn.map(figureJson) }),
      findings: findings.map(findingJson),
    }))
    outside.stdout(asJson({ lessons }))
  } else {
    for (const { file, fixed = [], drawn = [], findings } of checked) {
      if (!options.quiet) outside.stdout(fixedText(file, fixed) + drawnText(file, drawn))
      outside.stdout(findingsText(file, findings, options))
    }
    if (!options.quiet && checked.length > 0) outside.stdout(`${summary(checked)}\n`)
  }
  for (const error of unread) outside.stderr(`foldlore: ${error.message}\n`)
  if (unread.length > 0) return exitCodes.outside
  return checked.some(({ findings }) => hasErrors(findings)) ? exitCodes.lessonErrors : exitCodes.done
}

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
  const { pictures, findings } = await readPictures(lesson.tree, dirname(file), outside)
  const { findings: ofFigures } = handoutView(lesson, figuresOf(lesson), pictures)
  return [...inFileOrder([...lesson.findings, ...ofSizes]), ...findings, ...ofFigures]
}

function summary(checked: readonly Checked[]): string {
  const all = checked.flatMap(({ findings }) => findings)
  const kinds = (['error', 'warning', 'hint'] as const).flatMap((severity) => {
    const n = all.filter((f) => f.severity === severity).length
    return n === 0 ? [] : [number(n, severity)]
  })
  return `${kinds.length === 0 ? 'No findings' : listOf(kinds)} in ${number(checked.length, 'lesson')}.`
}

const number = (n: number, word: string): string => `${n} ${word}${n === 1 ? '' : 's'}`

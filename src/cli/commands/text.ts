import { extname } from 'node:path'
import { unitsOf } from '../../lesson/sizes/offered.ts'
import { type TextKind, textKinds } from '../../publish/text/kinds.ts'
import { type LessonText, lessonText, TooShortError } from '../../publish/text/lesson-text.ts'
import { leftOutText } from '../../publish/text/parts.ts'
import { wordingOf } from '../../wording/wording.ts'
import { sizeChart } from '../../workshop/size-chart.ts'
import { answer, asJson } from '../answer.ts'
import type { Action } from '../commands.ts'
import { findingsText } from '../findings.ts'
import type { Options } from '../flags.ts'
import { lessonAndFilled, tellFindings } from '../lesson-file.ts'
import { exitCodes, UsageError } from '../problems.ts'

/** `text LESSON`: for a post or below a film, to the terminal or to the file that `-o` names. */
export const text: Action = async ([path = ''], options, outside) => {
  const { limit, with: extras = [], units } = options
  const as = kindOf(options)
  const { lesson, filled } = await lessonAndFilled(path, options, outside)
  if (!tellFindings(path, filled.findings, options, outside)) return exitCodes.lessonErrors
  const chapters = extras.includes('chapters')
  const chart = extras.includes('sizes')
    ? sizeChart(lesson, filled, units ? [units] : unitsOf(filled.frontMatter))
    : undefined
  const told = inLimit(() =>
    lessonText(filled, {
      as,
      chapters,
      ...(limit !== undefined && { limit }),
      ...(chart && { sizes: chart }),
    }),
  )
  if (chapters && told.chapters.length === 0)
    throw new UsageError(
      'There are no chapters: no step says how long it takes',
      'Write for example `:minutes[5]` at the end of each step',
    )
  await answer(
    options.json ? asJson(json(told, filled.frontMatter.title, as, limit)) : told.text,
    options,
    outside,
  )
  // What does not work in another size stands in the chart with the reason.
  if (chart) outside.stderr(findingsText(path, chart.findings, options))
  if (!options.quiet && !options.json && told.leftOut.length > 0)
    outside.stderr(`${leftOutText(told.leftOut, wordingOf('en', filled.unit))}\n`)
  return exitCodes.done
}

/** What `--as` says, or else what the file is named. */
function kindOf({ as, output = '' }: Options): TextKind {
  const ending = extname(output).toLowerCase()
  const kind = textKinds.find((known) => known === as)
  if (as !== undefined && kind === undefined)
    throw new UsageError(`\`text\` writes no \`${as}\``, 'Write `--as text` or `--as md`')
  if (ending !== '' && ending !== '.md' && ending !== '.txt')
    throw new UsageError(`\`${output}\` is no name for a text`, 'Name a `.txt` or a `.md` file')
  return kind ?? (ending === '.md' ? 'md' : 'text')
}

/** Throws UsageError when the lesson cannot be told in so few characters. */
function inLimit<T>(tell: () => T): T {
  try {
    return tell()
  } catch (error) {
    if (!(error instanceof TooShortError)) throw error
    throw new UsageError(
      error.message,
      `Write \`--limit ${error.least}\` or more: the pieces and the cautions are never left out`,
    )
  }
}

const json = ({ text: said, ...told }: LessonText, lesson: string, as: TextKind, limit?: number) => ({
  lesson,
  as,
  ...(limit !== undefined && { limit }),
  ...told,
  text: said,
})

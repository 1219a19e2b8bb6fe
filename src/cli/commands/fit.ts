import { extname } from 'node:path'
import { errorsIn, hasErrors } from '../../length/finding.ts'
import { fillLesson } from '../../lesson/fill.ts'
import { readLesson } from '../../lesson/read.ts'
import type { Answer } from '../../workshop/fit/answer.ts'
import { fitLesson } from '../../workshop/fit/fit.ts'
import { fitJson } from '../../workshop/fit/fit-json.ts'
import { fitListing } from '../../workshop/fit/fit-listing.ts'
import { type Question, QuestionError } from '../../workshop/fit/question.ts'
import { sameAtEverySize } from '../../workshop/fit/same-at-every-size.ts'
import { listingText } from '../../workshop/listing-text.ts'
import { terminalWidth } from '../../workshop/text-columns.ts'
import { answer, asJson } from '../answer.ts'
import type { Action } from '../commands.ts'
import type { Options } from '../flags.ts'
import { tellFindings } from '../lesson-file.ts'
import { exitCodes, UsageError } from '../problems.ts'
import { readText } from '../read-text.ts'

/** `fit LESSON`: the question is in the options. A lesson with errors that no size cures is not searched. */
export const fit: Action = async ([path = ''], options, outside) => {
  const question = questionOf(options)
  const { units, grid, json, output = '' } = options
  const wishes = { ...(units && { units }), ...(grid && { grid }) }
  const lesson = readLesson(await readText(path, outside))
  const broken = [...errorsIn(lesson.findings), ...sameAtEverySize(fillLesson(lesson, wishes).findings)]
  if (hasErrors(broken)) {
    tellFindings(path, [...new Set(broken)], options, outside)
    return exitCodes.lessonErrors
  }
  const found = asked(() => fitLesson(lesson, question, wishes))
  if (json) await answer(asJson(fitJson(found)), options, outside)
  else if (extname(output).toLowerCase() === '.md') {
    const { listingMarkdown } = await import('../../workshop/listing-markdown.ts')
    await answer(listingMarkdown(fitListing(found)), options, outside)
  } else await answer(listingText(fitListing(found), terminalWidth), options, outside)
  return exitCodes.done
}

function questionOf(options: Options): Question {
  const { sheet = [], scraps = [], stock, envelope, whole, piece, lettering, wide, high } = options
  const paper = [...sheet, ...scraps]
  if (paper.length === 0 && envelope === undefined && !whole && !lettering)
    throw new UsageError(
      '`fit` needs to know what the card is to fit',
      'Write for example `--sheet "12 x 12 in"`, `--envelope C6`, `--whole "6 x 6 in"` or `--lettering`',
    )
  if (stock !== undefined && paper.length === 0)
    throw new UsageError('`--stock` says what paper is of, but there is none', 'Add `--sheet` or `--scraps`')
  if (piece !== undefined && !whole)
    throw new UsageError('`--piece` says what uses a sheet whole, but there is none', 'Add `--whole`')
  return {
    paper,
    ...(stock !== undefined && { stock }),
    ...(envelope !== undefined && { envelope }),
    ...(whole && { whole }),
    ...(piece !== undefined && { piece }),
    lettering: lettering === true,
    ...(wide && { wide }),
    ...(high && { high }),
  }
}

/** A question that this lesson cannot be asked is wrong usage. */
function asked(ask: () => Answer): Answer {
  try {
    return ask()
  } catch (error) {
    if (error instanceof QuestionError) throw new UsageError(error.message, error.suggestion)
    throw error
  }
}

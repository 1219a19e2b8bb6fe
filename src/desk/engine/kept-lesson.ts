import { ExpressionError } from '../../length/expression.ts'
import { shorter, zero } from '../../length/length.ts'
import { readSize } from '../../length/text.ts'
import { fillLesson } from '../../lesson/fill.ts'
import type { FilledLesson, Lesson, Wishes } from '../../lesson/lesson.ts'
import { readLesson } from '../../lesson/read.ts'
import type { Refusal, Settings } from './engine.ts'

/** A lesson as it is read, and filled in for a print. */
export interface KeptLesson {
  readonly lesson: Lesson
  readonly filled: FilledLesson
}

/** As many prints are kept as are looked at by turns: the one on the desk and what is asked about beside it. */
const most = 3
const kept = new Map<string, KeptLesson>()

/** The lesson of a text for the settings of a print. The last few are kept: asking again costs nothing. */
export function lessonAt(text: string, settings: Pick<Settings, 'closed' | 'units'>): KeptLesson {
  const key = `${settings.units ?? ''} ${settings.closed ?? ''} ${text}`
  const before = kept.get(key)
  const found = before ?? makeLesson(text, wishesOf(settings))
  kept.delete(key)
  kept.set(key, found)
  for (const old of kept.keys()) if (kept.size > most) kept.delete(old)
  return found
}

function makeLesson(text: string, wishes: Wishes): KeptLesson {
  const lesson = readLesson(text)
  return { lesson, filled: fillLesson(lesson, wishes) }
}

function wishesOf({ closed, units }: Pick<Settings, 'closed' | 'units'>): Wishes {
  const size = readClosed(closed)
  return {
    ...(typeof size === 'object' && !('refused' in size) && { closed: size }),
    ...(typeof size === 'string' && { turned: size }),
    ...(units && { units }),
  }
}

/** Reads a wished shut size: a size, which way the lesson's own is turned, or why it is neither. */
export function readClosed(
  text: string | undefined,
): NonNullable<Wishes['closed'] | Wishes['turned']> | Refusal | undefined {
  const words = text?.trim().toLowerCase() ?? ''
  if (words === '') return undefined
  if (words === 'portrait' || words === 'landscape') return words
  try {
    const size = readSize(words)
    if (shorter(zero, size.width) && shorter(zero, size.height)) return size
    return { refused: `\`${words}\` is no size for a card`, suggestion: 'Write `7 x 5 in`' }
  } catch (error) {
    if (!(error instanceof ExpressionError)) throw error
    return { refused: error.message, ...(error.suggestion && { suggestion: error.suggestion }) }
  }
}

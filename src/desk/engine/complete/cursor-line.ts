import type { Settings } from '../engine.ts'
import { type KeptLesson, lessonAt } from '../kept-lesson.ts'

/**
 * The lesson of a text in which something is just being written: when that keeps a card from being made, the lesson
 * without what stands behind the last key, or without the line, so that its names are still known.
 */
export function lessonAround(text: string, at: number, settings: Settings): KeptLesson {
  const as = lessonAt(text, settings)
  if (as.filled.cards.length === as.lesson.cards.length) return as
  const start = text.lastIndexOf('\n', at - 1) + 1
  const next = text.indexOf('\n', at)
  const end = next < 0 ? text.length : next
  // The same length, so that every place stays.
  const without = text.slice(0, start) + ' '.repeat(end - start) + text.slice(end)
  const mended = lessonAt(without, settings)
  return mended.filled.cards.length > as.filled.cards.length ? { ...mended, lesson: as.lesson } : as
}

import { drawFigure } from '../draw/draw.ts'
import { figureTargets } from '../lesson/figure-target.ts'
import { neededLabels } from '../lesson/figures/needed-labels.ts'
import type { FilledLesson } from '../lesson/lesson.ts'
import type { Draw } from './figure.ts'
import { drawKitSheet } from './kit-sheet.ts'

/** Draws the figures of a lesson's cards. In a step they have the numbers that it needs, unless `label=` says otherwise. */
export const figuresOf =
  (lesson: FilledLesson): Draw =>
  (show, of, { step, ...options }) => {
    const { cards, wording, said } = lesson
    if (show === 'sheet') return drawKitSheet(lesson, of, options)
    const [target] = figureTargets(of, cards)
    if (target) {
      const needed = step === undefined ? undefined : neededLabels(said.get(step), show, target)
      const labels = options.labels ?? needed
      return drawFigure(show, target.card, target.of, wording, { ...options, ...(labels && { labels }) })
    }
    // What `of` does not name, or names twice, has been told with the lesson.
    return { findings: [] }
  }

import type { FilledLesson, Lesson } from '../../src/lesson/lesson.ts'
import { troublesOfBorders } from './borders.ts'
import { troublesOfLettering } from './lettering.ts'
import { troublesOfMarks, troublesOfPrint } from './marks.ts'
import { troublesOfPieces } from './pieces.ts'
import { troublesOfDirections, writtenIn } from './written.ts'

/** Everything by which a print without errors breaks what rounding promises, measured on the card that was made. */
export const troublesOf = (lesson: Lesson, print: FilledLesson): string[] => [
  ...print.findings.filter(({ rule }) => rule === 'off-grid').map(({ message }) => message),
  ...troublesOfPrint(print),
  ...print.cards.flatMap((proven) => {
    const block = lesson.cards.find(({ name }) => name === proven.card.name)
    const written = writtenIn(block?.text ?? '', proven.card)
    const margin = (name: string) =>
      written.exact((written.whole.lettering as Record<string, { margin?: string }>)?.[name]?.margin)
    return [
      ...troublesOfMarks(proven),
      ...troublesOfPieces(proven),
      ...troublesOfBorders(proven, written.border),
      ...troublesOfLettering(proven, margin),
      ...troublesOfDirections(proven, written),
    ]
  }),
]

/** Errors that say no cure, or that say something no teacher can read. */
export const troublesOfErrors = ({ findings }: Pick<FilledLesson, 'findings'>): string[] =>
  findings
    .filter(({ severity }) => severity === 'error')
    .filter(
      ({ message, suggestion = '' }) =>
        suggestion === '' || /undefined|NaN|null|Infinity/.test(message + suggestion),
    )
    .map(({ rule, message, suggestion }) => `${rule}: ${message}. ${suggestion}`)

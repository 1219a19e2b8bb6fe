import { listOf } from '../../length/finding.ts'
import { formatLengths } from '../../length/format.ts'
import type { Unit } from '../../length/length.ts'
import { placeOfAction } from '../actions/course.ts'
import { type Mark, marksOf, scoreParts } from '../actions/marks.ts'
import { saidScores } from '../actions/said-scores.ts'
import { namesOf } from '../names.ts'
import type { Rule } from './rule.ts'

/** Scores of a piece that no step says where to make. Not told of a piece that no step cuts. */
export const scoreUnsaid: Rule = {
  docs: [
    {
      name: 'score-unsaid',
      about: 'A piece has a score that no step mentions.',
      example:
        '1. Cut the base to {base.size}.\n2. Score the valley folds at {base.valleys}.\n3. Cut the backdrop to {backdrop.size} and stick it on the floor.',
    },
  ],
  find: ({ prose, filled, complete }) => {
    const course = prose.course()
    if (course.cuts.size === 0) return []
    const lookup = namesOf(
      filled.cards.map(({ card }) => card),
      complete,
    )
    const isSaid = saidScores(course, lookup)
    return course.pieces.flatMap((piece) => {
      const { card, name } = piece
      const cut = course.cuts.get(piece)
      const all = cut ? marksOf(card, name) : []
      const missing = all.filter((mark) => !isSaid(card, name, mark))
      if (missing.length === 0) return []
      const score = course.actions.find(
        ({ kind, objects }) =>
          kind === 'score' && objects.some(({ named }) => course.pieceOf(named) === piece),
      )
      const at = score ?? cut?.action
      const place = at ? placeOfAction(at) : (card.places.get(name) ?? card.places.get('fold'))
      return [
        {
          rule: 'score-unsaid',
          severity: 'warning' as const,
          message: `No step says to score \`${name}\` ${wheres(missing, filled.unit)}`,
          suggestion: `Write ${partsFor(name, missing, all)} in the step that scores it`,
          ...(place && { place }),
        },
      ]
    })
  },
}

function wheres(missing: readonly Mark[], unit: Unit): string {
  const said = (along: Mark['along'], edge: string): string[] => {
    const marks = missing.flatMap((mark) => (mark.along === along && mark.at ? [mark.at] : []))
    return marks.length > 0 ? [`at ${formatLengths(marks, unit)} from the ${edge} edge`] : []
  }
  const slants = missing.filter(({ along }) => along === 'slant').length
  return listOf([
    ...said('width', 'left'),
    ...said('height', 'lower'),
    ...(slants > 0 ? [slants > 1 ? 'along its slanting lines' : 'along its slanting line'] : []),
  ])
}

/** The names that say the missing scores, and no others: as few as there are. */
function partsFor(name: string, missing: readonly Mark[], all: readonly Mark[]): string {
  const isJust = (part: string): boolean => {
    const own = all.filter((mark) => scoreParts.get(part)?.(mark))
    return own.length === missing.length && own.every((mark) => missing.includes(mark))
  }
  const isMixed = new Set(all.map(({ along }) => along)).size > 1
  const usual = ['valleys', 'mountains', 'uprights', 'levels', 'slants']
  const one = [...(isMixed ? [] : ['scores']), ...usual].find(isJust)
  if (one) return `\`{${name}.${one}}\``
  const parts = ['uprights', 'levels', 'slants'].filter((part) =>
    all.some((mark) => scoreParts.get(part)?.(mark)),
  )
  const isAll = missing.length === all.length
  const numbers = missing.flatMap((mark) =>
    mark.along === 'slant' ? [] : [`scores.${all.indexOf(mark) + 1}`],
  )
  const slants = missing.some(({ along }) => along === 'slant') ? ['slants'] : []
  return listOf((isAll ? parts : [...numbers, ...slants]).map((part) => `\`{${name}.${part}}\``))
}

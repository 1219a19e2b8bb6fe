import type { Card } from '../../card/card.ts'
import { listOf, suggestWord } from '../../length/finding.ts'
import type { LabelWord } from '../../lesson/label-words.ts'
import type { ProvenCard } from '../../lesson/lesson.ts'
import type { Wording } from '../../wording/wording.ts'
import type { FigureFinding } from '../figure.ts'
import { glints } from '../film.ts'
import { type FigureOptions, fitted, leastAndMost, usualRoom } from '../fit.ts'
import type { Sheet } from '../frame.ts'
import { colours, point, usualText, weights } from '../ink.ts'
import { legend } from '../legend.ts'
import { letterMark } from '../letters.ts'
import { area, type Mark } from '../mark.ts'
import type { Spot } from '../num.ts'
import { painted } from '../painted.ts'
import { ontoPaper, toMm } from '../plane.ts'
import { makePalette, type Paint } from '../stock.ts'
import { letteringMeasures, type Wants, widthNumbers } from './measures.ts'
import { type LetteringView, letteringView } from './view.ts'
import { letteringLegend, letteringWords } from './words.ts'

const usualLabels: readonly LabelWord[] = ['marks', 'gap']

/**
 * Letters on their strip, and where each of them starts.
 *
 * @param of the lettering, or what it is on; without it the first lettering of the card.
 */
export function drawLettering(
  { card }: ProvenCard,
  of: string | undefined,
  wording: Wording,
  options: FigureOptions,
): Sheet | FigureFinding {
  const lettering = card.lettering.find(({ name, on }) => of === undefined || name === of || on === of)
  const view = lettering && letteringView(card, lettering)
  if (!view) return noLetters(card, of)
  const room = { ...usualRoom, ...options }
  const size = (options.text ?? usualText) * point
  const paint = makePalette(card.structure)(view.stock, view.back)
  const words = options.labels ?? usualLabels
  const wants: Wants = (word) => !words.includes('none') && (words.includes('all') || words.includes(word))
  const draw = (scale: number): Mark[] => {
    const marks = [...shapeMarks(view, paint, scale), ...letteringMeasures(view, scale, size, wording, wants)]
    const overEach = widthNumbers(view, scale, size, wording).length > 0
    const entries = options.legend === false ? [] : letteringLegend(view, wording, wants, overEach)
    return [...marks, ...legend(marks, entries, size, room.maxWidth - 1.5)]
  }
  const long = Math.max(toMm(view.size.width), toMm(view.size.height))
  const { least, most } = leastAndMost(long, size)
  return {
    marks: fitted(draw, room, { least, most: Math.min(most, options.mostScale ?? most) }),
    title: wording.say('figures.the-letters-on', { piece: wording.name(view.lettering.on) }),
    alternative: letteringWords(view, wording),
    ...(options.key !== undefined && { key: options.key }),
  }
}

/** The strip, the room of each letter and the letter in it. */
function shapeMarks(view: LetteringView, paint: Paint, scale: number): Mark[] {
  const [width, height] = [toMm(view.size.width), toMm(view.size.height)]
  const place = ontoPaper(height, scale)
  const loops = view.loops.map((loop) => loop.map(place))
  return [
    ...painted(loops, paint, { class: 'stock', stroke: { width: weights.edge } }),
    ...(paint.film ? glints(width, height, scale, place) : []),
    ...view.letters.flatMap(({ text, left, right, low, high, base }) => {
      const room: Spot[] = [
        place([left, high]),
        place([right, high]),
        place([right, low]),
        place([left, low]),
      ]
      const stroke = { width: weights.dimension, colour: colours.slate }
      return [
        area([room], { class: 'letter-room', fill: paint.tint, stroke }),
        letterMark(text, place(base), view.letterSize * scale),
      ]
    }),
  ]
}

function noLetters(card: Card, of: string | undefined): FigureFinding {
  const names = card.lettering.flatMap(({ name, on }) => [name, on])
  if (names.length === 0)
    return {
      rule: 'figure-not-drawn',
      severity: 'error',
      message: 'This card has no lettering to draw',
      suggestion:
        'Add `lettering:` to the card block, such as `lettering: {name: {on: front, letters: HELLO}}`',
    }
  if (of === undefined || card.structure.pieces.every(({ name }) => name !== of))
    return {
      rule: 'unknown-name',
      severity: 'error',
      message: `Unexpected name \`${of ?? ''}\`, expected a lettering of this card`,
      suggestion: suggestWord(of ?? '', names),
    }
  return {
    rule: 'figure-not-drawn',
    severity: 'error',
    message: `There are no letters on \`${of}\``,
    suggestion: `Write ${listOf(
      card.lettering.map(({ name }) => `\`of="${name}"\``),
      'or',
    )}`,
  }
}

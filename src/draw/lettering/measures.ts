import type { Length } from '../../length/length.ts'
import type { LabelWord } from '../../lesson/label-words.ts'
import type { Wording } from '../../wording/wording.ts'
import { type Across, across, edges } from '../edge.ts'
import { colours, nameShare } from '../ink.ts'
import { label, textWidth } from '../label.ts'
import type { Mark } from '../mark.ts'
import { toMm } from '../plane.ts'
import { running, type Stop } from '../running.ts'
import type { LetteringView, ShownLetter } from './view.ts'

/** Whether a figure has labels of this word: its own, all of them, or those it usually has. */
export type Wants = (word: LabelWord) => boolean

/** All numbers round a strip with its upper left corner at (0, 0). */
export function letteringMeasures(
  view: LetteringView,
  scale: number,
  size: number,
  wording: Wording,
  wants: Wants,
): Mark[] {
  const height = toMm(view.size.height) * scale
  const numbers = showsWidths(view, wants) ? widthNumbers(view, scale, size, wording) : []
  const first = numbers.length > 0 ? 1 : 0
  const gaps = wants('gap') ? gapsAbove(view, scale, size, wording, first) : []
  const next = Math.max(first - 1, ...gaps.map(({ row = 0 }) => row)) + 1
  return [
    ...(wants('marks') ? running(edges.bottom(height), stopsOf(view, scale, wording), size) : []),
    ...numbers,
    ...gaps.flatMap((gap) => across(edges.top(), gap)),
    ...(wants('size') ? whole(view, scale, size, wording, next) : []),
  ]
}

function stopsOf({ lettering, letters }: LetteringView, scale: number, wording: Wording): Stop[] {
  return lettering.marks.flatMap((mark, i): Stop[] => {
    const at = toMm(mark) * scale
    const inside = (letters[i]?.low ?? 0) * scale
    return at > 0 ? [{ at, text: wording.bare(mark), inside, matters: true }] : []
  })
}

/** The width of each letter stands over it where widths differ, or where they are asked for. */
const showsWidths = ({ width }: LetteringView, wants: Wants): boolean =>
  (width === undefined && wants('marks')) || (width !== undefined && wants('size'))

/** Numbers over all letters; none when one of them is wider than its letter. */
export function widthNumbers(view: LetteringView, scale: number, size: number, wording: Wording): Mark[] {
  const small = size * nameShare
  const texts = view.lettering.widths.map((width) => wording.bare(width))
  const fits = view.letters.every(
    ({ left, right }, i) => textWidth(texts[i] ?? '', small) + 1 <= (right - left) * scale,
  )
  if (!fits || view.width !== undefined) return []
  return view.letters.map(({ left, right }, i) =>
    label(texts[i] ?? '', [((left + right) / 2) * scale, -1.4], {
      class: 'measure width',
      size: small,
      anchor: 'middle',
      colour: colours.slate,
    }),
  )
}

/**
 * What is left at both ends, and once what is left between two letters: in one row with the numbers of the ends towards
 * the middle, or with the gap in a row of its own, where its lines pass them by; else with the numbers of the ends outside
 * the strip, which is drawn smaller for them.
 */
function gapsAbove(
  view: LetteringView,
  scale: number,
  size: number,
  wording: Wording,
  row: number,
): Across[] {
  const style = { size, row }
  const gaps = toMm(view.lettering.gap) < 1e-6 ? [] : betweenLetters(view, scale, wording, style)
  for (const inwards of [true, false]) {
    const ends = atEnds(view, scale, wording, style, inwards)
    const [left, right] = ends
    if (left && right && meet(reachOf(left), reachOf(right))) continue
    const gap = gaps.find((one) => ends.every((end) => !meet(reachOf(one), reachOf(end))))
    if (gap || gaps.length === 0) return gap ? [...ends, gap] : ends
    const over = gaps.find(({ from, to }) =>
      ends.every((end) => [from, to].every((at) => !meet(reachOf(end), [at, at]))),
    )
    if (over) return [...ends, { ...over, row: row + 1 }]
  }
  const ends = atEnds(view, scale, wording, style, false)
  return gaps[0] ? [...ends, { ...gaps[0], row: row + 1 }] : ends
}

type Style = Pick<Across, 'size'> & { readonly row: number }

/** How far inside the strip the top of a letter is. */
const topOf = ({ size }: LetteringView, { high }: ShownLetter, scale: number): number =>
  (toMm(size.height) - high) * scale

/** The margins that are not zero. */
function atEnds(
  view: LetteringView,
  scale: number,
  wording: Wording,
  style: Style,
  inwards: boolean,
): Across[] {
  const [first, last] = [view.letters[0], view.letters.at(-1)]
  if (!first || !last) return []
  const { left, right } = view.margins
  const name = { ...style, class: 'measure margin' }
  const all: (Across & { readonly length: Length })[] = [
    {
      ...name,
      length: left,
      text: wording.length(left),
      from: 0,
      to: first.left * scale,
      beyond: inwards ? 'to' : 'from',
      inside: [0, topOf(view, first, scale)],
    },
    {
      ...name,
      length: right,
      text: wording.length(right),
      from: last.right * scale,
      to: toMm(view.size.width) * scale,
      beyond: inwards ? 'from' : 'to',
      inside: [topOf(view, last, scale), 0],
    },
  ]
  return all.filter(({ length }) => toMm(length) > 1e-6)
}

/** The gap between each two letters, from the middle of the strip outwards. */
function betweenLetters(view: LetteringView, scale: number, wording: Wording, style: Style): Across[] {
  const middle = (toMm(view.size.width) * scale) / 2
  const off = ({ from, to }: Across): number => Math.abs((from + to) / 2 - middle)
  const all = view.letters.slice(1).flatMap((letter, i): Across[] => {
    const before = view.letters[i] ?? letter
    return (['to', 'from'] as const).map((beyond) => ({
      ...style,
      from: before.right * scale,
      to: letter.left * scale,
      text: wording.length(view.lettering.gap),
      beyond,
      inside: [topOf(view, before, scale), topOf(view, letter, scale)],
      colour: colours.rust,
      bold: true,
      class: 'measure gap',
    }))
  })
  return all.sort((a, b) => off(a) - off(b))
}

/** How far a dimension reaches along its edge, with its text and its tails. */
function reachOf({ from, to, text, size, beyond }: Across): readonly [number, number] {
  const width = textWidth(text, size)
  const tail = to - from >= 5 ? 0 : 3
  if (width + 1.5 <= to - from) return [from - tail, to + tail]
  const reach = Math.max(tail, width + 1.5)
  return beyond === 'from' ? [from - reach, to + tail] : [from - tail, to + reach]
}

const meet = (a: readonly [number, number], b: readonly [number, number]): boolean =>
  a[0] < b[1] + 0.8 && b[0] < a[1] + 0.8

/** The size of the strip itself: its width over all else, its height beside it where there is room. */
function whole(
  { size: { width, height } }: LetteringView,
  scale: number,
  size: number,
  wording: Wording,
  row: number,
): Mark[] {
  const [w, h] = [toMm(width) * scale, toMm(height) * scale]
  const high = wording.length(height)
  return [
    ...across(edges.top(), { from: 0, to: w, text: wording.length(width), size, row }),
    ...(textWidth(high, size) + 1.5 <= h
      ? across(edges.right(w, h), { from: 0, to: h, text: high, size })
      : []),
  ]
}

import type { Element, ElementContent } from 'hast'
import { s } from 'hastscript'
import { advance } from './advance.ts'
import type { Box } from './box.ts'
import { colours } from './ink.ts'
import type { Mark } from './mark.ts'
import { num, type Spot } from './num.ts'

export interface LabelStyle {
  readonly class: string
  /** Text size in mm. */
  readonly size: number
  readonly colour?: string
  readonly bold?: boolean
  readonly anchor?: 'start' | 'middle' | 'end'
  /** Reads upwards instead of to the right. */
  readonly turned?: boolean
}

interface Run {
  readonly text: string
  readonly fraction: boolean
}

/** Above the baseline to the top of capitals and figures; below it to the foot of a `g`. In text sizes. */
export const capHeight = 0.75
const descent = 0.22
const figureDescent = 0.06
/** Between a whole number and its fraction: copies and reads out as a space, and never breaks. */
const narrowSpace = '\u202f'

/** `5 7/8 in` as plain runs and real fractions. */
function runsOf(text: string): Run[] {
  const runs: Run[] = []
  let end = 0
  for (const found of text.matchAll(/(?<![\d/.])(?:(\d+)[ \u00a0])?(\d+\/\d+)(?![\d/])/g)) {
    const before = text.slice(end, found.index) + (found[1] === undefined ? '' : found[1] + narrowSpace)
    if (before !== '') runs.push({ text: before, fraction: false })
    runs.push({ text: found[2] ?? '', fraction: true })
    end = found.index + found[0].length
  }
  if (end < text.length) runs.push({ text: text.slice(end), fraction: false })
  return runs
}

/** Width in mm of a text with its real fractions. */
export const textWidth = (text: string, size: number): number =>
  runsOf(text).reduce((sum, run) => sum + advance(run.text, size, run.fraction), 0)

/** The room a text takes when its baseline starts (or has its middle, or ends) at `at`. */
export function labelBox(text: string, [x, y]: Spot, style: LabelStyle): Box {
  const width = textWidth(text, style.size)
  const start = { start: 0, middle: -width / 2, end: -width }[style.anchor ?? 'start']
  // Capitals with an accent stand higher than anything else.
  const up = (/[À-ÖØ-ÞĀ-Ž]/.test(text) ? 1 : /[()|]|[^ -~]/.test(text) ? 0.79 : capHeight) * style.size
  const down = (/[gjpqyQJ(),;]/.test(text) ? descent : figureDescent) * style.size
  if (style.turned) return { left: x - up, right: x + down, top: y - start - width, bottom: y - start }
  return { left: x + start, right: x + start + width, top: y - up, bottom: y + down }
}

/** A text with its baseline at `at`. */
export const label = (text: string, at: Spot, style: LabelStyle): Mark => ({
  node: () => textElement(text, at, style),
  box: labelBox(text, at, style),
})

function textElement(text: string, at: Spot, style: LabelStyle): Element {
  const [x, y] = [num(at[0]), num(at[1])]
  const content = runsOf(text).map(
    (run): ElementContent =>
      run.fraction
        ? s('tspan', { class: 'frac', style: 'font-feature-settings: "frac"' }, run.text)
        : { type: 'text', value: run.text },
  )
  return s(
    'text',
    {
      class: style.class,
      x,
      y,
      fill: style.colour ?? colours.ink,
      'font-size': num(style.size),
      ...(style.bold && { 'font-weight': '600' }),
      ...(style.anchor && style.anchor !== 'start' && { 'text-anchor': style.anchor }),
      ...(style.turned && { transform: `rotate(-90 ${x} ${y})` }),
    },
    content,
  )
}

/**
 * Breaks a text into lines no wider than `width`, between words; a number stays with its fraction and its unit. What is
 * held together by no-break spaces is broken only where it is wider than a whole line.
 */
export function wrap(text: string, width: number, size: number): string[] {
  const words = (
    text.match(/(?:\d+ )?\d+\/\d+(?: (?:in|po|mm)\b)?[^ ]*|[\d.,]+ (?:in|po|mm)\b[^ ]*|[^ ]+/g) ?? []
  ).flatMap((word) =>
    textWidth(word, size) > width && word.includes('\u00a0')
      ? wrap(word.replaceAll('\u00a0', ' '), width, size)
      : [word],
  )
  const lines: string[] = []
  for (const word of words) {
    const longer = lines.length > 0 ? `${lines.at(-1)} ${word}` : word
    if (lines.length > 0 && textWidth(longer, size) <= width) lines[lines.length - 1] = longer
    else lines.push(word)
  }
  return lines
}

import { toHtml } from 'hast-util-to-html'
import { formatLength, formatLengths, formatSize } from '../length/format.ts'
import type { Length, Size, Unit } from '../length/length.ts'
import { type Html, html } from './html-text.ts'
import { measureHast } from './measure.ts'

/** A measure for a template. */
export const measureHtml = (text: string): Html => html(toHtml({ type: 'root', children: measureHast(text) }))

export const lengthHtml = (length: Length, unit: Unit): Html => measureHtml(formatLength(length, unit))
export const lengthsHtml = (lengths: readonly Length[], unit: Unit): Html =>
  measureHtml(formatLengths(lengths, unit))
export const sizeHtml = (size: Size, unit: Unit): Html => measureHtml(formatSize(size, unit))

import { toHtml } from 'hast-util-to-html'
import type { Size } from '../length/length.ts'
import type { Wording } from '../wording/wording.ts'
import { type Html, html } from './html-text.ts'
import { measureHast, measureSpan } from './measure.ts'

/** A measure for a template. */
export const measureHtml = (text: string): Html => html(toHtml({ type: 'root', children: measureHast(text) }))

/** A measure that stands within a sentence, set apart. */
export const measureWithin = (text: string): Html =>
  html(toHtml({ type: 'root', children: measureSpan(text) }))

export const sizeHtml = (size: Size, wording: Wording): Html => measureHtml(wording.size(size))

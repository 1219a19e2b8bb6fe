import type { Layout } from '../../../publish/setting.ts'
import type { PageBox } from './printed.ts'

/** Room between two leaves that lie beside each other, in dots of the page. */
export const between = 28

/** From the left edge of a leaf to that of the next. */
export const pitchOf = ({ width }: PageBox): number => width + between

/**
 * Lays the text of a document out on leaves beside each other: columns as wide and as high as the text of a page, so that
 * the browser breaks it where it would break it in print.
 */
export function leafCss(box: PageBox): string {
  const width = box.width - box.left - box.right
  // As in print, where Chromium takes whole dots, rounded up.
  const height = Math.ceil(box.height - box.top - box.bottom)
  return `html{margin:0;overflow:hidden;background:none!important;color-scheme:light}
body{position:absolute;left:${box.left}px;top:${box.top}px;width:${width}px;height:${height}px;columns:auto ${width}px;column-gap:${pitchOf(box) - width}px;column-fill:auto}
${box.firstTop === box.top ? '' : `main{margin-top:${box.firstTop - box.top}px!important}\n`}thead,thead tr{break-after:avoid}
tspan.frac{font-feature-settings:"frac"}
.step,.cutting,.needs,.stage-title,.front{cursor:text}
.step:focus{outline:none}
.step:focus-visible{outline:2px solid #1f6f94;outline-offset:3px}`
}

/**
 * Times as large as it is seen the document is laid out: so that one of its dots is one of the screen's. The lines of a
 * table are whole dots thick, and a finer screen or a larger look would make its rows another height than in print.
 */
export const finer = (): number => 1 / (window.devicePixelRatio || 1)

/** Lays the document out so many times as large. */
export function setFiner(doc: Document, times: number): void {
  const zoom = String(times)
  if (doc.documentElement.style.zoom !== zoom) doc.documentElement.style.zoom = zoom
}

/** Where an element is on the leaves, each rectangle of it. */
export function rectsOf(element: Element): Omit<Spot, 'leaf'>[] {
  const zoom = Number(element.ownerDocument.documentElement.style.zoom) || 1
  return [...element.getClientRects()].map(({ left, top, width, height }) => ({
    left: left / zoom,
    top: top / zoom,
    width: width / zoom,
    height: height / zoom,
  }))
}

/** A rectangle as the document has it, from the upper left corner of the first leaf. */
export interface Spot {
  readonly leaf: number
  readonly left: number
  readonly top: number
  readonly width: number
  readonly height: number
}

/** The leaf that a place in the document is on. */
export const leafAt = (x: number, box: PageBox): number =>
  Math.max(0, Math.floor((x + between / 2) / pitchOf(box)))

/** Where an element is: a rectangle for each leaf that it is on. */
export const spotsOf = (element: Element, box: PageBox): Spot[] =>
  rectsOf(element)
    .filter(({ height }) => height > 1)
    .map(({ left, top, width, height }) => ({ leaf: leafAt(left, box), left, top, width, height }))

const nowhere = { left: 0, top: 0 }

/**
 * How the text falls on the leaves, as it is read off a PDF (see `layoutOf`), where the places of marks are told without
 * the margin above them, and a dot higher: measured with Chromium.
 */
export function layoutIn(doc: Document, box: PageBox): Layout {
  const lowest: number[] = []
  let last = 0
  let lastFill = 1
  for (const mark of doc.querySelectorAll('[id^="end"]')) {
    const [{ left, top } = nowhere] = rectsOf(mark)
    const leaf = leafAt(left, box)
    lowest[leaf] = Math.max(lowest[leaf] ?? 0, (top - box.top - 1) / box.height)
    if (mark.id === 'end') last = leaf
  }
  lastFill = lowest[last] ?? 1
  const gaps = lowest.flatMap((fill, leaf) => (leaf === last ? [] : [1 - fill]))
  return { pages: last + 1, lastFill, gaps: gaps.sort((a, b) => b - a) }
}

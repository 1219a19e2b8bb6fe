import morphdom from 'morphdom'
import { cleaned } from './clean.ts'

/** Nothing in a frame runs, and nothing is fetched: not by a lesson of a stranger either. */
export const sandbox = 'allow-same-origin'

/** An empty document for a frame, in which only styles, fonts and pictures that stand in it count. */
export const blank = `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data: blob:; form-action 'none'; base-uri 'none'"><title>lesson</title></head><body></body></html>`

/** The document of a frame that has loaded `blank`, with the fonts of this page. */
export function documentIn(frame: HTMLIFrameElement | null): Document | undefined {
  const doc = frame?.contentDocument ?? undefined
  if (doc) doc.head.appendChild(doc.createElement('style')).textContent = fontRules()
  return doc
}

function fontRules(): string {
  const rules = [...document.styleSheets].flatMap((sheet) => [...sheet.cssRules])
  return rules
    .filter((rule) => rule instanceof CSSFontFaceRule)
    .map(({ cssText }) => cssText)
    .join('\n')
}

/** Sets the style sheets of a document behind its fonts, each of which is only touched when it is another one. */
export function setStyles(doc: Document, sheets: readonly string[]): void {
  const [, ...known] = doc.head.querySelectorAll('style')
  for (const [i, css] of sheets.entries()) {
    const style = known[i] ?? doc.head.appendChild(doc.createElement('style'))
    if (style.textContent !== css) style.textContent = css
  }
}

/** Puts HTML into a document, and touches only what is another than before. */
export function setBody(doc: Document, html: string, lang: string): void {
  if (doc.documentElement.lang !== lang) doc.documentElement.lang = lang
  const wanted = new DOMParser().parseFromString(`<body>${html}`, 'text/html').body
  morphdom(doc.body, wanted, {
    childrenOnly: true,
    onBeforeNodeAdded: (node) => {
      // Wrapped, so that it can be taken out itself.
      if (!isElement(node)) return node
      const holder = wanted.ownerDocument.createElement('div')
      holder.append(node)
      cleaned(holder)
      return holder.firstChild ?? false
    },
    onBeforeElUpdated: (from, to) => {
      if (from.isEqualNode(to)) return false
      cleaned(to)
      return !from.isEqualNode(to)
    },
  })
}

const isElement = (node: Node): node is Element => node.nodeType === Node.ELEMENT_NODE

/** Calls back when fonts of a document have come, which moves its lines. */
export function whenFontsCome(doc: Document, then: () => void): () => void {
  doc.fonts.addEventListener('loadingdone', then)
  return () => doc.fonts.removeEventListener('loadingdone', then)
}

/** What a click on a link does in a frame: nothing by itself, and in a window of its own where that is wished. */
export function followLink(event: MouseEvent, doc: Document): boolean {
  const link = elementOf(event.target)?.closest('a[href]')
  if (!link) return false
  event.preventDefault()
  const href = link.getAttribute('href') ?? ''
  if (href.startsWith('#')) doc.getElementById(href.slice(1))?.scrollIntoView({ block: 'nearest' })
  else if (/^(https?:|mailto:)/i.test(href)) window.open(href, '_blank', 'noopener,noreferrer')
  return true
}

/** The element of an event; what comes out of a frame is no `Element` of this window. */
export const elementOf = (target: EventTarget | null): Element | undefined => {
  const node = target as Node | null
  if (!node || typeof node.nodeType !== 'number') return undefined
  return (node.nodeType === Node.ELEMENT_NODE ? (node as Element) : node.parentElement) ?? undefined
}

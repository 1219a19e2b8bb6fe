/** The page box of a print, in dots of the page. */
export interface PageBox {
  readonly width: number
  readonly height: number
  readonly top: number
  readonly right: number
  readonly bottom: number
  readonly left: number
  /** The upper margin of the first page, where that is another. */
  readonly firstTop: number
}

/** A style sheet as it holds in print, for a screen; and the page that it asks for. */
export interface Printed {
  readonly css: string
  readonly box: PageBox
  /** How the foot of a page is set. */
  readonly foot: FootType
}

export interface FootType {
  readonly fontSize: string
  /** May be a property of the document. */
  readonly color: string
}

const known = new Map<string, Printed>()

/**
 * A style sheet for a screen that lays things out as this one does in print: what is said for print and for screens changes
 * places, and what begins a page begins a column. The text is changed and not its rules: a browser writes a rule with
 * several settings in one, of which some are names, down without their values.
 */
export function printed(css: string): Printed {
  const before = known.get(css)
  if (before) return before
  const made = { css: screenOf(css), box: boxOf(pageIn(css), pageIn(css, ':first')), foot: footIn(css) }
  known.clear()
  known.set(css, made)
  return made
}

const screenOf = (css: string): string =>
  css
    .replace(/@media[^{;]*/g, (media) =>
      media.replace(/\b(screen|print)\b/g, (word) => (word === 'print' ? 'screen' : 'print')),
    )
    .replace(/(\bbreak-(?:before|after)\s*:\s*)page\b/g, '$1column')

/** What the style sheet says of every page, or of some of them; what comes later holds. */
function pageIn(css: string, selector = ''): Map<string, string> {
  const sheet = new CSSStyleSheet()
  sheet.replaceSync(css)
  const page = new Map<string, string>()
  for (const rule of sheet.cssRules)
    if (rule instanceof CSSPageRule && rule.selectorText === selector)
      for (const name of descriptors) {
        const value = rule.style.getPropertyValue(name)
        if (value !== '') page.set(name, worked(value, css))
      }
  return page
}

/** What is said last of the words in the foot. */
function footIn(css: string): FootType {
  const said = [...css.matchAll(/@bottom-left\s*\{([^}]*)\}/g)].map(([, words = '']) => words).join(';')
  const last = (pattern: RegExp): string | undefined => [...said.matchAll(pattern)].at(-1)?.[1]
  return {
    fontSize: last(/\bfont(?:-size)?:\s*([\d.]+pt)/g) ?? '8pt',
    color: last(/[^-]\bcolor:\s*(#[\da-f]+|var\([\w-]+\))/gi) ?? '#2f5d73',
  }
}

/** A length that is to be worked out, worked out: pages have the properties that are told to the root. */
function worked(value: string, css: string): string {
  if (!value.includes('(')) return value
  const asked = document.createElement('div')
  for (const [, name = '', told = ''] of css.matchAll(/(--brand-lines):([^;}]+)/g))
    asked.style.setProperty(name, told)
  asked.style.paddingTop = value
  document.body.append(asked)
  const { paddingTop } = getComputedStyle(asked)
  asked.remove()
  return paddingTop
}

const descriptors = ['size', 'margin-top', 'margin-right', 'margin-bottom', 'margin-left'] as const

function boxOf(page: ReadonlyMap<string, string>, first: ReadonlyMap<string, string>): PageBox {
  const [width = '210mm', height = width] = (page.get('size') ?? '210mm 297mm').split(' ')
  const margin = (side: string): number => dotsIn(page.get(`margin-${side}`) ?? '14mm')
  return {
    width: dotsIn(width),
    height: dotsIn(height),
    top: margin('top'),
    firstTop: dotsIn(first.get('margin-top') ?? page.get('margin-top') ?? '14mm'),
    right: margin('right'),
    bottom: margin('bottom'),
    left: margin('left'),
  }
}

const dots: Readonly<Record<string, number>> = {
  px: 1,
  mm: 96 / 25.4,
  cm: 96 / 2.54,
  in: 96,
  pt: 96 / 72,
  q: 96 / 101.6,
}

/** A length of a style sheet in dots of the page, of which an inch has 96. */
export function dotsIn(length: string): number {
  const [, number = '0', unit = 'px'] = /^([\d.]+)([a-z]*)$/i.exec(length.trim()) ?? []
  return Number(number) * (dots[unit.toLowerCase()] ?? 1)
}

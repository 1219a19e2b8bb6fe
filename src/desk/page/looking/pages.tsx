import './pages.css'
import { useSignal, useSignalEffect } from '@preact/signals'
import { useEffect, useRef } from 'preact/hooks'
import type { Desk } from '../desk.ts'
import { letStepsBeChosen } from './choosing-steps.ts'
import { followCursor } from './follow-cursor.ts'
import {
  blank,
  documentIn,
  elementOf,
  followLink,
  sandbox,
  setBody,
  setStyles,
  whenFontsCome,
} from './frame.ts'
import { listenTo } from './gestures.ts'
import { Leaf, Marks } from './leaf.tsx'
import { finer, layoutIn, leafCss, pitchOf, type Spot, setFiner, spotsOf } from './leaves.ts'
import { placeInText, writtenAt } from './place-in-text.ts'
import { cardTable, placeOf, stepRow } from './place-on-page.ts'
import { type PageBox, printed } from './printed.ts'
import { repeatHeads, withoutRepeats } from './repeated-heads.ts'
import { RowFoot } from './row-foot.tsx'
import { settle } from './settle.ts'
import { useRow } from './use-row.ts'

/** Milliseconds without a change until the better setting of the print is looked for. */
const calm = 600

/** The handout as it will print: leaves that lie beside each other, the one that is read in the middle. */
export function Pages({ desk }: { readonly desk: Desk }) {
  const row = useRow()
  const { scroller, box, count, room, at, layout, goTo, wishes, hearKey } = row
  const frame = useRef<HTMLIFrameElement>(null)
  const doc = useSignal<Document | undefined>(undefined)
  const marks = useSignal<readonly Spot[]>([])
  /** What the foot of a page is written in. */
  const slate = useSignal('')
  /** Whether the leaves lie as they will be printed: a better setting is only looked for when the typing rests. */
  const settled = useSignal(false)

  const measure = (): void => {
    const [sheet, page] = [doc.peek(), box.peek()]
    if (!sheet || !page) return
    repeatHeads(sheet, page)
    count.value = layoutIn(sheet, page).pages
    mark()
  }
  /** Marks what is being written, and turns to it when it is another thing or has gone to another leaf. */
  const mark = (): void => {
    const [sheet, page, look] = [doc.peek(), box.peek(), desk.look.peek()]
    if (!sheet || !page || !look) return
    const step = desk.step.peek()
    const { card } = step === undefined ? writtenAt(look, desk.cursor.peek()) : { card: undefined }
    const element =
      step !== undefined ? stepRow(sheet, step) : card !== undefined ? cardTable(sheet, card) : undefined
    const spots = element ? spotsOf(element, page) : []
    const name = `${step ?? ''} ${card ?? ''} ${spots[0]?.leaf ?? ''}`
    marks.value = spots
    if (name === marked.current || !spots[0]) return
    marked.current = name
    bringToSight(spots[0])
  }
  const marked = useRef('')
  const bringToSight = (spot: Spot): void => {
    const [shown, now] = [scroller.current, layout.peek()]
    if (!shown || !now) return
    if (spot.leaf !== at.peek()) goTo(spot.leaf)
    const top = now.above + spot.top * now.scale
    const bottom = top + spot.height * now.scale
    if (top < shown.scrollTop || bottom > shown.scrollTop + shown.clientHeight)
      shown.scrollTo({ top: top - 40, left: spot.leaf * now.pitch })
  }
  const open = (element: Element): void => {
    const look = desk.look.peek()
    const place = look && placeInText(placeOf(element), look)
    if (place !== undefined) desk.goTo(place)
  }
  const opened = (): void => {
    doc.value = documentIn(frame.current)
  }

  // The newest handout, as soon as it is there.
  useSignalEffect(() => {
    const [sheet, look] = [doc.value, desk.look.value]
    if (!sheet || !look) return
    const start = performance.now()
    const { css, box: page } = printed(look.page.css)
    setFiner(sheet, finer())
    setStyles(sheet, [css, leafCss(page)])
    withoutRepeats(sheet)
    setBody(sheet, look.page.body, look.page.lang)
    slate.value = getComputedStyle(sheet.documentElement).getPropertyValue('--slate')
    if (!sameBox(box.peek(), page)) box.value = page
    measure()
    performance.measure('pages', { start, end: performance.now() })
    settled.value = false
    const waiting = setTimeout(async () => {
      await settle(sheet, page, look.page.onePage)
      desk.setting.value = sheet.documentElement.className
      measure()
      settled.value = true
    }, calm)
    return () => clearTimeout(waiting)
  })
  useSignalEffect(() => {
    void desk.step.value
    void desk.cursor.value
    mark()
  })
  useSignalEffect(() => {
    const sheet = doc.value
    if (!sheet) return
    const stops = [
      listenTo(sheet, wishes),
      whenFontsCome(sheet, measure),
      letStepsBeChosen(sheet, open),
      hearing(sheet, 'keydown', hearKey),
      hearing(sheet, 'click', (event) => {
        const element = elementOf(event.target)
        const chosen = sheet.getSelection()?.isCollapsed === false
        if (!followLink(event, sheet) && element && !chosen) open(element)
      }),
      hearing(sheet, 'auxclick', (event) => void followLink(event, sheet)),
    ]
    return () => {
      for (const stop of stops) stop()
    }
  })
  useEffect(() => {
    const shown = scroller.current
    if (!shown) return
    const watch = new ResizeObserver(() => {
      room.value = { width: shown.clientWidth, height: shown.clientHeight }
      // The page may have come to another screen, or is looked at larger.
      const sheet = doc.peek()
      if (sheet) setFiner(sheet, finer())
      measure()
      requestAnimationFrame(() => goTo(at.peek(), true))
    })
    watch.observe(shown)
    const stops = [followCursor(desk), listenTo(shown, wishes), () => watch.disconnect()]
    return () => {
      for (const stop of stops) stop()
    }
  }, [])

  const now = layout.value
  const page = box.value
  const look = desk.look.value
  const foot = look && { foot: look.page.foot, lang: look.page.lang }
  const type = look ? { ...printed(look.page.css).foot, '--slate': slate.value } : undefined
  const wide = page ? count.value * pitchOf(page) : 0
  return (
    <div class="looking-pages">
      <section
        ref={scroller}
        class={`looking-row${now?.spills ? ' looking-spills' : ''}`}
        aria-label="Pages of the handout"
        aria-busy={!settled.value}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls can be reached with the keys.
        tabIndex={0}
        onKeyDown={hearKey}
        onScroll={row.moved}
        onScrollEnd={row.cameToRest}
      >
        <div class="looking-lying" style={{ width: `${now?.wide ?? 0}px`, height: `${now?.high ?? 0}px` }}>
          <div
            class="looking-leaves"
            style={{
              left: `${now?.aside ?? 0}px`,
              top: `${now?.above ?? 0}px`,
              transform: `scale(${now?.scale ?? 1})`,
            }}
          >
            {page &&
              type &&
              Array.from({ length: count.value }, (_, i) => (
                <Leaf key={i} box={page} index={i} count={count.value} type={type} {...foot} />
              ))}
            <iframe
              ref={frame}
              class="looking-frame"
              title="The handout"
              sandbox={sandbox}
              srcdoc={blank}
              onLoad={opened}
              style={{
                width: `${wide * finer()}px`,
                height: `${(page?.height ?? 0) * finer()}px`,
                transform: `scale(${1 / finer()})`,
              }}
            />
            {page && <Marks spots={marks.value} box={page} />}
          </div>
        </div>
      </section>
      <RowFoot row={row} />
    </div>
  )
}

const sameBox = (a: PageBox | undefined, b: PageBox): boolean =>
  a !== undefined && (Object.keys(b) as (keyof PageBox)[]).every((side) => a[side] === b[side])

/** Listens in a document until it is called. */
function hearing<K extends keyof DocumentEventMap>(
  doc: Document,
  name: K,
  hear: (event: DocumentEventMap[K]) => void,
): () => void {
  doc.addEventListener(name, hear)
  return () => doc.removeEventListener(name, hear)
}

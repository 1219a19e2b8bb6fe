import './steps.css'
import { useComputed, useSignal, useSignalEffect } from '@preact/signals'
import { useEffect, useRef } from 'preact/hooks'
import type { Desk } from '../desk.ts'
import { keepAwake } from './awake.ts'
import { followCursor } from './follow-cursor.ts'
import { blank, documentIn, followLink, sandbox, setBody, setStyles } from './frame.ts'
import { stepRows } from './place-on-page.ts'
import { printed } from './printed.ts'
import { rememberedStep, rememberStep } from './remembered-step.ts'
import stepCss from './step-frame.css?inline'
import { onSwipe } from './swipe.ts'

/** One step at a time, large, for a tablet or a phone beside the cutting mat. */
export function Steps({ desk }: { readonly desk: Desk }) {
  const frame = useRef<HTMLIFrameElement>(null)
  const doc = useSignal<Document | undefined>(undefined)
  const rows = useComputed(() => rowsIn(desk.look.value?.rows.body ?? ''))
  const at = useComputed(() => {
    const look = desk.look.value
    const wanted = desk.step.value ?? (look && rememberedStep(look.title)) ?? 1
    return Math.min(rows.value.length, Math.max(1, wanted))
  })
  const turn = (by: number): void => {
    const to = at.peek() + by
    if (to >= 1 && to <= rows.peek().length) desk.step.value = to
  }
  const hearKey = (event: KeyboardEvent): void => {
    const by = turning(event)
    if (by === undefined) return
    event.preventDefault()
    turn(by)
  }
  useSignalEffect(() => {
    const [sheet, look, row] = [doc.value, desk.look.value, rows.value[at.value - 1]]
    if (!sheet || !look) return
    setStyles(sheet, [printed(look.rows.css).css, stepCss])
    setBody(sheet, row ?? '', look.page.lang)
    if (row) rememberStep(look.title, at.value)
  })
  useSignalEffect(() => {
    void at.value
    doc.value?.scrollingElement?.scrollTo({ top: 0, behavior: 'instant' })
  })
  useSignalEffect(() => {
    const sheet = doc.value
    if (!sheet) return
    const follow = (event: MouseEvent): void => void followLink(event, sheet)
    sheet.addEventListener('keydown', hearKey)
    sheet.addEventListener('click', follow)
    sheet.addEventListener('auxclick', follow)
    const still = onSwipe(sheet, turn)
    return () => {
      sheet.removeEventListener('keydown', hearKey)
      sheet.removeEventListener('click', follow)
      sheet.removeEventListener('auxclick', follow)
      still()
    }
  })
  useEffect(() => {
    const stops = [keepAwake(), followCursor(desk)]
    return () => {
      for (const stop of stops) stop()
    }
  }, [])

  const count = rows.value.length
  const told = desk.look.value?.steps.find(({ number }) => number === at.value)
  return (
    <section class="looking-steps" aria-label="One step at a time" onKeyDown={hearKey}>
      <header class="looking-steps-head">
        <p role="status">
          {count === 0 ? 'no steps yet' : `step ${at.value} of ${count}`}
          {told?.minutes !== undefined && <span class="looking-minutes">, {told.minutes} min</span>}
        </p>
        {told?.stage !== undefined && <p class="looking-stage">{told.stage}</p>}
        <progress
          max={Math.max(1, count)}
          value={count === 0 ? 0 : at.value}
          aria-label="How far the card is"
        />
      </header>
      <iframe
        ref={frame}
        class="looking-step"
        title={count === 0 ? 'No step' : `Step ${at.value}`}
        sandbox={sandbox}
        srcdoc={blank}
        onLoad={() => {
          doc.value = documentIn(frame.current)
        }}
      />
      {count === 0 && (
        <p class="looking-none">A lesson's numbered list is its steps: write `1.` and what to do first.</p>
      )}
      <div class="looking-steps-turn">
        <button type="button" disabled={at.value <= 1} onClick={() => turn(-1)}>
          <span aria-hidden="true">‹ </span>
          <span>back</span>
        </button>
        <button type="button" class="looking-next" disabled={at.value >= count} onClick={() => turn(1)}>
          <span>next step</span>
          <span aria-hidden="true"> ›</span>
        </button>
      </div>
    </section>
  )
}

/** The rows of the steps of a handout, as HTML. */
const rowsIn = (body: string): string[] =>
  stepRows(new DOMParser().parseFromString(body, 'text/html')).map(({ outerHTML }) => outerHTML)

function turning({ key, altKey, ctrlKey, metaKey, target }: KeyboardEvent): 1 | -1 | undefined {
  if (altKey || ctrlKey || metaKey) return undefined
  if (key === 'ArrowRight' || key === 'PageDown') return 1
  if (key === 'ArrowLeft' || key === 'PageUp') return -1
  // The space bar presses a button that has the focus.
  return key === ' ' && (target as Element).localName !== 'button' ? 1 : undefined
}

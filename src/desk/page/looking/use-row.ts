import { type ReadonlySignal, type Signal, useComputed, useSignal } from '@preact/signals'
import type { RefObject } from 'preact'
import { useRef } from 'preact/hooks'
import { keyWish, type LeafWishes } from './gestures.ts'
import type { PageBox } from './printed.ts'
import { type Fit, held, type Laid, laid, type Room } from './zoom.ts'

/** Milliseconds after which a glide is over, for a browser that does not say so. */
const longestGlide = 1200

/** A row of leaves, of which one is read: how large they lie, and what turns them. */
export interface LeafRow {
  readonly scroller: RefObject<HTMLDivElement | null>
  readonly box: Signal<PageBox | undefined>
  readonly count: Signal<number>
  readonly room: Signal<Room>
  readonly fit: ReadonlySignal<Fit>
  /** The leaf that is read, or that the row glides to. */
  readonly at: ReadonlySignal<number>
  readonly layout: ReadonlySignal<Laid | undefined>
  /** @param calmly whether it is there at once. */
  readonly goTo: (leaf: number, calmly?: boolean) => void
  readonly zoomTo: (fit: Fit) => void
  readonly wishes: LeafWishes
  readonly hearKey: (event: KeyboardEvent) => void
  /** The row has been moved, by its glide or by a hand. */
  readonly moved: () => void
  readonly cameToRest: () => void
}

export function useRow(): LeafRow {
  const scroller = useRef<HTMLDivElement>(null)
  const box = useSignal<PageBox | undefined>(undefined)
  const count = useSignal(1)
  const room = useSignal<Room>({ width: 700, height: 800 })
  const fit = useSignal<Fit>('whole')
  const at = useSignal(0)
  /** Runs while the row glides: what it passes is not what is read. */
  const gliding = useRef<ReturnType<typeof setTimeout>>(undefined)
  const layout = useComputed(() => box.value && laid(fit.value, box.value, room.value, count.value))

  const within = (leaf: number): number => Math.min(count.peek() - 1, Math.max(0, leaf))
  const cameToRest = (): void => {
    clearTimeout(gliding.current)
    gliding.current = undefined
    moved()
  }
  const moved = (): void => {
    const [now, { scrollLeft = 0 }] = [layout.peek(), scroller.current ?? {}]
    if (gliding.current === undefined && now && now.pitch > 0)
      at.value = within(Math.round(scrollLeft / now.pitch))
  }
  const goTo = (leaf: number, calmly = false): void => {
    const now = layout.peek()
    if (!now) return
    const to = within(leaf)
    const glides = !calmly && !matchMedia('(prefers-reduced-motion: reduce)').matches
    clearTimeout(gliding.current)
    gliding.current = glides ? setTimeout(cameToRest, longestGlide) : undefined
    scroller.current?.scrollTo({ left: to * now.pitch, behavior: glides ? 'smooth' : 'instant' })
    at.value = to
  }
  const zoomTo = (to: Fit): void => {
    fit.value = typeof to === 'number' ? held(to) : to
    requestAnimationFrame(() => goTo(at.peek(), true))
  }
  const wishes: LeafWishes = {
    turn: (by) => goTo(at.peek() + by),
    goTo: (end) => goTo(end === 'first' ? 0 : count.peek() - 1),
    zoom: (times) => zoomTo((layout.peek()?.scale ?? 1) * times),
    whole: () => zoomTo('whole'),
    spills: () => layout.peek()?.spills ?? false,
  }
  const hearKey = (event: KeyboardEvent): void => {
    const wish = keyWish(event)
    if (!wish) return
    event.preventDefault()
    wish(wishes)
  }
  return { scroller, box, count, room, fit, at, layout, goTo, zoomTo, wishes, hearKey, moved, cameToRest }
}

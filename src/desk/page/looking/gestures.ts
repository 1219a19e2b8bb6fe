/** What fingers, wheels and keys ask of leaves. */
export interface LeafWishes {
  /** To the next leaf, or by so many. */
  readonly turn: (by: number) => void
  readonly goTo: (leaf: 'first' | 'last') => void
  /** So many times as large. */
  readonly zoom: (times: number) => void
  readonly whole: () => void
  /** Whether a leaf is higher than the room, so that a wheel moves it up and down. */
  readonly spills: () => boolean
}

/** Dots that a wheel goes until a leaf is turned, and milliseconds until the next may follow. */
const wheel = { far: 40, pause: 260 }

/**
 * Listens on a part of the page or in the document of a frame.
 *
 * @returns stops listening.
 */
export function listenTo(target: HTMLElement | Document, wishes: LeafWishes): () => void {
  const ears = new AbortController()
  const { signal } = ears
  const on = (name: string, hear: (event: never) => void): void =>
    target.addEventListener(name, hear as EventListener, { signal, passive: false })
  let gone = 0
  let last = 0
  on('wheel', (event: WheelEvent) => {
    if (event.ctrlKey) {
      event.preventDefault()
      wishes.zoom(1.2 ** (-event.deltaY / 60))
      return
    }
    if (wishes.spills() || Math.abs(event.deltaX) >= Math.abs(event.deltaY)) return
    event.preventDefault()
    if (event.timeStamp - last < wheel.pause) return
    gone = Math.sign(gone) === Math.sign(event.deltaY) ? gone + event.deltaY : event.deltaY
    if (Math.abs(gone) < wheel.far) return
    wishes.turn(Math.sign(gone))
    gone = 0
    last = event.timeStamp
  })
  let wide = 0
  on('touchstart', (event: TouchEvent) => {
    wide = apart(event)
  })
  on('touchmove', (event: TouchEvent) => {
    const now = apart(event)
    if (now === 0 || wide === 0) return
    event.preventDefault()
    wishes.zoom(now / wide)
    wide = now
  })
  on('touchend', () => {
    wide = 0
  })
  return () => ears.abort()
}

const apart = ({ touches }: TouchEvent): number => {
  const [a, b] = [touches[0], touches[1]]
  return a && b ? Math.hypot(a.screenX - b.screenX, a.screenY - b.screenY) : 0
}

/** What a key asks of the leaves, if anything. */
export function keyWish(event: KeyboardEvent): ((wishes: LeafWishes) => void) | undefined {
  if (event.altKey) return undefined
  const { key } = event
  if (key === '+' || key === '=') return ({ zoom }) => zoom(1.2)
  if (key === '-' || key === '_') return ({ zoom }) => zoom(1 / 1.2)
  if (key === '0') return ({ whole }) => whole()
  if (event.ctrlKey || event.metaKey) return undefined
  if (key === 'PageDown' || key === 'ArrowRight') return ({ turn }) => turn(1)
  if (key === 'PageUp' || key === 'ArrowLeft') return ({ turn }) => turn(-1)
  if (key === 'Home') return ({ goTo }) => goTo('first')
  if (key === 'End') return ({ goTo }) => goTo('last')
  return undefined
}

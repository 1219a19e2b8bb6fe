/** Dots that a finger goes across, and how much more across than up or down. */
const [far, flat] = [56, 1.6]

/**
 * Tells when a finger wipes across: 1 to the left, as one turns to what comes next, and -1 to the right.
 *
 * @returns stops listening.
 */
export function onSwipe(target: HTMLElement | Document, turn: (by: 1 | -1) => void): () => void {
  const ears = new AbortController()
  let from: Touch | undefined
  const on = (name: string, hear: (event: TouchEvent) => void): void =>
    target.addEventListener(name, hear as EventListener, { signal: ears.signal, passive: true })
  on('touchstart', ({ touches }) => {
    from = touches.length === 1 ? touches[0] : undefined
  })
  on('touchend', ({ changedTouches: [to] }) => {
    if (!from || !to) return
    const [x, y] = [to.screenX - from.screenX, to.screenY - from.screenY]
    if (Math.abs(x) > far && Math.abs(x) > flat * Math.abs(y)) turn(x < 0 ? 1 : -1)
    from = undefined
  })
  return () => ears.abort()
}

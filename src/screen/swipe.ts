/** A finger goes at least so far, in px, and more across than up. */
const least = 60

/** Calls when a finger or a pen goes across: to the left is on, to the right is back. */
export function letSwipe(element: HTMLElement, next: () => void, back: () => void): void {
  let start: { readonly x: number; readonly y: number } | undefined
  element.addEventListener('pointerdown', ({ pointerType, isPrimary, clientX, clientY }) => {
    start = pointerType !== 'mouse' && isPrimary ? { x: clientX, y: clientY } : undefined
  })
  element.addEventListener('pointerup', ({ clientX, clientY }) => {
    if (!start) return
    const [across, up] = [clientX - start.x, clientY - start.y]
    start = undefined
    if (Math.abs(across) < least || Math.abs(across) < 1.5 * Math.abs(up)) return
    if (across < 0) next()
    else back()
  })
  element.addEventListener('pointercancel', () => {
    start = undefined
  })
}

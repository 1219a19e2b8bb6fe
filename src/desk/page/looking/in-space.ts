import type { Moving, Parts } from '../../../motion/page.ts'
import type { MotionTold } from '../../../motion/told.ts'

/** What comes of it: the card moves, or it cannot be drawn in space here. */
export interface Outcome {
  readonly moves: (moving: Moving) => void
  readonly cannot: () => void
}

/**
 * Sets cards in motion in a part of the page. What draws in space is loaded only now.
 *
 * @returns ends it, and gives the screen's memory back.
 */
export function setInSpace(parts: Parts, told: MotionTold, { moves, cannot }: Outcome): () => void {
  let ended = false
  let end = (): void => {}
  const start = async (): Promise<void> => {
    const [{ startPage }, { makeRenderer }] = await Promise.all([
      import('../../../motion/page.ts'),
      import('../../../motion/stage.ts'),
      document.fonts.ready,
    ])
    if (ended) return
    const canvas = document.createElement('canvas')
    canvas.setAttribute('aria-hidden', 'true')
    const renderer = makeRenderer(canvas)
    parts.stage.prepend(canvas)
    const lost = (): void => {
      if (!ended) cannot()
    }
    canvas.addEventListener('webglcontextlost', lost)
    const moving = startPage(parts, renderer, told)
    end = () => {
      moving.end()
      canvas.removeEventListener('webglcontextlost', lost)
      renderer.dispose()
      renderer.forceContextLoss()
      canvas.remove()
    }
    moves(moving)
  }
  start().catch(() => {
    if (!ended) cannot()
  })
  return () => {
    ended = true
    end()
  }
}

/** Milliseconds that a whole leg takes, from flat to shut or from shut to standing. */
const perLeg = { making: 6500, opening: 3200 }
/** With less motion, one still picture for so long. */
const perStill = 1100

export interface Walking {
  /** Goes to a moment, gliding unless less motion is wished; then `done`. */
  readonly goTo: (moment: number, done?: () => void) => void
  /** Goes through these, which end the acts and the legs. */
  readonly play: (moments: readonly number[], done: () => void) => void
  readonly stop: () => void
}

/** Goes on from moment to moment by the clock of the screen. */
export function walking(get: () => number, set: (moment: number) => void): Walking {
  let going = 0
  const calm = window.matchMedia('(prefers-reduced-motion: reduce)')
  const stop = (): void => {
    cancelAnimationFrame(going)
    going = 0
  }
  /** Calls `each` with the milliseconds that have gone by, until it says that this is the end. */
  const run = (each: (gone: number) => boolean): void => {
    stop()
    let start: number | undefined
    const tick = (now: number): void => {
      start ??= now
      if (each(now - start)) going = requestAnimationFrame(tick)
    }
    going = requestAnimationFrame(tick)
  }
  const glide = (to: number, long: number, done: () => void): void => {
    const from = get()
    run((gone) => {
      const share = long > 0 ? Math.min(1, gone / long) : 1
      set(share < 1 ? from + (to - from) * eased(share) : to)
      if (share < 1) return true
      done()
      return false
    })
  }
  const timeFor = (from: number, to: number): number => {
    const [low, high] = [Math.min(from, to), Math.max(from, to)]
    const making = Math.max(0, Math.min(1, high) - Math.min(1, low))
    return making * perLeg.making + (high - low - making) * perLeg.opening
  }
  return {
    stop,
    goTo(moment, done = () => {}) {
      if (!calm.matches) return glide(moment, Math.min(1800, timeFor(get(), moment)), done)
      stop()
      set(moment)
      done()
    },
    play(moments, done) {
      const [next, ...rest] = moments
      if (next === undefined) return done()
      if (!calm.matches) {
        // Each act for itself, so that a hand has time between them.
        return glide(next, Math.max(900, timeFor(get(), next)), () => this.play(rest, done))
      }
      set(next)
      if (rest.length === 0) {
        stop()
        return done()
      }
      run((gone) => {
        if (gone < perStill) return true
        this.play(rest, done)
        return false
      })
    },
  }
}

const eased = (share: number): number => share * share * (3 - 2 * share)

import { type ReadonlySignal, signal } from '@preact/signals'

/** Counts how often somebody has come back to the page, and can stop counting. */
export function comingBack(): { readonly times: ReadonlySignal<number>; readonly stop: () => void } {
  const times = signal(0)
  const count = (): void => {
    times.value++
  }
  addEventListener('focus', count)
  return { times, stop: () => removeEventListener('focus', count) }
}

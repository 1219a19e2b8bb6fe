import { computed, effect } from '@preact/signals'
import type { Core } from './core.ts'

/** Looks at the file of the lesson on the desk when another program changes it. */
export function keepWatch(core: Core): void {
  const store = computed(() => core.now.value?.store ?? core.present.value)
  effect(() =>
    store.value.watch((path) => {
      if (core.now.peek()?.path === path) void core.inTurn(core.lookAgain)
    }),
  )
}

const longestWait = 30_000

/** Asks a folder that did not answer again: soon at first, then every half minute. */
export function tryAgain(core: Core): void {
  const trouble = computed(() => core.now.value?.trouble)
  let wait = 0
  effect(() => {
    if (trouble.value?.kind !== 'away') {
      wait = 0
      return
    }
    wait = Math.min(wait * 2 || 2000, longestWait)
    return core.clock.later(wait, () => void core.inTurn(core.lookAgain))
  })
}

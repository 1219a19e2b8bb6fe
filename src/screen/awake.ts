/** Keeps the screen from going dark as long as the page is seen, where the browser can; `tell` says whether it does. */
export function stayAwake(tell: (awake: boolean) => void): void {
  const ask = async (): Promise<void> => {
    try {
      const lock = await navigator.wakeLock.request('screen')
      tell(true)
      lock.addEventListener('release', () => tell(false))
    } catch {
      // There is no such thing here, or the battery is low: the help says what to do.
      tell(false)
    }
  }
  // It is given back whenever the page is hidden.
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void ask()
  })
  void ask()
}

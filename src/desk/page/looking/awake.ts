/**
 * Keeps the screen from going dark while hands are busy, where the browser can; the wish ends when the page is hidden, and
 * is made again when it comes back.
 *
 * @returns lets it go dark again.
 */
export function keepAwake(): () => void {
  let lock: WakeLockSentinel | undefined
  let wanted = true
  const ask = async (): Promise<void> => {
    if (!wanted || document.visibilityState !== 'visible' || (lock && !lock.released)) return
    try {
      const got = await navigator.wakeLock?.request('screen')
      if (wanted) lock = got
      else await got?.release()
    } catch {
      // A browser that saves power refuses: the teacher touches the screen as with any other page.
    }
  }
  const seen = (): void => void ask()
  document.addEventListener('visibilitychange', seen)
  void ask()
  return () => {
    wanted = false
    document.removeEventListener('visibilitychange', seen)
    void lock?.release().catch(() => {})
  }
}

import { useEffect } from 'preact/hooks'

/** What holding Control (or Command) and a letter does, wherever the keyboard is on the page. */
export function useShortcuts(deeds: Readonly<Record<string, () => void>>): void {
  useEffect(() => {
    const heard = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey) return
      const deed = deeds[event.key.toLowerCase()]
      if (!deed) return
      event.preventDefault()
      deed()
    }
    window.addEventListener('keydown', heard)
    return () => window.removeEventListener('keydown', heard)
  })
}

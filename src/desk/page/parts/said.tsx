import './said.css'
import { useEffect, useState } from 'preact/hooks'

/** How long a line stays to be read, in ms. */
const readingTime = 9000

/** What was said last: heard by a screen reader, and seen for a while at the foot of the page. */
export function Said({ words }: { readonly words: string }) {
  const [old, setOld] = useState(true)
  useEffect(() => {
    setOld(words === '')
    const timer = setTimeout(() => setOld(true), readingTime)
    return () => clearTimeout(timer)
  }, [words])
  return (
    <p class={old ? 'said unseen' : 'said'} role="status">
      {words}
    </p>
  )
}

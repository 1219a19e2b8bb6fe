import './views.css'
import type { Desk, View } from '../desk.ts'

/** What may lie on the desk beside the writing, and the words on the slips of paper that choose it. */
const views: readonly (readonly [view: View, words: string])[] = [
  ['pages', 'The handout'],
  ['steps', 'Step by step'],
  ['space', 'In space'],
  ['sizes', 'All its sizes'],
  ['class', 'The class'],
]

/** Ids of a slip and of what it shows. */
export const slipId = (view: View): string => `slip-${view}`
export const sheetId = 'on-the-desk'

/** Slips that stick out of the sheet: arrow keys go from one to the next. */
export function Views({ desk }: { readonly desk: Desk }) {
  const { value: shown } = desk.view
  const move = (by: number): void => {
    const at = views.findIndex(([view]) => view === shown)
    const [next] = views[(at + by + views.length) % views.length] ?? []
    if (!next) return
    desk.view.value = next
    document.getElementById(slipId(next))?.focus()
  }
  return (
    <div class="views" role="tablist" aria-label="What lies on the desk">
      {views.map(([view, words]) => (
        <button
          key={view}
          type="button"
          role="tab"
          class="views-slip"
          id={slipId(view)}
          aria-selected={view === shown}
          aria-controls={sheetId}
          tabIndex={view === shown ? 0 : -1}
          onClick={() => {
            desk.view.value = view
          }}
          onKeyDown={({ key }) => {
            if (key === 'ArrowRight') move(1)
            if (key === 'ArrowLeft') move(-1)
          }}
        >
          {words}
        </button>
      ))}
    </div>
  )
}

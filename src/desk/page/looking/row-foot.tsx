import type { LeafRow } from './use-row.ts'
import type { Fit } from './zoom.ts'

const fits: readonly (readonly [Fit, string])[] = [
  ['whole', 'whole'],
  ['wide', 'as wide as here'],
  [1, 'at its real size'],
]

/** Below the leaves: which one is read, what turns them, and how large they lie. */
export function RowFoot({ row }: { readonly row: LeafRow }) {
  const { at, count, fit, wishes, zoomTo } = row
  return (
    <div class="looking-foot">
      <div class="looking-turn">
        <button
          type="button"
          aria-label="Page before"
          disabled={at.value === 0}
          onClick={() => wishes.turn(-1)}
        >
          <span aria-hidden="true">‹</span>
        </button>
        <p role="status">
          page {at.value + 1} of {count.value}
        </p>
        <button
          type="button"
          aria-label="Next page"
          disabled={at.value >= count.value - 1}
          onClick={() => wishes.turn(1)}
        >
          <span aria-hidden="true">›</span>
        </button>
      </div>
      <fieldset class="looking-fit">
        <legend>shown</legend>
        {fits.map(([to, words]) => (
          <button key={words} type="button" aria-pressed={fit.value === to} onClick={() => zoomTo(to)}>
            {words}
          </button>
        ))}
        <button type="button" aria-label="smaller" onClick={() => wishes.zoom(1 / 1.2)}>
          <span aria-hidden="true">−</span>
        </button>
        <button type="button" aria-label="larger" onClick={() => wishes.zoom(1.2)}>
          <span aria-hidden="true">+</span>
        </button>
      </fieldset>
    </div>
  )
}

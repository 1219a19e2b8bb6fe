import { useState } from 'preact/hooks'
import type { Found } from '../../engine/engine.ts'
import { severityWords } from './found-marks.ts'
import { Rich } from './rich.tsx'

/** Everything that was found, as a list to go through, below the words. */
export function FoundList({
  found,
  goTo,
  cure,
}: {
  /** Undefined until the lesson was looked at. */
  readonly found: readonly Found[] | undefined
  readonly goTo: (one: Found) => void
  readonly cure: (one: Found, index: number) => void
}) {
  const [open, setOpen] = useState(false)
  if (!found) return <p class="writing-nothing">The lesson is being looked at.</p>
  if (found.length === 0) return <p class="writing-nothing">Nothing to mend.</p>
  return (
    <div class="writing-list" data-open={open}>
      <button type="button" class="writing-list-head" aria-expanded={open} onClick={() => setOpen(!open)}>
        {countWords(found)}
      </button>
      {open && (
        <ol>
          {found.map((one) => (
            <li
              key={`${one.rule} ${one.from} ${one.message}`}
              class={`writing-found writing-note-${one.severity}`}
            >
              <button type="button" class="writing-list-go" onClick={() => goTo(one)}>
                <strong>{severityWords[one.severity]}</strong>, line {one.line}:{' '}
                <Rich text={`${one.message}.`} />
              </button>
              {one.suggestion && (
                <p>
                  <Rich text={`${one.suggestion}.`} />
                </p>
              )}
              {one.cures.map(({ words }, i) => (
                <button type="button" class="writing-cure" key={words} onClick={() => cure(one, i)}>
                  <Rich text={words} />
                </button>
              ))}
            </li>
          ))}
        </ol>
      )}
    </div>
  )
}

/** `1 thing is wrong, 2 to look at again, 3 pieces of advice`. */
function countWords(found: readonly Found[]): string {
  const count = (severity: Found['severity']): number =>
    found.filter((one) => one.severity === severity).length
  const [errors, warnings, hints] = [count('error'), count('warning'), count('hint')]
  return [
    ...(errors > 0 ? [`${errors} ${errors === 1 ? 'thing is' : 'things are'} wrong`] : []),
    ...(warnings > 0 ? [`${warnings} to look at again`] : []),
    ...(hints > 0 ? [`${hints} ${hints === 1 ? 'piece' : 'pieces'} of advice`] : []),
  ].join(', ')
}

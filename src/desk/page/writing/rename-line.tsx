import { useLayoutEffect, useRef, useState } from 'preact/hooks'
import type { Edit, Span } from '../../engine/engine.ts'
import type { Desk } from '../desk.ts'
import { Rich } from './rich.tsx'

/** What is to have another name. */
export interface Renaming extends Span {
  readonly name: string
  /** The text that it stands in. */
  readonly text: string
}

/** Asks for another name of a piece and gives it everywhere, or says why not. */
export function RenameLine({
  desk,
  renaming,
  apply,
  done,
  close,
}: {
  readonly desk: Desk
  readonly renaming: Renaming
  /** Gives whether it could be done. */
  readonly apply: (edits: readonly Edit[]) => boolean
  /** What has come of it, in words. */
  readonly done: (words: string) => void
  readonly close: () => void
}) {
  const [refused, refuse] = useState<{ readonly words: string; readonly cure?: string }>()
  const field = useRef<HTMLInputElement>(null)
  useLayoutEffect(() => {
    field.current?.focus()
    field.current?.select()
  }, [])
  const give = async (): Promise<void> => {
    const to = field.current?.value ?? ''
    const answer = await desk.engine.rename(renaming.text, renaming.from, to)
    if ('refused' in answer) {
      refuse({ words: answer.refused, ...(answer.suggestion && { cure: answer.suggestion }) })
      return
    }
    close()
    if (!apply(answer)) return
    if (answer.length > 0) done(doneWords(renaming, to.trim(), answer))
  }
  return (
    <form
      class="writing-rename"
      onSubmit={(event) => {
        event.preventDefault()
        void give()
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return
        event.stopPropagation()
        close()
      }}
    >
      <label>
        <span>
          Another name for <b>{renaming.name}</b>
        </span>
        <input
          ref={field}
          defaultValue={renaming.name}
          autocomplete="off"
          aria-invalid={refused !== undefined}
          aria-describedby="writing-refused"
        />
      </label>
      <button type="submit">Rename everywhere</button>
      <button type="button" onClick={close}>
        Leave it
      </button>
      <p id="writing-refused" role="alert">
        {refused && <Rich text={`${refused.words}. ${refused.cure ? `${refused.cure}.` : ''}`} />}
      </p>
    </form>
  )
}

/** How many places were changed, and how often ordinary words still have the old name. */
function doneWords({ name, text }: Renaming, to: string, edits: readonly Edit[]): string {
  const places = edits.length === 1 ? '1 place' : `${edits.length} places`
  const all = new RegExp(
    `(?<![\\p{L}\\p{N}])${name.replace(/[\\^$.*+?()[\]{}|]/g, '\\$&')}(?![\\p{L}\\p{N}])`,
    'giu',
  )
  const left = [...text.matchAll(all)].length - edits.length
  const words = left <= 0 ? '' : ` The words still say ${name} ${left === 1 ? 'once' : `${left} times`}.`
  return `${name} is ${to} now, in ${places}.${words}`
}

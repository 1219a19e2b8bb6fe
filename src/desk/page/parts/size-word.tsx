import { useRef, useState } from 'preact/hooks'
import type { Desk } from '../desk.ts'

/** The shut size of this print: any size may be written, those of the lesson are offered. */
export function SizeWord({ desk }: { readonly desk: Desk }) {
  const { value: settings } = desk.settings
  const { value: look } = desk.look
  const [writing, setWriting] = useState<string | undefined>(undefined)
  const field = useRef<HTMLInputElement>(null)
  const refused = settings.closed === undefined ? undefined : look?.refused
  const shown = writing ?? (refused ? (settings.closed ?? '') : (look?.shut ?? settings.closed ?? ''))
  const take = (): void => {
    if (writing === undefined) return
    const { closed: _, ...rest } = desk.settings.value
    const text = writing.trim()
    setWriting(undefined)
    // What the lesson's own size says is no wish: it follows the lesson again.
    if (text !== look?.shut) desk.settings.value = text === '' ? rest : { ...rest, closed: text }
  }
  return (
    <span class="sentence-size">
      <input
        ref={field}
        class="sentence-word"
        type="text"
        list="sizes-offered"
        aria-label="Size of the card, shut"
        aria-invalid={refused !== undefined}
        aria-describedby={refused ? 'size-refused' : undefined}
        size={Math.max(shown.length, 6)}
        placeholder="a size"
        value={shown}
        onFocus={({ currentTarget }) => currentTarget.select()}
        onInput={({ currentTarget }) => setWriting(currentTarget.value)}
        onBlur={take}
        onChange={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take()
          if (event.key === 'Escape') {
            setWriting(undefined)
            field.current?.blur()
          }
        }}
      />
      <datalist id="sizes-offered">
        {['portrait', 'landscape', ...(look?.sizes ?? [])].map((size) => (
          <option key={size} value={size} />
        ))}
      </datalist>
      {settings.closed !== undefined && !refused && (
        <>
          {' '}
          <button
            type="button"
            class="sentence-back"
            onClick={() => {
              const { closed: _, ...rest } = desk.settings.value
              desk.settings.value = rest
            }}
          >
            (back to its own size)
          </button>
        </>
      )}
      {refused && (
        <span class="sentence-refused" id="size-refused" role="alert">
          {' '}
          {refused.refused.replaceAll('`', '')}. {refused.suggestion?.replaceAll('`', '')}.
        </span>
      )}
    </span>
  )
}

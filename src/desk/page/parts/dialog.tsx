import './dialog.css'
import type { ComponentChildren } from 'preact'
import { useEffect, useId, useRef } from 'preact/hooks'

/** A sheet laid over the desk until it is put away: with Escape, its button, or by what is chosen on it. */
export function Dialog({
  title,
  close,
  children,
}: {
  readonly title: string
  readonly close: () => void
  readonly children: ComponentChildren
}) {
  const own = useRef<HTMLDialogElement>(null)
  const id = useId()
  useEffect(() => {
    own.current?.showModal()
  }, [])
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: with keys, Escape puts it away.
    <dialog
      class="dialog"
      ref={own}
      aria-labelledby={id}
      onClose={close}
      onClick={(event) => {
        // The darkened desk round it belongs to the dialog itself.
        if (event.target === own.current) own.current?.close()
      }}
    >
      <div class="dialog-sheet">
        <div class="dialog-head">
          <h2 id={id}>{title}</h2>
          <button type="button" class="quiet-button" onClick={() => own.current?.close()}>
            Put away
          </button>
        </div>
        {children}
      </div>
    </dialog>
  )
}

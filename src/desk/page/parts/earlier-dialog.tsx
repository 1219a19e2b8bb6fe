import type { Earlier } from '../keeping/drafts.ts'
import type { Keeper } from '../keeping/keeper.ts'
import { Dialog } from './dialog.tsx'

const reasons: Readonly<Record<Earlier['why'], string>> = {
  saved: 'as it was saved',
  written: 'kept while you wrote',
  aside: 'put aside for another text',
}

/** Texts of the lesson from before: brought back, or thrown away. */
export function EarlierDialog({
  keeper,
  versions,
  show,
}: {
  readonly keeper: Keeper
  readonly versions: readonly Earlier[]
  /** Shows other versions, or none: then the dialog goes. */
  readonly show: (versions: readonly Earlier[] | undefined) => void
}) {
  return (
    <Dialog title="Earlier versions" close={() => show(undefined)}>
      <p>
        {versions.length === 0
          ? 'There are none yet. They come while you write.'
          : 'What is on the desk now is kept as well.'}
      </p>
      <ul class="dialog-list">
        {versions.map((version) => {
          const when = new Date(version.changed).toLocaleString()
          return (
            <li key={version.id} class="dialog-pair">
              <button
                type="button"
                class="dialog-choice"
                onClick={() => {
                  show(undefined)
                  void keeper.bringBack(version)
                }}
              >
                <strong>{when}</strong>
                <span>
                  {reasons[version.why]}, {version.text.split('\n').length} lines
                </span>
              </button>
              <button
                type="button"
                class="quiet-button"
                aria-label={`Throw away the version of ${when}`}
                onClick={() => {
                  show(versions.filter((other) => other !== version))
                  void keeper.forget(version)
                }}
              >
                Throw away
              </button>
            </li>
          )
        })}
      </ul>
    </Dialog>
  )
}

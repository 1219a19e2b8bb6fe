import { useState } from 'preact/hooks'
import type { Keeper } from '../keeping/keeper.ts'
import { Dialog } from './dialog.tsx'

/** Saves the lesson under another name; a file that is there is never overwritten. */
export function CopyDialog({ keeper, close }: { readonly keeper: Keeper; readonly close: () => void }) {
  const { path, name = 'lesson' } = keeper.state.value
  const [wanted, setWanted] = useState(`${(path ?? name).replace(/\.md$/, '')}-2`)
  const [taken, setTaken] = useState(false)
  const save = async (): Promise<void> => {
    if (wanted.trim() === '') return
    const outcome = await keeper.saveAs(wanted.trim())
    if (outcome === 'taken') setTaken(true)
    else close()
  }
  return (
    <Dialog title="Save a copy" close={close}>
      <form
        onSubmit={(event) => {
          event.preventDefault()
          void save()
        }}
      >
        <label>
          What the copy is called
          <input
            class="dialog-name"
            value={wanted}
            onInput={({ currentTarget }) => {
              setTaken(false)
              setWanted(currentTarget.value)
            }}
          />
        </label>
        {taken && (
          <p class="dialog-trouble" role="alert">
            A lesson of that name is there already. Choose another name.
          </p>
        )}
        <button type="submit" class="quiet-button strong">
          Save the copy, and go on with it
        </button>
      </form>
    </Dialog>
  )
}

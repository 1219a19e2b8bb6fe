import './keep-line.css'
import { useState } from 'preact/hooks'
import type { Earlier } from '../keeping/drafts.ts'
import type { Keeper } from '../keeping/keeper.ts'
import { Dialog } from './dialog.tsx'
import { LightWord } from './light.tsx'

/** Where the lesson is kept, in words, and what can be done about it. */
export function KeepLine({
  keeper,
  print,
  another,
}: {
  readonly keeper: Keeper
  readonly print: () => void
  readonly another: () => void
}) {
  const { words, unsaved, phase } = keeper.state.value
  const [earlier, setEarlier] = useState<readonly Earlier[]>()
  return (
    <div class="keep-line">
      <span role="status" class={unsaved ? 'keep-open' : 'keep-done'}>
        {words}
      </span>
      <span class="keep-deeds">
        {phase === 'looking' ? (
          <Deed words="Write here instead" act={() => void keeper.takeOver()} />
        ) : (
          <Deed words="Save" keys="Control+S" strong={unsaved} act={() => void keeper.save()} />
        )}
        <Deed words="Print and save as …" keys="Control+P" act={print} />
        <Deed words="Earlier versions" act={() => void keeper.earlier().then(setEarlier)} />
        <Deed words="Another lesson" keys="Control+O" act={another} />
        <LightWord />
      </span>
      {earlier && (
        <Dialog title="Earlier versions" close={() => setEarlier(undefined)}>
          {earlier.length === 0 && <p>There are none yet. They come while you write.</p>}
          <ul class="dialog-list">
            {earlier.map((version) => (
              <li key={version.id}>
                <button
                  type="button"
                  class="dialog-choice"
                  onClick={() => {
                    setEarlier(undefined)
                    void keeper.bringBack(version)
                  }}
                >
                  <strong>{new Date(version.changed).toLocaleString()}</strong>
                  <span>{version.text.length} characters. What is on the desk now is kept as well.</span>
                </button>
              </li>
            ))}
          </ul>
        </Dialog>
      )}
    </div>
  )
}

function Deed({
  words,
  act,
  keys,
  strong = false,
}: {
  readonly words: string
  readonly act: () => void
  readonly keys?: string
  readonly strong?: boolean
}) {
  return (
    <button
      type="button"
      class={strong ? 'quiet-button strong' : 'quiet-button'}
      onClick={act}
      aria-keyshortcuts={keys}
    >
      {words}
    </button>
  )
}

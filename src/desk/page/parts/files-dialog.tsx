import { useEffect, useState } from 'preact/hooks'
import type { Keeper, Left } from '../keeping/keeper.ts'
import type { Listed } from '../keeping/store.ts'
import { Dialog } from './dialog.tsx'

/** Where another lesson comes from: begun anew, left unsaved, from the folder, or from elsewhere. */
export function FilesDialog({
  keeper,
  sources,
  anew,
  close,
}: {
  readonly keeper: Keeper
  /** Other places to open from: a folder, a single file. */
  readonly sources: readonly {
    readonly words: string
    readonly about: string
    readonly open: () => Promise<void>
  }[]
  readonly anew: () => void
  readonly close: () => void
}) {
  const [files, setFiles] = useState<readonly Listed[]>([])
  const [left, setLeft] = useState<readonly Left[]>([])
  const [trouble, setTrouble] = useState<string>()
  const store = keeper.store.value
  useEffect(() => {
    store.list().then(setFiles, (error: Error) => setTrouble(error.message))
    void keeper.unsaved().then(setLeft)
  }, [store, keeper])
  const lessons = files.filter(({ kind }) => kind === 'lesson')
  const open = (path: string): void => {
    close()
    void keeper.open(path)
  }
  return (
    <Dialog title="Another lesson" close={close}>
      {trouble && <p class="dialog-trouble">{trouble}</p>}
      <ul class="dialog-list">
        <Choice
          words="Start a new one"
          about="From a fold, or from an example. What is on the desk stays kept."
          act={() => {
            close()
            anew()
          }}
        />
        {sources.map(({ words, about, open: from }) => (
          <Choice
            key={words}
            words={words}
            about={about}
            act={() => {
              close()
              void from()
            }}
          />
        ))}
      </ul>
      {left.length > 0 && <h3 class="dialog-heading">Not in a folder yet</h3>}
      <ul class="dialog-list">
        {left.map((one) => (
          <li key={one.lesson} class="dialog-pair">
            <button
              type="button"
              class="dialog-choice"
              onClick={() => {
                close()
                void keeper.openLeft(one)
              }}
            >
              <strong>{one.path ?? one.name}</strong>
              <span>Last written {new Date(one.changed).toLocaleString()}</span>
            </button>
            <button
              type="button"
              class="quiet-button"
              aria-label={`Throw away ${one.path ?? one.name}`}
              onClick={() => {
                setLeft(left.filter((other) => other !== one))
                void keeper.dropLeft(one)
              }}
            >
              Throw away
            </button>
          </li>
        ))}
      </ul>
      {lessons.length > 0 && <h3 class="dialog-heading">In {store.name}</h3>}
      <ul class="dialog-list">
        {lessons.map(({ path, title }) => (
          <Choice key={path} words={title} about={path} act={() => open(path)} />
        ))}
      </ul>
    </Dialog>
  )
}

function Choice({
  words,
  about,
  act,
}: {
  readonly words: string
  readonly about: string
  readonly act: () => void
}) {
  return (
    <li>
      <button type="button" class="dialog-choice" onClick={act}>
        <strong>{words}</strong>
        <span>{about}</span>
      </button>
    </li>
  )
}

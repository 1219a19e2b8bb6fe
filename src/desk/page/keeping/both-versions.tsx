import './both-versions.css'
import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import { nearChanges } from './both-rows.ts'
import { BothTable } from './both-table.tsx'
import type { Choice, Chosen, Keeper } from './keeper.ts'
import { lineChanges } from './line-changes.ts'

/** Both texts of a lesson side by side, until the teacher has chosen. Nothing is overwritten before. */
export function BothVersions({ keeper }: { readonly keeper: Keeper }) {
  const { choice } = keeper.state.value
  const [later, setLater] = useState(false)
  const path = choice?.theirs.path
  if (!choice) return null
  if (later)
    return (
      <aside class="both-later" aria-label="Two texts of this lesson">
        <p>There are two texts of this lesson. Yours is kept in this browser; the file is as it is.</p>
        <button type="button" class="both-later-open" onClick={() => setLater(false)}>
          Look at both
        </button>
      </aside>
    )
  return (
    <BothDialog
      key={path}
      choice={choice}
      choose={(chosen) => void keeper.choose(chosen)}
      later={() => setLater(true)}
    />
  )
}

function BothDialog({
  choice,
  choose,
  later,
}: {
  readonly choice: Choice
  readonly choose: (chosen: Chosen) => void
  readonly later: () => void
}) {
  const own = useRef<HTMLDialogElement>(null)
  const { why, mine, theirs } = choice
  const rows = useMemo(() => nearChanges(lineChanges(mine, theirs.text)), [mine, theirs.text])
  useEffect(() => own.current?.showModal(), [])
  return (
    <dialog class="both" ref={own} aria-labelledby="both-title" aria-describedby="both-about" onClose={later}>
      <h2 id="both-title">There are two texts of this lesson</h2>
      <p id="both-about">
        {whys[why]} Lines that only yours has are marked <b>+</b>, lines that only the file has are marked{' '}
        <b>−</b>. Nothing is lost: the one you do not go on with stays among the earlier versions.
      </p>
      <BothTable rows={rows} path={theirs.path} />
      <div class="both-choices">
        <Way words={why === 'save' ? 'Save mine' : 'Go on with mine'} choose={() => choose('mine')}>
          {why === 'save' ? 'The file gets your text.' : 'The file stays as it is until you save.'}
        </Way>
        <Way words="Take the file" choose={() => choose('theirs')}>
          Your desk gets the text of the file. Undo brings yours back.
        </Way>
        <Way words="Keep both" choose={() => choose('both')}>
          Yours becomes a file of its own beside it.
        </Way>
        <Way words="Decide later" choose={() => own.current?.close()}>
          You can go on writing; nothing is saved in the folder.
        </Way>
      </div>
    </dialog>
  )
}

const whys: Readonly<Record<Choice['why'], string>> = {
  draft: 'You wrote in it here, and since then its file was changed by another program.',
  changed: 'While you were writing, another program changed its file.',
  save: 'Another program has changed its file since you opened it, so it was not saved.',
}

function Way({
  words,
  choose,
  children,
}: {
  readonly words: string
  readonly choose: () => void
  readonly children: string
}) {
  return (
    <button type="button" class="both-way" onClick={choose}>
      <strong>{words}</strong>
      <span>{children}</span>
    </button>
  )
}

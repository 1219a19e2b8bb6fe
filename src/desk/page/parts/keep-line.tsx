import './keep-line.css'
import { useState } from 'preact/hooks'
import type { Earlier } from '../keeping/drafts.ts'
import type { Keeper } from '../keeping/keeper.ts'
import { CopyDialog } from './copy-dialog.tsx'
import { EarlierDialog } from './earlier-dialog.tsx'
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
  const [copying, setCopying] = useState(false)
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
        <Deed words="Save a copy" act={() => setCopying(true)} />
        <Deed words="Print and save as …" keys="Control+P" act={print} />
        <Deed words="Earlier versions" act={() => void keeper.earlier().then(setEarlier)} />
        <Deed words="Another lesson" keys="Control+O" act={another} />
        <LightWord />
      </span>
      {earlier && <EarlierDialog keeper={keeper} versions={earlier} show={setEarlier} />}
      {copying && <CopyDialog keeper={keeper} close={() => setCopying(false)} />}
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

import { useEffect, useState } from 'preact/hooks'
import { type Example, examples } from './examples.ts'
import { Start } from './form/start.tsx'
import { BothVersions } from './keeping/both-versions.tsx'
import type { Keeper } from './keeping/keeper.ts'
import type { OwnDesk } from './new-desk.ts'
import { FilesDialog } from './parts/files-dialog.tsx'
import { KeepLine } from './parts/keep-line.tsx'
import { OnTheDesk } from './parts/on-the-desk.tsx'
import { PrintDialog } from './parts/print-dialog.tsx'
import { Said } from './parts/said.tsx'
import { Sentence } from './parts/sentence.tsx'
import { Views } from './parts/views.tsx'
import { WritingSide } from './parts/writing-side.tsx'
import { useShortcuts } from './shortcuts.ts'
import { themeNames } from './themes.ts'

/** Another place to open lessons from. */
export interface Source {
  readonly words: string
  readonly about: string
  readonly open: () => Promise<void>
}

/** The whole page: the sentence, the writing, and the sheet that lies beside it. */
export function App({
  desk,
  keeper,
  sources,
  takePictures,
}: {
  readonly desk: OwnDesk
  readonly keeper: Keeper
  readonly sources: readonly Source[]
  readonly takePictures: (files: readonly File[]) => void
}) {
  const [over, setOver] = useState<'print' | 'files'>()
  const { phase, path, name, choice } = keeper.state.value
  useShortcuts({
    s: () => void keeper.save(),
    p: () => phase !== 'empty' && setOver('print'),
    o: () => setOver('files'),
  })
  const title = desk.look.value?.title
  useEffect(() => {
    document.title = phase === 'empty' || !title ? 'foldlore' : `${title} – foldlore`
  }, [title, phase])
  const begin = (text: string, called: string): void => void keeper.begin(text, called)
  return (
    <>
      {phase === 'empty' ? (
        <Start
          desk={desk}
          begin={begin}
          examples={examples.map(({ title, text, name }: Example) => ({ title, text, name }))}
          openLesson={() => setOver('files')}
        />
      ) : (
        <div class={desk.writing.value ? 'table writes' : 'table'} data-view={desk.view.value}>
          <header class="table-head">
            <Sentence desk={desk} themes={themeNames} />
            <KeepLine keeper={keeper} print={() => setOver('print')} another={() => setOver('files')} />
          </header>
          <WritingSide desk={desk} keeper={keeper} takePictures={takePictures} />
          <main class="table-paper">
            <h1 class="unseen">{title ?? 'A lesson'}</h1>
            <Views desk={desk} />
            <OnTheDesk desk={desk} keeper={keeper} />
          </main>
        </div>
      )}
      {over === 'print' && (
        <PrintDialog
          desk={desk}
          store={keeper.store.value}
          path={path ?? `${name ?? 'lesson'}.md`}
          close={() => setOver(undefined)}
        />
      )}
      {over === 'files' && (
        <FilesDialog
          keeper={keeper}
          sources={sources}
          anew={() => void keeper.close()}
          close={() => setOver(undefined)}
        />
      )}
      {choice && <BothVersions keeper={keeper} />}
      <Said words={desk.said.value} />
    </>
  )
}

import './class-view.css'
import { useSignal, useSignalEffect } from '@preact/signals'
import { useEffect, useState } from 'preact/hooks'
import { pageStandingAlone } from '../../../publish/page-html.ts'
import type { ClassAnswer } from '../../engine/class.ts'
import type { Keeper } from '../keeping/keeper.ts'
import type { Listed } from '../keeping/store.ts'
import { readWorkshop } from '../keeping/workshop-beside.ts'
import { PageFrame } from '../looking/page-frame.tsx'
import type { OwnDesk } from '../new-desk.ts'
import fonts from '../style/fonts.css?inline'
import { ClassFileSheet } from './class-file-sheet.tsx'
import { lessonsFor } from './class-lessons.ts'
import { useKeptClass } from './kept-class.ts'
import { printPage } from './print-page.ts'

/** Kits, cutting plan, cost and run sheet: for the people of the sentence at the top, or for a class file of the folder. */
export function ClassView({ desk, keeper }: { readonly desk: OwnDesk; readonly keeper: Keeper }) {
  const { path, name } = keeper.state.value
  const lesson = path ?? `${name ?? 'lesson'}.md`
  const [files, setFiles] = useState<readonly Listed[]>([])
  const [part, setPart] = useState('kit')
  /** The class file that counts: chosen from the folder and perhaps changed here; without it, one made of the lesson. */
  const { file, written } = useKeptClass(keeper.store.value, lesson)
  const chosen = file.value?.path
  const answer = useSignal<ClassAnswer | undefined>(undefined)
  const working = useSignal(false)
  const store = keeper.store.value
  useEffect(() => {
    store.list().then(
      (all) => setFiles(all.filter(({ kind }) => kind === 'class')),
      () => setFiles([]),
    )
  }, [store])
  useSignalEffect(() => {
    const [look, settings, own] = [desk.look.value, desk.settings.value, file.value?.text]
    if (!look) return
    let late = false
    // A plan takes a while: it waits until the typing rests.
    const wait = setTimeout(async () => {
      working.value = true
      const text = own ?? (await desk.engine.classFileFor(look.text, lesson, settings))
      const lessons = await lessonsFor(
        await desk.engine.lessonsOfClass(text),
        chosen,
        lesson,
        look.text,
        store,
      )
      const workshop = await readWorkshop(store, chosen ?? lesson, desk.engine)
      const found = await desk.engine.classOf({ text, lessons, ...(workshop && { workshop }) }, settings)
      if (late) return
      answer.value = found
      working.value = false
    }, 400)
    return () => {
      late = true
      clearTimeout(wait)
    }
  })
  const shown = answer.value?.parts.find((one) => one.name === part) ?? answer.value?.parts[0]
  return (
    <section class="class-view" aria-label="The class">
      <ClassFileSheet
        files={files}
        file={file}
        written={written}
        usual={() => desk.engine.classFileFor(desk.text.value, lesson, desk.settings.value)}
        lesson={lesson}
        store={store}
        say={desk.say}
      />
      <p class="class-view-working" role="status">
        {working.value ? 'Working out the class …' : ''}
      </p>
      {answer.value && answer.value.findings.length > 0 && (
        <ul class="class-view-findings">
          {answer.value.findings.map((one) => (
            <li key={`${one.file}${one.line}${one.message}`} data-severity={one.severity}>
              <strong>{one.severity === 'error' ? 'Mistake' : 'Note'}</strong>
              {one.line === undefined ? '' : ` in line ${one.line}`} of {one.file}:{' '}
              {one.message.replaceAll('`', '')}. {one.suggestion?.replaceAll('`', '')}
            </li>
          ))}
        </ul>
      )}
      {answer.value && answer.value.parts.length > 0 && (
        <div class="class-view-parts">
          {answer.value.parts.map(({ name: own, title }) => (
            <button key={own} type="button" aria-pressed={own === shown?.name} onClick={() => setPart(own)}>
              {title}
            </button>
          ))}
          {shown && (
            <button
              type="button"
              class="quiet-button"
              onClick={() => {
                const { css: style, body } = shown.page
                void printPage(pageStandingAlone(shown.page, { style, body, fonts }))
              }}
            >
              Print this
            </button>
          )}
        </div>
      )}
      {shown && <PageFrame page={shown.page} title={shown.title} />}
    </section>
  )
}

import './writing.css'
import type { EditorView } from '@codemirror/view'
import { effect } from '@preact/signals'
import { useEffect, useRef, useState } from 'preact/hooks'
import type { Found } from '../../engine/engine.ts'
import { completing } from './completing.ts'
import { closeExplained, explainHere, explaining } from './explaining.ts'
import { foundField, foundIn, setFound } from './found-field.ts'
import { FoundList } from './found-list.tsx'
import { foundMarks } from './found-marks.ts'
import { applyCure, closeNote, foundNotes, visit } from './found-note.ts'
import type { WritingProps } from './handle.ts'
import { editorKeys } from './keys.ts'
import { makeWriting } from './make-writing.ts'
import { RenameLine, type Renaming } from './rename-line.tsx'

/** The words of the lesson: written, looked through, mended and named. */
export function Writing({ desk, start, changed, onState, ready }: WritingProps) {
  const place = useRef<HTMLDivElement>(null)
  const writing = useRef<ReturnType<typeof makeWriting>>(undefined)
  const [renaming, rename] = useState<Renaming>()
  const [done, showDone] = useState('')
  const calls = useRef({ changed, onState })
  calls.current = { changed, onState }

  useEffect(() => {
    if (!place.current) return
    const made = makeWriting(
      place.current,
      start,
      [
        foundField,
        foundMarks((view, at) => visitAt(view, at)),
        foundNotes,
        explaining(desk),
        completing(desk),
        editorKeys({
          nextFound: (view) => visitNext(view, 1),
          foundBefore: (view) => visitNext(view, -1),
          cure: (view) => cureHere(view),
          explain: (view) => explainHere(desk, view),
          rename: (view) => askRename(view),
          close: (view) => closeNote(view) || closeExplained(view),
        }),
      ],
      {
        changed: (text) => calls.current.changed(text),
        moved: (at) => {
          desk.cursor.value = at
        },
        rested: () => calls.current.onState?.(made.handle.state()),
      },
    )
    writing.current = made
    const showFound = (): void => {
      const look = desk.look.value
      const { view } = made
      // A look at an older text says nothing about this one; the next one will.
      if (look && look.text === view.state.doc.toString())
        view.dispatch({ effects: setFound.of(look.findings) })
    }
    ready({
      ...made.handle,
      open(other) {
        made.handle.open(other)
        showFound()
      },
    })
    const stop = effect(showFound)
    return () => {
      stop()
      made.end()
    }
    // The editor is made once; what it is given later comes through its handle.
  }, [])

  /** The next finding behind the cursor, or the first one again. */
  const visitNext = (view: EditorView, way: 1 | -1): boolean => {
    const found = foundIn(view.state)
    // What is wrong comes first: much of the rest goes away with it.
    const wrong = found.filter((one) => one.found.severity === 'error')
    const all = wrong.length > 0 ? wrong : found
    const { head } = view.state.selection.main
    const next = way > 0 ? all.find(({ from }) => from > head) : all.findLast(({ from }) => from < head)
    const here = next ?? (way > 0 ? all[0] : all.at(-1))
    if (!here) {
      desk.say('Nothing to mend.')
      return true
    }
    visit(view, here)
    const { message, suggestion, cures } = here.found
    const cure = cures[0] ? ` Control and full stop: ${cures[0].words}.` : ''
    desk.say(`${message}. ${suggestion ? `${suggestion}.` : ''}${cure}`.replaceAll('`', ''))
    return true
  }

  const visitAt = (view: EditorView, at: number): void => {
    const here = foundIn(view.state).find(({ from }) => from === at)
    if (here) visit(view, here)
  }

  /** The first cure of what is found at the cursor, or on its line. */
  const cureHere = (view: EditorView): boolean => {
    const { head } = view.state.selection.main
    const line = view.state.doc.lineAt(head)
    const curable = foundIn(view.state).filter(({ found }) => found.cures.length > 0)
    const here =
      curable.find(({ from, to }) => from <= head && head <= to) ??
      curable.find(({ from }) => line.from <= from && from <= line.to)
    const words = here?.found.cures[0]?.words
    const isDone = here !== undefined && applyCure(view, here)
    desk.say(
      isDone && words ? `Done: ${words}.`.replaceAll('`', '') : 'Nothing can be mended by itself here.',
    )
    return true
  }

  const tell = (words: string): void => {
    showDone(words)
    desk.say(words)
  }

  const askRename = (view: EditorView): boolean => {
    const text = view.state.doc.toString()
    void desk.engine.renamable(text, view.state.selection.main.head).then((found) => {
      if (found) rename({ ...found, text })
      else desk.say('Put the cursor on the name of a piece to rename it.')
    })
    return true
  }

  const hereOf = (view: EditorView, one: Found) => foundIn(view.state).find(({ found }) => found === one)

  return (
    <div class="writing">
      {renaming && (
        <RenameLine
          desk={desk}
          renaming={renaming}
          apply={(edits) => {
            const { current } = writing
            if (current?.handle.text() !== renaming.text) {
              tell('The lesson has changed meanwhile: ask again.')
              return false
            }
            current.handle.edit(edits)
            return true
          }}
          done={tell}
          close={() => {
            rename(undefined)
            writing.current?.handle.focus()
          }}
        />
      )}
      <div class="writing-words" ref={place} />
      {done !== '' && (
        <p class="writing-done">
          {done}
          <button type="button" onClick={() => showDone('')}>
            Good
          </button>
        </p>
      )}
      <FoundList
        found={desk.look.value?.findings}
        goTo={(one) => {
          const view = writing.current?.view
          const here = view && hereOf(view, one)
          if (view && here) visit(view, here)
        }}
        cure={(one, index) => {
          const view = writing.current?.view
          const here = view && hereOf(view, one)
          if (view && here) applyCure(view, here, index)
        }}
      />
    </div>
  )
}

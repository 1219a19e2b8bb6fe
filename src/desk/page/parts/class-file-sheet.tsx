import type { Signal } from '@preact/signals'
import { useState } from 'preact/hooks'
import type { Listed, Store } from '../keeping/store.ts'
import type { ClassOnDesk } from './kept-class.ts'

/** Stands for what has been written here and is in no file; no path is like it. */
const asWritten = ' '

/** Which class it is: the one of the sentence, or a class file, which can be changed and saved here. */
export function ClassFileSheet({
  files,
  file,
  written,
  usual,
  lesson,
  store,
  say,
}: {
  readonly files: readonly Listed[]
  readonly file: Signal<ClassOnDesk | undefined>
  readonly written: Signal<string | undefined>
  /** The class file that is made of the lesson and the sentence. */
  readonly usual: () => Promise<string>
  readonly lesson: string
  readonly store: Store
  readonly say: (words: string) => void
}) {
  const [trouble, setTrouble] = useState<string>()
  const [open, setOpen] = useState(false)
  const take = async (path: string): Promise<void> => {
    setTrouble(undefined)
    if (path === '' || path === asWritten) {
      file.value = path === '' ? undefined : { text: written.value ?? '' }
      return
    }
    try {
      const kept = await store.read(path)
      file.value = { text: kept.text, path, version: kept.version }
    } catch (error) {
      setTrouble(error instanceof Error ? error.message : String(error))
    }
  }
  const save = async (): Promise<void> => {
    const {
      text,
      path = lesson.replace(/(\.md)?$/, '-class.yaml'),
      version,
    } = file.value ?? { text: await usual() }
    try {
      const saved = await store.save(path, text, version)
      if ('other' in saved) {
        setTrouble(
          `${path} has been changed elsewhere, or is there already. It was left as it is; copy your lines out of the field below, then choose the file again.`,
        )
        return
      }
      setTrouble(undefined)
      written.value = undefined
      file.value = { text, path, version: saved.version }
      say(`Saved in ${path}`)
    } catch (error) {
      setTrouble(error instanceof Error ? error.message : String(error))
    }
  }
  const write = async (): Promise<void> => {
    file.value ??= { text: written.value ?? (await usual()) }
    setOpen(!open)
  }
  return (
    <div class="class-file">
      <p class="class-file-line">
        <label>
          The class:{' '}
          <select
            class="sentence-word"
            value={file.value ? (file.value.path ?? asWritten) : ''}
            onChange={(e) => void take(e.currentTarget.value)}
          >
            <option value="">this lesson, for the people of the sentence above</option>
            {written.value !== undefined && <option value={asWritten}>as it is written here</option>}
            {files.map(({ path, title }) => (
              <option key={path} value={path}>
                {title === path ? path : `${title} (${path})`}
              </option>
            ))}
          </select>
        </label>{' '}
        <button type="button" class="quiet-button" aria-expanded={open} onClick={() => void write()}>
          {open ? 'Close its file' : 'Write prices, paper and times'}
        </button>
      </p>
      {trouble && (
        <p class="dialog-trouble" role="alert">
          {trouble}
        </p>
      )}
      {open && (
        <div class="class-file-writing">
          <textarea
            aria-label="Class file"
            spellcheck={false}
            rows={12}
            value={file.value?.text ?? ''}
            onInput={({ currentTarget }) => {
              file.value = { ...file.value, text: currentTarget.value }
            }}
          />
          <button type="button" class="quiet-button strong" onClick={() => void save()}>
            Save the class file
          </button>
        </div>
      )}
    </div>
  )
}

import type { Signal } from '@preact/signals'
import { useState } from 'preact/hooks'
import type { Listed, Store } from '../keeping/store.ts'

/** Which class it is: the one of the sentence, or a class file, which can be changed and saved here. */
export function ClassFileSheet({
  files,
  chosen,
  choose,
  file,
  usual,
  lesson,
  store,
  say,
}: {
  readonly files: readonly Listed[]
  readonly chosen: string | undefined
  readonly choose: (path: string | undefined) => void
  readonly file: Signal<string | undefined>
  /** The class file that is made of the lesson and the sentence. */
  readonly usual: () => Promise<string>
  readonly lesson: string
  readonly store: Store
  readonly say: (words: string) => void
}) {
  const [version, setVersion] = useState<string>()
  const [trouble, setTrouble] = useState<string>()
  const [open, setOpen] = useState(false)
  const take = async (path: string): Promise<void> => {
    setTrouble(undefined)
    if (path === '') {
      choose(undefined)
      file.value = undefined
      setVersion(undefined)
      return
    }
    try {
      const kept = await store.read(path)
      choose(path)
      setVersion(kept.version)
      file.value = kept.text
    } catch (error) {
      setTrouble(error instanceof Error ? error.message : String(error))
    }
  }
  const save = async (): Promise<void> => {
    const path = chosen ?? lesson.replace(/(\.md)?$/, '-class.yaml')
    try {
      const saved = await store.save(path, file.value ?? (await usual()), version)
      if ('other' in saved) {
        setTrouble(
          `${path} has been changed elsewhere, or is there already. It was left as it is; copy your lines out of the field below, then choose the file again.`,
        )
        return
      }
      setTrouble(undefined)
      setVersion(saved.version)
      choose(path)
      say(`Saved in ${path}`)
    } catch (error) {
      setTrouble(error instanceof Error ? error.message : String(error))
    }
  }
  const write = async (): Promise<void> => {
    file.value ??= await usual()
    setOpen(!open)
  }
  return (
    <div class="class-file">
      <p class="class-file-line">
        <label>
          The class:{' '}
          <select
            class="sentence-word"
            value={chosen ?? ''}
            onChange={(e) => void take(e.currentTarget.value)}
          >
            <option value="">this lesson, for the people of the sentence above</option>
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
            value={file.value ?? ''}
            onInput={({ currentTarget }) => {
              file.value = currentTarget.value
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

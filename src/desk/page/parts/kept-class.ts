import { type Signal, useSignal, useSignalEffect } from '@preact/signals'
import { useEffect } from 'preact/hooks'
import type { Store } from '../keeping/store.ts'
import { memory } from './memory.ts'

/** A class file as it is written on the desk. */
export interface ClassOnDesk {
  readonly text: string
  /** Its file in the folder, and what was in there: none for one that has not been saved. */
  readonly path?: string
  readonly version?: string
}

/** The class of a lesson on the desk. */
export interface KeptClass {
  /** The class file that counts; none where it is made of the lesson and the sentence. */
  readonly file: Signal<ClassOnDesk | undefined>
  /** What has been written here and is in no file, also while another class is looked at. */
  readonly written: Signal<string | undefined>
}

/** The class file of a lesson. What is written in it is kept in this browser at once, whatever happens to the page. */
export function useKeptClass(store: Store, lesson: string): KeptClass {
  const name = `class ${store.id ?? store.kind} ${lesson}`
  const file = useSignal<ClassOnDesk | undefined>(kept(name))
  const written = useSignal<string | undefined>(memory.get(`${name} written`))
  useEffect(() => {
    file.value = kept(name)
    written.value = memory.get(`${name} written`)
  }, [name, file, written])
  useSignalEffect(() => {
    const { value: now } = file
    if (now && now.path === undefined) written.value = now.text
    memory.set(name, now && JSON.stringify(now))
    memory.set(`${name} written`, written.value)
  })
  return { file, written }
}

function kept(name: string): ClassOnDesk | undefined {
  try {
    const found: unknown = JSON.parse(memory.get(name) ?? 'null')
    return found && typeof found === 'object' && 'text' in found ? (found as ClassOnDesk) : undefined
  } catch {
    return undefined
  }
}

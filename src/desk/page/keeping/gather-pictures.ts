import { computed, effect } from '@preact/signals'
import type { Desk } from '../desk.ts'
import type { Database } from './database.ts'
import { dataAddress } from './desk-server.ts'
import type { Keeper } from './keeper.ts'

/**
 * Keeps `desk.pictures` filled with the pictures that the lesson names. Only what is not there yet is read; what was not
 * found is looked for again when the lesson is another one or names other pictures.
 */
export function gatherPictures(desk: Desk, keeper: Keeper, database: Database | undefined): () => void {
  const wanted = computed(() => JSON.stringify(desk.look.value?.pictures ?? []))
  const lesson = computed(() => keeper.state.value.lesson)
  let before: string | undefined
  return effect(() => {
    const here = lesson.value
    const store = keeper.store.value
    const addresses = JSON.parse(wanted.value) as readonly string[]
    if (here !== before) desk.pictures.value = {}
    before = here
    if (here === undefined) return
    const { path } = keeper.state.peek()
    const read = async (address: string): Promise<string | undefined> => {
      if (path !== undefined) return store.picture(path, address)
      const shelved = await database?.get('pictures', [here, address])
      return shelved && dataAddress(shelved.data)
    }
    for (const address of addresses)
      if (!(address in desk.pictures.peek()))
        void read(address)
          .catch(() => undefined)
          .then((data) => {
            if (data !== undefined && lesson.peek() === here)
              desk.pictures.value = { ...desk.pictures.peek(), [address]: data }
          })
  })
}

import { computed, effect } from '@preact/signals'
import type { Desk } from '../desk.ts'
import { isAbsent } from './absent-store.ts'
import { comingBack } from './coming-back.ts'
import type { Database } from './database.ts'
import { dataAddress } from './desk-server.ts'
import type { Keeper } from './keeper.ts'

/**
 * Keeps `desk.pictures` filled with the pictures that the lesson names. Only what is not there yet is read; what was not
 * found is looked for again when the lesson is another one or names other pictures, or when somebody comes back to the page.
 */
export function gatherPictures(desk: Desk, keeper: Keeper, database: Database | undefined): () => void {
  const wanted = computed(() => JSON.stringify(desk.look.value?.pictures ?? []))
  const lesson = computed(() => keeper.state.value.lesson)
  let before: string | undefined
  const back = comingBack()
  const stop = effect(() => {
    void back.times.value
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
    // Only of a folder that is open is it known that there is no such picture.
    const isSure = path !== undefined && store.kind !== 'downloads' && !isAbsent(store)
    for (const address of addresses)
      if (!desk.pictures.peek()[address])
        void read(address).then(
          (data = isSure ? '' : undefined) => {
            const known = desk.pictures.peek()
            if (data !== undefined && lesson.peek() === here && known[address] !== data)
              desk.pictures.value = { ...known, [address]: data }
          },
          () => {},
        )
  })
  return () => {
    back.stop()
    stop()
  }
}

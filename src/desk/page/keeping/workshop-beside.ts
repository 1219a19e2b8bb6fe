import { computed, effect } from '@preact/signals'
import type { Engine, WorkshopData } from '../../engine/engine.ts'
import type { Desk } from '../desk.ts'
import { comingBack } from './coming-back.ts'
import type { Keeper } from './keeper.ts'
import type { Store } from './store.ts'

/**
 * Keeps `desk.workshop` filled with the `workshop.yaml` that speaks for the lesson. It is written in other programs, so it
 * is read again whenever somebody comes back to the page.
 */
export function gatherWorkshop(desk: Desk, keeper: Keeper): () => void {
  const path = computed(() => keeper.state.value.path)
  const back = comingBack()
  const stop = effect(() => {
    void back.times.value
    const [here, store] = [path.value, keeper.store.value]
    const take = (found: WorkshopData | undefined): void => {
      const isHere = path.peek() === here && keeper.store.peek() === store
      if (isHere && !same(found, desk.workshop.peek())) desk.workshop.value = found
    }
    if (here === undefined) take(undefined)
    else void readWorkshop(store, here, desk.engine).then(take, () => {})
  })
  return () => {
    back.stop()
    stop()
  }
}

/**
 * The `workshop.yaml` of the folder of a lesson or class file, or of the one above, with the logo that it names.
 *
 * @throws what the store throws when it does not answer.
 */
export async function readWorkshop(
  store: Store,
  path: string,
  engine: Pick<Engine, 'logoIn'>,
): Promise<WorkshopData | undefined> {
  const found = await store.workshop?.(path)
  if (found?.text === undefined) return found
  const address = await engine.logoIn(found.text)
  if (address === undefined) return found
  return { ...found, logo: (await store.picture(found.path, address)) ?? '' }
}

const same = (a: WorkshopData | undefined, b: WorkshopData | undefined): boolean =>
  a?.path === b?.path && a?.text === b?.text && a?.logo === b?.logo

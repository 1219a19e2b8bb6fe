import { type Store, StoreTrouble } from './store.ts'

/** A folder that is known by its drafts and is not open now. */
export interface AbsentStore extends Store {
  readonly absent: true
}

/** Stands in for a folder until it is opened again, so that a draft keeps its path and what it was made from. */
export function absentStore(id: string): AbsentStore {
  const away = (): Promise<never> =>
    Promise.reject(new StoreTrouble('away', 'its folder is not open here. Open the folder again'))
  return {
    absent: true,
    kind: 'folder',
    name: 'a folder that is not open',
    id,
    list: async () => [],
    read: away,
    save: away,
    picture: async () => undefined,
    addPicture: away,
    watch: () => () => {},
  }
}

export const isAbsent = (store: Store): store is AbsentStore => 'absent' in store

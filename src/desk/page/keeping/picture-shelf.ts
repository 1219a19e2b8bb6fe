import type { Tools } from './core.ts'
import type { Database } from './database.ts'
import { freePictureName } from './picture-name.ts'
import { StoreTrouble } from './store.ts'

/** A picture that this browser keeps for a lesson. */
export interface ShelvedPicture {
  readonly lesson: string
  readonly name: string
  readonly data: Blob
}

/** Pictures of a lesson that lie in this browser, because the lesson is in no folder. */
export const picturesOf = async (
  database: Database | undefined,
  lesson: string,
): Promise<readonly ShelvedPicture[]> =>
  (await database?.getAll('pictures', IDBKeyRange.bound([lesson], [lesson, []])).catch(() => undefined)) ?? []

/** @throws StoreTrouble where the browser keeps nothing, or has no room. */
export async function keepPicture(
  database: Database | undefined,
  lesson: string,
  wanted: string,
  data: Blob,
): Promise<string> {
  if (!database)
    throw new StoreTrouble('refused', 'this browser keeps no pictures. Save the lesson in a folder first')
  const taken = new Set((await picturesOf(database, lesson)).map(({ name }) => name))
  const name = freePictureName(wanted, (other) => taken.has(other))
  try {
    await database.put('pictures', { lesson, name, data })
  } catch {
    throw new StoreTrouble('full', 'this browser has no room for it')
  }
  return name
}

/** Brings the pictures of a lesson into the folder that it is saved in. */
export const settlePictures =
  (database: Database): NonNullable<Tools['settle']> =>
  async (lesson, path, store) => {
    const renamed = new Map<string, string>()
    for (const { name, data } of await picturesOf(database, lesson)) {
      const address = await store.addPicture(path, name, data)
      if (address !== name) renamed.set(name, address)
      await database.delete('pictures', [lesson, name])
    }
    return (text) =>
      text.replace(/(!\[[^\]]*\]\()([^)\s]+)(?=[)\s])/g, (whole, before, address) => {
        const now = renamed.get(address)
        return now === undefined ? whole : before + now
      })
  }

import type { Source } from './app.tsx'
import { downloadsStore } from './keeping/downloads-store.ts'
import { keepPageOnDrop } from './keeping/drop-pictures.ts'
import { gatherPictures } from './keeping/gather-pictures.ts'
import type { Keeper } from './keeping/keeper.ts'
import { canPickFolder, lastFolder, pickFolder } from './keeping/pick-folder.ts'
import { settlePictures } from './keeping/picture-shelf.ts'
import { takePictures } from './keeping/pictures.ts'
import { serverAt, serverStore } from './keeping/server-store.ts'
import { startKeeping } from './keeping/start-keeping.ts'
import type { Store } from './keeping/store.ts'
import { gatherWorkshop } from './keeping/workshop-beside.ts'
import type { OwnDesk } from './new-desk.ts'
import { pickFile } from './parts/pick-file.ts'

/** What keeps the lesson on the desk, and where others come from. */
export interface KeptDesk {
  readonly keeper: Keeper
  readonly sources: readonly Source[]
  /** Puts pictures in at the cursor, and beside the lesson. */
  readonly takePictures: (files: readonly File[]) => void
}

/** Starts to keep what is written: behind the local server, in a folder, or in this browser and by downloads. */
export async function keepDesk(desk: OwnDesk): Promise<KeptDesk> {
  const server = serverAt(location)
  // The address of a new start differs behind the `#` only, which by itself loads nothing.
  if (server) addEventListener('hashchange', () => location.reload())
  const single = { store: undefined as ReturnType<typeof downloadsStore> | undefined }
  const { keeper, database } = await startKeeping(
    desk.kept,
    async (database): Promise<Store> => {
      single.store = downloadsStore(database)
      if (server) return serverStore(server)
      const last = canPickFolder() ? await lastFolder(database) : undefined
      return (last?.open && (await last.enter())) || single.store
    },
    settlePictures,
  )
  gatherPictures(desk, keeper, database)
  gatherWorkshop(desk, keeper)
  keepPageOnDrop()
  await keeper.resume()
  const folders: Source[] = canPickFolder()
    ? [
        {
          words: 'Choose a folder',
          about: 'Lessons are opened from it and saved in it',
          async open() {
            const store = await pickFolder(database)
            if (store) await keeper.use(store)
          },
        },
      ]
    : []
  const files: Source = {
    words: 'Open a file',
    about: 'A lesson from anywhere. Saving it makes a download',
    async open() {
      const [file] = await pickFile('.md,text/markdown')
      if (!file || !single.store) return
      await keeper.use(single.store)
      await keeper.open(await single.store.take(file))
    },
  }
  return {
    keeper,
    sources: server ? [] : [...folders, files],
    takePictures: (chosen) =>
      void takePictures(
        { desk, keeper, database, select: (from, to) => desk.handle()?.select(from, to) },
        chosen,
      ),
  }
}

import type { Desk } from '../desk.ts'
import type { Database } from './database.ts'
import { dataAddress } from './desk-server.ts'
import type { Keeper } from './keeper.ts'
import { pictureEdit } from './picture-edit.ts'
import { plainPictureName } from './picture-name.ts'
import { keepPicture } from './picture-shelf.ts'
import { scalePicture } from './scale-picture.ts'
import { troubleOf } from './trouble.ts'

/** What putting pictures in needs of the page. */
export interface PictureTools {
  readonly desk: Desk
  readonly keeper: Keeper
  readonly database: Database | undefined
  /** Selects a stretch of the text in the editor. */
  readonly select: (from: number, to: number) => void
}

/** Puts pictures into the lesson at the cursor, one behind the other, and beside it in the folder. */
export async function takePictures(tools: PictureTools, files: readonly File[]): Promise<void> {
  const { desk } = tools
  for (const file of files) {
    const refused = await takePicture(tools, file)
    if (refused !== undefined) desk.say(`${file.name || 'The picture'} was not put in: ${refused}.`)
  }
}

/** Gives why it cannot be done. */
async function takePicture(
  { desk, keeper, database, select }: PictureTools,
  file: File,
): Promise<string | undefined> {
  const { lesson, phase } = keeper.state.value
  if (lesson === undefined) return 'no lesson is open'
  if (phase === 'looking') return 'this lesson is written in another tab'
  const made = await scalePicture(file)
  if ('refused' in made) return made.refused
  let address: string
  try {
    address = await store({ keeper, database }, plainPictureName(file.name, made.type), made)
  } catch (error) {
    return troubleOf(error).words
  }
  if (keeper.state.value.lesson !== lesson) return 'another lesson was opened meanwhile'
  desk.pictures.value = { ...desk.pictures.value, [address]: await dataAddress(made) }
  const { edit, from, to } = pictureEdit(desk.text.value, desk.cursor.value, address)
  desk.edit([edit])
  select(from, to)
  desk.say(`The picture is in the lesson as ${address}. Write in the brackets what it shows.`)
  return undefined
}

async function store(
  { keeper, database }: Pick<PictureTools, 'keeper' | 'database'>,
  name: string,
  data: Blob,
): Promise<string> {
  const { path, lesson = '' } = keeper.state.value
  if (path !== undefined) return keeper.store.value.addPicture(path, name, data)
  return keepPicture(database, lesson, name, data)
}

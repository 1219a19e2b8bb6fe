import type { Desk } from '../desk.ts'
import type { Database } from './database.ts'
import { dataAddress } from './desk-server.ts'
import type { Keeper } from './keeper.ts'
import { type PictureEdit, pictureEdit } from './picture-edit.ts'
import { plainPictureName } from './picture-name.ts'
import { keepPicture } from './picture-shelf.ts'
import { type NoPicture, scalePicture } from './scale-picture.ts'
import { troubleOf } from './trouble.ts'

/** What putting pictures in needs of the page. */
export interface PictureTools {
  readonly desk: Desk
  readonly keeper: Keeper
  readonly database: Database | undefined
  /** Selects a stretch of the text in the editor. */
  readonly select: (from: number, to: number) => void
}

/**
 * Puts pictures into the lesson at the cursor, one behind the other, and beside it in the folder. The words of the first
 * one are selected, for the teacher to write what it shows.
 */
export async function takePictures(tools: PictureTools, files: readonly File[]): Promise<void> {
  const { desk, select } = tools
  let at: number | undefined
  let first: PictureEdit | undefined
  for (const file of files) {
    const taken = await takePicture(tools, file, at)
    if ('refused' in taken) {
      desk.say(`${file.name || 'The picture'} was not put in: ${taken.refused}.`)
      continue
    }
    first ??= taken
    // Behind what was put in, before the space or line that follows it.
    at = taken.edit.from + taken.edit.insert.trimEnd().length
  }
  if (!first) return
  select(first.from, first.to)
  desk.say('The picture is in the lesson. Write in the brackets what it shows.')
}

async function takePicture(
  { desk, keeper, database }: PictureTools,
  file: File,
  at: number | undefined,
): Promise<PictureEdit | NoPicture> {
  const { lesson, phase } = keeper.state.value
  if (lesson === undefined) return { refused: 'no lesson is open' }
  if (phase === 'looking') return { refused: 'this lesson is written in another tab' }
  const made = await scalePicture(file)
  if ('refused' in made) return made
  let address: string
  try {
    address = await store({ keeper, database }, plainPictureName(file.name, made.type), made)
  } catch (error) {
    return { refused: troubleOf(error).words }
  }
  const data = await dataAddress(made)
  if (keeper.state.value.lesson !== lesson) return { refused: 'another lesson was opened meanwhile' }
  desk.pictures.value = { ...desk.pictures.value, [address]: data }
  const put = pictureEdit(desk.text.value, at ?? desk.cursor.value, address)
  desk.edit([put.edit])
  return put
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

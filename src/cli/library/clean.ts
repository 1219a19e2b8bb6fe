import { readdir, readFile, rm, rmdir } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { isOurs } from '../../publish/write.ts'
import { cardPicture, folderOf, lessonPage, nameOf } from './places.ts'

/** What a write that was cut off has left behind. */
const draft = /^\..+\.[\da-f]{8}-[\da-f-]{27}\.part$/

/** Takes away what writes that were cut off have left in a folder. */
export async function removeDrafts(folder: string): Promise<void> {
  const names = await readdir(folder).catch(() => [])
  for (const name of names.filter((one) => draft.test(one))) await rm(join(folder, name), { force: true })
}

/**
 * Takes away the prints of a lesson that it no longer has, and folders that are empty then. What foldlore did not make
 * stays.
 *
 * @param keep names of files that stay.
 * @returns how many files are gone.
 */
export async function removeOld(out: string, lesson: string, keep: ReadonlySet<string>): Promise<number> {
  const folder = join(out, folderOf(lesson))
  await removeDrafts(folder)
  const start = `${nameOf(lesson)}-`
  const names = await readdir(folder).catch(() => [])
  let gone = 0
  for (const name of names) {
    const isPrint = name.startsWith(start) && /\.(html|pdf)$/.test(name)
    if (keep.has(name) || !(isPrint || name === lessonPage || name === cardPicture)) continue
    const bytes = await readFile(join(folder, name)).catch(() => undefined)
    if (!bytes || !isOurs(bytes)) continue
    await rm(join(folder, name), { force: true })
    if (isPrint) gone++
  }
  for (let at = folder; at !== out && at.length > out.length; at = dirname(at))
    if (
      !(await rmdir(at).then(
        () => true,
        () => false,
      ))
    )
      break
  return gone
}

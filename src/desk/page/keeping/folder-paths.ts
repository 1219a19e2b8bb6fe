import { StoreTrouble } from './store.ts'

/** Does something in a folder, and says in plain words why it cannot be done. */
export async function inFolder<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work()
  } catch (error) {
    throw troubleIn(error)
  }
}

/** What the browser says when it cannot get at a file, for the teacher. */
export function troubleIn(error: unknown): StoreTrouble {
  if (error instanceof StoreTrouble) return error
  switch ((error as { name?: string } | null)?.name) {
    case 'NotFoundError':
      return new StoreTrouble('missing', 'there is no such file in the folder')
    case 'NotAllowedError':
    case 'SecurityError':
      return new StoreTrouble(
        'away',
        'the browser no longer lets this page into the folder. Open the folder again',
      )
    case 'NoModificationAllowedError':
      return new StoreTrouble('away', 'another program has the file locked')
    case 'QuotaExceededError':
      return new StoreTrouble('full', 'there is no room left')
    case 'TypeError':
    case 'TypeMismatchError':
      return new StoreTrouble('refused', 'the folder cannot have a file of this name')
    default:
      return new StoreTrouble('away', 'the folder cannot be reached')
  }
}

export async function folderIn(
  folder: FileSystemDirectoryHandle,
  names: readonly string[],
  create = false,
): Promise<FileSystemDirectoryHandle> {
  let place = folder
  for (const name of names) place = await place.getDirectoryHandle(name, { create })
  return place
}

export async function fileIn(
  folder: FileSystemDirectoryHandle,
  path: string,
  create = false,
): Promise<FileSystemFileHandle> {
  const names = path.split('/')
  const place = await folderIn(folder, names.slice(0, -1), create)
  return place.getFileHandle(names.at(-1) ?? '', { create })
}

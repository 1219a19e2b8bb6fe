import type { Store } from '../keeping/store.ts'

/**
 * The texts of the lessons that a class file names, by what stands in it. The lesson on the desk is taken as it stands
 * there; what cannot be read is left out, and told with the class.
 *
 * @param file path of the class file in the folder; the lessons are looked for from there.
 */
export async function lessonsFor(
  names: readonly string[],
  file: string | undefined,
  lesson: string,
  text: string,
  store: Store,
): Promise<Record<string, string>> {
  const folder = file?.includes('/') ? file.slice(0, file.lastIndexOf('/') + 1) : ''
  const found: Record<string, string> = {}
  for (const name of names) {
    const path = plain(`${folder}${name}`)
    if (path === lesson || name === lesson) found[name] = text
    else {
      const kept = await store.read(path).catch(() => undefined)
      if (kept) found[name] = kept.text
    }
  }
  return found
}

/** A path without `.` and `..` in it. */
function plain(path: string): string {
  const parts: string[] = []
  for (const part of path.split('/'))
    if (part === '..') parts.pop()
    else if (part !== '.' && part !== '') parts.push(part)
  return parts.join('/')
}

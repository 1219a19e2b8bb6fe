import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/** Does something with a theme that has one file of its own. */
export async function withThemeFile<T>(
  name: string,
  text: string,
  act: (folder: string) => Promise<T>,
): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), 'fuzz-theme-'))
  try {
    await writeFile(join(folder, name), text)
    return await act(folder)
  } finally {
    await rm(folder, { recursive: true })
  }
}

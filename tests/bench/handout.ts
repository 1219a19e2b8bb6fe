import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { findBrowser } from '../../src/publish/browser.ts'
import { inTurn, type Ratio } from './ratio.ts'

const program = (path: string, args: readonly string[]) => {
  const { status, stderr } = spawnSync(path, args, { encoding: 'utf8' })
  if (status !== 0) throw new Error(stderr)
}

/**
 * The built command from nothing to page and PDF, against the same browser printing the finished page by itself.
 *
 * @param what what the line of the table is called.
 */
export async function benchHandout(lesson: string, what: string, runs: number): Promise<Ratio> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'))
  const browser = await findBrowser()
  const page = join(folder, 'page.html')
  program(process.execPath, ['dist/foldlore.js', 'handout', lesson, '--quiet', '-o', page])
  const ours = () =>
    program(process.execPath, ['dist/foldlore.js', 'handout', lesson, '--quiet', '-o', folder])
  const floor = () =>
    program(browser, [
      '--headless',
      '--no-sandbox',
      '--disable-gpu',
      '--no-pdf-header-footer',
      '--export-tagged-pdf',
      '--generate-pdf-document-outline',
      `--user-data-dir=${join(folder, 'profile')}`,
      `--print-to-pdf=${join(folder, 'floor.pdf')}`,
      pathToFileURL(page).href,
    ])
  try {
    return {
      what,
      against: 'the browser alone',
      goal: { atMost: 1.15 },
      ...(await inTurn(runs, ours, floor)),
    }
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 3 })
  }
}

/** A lesson with its steps so many times over. */
export function manySteps(lesson: string, times: number): string {
  const [head = '', ...steps] = lesson.split(/^(?=## )/m)
  return [head, ...Array.from({ length: times }, () => steps).flat()].join('')
}

import { dirname } from 'node:path'
import { browserUnderWay } from '../../publish/launch.ts'
import type { Action } from '../commands.ts'
import { pagesFor } from '../pages.ts'
import { printSettings } from '../print-settings.ts'
import { UsageError } from '../problems.ts'

/** `handout LESSON`. A browser takes longer to start than all the rest, so it starts first. */
export const handout: Action = async ([path = ''], options, outside) => {
  if (options.figures === 'list')
    throw new UsageError('Only `check` lists figures', 'Write `check --figures list`, or `--figures auto`')
  const pages = await pagesFor(path, '', options, outside)
  const settings = { ...pages, ...printSettings(options, outside), folder: dirname(path) }
  const own = pages.pdf ? await browserUnderWay(settings.browserPath) : undefined
  try {
    const { printHandout } = await import('../print-handout.ts')
    return await printHandout(path, { ...settings, ...(own && { browser: own.browser }) }, options, outside)
  } finally {
    await own?.stop()
  }
}

import { availableParallelism } from 'node:os'
import { resolve } from 'node:path'
import { browserSetting } from '../../publish/browser.ts'
import { disk } from '../../publish/outside.ts'
import { OutsideError } from '../../publish/problems.ts'
import { plainError } from '../../publish/write.ts'
import { asJson } from '../answer.ts'
import type { Action } from '../commands.ts'
import type { Options } from '../flags.ts'
import { type BuildOptions, type Built, buildLibrary } from '../library/build.ts'
import { takeLock } from '../library/lock.ts'
import { outFolder } from '../library/settings.ts'
import { exitCodeOf, libraryJson, summaryText, troubleText } from '../library/tell.ts'
import { watchFolders } from '../library/watch-folders.ts'
import type { Outside } from '../outside.ts'
import { exitCodes, UsageError } from '../problems.ts'
import { told } from '../told.ts'

/** `library FOLDER`: everything of every lesson, several at a time, only what changed; with `--watch` until Ctrl-C. */
export const library: Action = async ([folder = '.'], options, outside) => {
  if (options.watch && options.json)
    throw new UsageError('`--watch` does not end, so it has no answer in JSON', 'Leave one of them out')
  if (!(await outside.isFolder(folder)))
    throw new OutsideError(
      `Cannot read \`${folder}\`: there is no such folder`,
      'Name the folder of the lessons',
    )
  const out = outFolder(folder, options.output)
  await disk.makeFolder(out).catch((error: unknown) => {
    throw plainError(error, `Cannot write into \`${out}\``)
  })
  const lock = await takeLock(out)
  const stop = new AbortController()
  void outside.stopped().then(() => stop.abort())
  lock.lost.addEventListener('abort', () => stop.abort())
  const setting = settingOf(folder, out, options, outside, stop.signal)
  try {
    const code = options.watch
      ? await watched(setting, folder, out, options, outside)
      : await once(setting, folder, out, options, outside)
    if (!lock.lost.aborted) return code
    throw new OutsideError(
      'Another foldlore has taken this folder over, because this one was silent for long',
      'Start it again when that one is done',
    )
  } finally {
    await lock.release()
  }
}

function settingOf(
  folder: string,
  out: string,
  { jobs, force, quiet, json }: Options,
  { env, stderr }: Outside,
  stop: AbortSignal,
): BuildOptions {
  const browserPath = env[browserSetting]
  return {
    folder: resolve(folder),
    out: resolve(out),
    jobs: jobs ?? availableParallelism(),
    force: force === true,
    ...(browserPath && { browserPath }),
    stop,
    progress(done, of, title, made) {
      if (!quiet && !json) stderr(`${done} of ${of}: ${title}, ${made} ${made === 1 ? 'print' : 'prints'}\n`)
    },
  }
}

async function once(
  setting: BuildOptions,
  folder: string,
  out: string,
  options: Options,
  outside: Outside,
): Promise<number> {
  const built = await buildLibrary(setting, outside)
  tell(built, folder, out, options, outside)
  if (options.json) outside.stdout(asJson(libraryJson(built, out)))
  return exitCodeOf(built)
}

/** Builds again on every change. What is said already is not said again. */
async function watched(
  setting: BuildOptions,
  folder: string,
  out: string,
  options: Options,
  outside: Outside,
): Promise<number> {
  let said: string | undefined
  const build = async (): Promise<readonly string[]> => {
    const built = await buildLibrary(setting, outside)
    const trouble = troubleText(built, folder)
    if (built.made > 0 || built.removed > 0 || trouble !== said) tell(built, folder, out, options, outside)
    if (said === undefined && !options.quiet && !built.stopped)
      outside.stderr(`Waiting for changes in ${folder}, until Ctrl-C\n`)
    said = trouble
    return built.watched
  }
  await watchFolders(build, setting.stop, (error) => outside.stderr(`foldlore: ${told(error)}\n`))
  return exitCodes.done
}

function tell(
  built: Built,
  folder: string,
  out: string,
  { quiet, json }: Options,
  { stderr }: Outside,
): void {
  // In JSON all of it is part of the answer.
  if (json) return
  stderr(troubleText(built, folder))
  if (!quiet) stderr(summaryText(built, out))
}

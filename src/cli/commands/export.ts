import { basename, dirname, extname, join } from 'node:path'
import { exportLesson } from '../../publish/export.ts'
import { exportKinds } from '../../publish/export-kinds.ts'
import { slug } from '../../publish/slug.ts'
import { mayWrite, writeWhole } from '../../publish/write.ts'
import { asJson, tellWritten } from '../answer.ts'
import type { Action } from '../commands.ts'
import { lessonFrom, tellFindings } from '../lesson-file.ts'
import { wished } from '../pages.ts'
import { exitCodes, UsageError } from '../problems.ts'

/** `export LESSON --as svg|dxf|fold`: a file for each piece in a folder, or all pieces in the file that `-o` names. */
export const exportFiles: Action = async ([path = ''], options, outside) => {
  const { as, output } = options
  const kind = exportKinds.find((known) => known === as)
  if (kind === undefined)
    throw new UsageError(
      as === undefined ? '`export` needs to know for what' : `\`export\` writes no \`${as}\``,
      'Write `--as svg`, `--as dxf` or `--as fold`',
    )
  const ending = output === undefined ? '' : extname(output).toLowerCase()
  const isFile = ending !== '' && output !== undefined && !(await outside.isFolder(output))
  if (isFile && ending !== `.${kind}`)
    throw new UsageError(
      `\`${output}\` is no name for a \`.${kind}\` file`,
      `Name a \`.${kind}\` file, or a folder for a file a piece`,
    )
  const lesson = await lessonFrom(path, options, outside)
  if (!tellFindings(path, lesson.findings, options, outside)) return exitCodes.lessonErrors
  const files = await exportLesson(lesson, kind, isFile)
  const folder = output ?? dirname(path)
  const stem = [basename(path, extname(path)), ...wished(options)]
  const written = files.map(({ name, text }) => ({
    path:
      isFile && output !== undefined
        ? besides(output, files.length > 1 ? name : '')
        : join(folder, `${[...stem, slug(name)].filter((part) => part !== '').join('-')}.${kind}`),
    data: new TextEncoder().encode(text),
  }))
  for (const file of written) await mayWrite(file.path, options.force === true, outside)
  await writeWhole(written, outside)
  const paths = written.map((file) => file.path)
  if (options.json) outside.stdout(asJson({ written: paths }))
  else tellWritten(paths, options, outside)
  return exitCodes.done
}

/** Several cards of a lesson go into files of their own: `out/card.svg`, `out/card-box.svg`. */
function besides(output: string, name: string): string {
  if (name === '') return output
  const ending = extname(output)
  return `${output.slice(0, -ending.length)}-${slug(name)}${ending}`
}

import { classWording } from '../../workshop/class/class-wording.ts'
import { kitLabels } from '../../workshop/class/kit-labels.ts'
import { classTitle } from '../../workshop/class/taught.ts'
import { asJson } from '../answer.ts'
import { classFrom, tellClass } from '../class-from.ts'
import type { Action } from '../commands.ts'
import { printKitLabels } from '../print-kit-labels.ts'
import { exitCodes } from '../problems.ts'

/** `labels CLASS`: a label for each kit, as a page and a PDF beside the class file, or where `-o` says. */
export const labels: Action = async ([path = ''], options, outside) => {
  const read = await classFrom(path, options, outside)
  const { file, lessons } = read
  const [first] = lessons
  if (!tellClass(read, options, outside) || !first) return exitCodes.lessonErrors
  const all = kitLabels(file, lessons)
  const title = classTitle(file, lessons)
  const wording = classWording(file, lessons)
  const paths = await printKitLabels({ path, title, wording }, all, file.labels, options, outside)
  if (options.json) outside.stdout(asJson({ labels: all, written: paths }))
  return exitCodes.done
}

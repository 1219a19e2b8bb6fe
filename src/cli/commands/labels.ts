import { labelsHtml } from '../../publish/kit-labels.ts'
import { printPdf } from '../../publish/pdf.ts'
import { OutsideError } from '../../publish/problems.ts'
import { atRealSize } from '../../publish/real-size.ts'
import { kitLabels } from '../../workshop/class/kit-labels.ts'
import { asJson } from '../answer.ts'
import { classFrom, tellClass } from '../class-from.ts'
import type { Action } from '../commands.ts'
import { printPages } from '../print-pages.ts'
import { exitCodes } from '../problems.ts'

/** `labels CLASS`: a label for each kit, as a page and a PDF beside the class file, or where `-o` says. */
export const labels: Action = async ([path = ''], options, outside) => {
  const read = await classFrom(path, options, outside)
  const [first] = read.lessons
  if (!tellClass(read, options, outside) || !first) return exitCodes.lessonErrors
  const { file, lessons } = read
  const all = kitLabels(file, lessons)
  const about = {
    title: file.title ?? first.lesson.frontMatter.title,
    lang: first.lesson.frontMatter.lang,
  }
  const html = async (theme: string, paper: 'a4' | 'letter'): Promise<string> => {
    const page = await labelsHtml(about, all, file.labels, paper, theme)
    if (page === 'no room' || page === 'too small')
      throw new OutsideError(
        page === 'no room'
          ? 'The labels of this sheet are too small to write on'
          : 'What is in a kit does not fit on its label',
        'Write fewer rows and columns, such as `labels: {columns: 2, rows: 4}`',
      )
    return page
  }
  const paths = await printPages(
    { path, what: 'labels' },
    { html, pdf: async (page, _, browser) => atRealSize(await printPdf(page, browser)) },
    options,
    outside,
  )
  if (options.json) outside.stdout(asJson({ labels: all, written: paths }))
  return exitCodes.done
}

import { basename } from 'node:path'
import { toHtml } from 'hast-util-to-html'
import { h } from 'hastscript'
import { handoutHtml } from '../publish/html.ts'
import { loadStyle } from '../publish/theme.ts'
import type { FileToWrite } from '../publish/write.ts'
import type { ClassWork } from '../workshop/class/class-work.ts'
import { runSheetListing } from '../workshop/class/run-sheet-listing.ts'
import type { ClassPrint } from './class-prints.ts'
import type { Options } from './flags.ts'
import type { Outside } from './outside.ts'
import { pagesFor } from './pages.ts'
import { brandFor } from './print-brand.ts'
import { printSettings } from './print-settings.ts'

/** The page that leads to everything for the day of a class: what there is to look at and to print. */
export async function dayPage(
  { path, title, file, run, wording }: ClassWork,
  prints: readonly ClassPrint[],
  files: readonly FileToWrite[],
  options: Options,
  outside: Outside,
): Promise<Uint8Array> {
  const { say } = wording
  const { theme, paper } = printSettings(options, outside)
  const css = await loadStyle(theme)
  const names = new Set(files.map((one) => basename(one.path)))
  const rows = await Promise.all(
    prints.map(async (print) => {
      const name = basename((await pagesFor(path, print.what, options, outside)).out)
      return h('tr', [
        h('th', { scope: 'row' }, print.title),
        h('td', link(`${name}.html`, say('class.page'), print.title, names)),
        h('td', link(`${name}.pdf`, 'PDF', print.title, names)),
      ])
    }),
  )
  const workbook = [...names].find((name) => name.endsWith('.xlsx'))
  const body = h('main', { className: ['sheet'] }, [
    h(
      'header',
      { className: ['front'] },
      h('div', [
        h('h1', title),
        h(
          'p',
          { className: ['summary'] },
          `${say('class.for-people', { people: file.people, spare: 0 })} ${runSheetListing(run).intro}`,
        ),
      ]),
    ),
    h('section', { className: ['cutting'] }, [
      h('h2', say('class.everything')),
      h('table', { className: ['pieces'] }, [
        h(
          'thead',
          h(
            'tr',
            [say('kit.what'), say('class.to-look-at'), say('class.to-print')].map((head) =>
              h('th', { scope: 'col' }, head),
            ),
          ),
        ),
        h('tbody', rows),
      ]),
      ...(workbook
        ? [h('p', [`${say('class.as-workbook')} `, h('a', { href: hrefOf(workbook) }, workbook)])]
        : []),
    ]),
  ])
  const brand = await brandFor(path, undefined, { ...options, quiet: true }, outside)
  const head = { ...brand, title, lang: wording.lang, foot: { title, print: '' } }
  const html = await handoutHtml(head, { css, body: () => toHtml(body) }, { paper })
  return new TextEncoder().encode(html)
}

/** A link to a file that is there. */
const link = (name: string, words: string, of: string, names: ReadonlySet<string>) =>
  names.has(name) ? [h('a', { href: hrefOf(name), ariaLabel: `${of}, ${words}` }, words)] : []

/** Beside the page. */
const hrefOf = (name: string): string => `./${encodeURIComponent(name)}`

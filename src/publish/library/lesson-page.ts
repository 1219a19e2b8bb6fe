import type { Element } from 'hast'
import { h } from 'hastscript'
import { papers } from '../page-css.ts'
import { findingsTable } from './findings-table.ts'
import { figureOf, libraryPage } from './library-page.ts'
import { addressOf, type LibraryLesson, type LibraryPrint } from './library-view.ts'

/**
 * The page that leads to the prints of a lesson.
 *
 * @param library title of the library.
 */
export function lessonHtml(lesson: LibraryLesson, library: string): Promise<string> {
  const { title, summary, level, lang, path, folder, picture, prints, older, findings } = lesson
  const up = `${'../'.repeat(folder.split('/').length)}index.html`
  return libraryPage(`${title} – ${library}`, 'en', [
    h('nav', { ariaLabel: 'Library' }, h('a', { href: up }, library)),
    h('header', { className: ['front'] }, [
      h('div', [
        h('h1', { lang }, title),
        ...(summary === undefined ? [] : [h('p', { className: ['summary'], lang }, summary)]),
        h('p', { className: ['level'] }, [
          level === '' ? '' : `${level}. `,
          'Its file is ',
          h('code', path),
          '.',
        ]),
      ]),
      ...(picture === undefined ? [] : [figureOf(picture, 'card-picture')]),
    ]),
    h('h2', 'Its prints'),
    prints.length > 0
      ? printsTable(prints, 'Its prints')
      : h('p', { className: ['wrong'] }, 'There is none: what is found below is in the way.'),
    ...(older.length > 0
      ? [
          h('h2', 'Prints of an earlier text'),
          h(
            'p',
            'What is found below is in the way of new ones, so these do not say what the lesson says now.',
          ),
          printsTable(older, 'Prints of an earlier text'),
        ]
      : []),
    ...(findings.length > 0 ? [h('h2', 'What was found'), findingsTable(findings, 'What was found')] : []),
  ])
}

const unitWords = { in: 'inches', mm: 'millimetres' } as const

function printsTable(prints: readonly LibraryPrint[], label: string): Element {
  const heads = ['size', 'unit', 'paper', 'theme', 'to look at', 'to print']
  return h('div', { className: ['table-scroll'], tabIndex: 0, role: 'region', ariaLabel: label }, [
    h('table', [
      h(
        'thead',
        h(
          'tr',
          heads.map((text) => h('th', { scope: 'col' }, text)),
        ),
      ),
      h(
        'tbody',
        prints.map((print) => {
          const { name, size, unit, paper, theme, pdf } = print
          const of = `${size}, ${unitWords[unit]}, ${papers[paper]}, ${theme}`
          const link = (ending: string, words: string): Element =>
            h('a', { href: addressOf(`${name}${ending}`), ariaLabel: `${words}: ${of}` }, words)
          return h('tr', [
            h('th', { scope: 'row' }, size),
            h('td', unitWords[unit]),
            h('td', papers[paper]),
            h('td', theme),
            h('td', link('.html', 'page')),
            h('td', pdf ? link('.pdf', 'PDF') : 'no PDF yet'),
          ])
        }),
      ),
    ]),
  ])
}

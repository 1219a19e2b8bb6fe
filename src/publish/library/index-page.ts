import type { ElementContent } from 'hast'
import { h } from 'hastscript'
import { figureOf, libraryPage } from './library-page.ts'
import {
  addressOf,
  counted,
  type LibraryLesson,
  type LibraryView,
  lessonPageName,
  unique,
} from './library-view.ts'
import { searchScript } from './search-script.ts'

/** Where the index says that things were found. */
export const reportName = 'report.html'

/** The page that leads to all lessons of a library, with a field to look for words in. */
export function indexHtml(view: LibraryView): Promise<string> {
  const { title, lessons } = view
  const prints = lessons.reduce((sum, one) => sum + one.prints.length, 0)
  return libraryPage(
    title,
    'en',
    [
      h(
        'header',
        { className: ['front'] },
        h('div', [
          h('h1', title),
          h('p', { className: ['summary'] }, [
            `${counted(lessons.length, 'lesson')}, ${counted(prints, 'print')}. `,
            h('a', { href: addressOf(reportName) }, 'What was found in them'),
          ]),
        ]),
      ),
      h('form', { className: ['finder'], role: 'search', hidden: true }, [
        h('label', { htmlFor: 'find' }, 'Find lessons with the words'),
        h('input', { id: 'find', type: 'search', autoComplete: 'off' }),
        h('output', { htmlFor: 'find', ariaLive: 'polite' }),
      ]),
      h('ul', { className: ['lessons'], role: 'list' }, ...lessons.map(lessonItem)),
    ],
    searchScript,
  )
}

function lessonItem(lesson: LibraryLesson): ElementContent {
  const { title, summary, level, words, folder, picture, prints, lang } = lesson
  const href = addressOf(`${folder}/${lessonPageName}`)
  const errors = lesson.findings.filter(({ severity }) => severity === 'error').length
  return h('li', { dataWords: words, ...(lang !== 'en' && { lang }) }, [
    ...(picture === undefined ? [] : [figureOf(picture, 'picture')]),
    h('h2', h('a', { href }, title)),
    ...(summary === undefined ? [] : [h('p', summary)]),
    h('p', { className: ['level'], lang: 'en' }, level),
    h('p', { className: ['sizes'], lang: 'en' }, sizesText(prints)),
    ...(errors > 0
      ? [h('p', { className: ['wrong'], lang: 'en' }, `${counted(errors, 'mistake')} to be cured`)]
      : []),
  ])
}

function sizesText(prints: LibraryLesson['prints']): string {
  const sizes = unique(prints.map(({ size }) => size))
  return sizes.length === 0 ? 'No print' : `${sizes.join(', ')}; ${counted(prints.length, 'print')}`
}

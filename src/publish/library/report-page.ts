import { h } from 'hastscript'
import { findingsTable } from './findings-table.ts'
import { codedText, libraryPage } from './library-page.ts'
import { addressOf, counted, type LibraryView, lessonPageName } from './library-view.ts'

/** The page that tells what was found in all lessons of a library. */
export function reportHtml({ title, lessons, findings, problems }: LibraryView): Promise<string> {
  const all = [...findings, ...lessons.flatMap((lesson) => lesson.findings)]
  const some = lessons.filter((lesson) => lesson.findings.length > 0)
  const count = (which: string): number => all.filter(({ severity }) => severity === which).length
  const summary = [
    counted(count('error'), 'error'),
    counted(count('warning'), 'warning'),
    counted(count('hint'), 'hint'),
  ].join(', ')
  return libraryPage(`What was found – ${title}`, 'en', [
    h('nav', { ariaLabel: 'Library' }, h('a', { href: './index.html' }, title)),
    h(
      'header',
      { className: ['front'] },
      h('div', [
        h('h1', 'What was found'),
        h(
          'p',
          { className: ['summary'] },
          `${summary}, in ${some.length} of ${counted(lessons.length, 'lesson')}.`,
        ),
      ]),
    ),
    ...(problems.length > 0
      ? [
          h('h2', 'What could not be printed'),
          h(
            'ul',
            problems.map(({ message, lessons: of }) =>
              h('li', [...codedText(message), ` (${of.join(', ')})`]),
            ),
          ),
        ]
      : []),
    ...(findings.length > 0
      ? [h('h2', 'The library file'), findingsTable(findings, 'The library file')]
      : []),
    ...some.flatMap((lesson) => [
      h('h2', h('a', { href: addressOf(`${lesson.folder}/${lessonPageName}`) }, lesson.title)),
      h('p', h('code', lesson.path)),
      findingsTable(lesson.findings, lesson.title),
    ]),
  ])
}

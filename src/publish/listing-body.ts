import { toHtml } from 'hast-util-to-html'
import { h } from 'hastscript'
import { box, type Column, type Listing, type Section } from '../workshop/listing.ts'
import { measureHast } from './measure.ts'

/** A list as the body of a printed page, in the words that a theme's style sheet knows. */
export const listingBody = ({ title, intro, sections }: Listing): string =>
  toHtml(
    h('main', { className: ['sheet'] }, [
      h(
        'header',
        { className: ['front'] },
        h('div', [h('h1', title), h('p', { className: ['summary'] }, intro)]),
      ),
      ...sections.map(sectionHast),
    ]),
  )

/** Tables that are not longer than this, in rows, stay on one page. */
const mostRows = 16

const sectionHast = ({ heading, columns, rows, note }: Section) =>
  h('section', { className: rows.length > mostRows ? ['cutting'] : ['cutting', 'whole'] }, [
    h('h2', heading),
    h('table', { className: ['pieces'] }, [
      h(
        'thead',
        h(
          'tr',
          columns.map((c) => h('th', { scope: 'col', className: classOf(c) }, c.head)),
        ),
      ),
      h(
        'tbody',
        rows.map((row) =>
          h(
            'tr',
            row.map((text, i) => cell(text, columns[i], i === 0)),
          ),
        ),
      ),
    ]),
    ...(note ? [h('p', note)] : []),
  ])

/** The first cell of a row says what the row is about. */
function cell(text: string, column: Column | undefined, first: boolean) {
  const hasBox = column?.tick !== undefined && text.startsWith(box)
  // A box to tick is drawn by the style sheet, since not every font has one; it has a name all the same.
  const tick = hasBox ? [h('span', { className: ['tick'], role: 'img', ariaLabel: column.tick })] : []
  const words = hasBox ? text.slice(box.length).trimStart() : text
  return first
    ? h('th', { scope: 'row' }, tick, h('span', { className: ['piece'] }, words))
    : h('td', { className: column ? classOf(column) : [] }, tick, measureHast(words))
}

const classOf = ({ kind }: Column): string[] =>
  ({ words: [], measure: ['size'], count: ['count'], amount: ['to-the-right'] })[kind]

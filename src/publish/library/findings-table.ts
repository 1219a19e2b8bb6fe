import type { Element } from 'hast'
import { h } from 'hastscript'
import type { FindingJson } from '../../workshop/finding-json.ts'
import { codedText } from './library-page.ts'

/** Findings as a table, the worst first. */
export function findingsTable(findings: readonly FindingJson[], label: string): Element {
  const order = ['error', 'warning', 'hint']
  const sorted = findings.toSorted((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity))
  return h('div', { className: ['table-scroll'], tabIndex: 0, role: 'region', ariaLabel: label }, [
    h('table', [
      h('thead', h('tr', [head('what'), head('line'), head('what was found'), head('rule')])),
      h(
        'tbody',
        sorted.map(({ severity, line, column, message, suggestion, rule }) =>
          h('tr', [
            h('th', { scope: 'row' }, severity),
            h('td', { className: ['place'] }, line === undefined ? '' : `${line}:${column}`),
            h('td', [
              ...codedText(message),
              ...(suggestion === undefined
                ? []
                : [h('p', { className: ['cure'] }, ...codedText(suggestion))]),
            ]),
            h('td', h('code', rule)),
          ]),
        ),
      ),
    ]),
  ])
}

const head = (text: string): Element => h('th', { scope: 'col' }, text)

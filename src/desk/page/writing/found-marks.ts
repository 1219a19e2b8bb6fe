import { type Extension, RangeSet } from '@codemirror/state'
import { Decoration, EditorView, GutterMarker, gutter } from '@codemirror/view'
import type { Severity } from '../../../length/finding.ts'
import { foundField, foundIn } from './found-field.ts'

/** What each kind of finding is called. */
export const severityWords: Readonly<Record<Severity, string>> = {
  error: 'Wrong',
  warning: 'Look again',
  hint: 'Advice',
}

/** Underlined where it is: the lines differ in their form, and not in their colour alone. */
const underlines = EditorView.decorations.compute([foundField], (state) =>
  Decoration.set(
    foundIn(state).flatMap(({ found, from, to }) => {
      const end = Math.min(Math.max(to, from + 1), state.doc.length)
      return from < end
        ? [Decoration.mark({ class: `writing-found writing-found-${found.severity}` }).range(from, end)]
        : []
    }),
    true,
  ),
)

const marks: Readonly<Record<Severity, string>> = { error: '✕', warning: '!', hint: '·' }

class FoundMark extends GutterMarker {
  private readonly severity: Severity
  private readonly words: string
  constructor(severity: Severity, words: string) {
    super()
    this.severity = severity
    this.words = words
  }
  override eq(other: FoundMark): boolean {
    return other.severity === this.severity && other.words === this.words
  }
  override toDOM(): Node {
    const mark = document.createElement('span')
    mark.className = `writing-mark-${this.severity}`
    mark.textContent = marks[this.severity]
    mark.title = this.words
    return mark
  }
}

const worst: readonly Severity[] = ['error', 'warning', 'hint']

/** A mark beside the line of each finding; the worst of a line counts. */
const margin = (pick: (view: EditorView, at: number) => void): Extension =>
  gutter({
    class: 'writing-margin',
    markers: (view) => {
      const lines = new Map<number, { severity: Severity; words: string }>()
      for (const { found, from } of foundIn(view.state)) {
        const line = view.state.doc.lineAt(from).from
        const before = lines.get(line)
        const isWorse = !before || worst.indexOf(found.severity) < worst.indexOf(before.severity)
        const words = [before?.words, `${severityWords[found.severity]}: ${found.message}`]
          .filter((one) => one)
          .join('\n')
        lines.set(line, { severity: isWorse ? found.severity : before.severity, words })
      }
      return RangeSet.of(
        [...lines]
          .sort(([a], [b]) => a - b)
          .map(([at, { severity, words }]) => new FoundMark(severity, words).range(at)),
      )
    },
    lineMarkerChange: (update) => update.startState.field(foundField) !== update.state.field(foundField),
    domEventHandlers: {
      click(view, line) {
        const first = foundIn(view.state).find(({ from }) => view.state.doc.lineAt(from).from === line.from)
        if (first) pick(view, first.from)
        return first !== undefined
      },
    },
  })

/** How findings are seen in the text and beside it. */
export const foundMarks = (pick: (view: EditorView, at: number) => void): Extension => [
  underlines,
  margin(pick),
]

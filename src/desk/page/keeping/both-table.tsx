import type { Gap } from './both-rows.ts'
import { ownWords, type Row } from './line-changes.ts'

/** The two texts line by line. What differs has a sign, a word for those who do not see it, and its words marked. */
export function BothTable({ rows, path }: { readonly rows: readonly (Row | Gap)[]; readonly path: string }) {
  return (
    // It scrolls by itself, so the keyboard must be able to get there.
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls can be reached by keyboard
    <section class="both-texts" aria-label="Both texts, line by line" tabIndex={0}>
      <table class="both-table">
        <thead>
          <tr>
            <th scope="col">Yours, on this desk</th>
            <th scope="col">In the file {path}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <RowOfBoth key={keyOf(row)} row={row} />
          ))}
        </tbody>
      </table>
    </section>
  )
}

const keyOf = (row: Row | Gap): string =>
  'left' in row ? `gap ${row.left}` : `${row.mineLine ?? ''}:${row.theirsLine ?? ''}`

function RowOfBoth({ row }: { readonly row: Row | Gap }) {
  if ('left' in row)
    return (
      <tr class="both-gap">
        <td colSpan={2}>{row.left} lines are the same</td>
      </tr>
    )
  if (row.same)
    return (
      <tr>
        <td>{row.mine || '\u00a0'}</td>
        <td>{row.theirs || '\u00a0'}</td>
      </tr>
    )
  return (
    <tr>
      <Side line={row.mine} other={row.theirs} sign="+" words="Only in yours: " />
      <Side line={row.theirs} other={row.mine} sign="−" words="Only in the file: " />
    </tr>
  )
}

function Side({
  line,
  other,
  sign,
  words,
}: {
  readonly line: string | undefined
  readonly other: string | undefined
  readonly sign: string
  readonly words: string
}) {
  if (line === undefined) return <td class="both-none" />
  // A line that the other text has not at all is marked as a line; where it has another one, the words are.
  const { before, own, behind } =
    other === undefined ? { before: line, own: '', behind: '' } : ownWords(line, other)
  return (
    <td class={sign === '+' ? 'both-mine' : 'both-theirs'}>
      <span class="both-sign" aria-hidden="true">
        {sign}
      </span>
      <span class="unseen">{words}</span>
      {before}
      {own && <mark class="both-own">{own}</mark>}
      {behind}
    </td>
  )
}

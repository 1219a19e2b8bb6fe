import type { SizeColumn } from '../../engine/sizes.ts'

/**
 * Makes the heads of a chart's columns choose their size.
 *
 * @param columns in the order of the heads.
 * @returns stops it.
 */
export function chooseInHeads(
  doc: Document,
  columns: readonly SizeColumn[],
  choose: (column: SizeColumn) => void,
): () => void {
  const ears = new AbortController()
  const { signal } = ears
  for (const [i, head] of [...doc.querySelectorAll<HTMLElement>('.size-head')].entries()) {
    const column = columns[i]
    if (!column) continue
    head.classList.toggle('chosen', column.chosen)
    if (!column.works) continue
    const button = buttonIn(head)
    button.setAttribute('aria-pressed', String(column.chosen))
    const take = (): void => choose(column)
    button.addEventListener('click', take, { signal })
    button.addEventListener(
      'keydown',
      (event) => {
        if (event.key !== 'Enter' && event.key !== ' ') return
        event.preventDefault()
        take()
      },
      { signal },
    )
  }
  return () => ears.abort()
}

/** What stands in a head, as something that can be pressed. */
function buttonIn(head: HTMLElement): HTMLElement {
  const known = head.querySelector<HTMLElement>('.choose')
  if (known) return known
  const button = head.ownerDocument.createElement('span')
  button.className = 'choose'
  button.setAttribute('role', 'button')
  button.tabIndex = 0
  button.append(...head.childNodes)
  head.append(button)
  return button
}

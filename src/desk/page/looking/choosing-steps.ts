import { elementOf } from './frame.ts'
import { stepRows } from './place-on-page.ts'

/**
 * Lets the keys choose a step in the document of a handout: one step can be reached with the tabulator, the arrows go
 * from step to step, and Enter opens it where it is written.
 *
 * @returns stops it.
 */
export function letStepsBeChosen(doc: Document, open: (step: Element) => void): () => void {
  const hear = (event: KeyboardEvent): void => {
    const step = elementOf(event.target)?.closest<HTMLElement>('.step')
    if (!step || event.altKey || event.ctrlKey || event.metaKey) return
    if (event.key === 'Enter' && elementOf(event.target) === step) open(step)
    else if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
      const rows = stepRows(doc)
      const next = rows[rows.indexOf(step) + (event.key === 'ArrowDown' ? 1 : -1)]
      if (next) reach(next)
    } else return
    event.preventDefault()
  }
  const reach = (step: HTMLElement): void => {
    for (const other of stepRows(doc)) other.removeAttribute('tabindex')
    step.tabIndex = 0
    step.focus({ preventScroll: false })
  }
  const arrive = (): void => {
    const rows = stepRows(doc)
    if (!rows.some(({ tabIndex }) => tabIndex === 0)) rows[0]?.setAttribute('tabindex', '0')
  }
  const watch = new MutationObserver(arrive)
  watch.observe(doc.body, { childList: true, subtree: true })
  arrive()
  doc.addEventListener('keydown', hear)
  return () => {
    watch.disconnect()
    doc.removeEventListener('keydown', hear)
  }
}

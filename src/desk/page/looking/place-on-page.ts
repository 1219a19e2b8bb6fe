import type { PlaceOnPage } from './place-in-text.ts'

/** The row of a step in the document of a handout. */
export const stepRow = (doc: Document, step: number): Element | undefined =>
  doc.getElementById(`end-of-step-${step}`)?.closest('.step') ?? undefined

/** The number of the step that an element belongs to. */
export function stepNumber(element: Element): number | undefined {
  const id = element.closest('.step')?.querySelector('.step-end')?.id
  const number = Number(id?.replace('end-of-step-', ''))
  return id && Number.isInteger(number) ? number : undefined
}

/** All steps of a document in their order. */
export const stepRows = (doc: Document): HTMLElement[] => [...doc.querySelectorAll<HTMLElement>('.step')]

/** The table of pieces of a card. */
export const cardTable = (doc: Document, card: number): Element | undefined =>
  doc.querySelectorAll('.cutting')[card]

/** What an element of the handout is, as it can be found in the text of the lesson. */
export function placeOf(element: Element): PlaceOnPage {
  const step = stepNumber(element)
  const words = element.closest('p, li:not(.step), dt, dd, h1, h2, h3, h4, th')?.textContent ?? undefined
  if (step === undefined) {
    const table = element.closest('.cutting')
    const card = table ? [...table.ownerDocument.querySelectorAll('.cutting')].indexOf(table) : -1
    return card >= 0 ? { card } : { ...(words && { words }) }
  }
  const row = element.closest('.step')
  const measures = [...(row?.querySelectorAll('.step-text :is(.measure, .unfilled)') ?? [])]
  const measure = element.closest('.step-text :is(.measure, .unfilled)')
  const figures = [...(row?.querySelectorAll('.figure') ?? [])]
  const figure = element.closest('.figure')
  return {
    step,
    ...(words && { words }),
    ...(measure && { measure: { index: measures.indexOf(measure), of: measures.length } }),
    ...(figure && { figure: figures.indexOf(figure) }),
  }
}

/** The parts of the page. */
export interface Parts {
  readonly root: HTMLElement
  readonly stage: HTMLElement
  readonly slides: readonly HTMLElement[]
  /** Where the times stand: of the step, of the lesson, and of what dries. */
  readonly step: HTMLElement
  readonly lesson: HTMLElement
  readonly wait: HTMLElement
  /** `Step 5 of 15`, and the same for who listens. */
  readonly place: HTMLElement
  readonly announce: HTMLElement
  /** A mark for each step. */
  readonly marks: readonly HTMLElement[]
  readonly list: HTMLDialogElement
  readonly help: HTMLDialogElement
  readonly blank: HTMLElement
  readonly pause: HTMLButtonElement
  readonly more: HTMLButtonElement
  readonly again: HTMLButtonElement
  /** Buttons that ask for something, each with its word as `data-wish`. */
  readonly wishes: readonly HTMLElement[]
}

/** The parts of the page as a theme has written it. Throws ReferenceError for one that is missing. */
export function partsOf(page: Document): Parts {
  const byId = <E extends HTMLElement>(id: string): E => {
    const found = page.getElementById(id)
    if (!found) throw new ReferenceError(`This page has no \`${id}\``)
    return found as E
  }
  const all = (selector: string): HTMLElement[] => [...page.querySelectorAll<HTMLElement>(selector)]
  return {
    root: page.documentElement,
    stage: byId('stage'),
    slides: all('#stage > [id]'),
    step: byId('step-time'),
    lesson: byId('lesson-time'),
    wait: byId('wait'),
    place: byId('place'),
    announce: byId('announce'),
    marks: all('#marks > *'),
    list: byId('list'),
    help: byId('help'),
    blank: byId('blank'),
    pause: byId('pause'),
    more: byId('more'),
    again: byId('again'),
    wishes: all('[data-wish]'),
  }
}

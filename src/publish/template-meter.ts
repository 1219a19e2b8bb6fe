import type Handlebars from 'handlebars'
import { ThemeError } from './problems.ts'
import { themeLimits } from './theme-limits.ts'

/** Counts what a template makes while it makes it, so that one that would never end is told. */
export interface Meter {
  /** Begins a page of so many characters of its own. */
  readonly begin: (size: number) => void
  /** Does a part of it, and counts what it gives. @throws ThemeError when it becomes too much. */
  readonly part: (make: () => string, place: () => string) => string
  /** Does a partial, likewise. @throws ThemeError also when too many are within each other. */
  readonly partial: (make: () => string, place: () => string) => string
}

/** What a page has at most: so much, and so many times what is in its lesson. */
const [most, times] = [20_000_000, 10]
/** What each turn costs besides its text: one that gives none takes its time all the same. */
const turn = 20

export function templateMeter(): Meter {
  let spent = 0
  let limit = most
  let depth = 0
  const part: Meter['part'] = (make, place) => {
    const before = spent
    const text = make()
    // What parts of it gave is counted already.
    spent = Math.max(spent, before + text.length) + turn
    if (spent > limit)
      throw new ThemeError(
        `${place()}: the page becomes far longer than its lesson`,
        'Look for an `{{#each}}` within others that goes through the same list, or a partial that is in itself',
      )
    return text
  }
  return {
    begin: (size) => {
      spent = 0
      depth = 0
      limit = most + times * size
    },
    part,
    partial: (make, place) => {
      if (depth >= themeLimits.depth)
        throw new ThemeError(
          `${place()}: partials include each other without end`,
          'Take out the `{{> …}}` that leads back to where it came from',
        )
      depth++
      try {
        return part(make, place)
      } finally {
        depth--
      }
    },
  }
}

/** Counts what `{{#each}}` gives, turn by turn. @param file that is being filled in. */
export function meterEach(handlebars: typeof Handlebars, meter: Meter, file: () => string): void {
  const each = handlebars.helpers.each as Handlebars.HelperDelegate
  handlebars.registerHelper('each', function (this: unknown, context: unknown, options: EachOptions) {
    const { line, column } = options.loc?.start ?? { line: 1, column: 0 }
    const place = (): string => `${file()}:${line}:${column + 1}`
    const fn: Handlebars.TemplateDelegate = (item, own) => meter.part(() => options.fn(item, own), place)
    return each.call(this, context, { ...options, fn })
  })
}

/** Handlebars tells a helper where it stands, which its types do not say. */
interface EachOptions extends Handlebars.HelperOptions {
  readonly loc?: { readonly start: { readonly line: number; readonly column: number } }
}

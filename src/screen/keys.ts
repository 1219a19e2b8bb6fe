/** What can be asked of the page. */
export type Wish =
  | 'next'
  | 'back'
  | 'first'
  | 'last'
  | 'pause'
  | 'more'
  | 'steps'
  | 'light'
  | 'blank'
  | 'full'
  | 'help'

/** A key as an event tells it. */
export interface KeyPressed {
  readonly key: string
  readonly shiftKey: boolean
  readonly ctrlKey: boolean
  readonly altKey: boolean
  readonly metaKey: boolean
}

/**
 * The keys. Clickers send the keys that turn pages, and `.` or `b` to make the screen dark: common practice, no source.
 */
const wishes: Readonly<Record<string, Wish>> = {
  PageDown: 'next',
  ArrowRight: 'next',
  ArrowDown: 'next',
  ' ': 'next',
  PageUp: 'back',
  ArrowLeft: 'back',
  ArrowUp: 'back',
  Backspace: 'back',
  Home: 'first',
  End: 'last',
  p: 'pause',
  '+': 'more',
  '=': 'more',
  s: 'steps',
  d: 'light',
  b: 'blank',
  '.': 'blank',
  f: 'full',
  '?': 'help',
}

/** What a key asks for; nothing when it is the browser's own. */
export function wishOf({ key, shiftKey, ctrlKey, altKey, metaKey }: KeyPressed): Wish | undefined {
  if (ctrlKey || altKey || metaKey) return undefined
  if (key === ' ' && shiftKey) return 'back'
  return wishes[key.length === 1 ? key.toLowerCase() : key]
}

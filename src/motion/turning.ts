import type { Look } from './eye.ts'

/** How the card is turned and how near it is, besides how it is usually looked at. */
export interface Turned extends Look {
  readonly zoom: number
}

export const atHome: Turned = { turn: 0, rise: 0, zoom: 1 }

/** Degrees that a key or a button turns by, and a dot of the page. */
const [step, perDot] = [10, 0.4]
const nearer = 1.2
const zooms = { least: 0.5, most: 8 }

/** What a word on a button, or a key, does. */
export type Turning = 'left' | 'right' | 'up' | 'down' | 'nearer' | 'farther' | 'home'

/** Left turns the card to the left: the eye goes to its right. */
const moves: Readonly<Record<Exclude<Turning, 'home'>, readonly [turn: number, rise: number, zoom: number]>> =
  {
    left: [-step, 0, 1],
    right: [step, 0, 1],
    up: [0, -step, 1],
    down: [0, step, 1],
    nearer: [0, 0, nearer],
    farther: [0, 0, 1 / nearer],
  }

const keys: Readonly<Record<string, Turning>> = {
  ArrowLeft: 'left',
  ArrowRight: 'right',
  ArrowUp: 'up',
  ArrowDown: 'down',
  '+': 'nearer',
  '=': 'nearer',
  '-': 'farther',
  _: 'farther',
  Home: 'home',
}

export const isTurning = (word: string): word is Turning => word === 'home' || word in moves

export const turnedBy = (now: Turned, word: Turning): Turned =>
  word === 'home' ? atHome : moved(now, ...moves[word])

const moved = ({ turn, rise, zoom }: Turned, more: number, higher: number, times: number): Turned => ({
  turn: turn + more,
  rise: rise + higher,
  zoom: Math.min(zooms.most, Math.max(zooms.least, zoom * times)),
})

/** From how far above the card can be looked at, in degrees. */
export const heldRise = (rise: number): number => Math.min(90, Math.max(-90, rise))

/** Lets pointers, keys, pinches and buttons with a word as `data-turn` turn the card. */
export function letTurn(
  stage: HTMLElement,
  buttons: readonly HTMLElement[],
  get: () => Turned,
  set: (turned: Turned) => void,
  usual: () => Look,
): void {
  const put = (turned: Turned): void => {
    const { rise } = usual()
    set({ ...turned, rise: heldRise(rise + turned.rise) - rise })
  }
  const pointers = new Map<number, readonly [number, number]>()
  const apart = (): number => {
    const [a, b] = [...pointers.values()]
    return a && b ? Math.hypot(a[0] - b[0], a[1] - b[1]) : 0
  }
  stage.addEventListener('pointerdown', (event) => {
    pointers.set(event.pointerId, [event.clientX, event.clientY])
    stage.setPointerCapture(event.pointerId)
  })
  stage.addEventListener('pointermove', (event) => {
    const before = pointers.get(event.pointerId)
    if (!before) return
    const wide = apart()
    pointers.set(event.pointerId, [event.clientX, event.clientY])
    if (pointers.size > 1) {
      if (wide > 0) put(moved(get(), 0, 0, apart() / wide))
      return
    }
    put(moved(get(), (event.clientX - before[0]) * perDot, (event.clientY - before[1]) * perDot, 1))
  })
  for (const end of ['pointerup', 'pointercancel'] as const)
    stage.addEventListener(end, (event) => pointers.delete(event.pointerId))
  stage.addEventListener(
    'wheel',
    (event) => {
      // A plain wheel is left to the page; with Ctrl, or as a pinch on a touch pad, it goes nearer.
      if (!event.ctrlKey) return
      event.preventDefault()
      put(moved(get(), 0, 0, nearer ** (-event.deltaY / 60)))
    },
    { passive: false },
  )
  stage.addEventListener('keydown', (event) => {
    const word = event.ctrlKey || event.metaKey || event.altKey ? undefined : keys[event.key]
    if (!word) return
    event.preventDefault()
    put(turnedBy(get(), word))
  })
  for (const button of buttons)
    button.addEventListener('click', () => {
      const { turn: word = '' } = button.dataset
      if (isTurning(word)) put(turnedBy(get(), word))
    })
}

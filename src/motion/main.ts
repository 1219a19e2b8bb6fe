import { type Parts, startPage } from './page.ts'
import { makeRenderer } from './stage.ts'
import type { MotionTold } from './told.ts'

/** The page as it is written shows the still figures; where a card can be drawn in space, it takes their place. */
async function start(): Promise<void> {
  const root = document.documentElement
  const canvas = document.createElement('canvas')
  canvas.setAttribute('aria-hidden', 'true')
  const told = JSON.parse(byId('told').textContent ?? '') as MotionTold
  try {
    const renderer = makeRenderer(canvas)
    await document.fonts.ready.catch(() => {})
    root.dataset.motion = 'moves'
    const parts = partsOf()
    parts.stage.prepend(canvas)
    canvas.addEventListener('webglcontextlost', () => still(root))
    startPage(parts, renderer, told)
  } catch {
    still(root)
  }
}

const still = (root: HTMLElement): void => {
  root.dataset.motion = 'still'
}

const byId = (id: string): HTMLElement => {
  const found = document.getElementById(id)
  if (!found) throw new ReferenceError(`This page has no \`${id}\``)
  return found
}

const partsOf = (): Parts => ({
  stage: byId('stage'),
  names: byId('names'),
  slider: byId('slider') as HTMLInputElement,
  play: byId('play') as HTMLButtonElement,
  said: byId('said'),
  wantsNames: byId('wants-names') as HTMLInputElement,
  choices: [...document.querySelectorAll<HTMLInputElement>('input[name="card"]')],
  stops: [...document.querySelectorAll<HTMLButtonElement>('[data-stop]')],
  turns: [...document.querySelectorAll<HTMLElement>('[data-turn]')],
})

void start()

import type { WebGLRenderer } from 'three'
import { courseOf } from './course.ts'
import type { Look } from './eye.ts'
import { framingOf, usualLook } from './framing.ts'
import { hideNames, showNames } from './names.ts'
import { type Stage, stageFor } from './stage.ts'
import type { CardTold, MotionTold } from './told.ts'
import { atHome, heldRise, letTurn, type Turned } from './turning.ts'
import { walking } from './walking.ts'
import { actWords, momentWords, stopAt } from './words.ts'

/** The parts of the page. */
export interface Parts {
  readonly stage: HTMLElement
  readonly names: HTMLElement
  readonly slider: HTMLInputElement
  readonly play: HTMLButtonElement
  readonly said: HTMLElement
  readonly wantsNames: HTMLInputElement
  /** For each card its own choice, and the buttons of its stops. */
  readonly choices: readonly HTMLInputElement[]
  readonly stops: readonly HTMLButtonElement[]
  /** Buttons that turn the card, each with its word as `data-turn`. */
  readonly turns: readonly HTMLElement[]
}

/** A page that is alive. */
export interface Moving {
  /** Shows another of the cards, as it stands. */
  readonly show: (card: number) => void
  /** Takes the same cards as they are now; the moment and the look at them stay. */
  readonly tell: (told: MotionTold) => void
  /** Stops, and gives back what the cards took. The parts of the page must not be used again. */
  readonly end: () => void
}

/** Steps of the slider to a leg. */
const steps = 100

/** A card that is shown. */
interface Showing {
  readonly card: CardTold
  readonly stage: Stage
  readonly first: number
  readonly last: number
  readonly draw: (moment: number, turned: Turned) => void
}

/** Brings the page to life. */
export function startPage(parts: Parts, renderer: WebGLRenderer, told: MotionTold): Moving {
  const { stage, names, slider, play, said, wantsNames, choices, stops, turns } = parts
  let { cards } = told
  let current = 0
  let moment = 0
  let turned = atHome
  let showing: Showing | undefined
  let waiting = 0

  const usual = (): Look => usualLook(showing?.card.stops ?? [], moment)
  const show = (): void => {
    waiting = 0
    showing?.draw(moment, turned)
  }
  const later = (): void => {
    if (waiting === 0) waiting = requestAnimationFrame(show)
  }
  const setMoment = (to: number): void => {
    moment = to
    if (!showing) return
    const { card } = showing
    slider.value = String(Math.round(moment * steps))
    slider.setAttribute('aria-valuetext', momentWords(card, moment))
    const words = actWords(card, moment)
    if (said.textContent !== words) said.textContent = words
    for (const button of stops)
      button.setAttribute('aria-pressed', String(stopAt(card, moment)?.name === button.dataset.stop))
    later()
  }
  const walk = walking(() => moment, setMoment)
  const setPlaying = (on: boolean): void => {
    play.dataset.playing = String(on)
    const { words } = showing?.card ?? {}
    if (words) play.textContent = on ? words.pause : words.play
  }
  const halt = (): void => {
    walk.stop()
    setPlaying(false)
  }
  const toggle = (): void => {
    if (!showing) return
    if (play.dataset.playing === 'true') {
      halt()
      return
    }
    const { first, last, card } = showing
    if (moment >= last - 1e-6) setMoment(first)
    setPlaying(true)
    walk.play(
      card.acts.map(({ to }) => to).filter((to) => to > moment + 1e-6),
      () => setPlaying(false),
    )
  }

  const putUp = (card: CardTold): void => {
    showing?.stage.end()
    hideNames(names)
    showing = showingOf(card, renderer, parts)
    const { first, last } = showing
    slider.min = String(first * steps)
    slider.max = String(last * steps)
    for (const button of stops) {
      const stop = card.stops.find(({ name }) => name === button.dataset.stop)
      button.hidden = !stop
      if (stop && last > first) button.style.setProperty('--at', String((stop.at - first) / (last - first)))
    }
  }
  const showCard = (index: number): void => {
    const card = cards[index]
    if (!card) return
    current = index
    halt()
    putUp(card)
    turned = atHome
    setMoment(card.stops.at(-1)?.at ?? card.at.at(-1) ?? 0)
  }
  const tell = (news: MotionTold): void => {
    cards = news.cards
    const card = cards[current] ?? cards[0]
    if (!card) return
    current = cards.indexOf(card)
    putUp(card)
    const { first = 0, last = 0 } = showing ?? {}
    if (moment < first || moment > last) halt()
    setMoment(Math.min(last, Math.max(first, moment)))
  }

  slider.addEventListener('input', () => {
    halt()
    setMoment(Number(slider.value) / steps)
  })
  play.addEventListener('click', toggle)
  for (const button of stops)
    button.addEventListener('click', () => {
      halt()
      const stop = showing?.card.stops.find(({ name }) => name === button.dataset.stop)
      if (stop) walk.goTo(stop.at)
    })
  for (const [i, choice] of choices.entries()) choice.addEventListener('change', () => showCard(i))
  wantsNames.addEventListener('change', () => {
    if (!wantsNames.checked) hideNames(names)
    later()
  })
  stage.addEventListener('keydown', (event) => {
    if (event.key !== ' ') return
    event.preventDefault()
    toggle()
  })
  letTurn(
    stage,
    turns,
    () => turned,
    (to) => {
      turned = to
      later()
    },
    usual,
  )
  const resizing = new ResizeObserver(later)
  resizing.observe(stage)
  showCard(
    Math.max(
      0,
      choices.findIndex(({ checked }) => checked),
    ),
  )
  return {
    show: showCard,
    tell,
    end() {
      halt()
      resizing.disconnect()
      cancelAnimationFrame(waiting)
      showing?.stage.end()
      showing = undefined
    },
  }
}

function showingOf(card: CardTold, renderer: WebGLRenderer, { stage, names, wantsNames }: Parts): Showing {
  const course = courseOf(card)
  const framing = framingOf(card, course)
  const shown = stageFor(renderer, card, course)
  return {
    card,
    stage: shown,
    first: course.first,
    last: course.last,
    draw(moment, turned) {
      const usual = usualLook(card.stops, moment)
      const look = { turn: usual.turn + turned.turn, rise: heldRise(usual.rise + turned.rise) }
      const drawn = shown.draw({ moment, look, framing: framing(moment), zoom: turned.zoom })
      // How it is looked at, for whoever wants to measure the picture.
      const view = [look.turn, look.rise, drawn.scale, ...drawn.middle]
      stage.dataset.view = view.map((n) => n.toFixed(4)).join(' ')
      stage.dataset.moment = moment.toFixed(4)
      if (wantsNames.checked) showNames(names, card, moment, drawn)
    },
  }
}

import type { Clock } from './clock.ts'
import { fitSlide, scrolled } from './fit.ts'
import type { Kept } from './kept.ts'
import { type Wish, wishOf } from './keys.ts'
import type { Parts } from './parts.ts'
import { letSwipe } from './swipe.ts'
import {
  atFirst,
  elapsed,
  leftInLesson,
  leftInStep,
  moved,
  oneMore,
  paused,
  resumed,
  type Timing,
  upTo,
  waiting,
} from './timing.ts'
import type { ScreenTold } from './told.ts'
import { countText, lessonTime, stepTime, withValues } from './words.ts'

/** Brings the page to life: shows one slide at a time, and counts. */
export function startScreen(parts: Parts, { steps, words }: ScreenTold, clock: Clock, kept: Kept): void {
  const { root, slides, step, lesson, wait, place, marks, list, help, pause, announce } = parts
  let at = -1
  let timing: Timing = kept.read(steps.length) ?? atFirst(steps)

  const stepOf = (slide: number): number | undefined => {
    const number = slides[slide]?.dataset.step
    const found = number === undefined ? -1 : steps.findIndex((one) => String(one.number) === number)
    return found < 0 ? undefined : found
  }
  const tick = (): void => {
    const now = clock.now()
    timing = upTo(timing, now)
    const started = timing.step !== undefined
    const left = leftInStep(timing, steps)
    step.textContent = started ? stepTime(left, timing.spent[timing.step ?? 0] ?? 0, words) : ''
    step.dataset.over = String(left !== undefined && left < 0)
    lesson.textContent = started
      ? lessonTime(elapsed(timing), leftInLesson(timing, steps, now), words)
      : words.clockStarts
    const wet = waiting(timing, steps, now)
    wait.textContent = wet ? withValues(words.dryIn, { step: wet.step, time: countText(wet.left) }) : ''
    wait.hidden = wet === undefined
    pause.textContent = started && !timing.running ? words.goOn : words.pause
    pause.disabled = !started
    parts.more.disabled = left === undefined
  }
  const change = (next: Timing): void => {
    timing = next
    kept.write(timing)
    tick()
  }
  const show = (to: number): void => {
    const slide = slides[to]
    if (!slide || to === at) return
    at = to
    for (const [i, other] of slides.entries()) other.toggleAttribute('data-shown', i === to)
    const here = stepOf(to)
    if (here !== undefined) change(moved(timing, here, clock.now(), steps))
    place.textContent = slide.dataset.place ?? ''
    announce.textContent = slide.dataset.name ?? ''
    const done = slides.slice(0, to + 1).reduce((last, _, i) => stepOf(i) ?? last, -1)
    for (const [i, mark] of marks.entries())
      mark.dataset.state = i < done ? 'done' : i === done ? 'now' : 'to come'
    for (const link of list.querySelectorAll('a'))
      if (link.hash === `#${slide.id}`) link.setAttribute('aria-current', 'step')
      else link.removeAttribute('aria-current')
    slide.scrollTop = 0
    fitSlide(slide)
    if (location.hash !== `#${slide.id}`) history.replaceState(null, '', `#${slide.id}`)
    tick()
  }
  const go = (way: 1 | -1): void => {
    const slide = slides[at]
    if (slide && scrolled(slide, way)) return
    show(Math.min(slides.length - 1, Math.max(0, at + way)))
  }
  const toggle = (dialog: HTMLDialogElement): void => {
    if (dialog.open) dialog.close()
    else dialog.showModal()
  }
  const deeds: Readonly<Record<Wish, () => void>> = {
    next: () => go(1),
    back: () => go(-1),
    first: () => show(0),
    last: () => show(slides.length - 1),
    pause: () => {
      if (timing.step !== undefined)
        change(timing.running ? paused(timing, clock.now()) : resumed(timing, clock.now()))
    },
    more: () => change(oneMore(timing)),
    steps: () => {
      toggle(list)
      list.querySelector<HTMLElement>('[aria-current]')?.focus()
    },
    help: () => toggle(help),
    light: () => {
      root.dataset.light = lightOf(root) === 'dark' ? 'day' : 'dark'
    },
    blank: () => root.toggleAttribute('data-blank'),
    full: () => {
      void (document.fullscreenElement ? document.exitFullscreen() : root.requestFullscreen()).catch(() => {})
    },
  }

  document.addEventListener('keydown', (event) => {
    const wish = wishOf(event)
    if (wish === undefined) return
    // A key that means something where the keyboard is stays there: a button is pressed, a list is gone through.
    const { target } = event
    if (event.key === ' ' && target instanceof Element && target.closest('button, a, summary')) return
    if ((list.open && wish !== 'steps') || (help.open && wish !== 'help')) return
    event.preventDefault()
    // Whoever goes on is past the break.
    if (wish !== 'blank' && root.hasAttribute('data-blank')) root.removeAttribute('data-blank')
    else deeds[wish]()
  })
  for (const button of parts.wishes)
    button.addEventListener('click', () => deeds[button.dataset.wish as Wish]?.())
  parts.again.addEventListener('click', () => {
    kept.forget()
    const fresh = atFirst(steps)
    const here = stepOf(at)
    change(here === undefined ? fresh : moved(fresh, here, clock.now(), steps))
    help.close()
  })
  for (const link of list.querySelectorAll('a'))
    link.addEventListener('click', (event) => {
      event.preventDefault()
      list.close()
      show(slides.findIndex(({ id }) => `#${id}` === link.hash))
    })
  parts.blank.addEventListener('click', () => root.removeAttribute('data-blank'))
  letSwipe(parts.stage, deeds.next, deeds.back)
  new ResizeObserver(() => {
    const slide = slides[at]
    if (slide) fitSlide(slide)
  }).observe(parts.stage)
  window.addEventListener('hashchange', () => show(slides.findIndex(({ id }) => `#${id}` === location.hash)))
  window.addEventListener('pagehide', () => kept.write(upTo(timing, clock.now())))
  clock.every(250, tick)
  root.dataset.light = lightOf(root)
  root.dataset.screen = 'on'
  show(
    Math.max(
      0,
      slides.findIndex(({ id }) => `#${id}` === location.hash),
    ),
  )
}

/** By day or dark: as was chosen, or else as the computer is set. */
const lightOf = (root: HTMLElement): 'dark' | 'day' =>
  (root.dataset.light as 'dark' | 'day' | undefined) ??
  (window.matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'day')

import './space.css'
import { useSignal, useSignalEffect } from '@preact/signals'
import { useEffect, useRef } from 'preact/hooks'
import type { Moving, Parts } from '../../../motion/page.ts'
import type { MotionAnswer } from '../../engine/motion.ts'
import type { Desk } from '../desk.ts'
import { setInSpace } from './in-space.ts'
import { Stills } from './stills.tsx'

const turns = ['left', 'right', 'up', 'down', 'nearer', 'farther', 'home'] as const
const stops = ['flat', 'shut', 'standing'] as const

/** The card in space: from the flat sheet to shut and on to standing, to be turned. */
export function Space({ desk }: { readonly desk: Desk }) {
  const root = useRef<HTMLDivElement>(null)
  const answer = useSignal<MotionAnswer | undefined>(undefined)
  const shown = useSignal(0)
  /** Whether the card cannot be folded as it is written now. */
  const stuck = useSignal(false)
  const still = useSignal(false)
  const moving = useSignal<Moving | undefined>(undefined)
  useSignalEffect(() => {
    const [look, settings] = [desk.look.value, desk.settings.value]
    if (!look) return
    let late = false
    void desk.engine.motion(look.text, settings).then((news) => {
      if (late) return
      stuck.value = news.cards.length === 0
      if (news.cards.length === 0) return
      answer.value = news
      moving.peek()?.tell(news.told)
    })
    return () => {
      late = true
    }
  })
  const ready = answer.value !== undefined
  useEffect(() => {
    const told = answer.peek()?.told
    if (!root.current || !told) return
    return setInSpace(partsIn(root.current), told, {
      moves: (made) => {
        moving.value = made
        const newest = answer.peek()?.told
        if (newest && newest !== told) made.tell(newest)
      },
      cannot: () => {
        moving.value = undefined
        still.value = true
      },
    })
  }, [ready, answer.value?.lang])

  const cards = answer.value?.cards ?? []
  const { lang = 'en', labels } = answer.value ?? {}
  return (
    <section class="looking-space" aria-label="The card in space">
      <p class="looking-hint" role="status">
        {stuck.value && stuckWords(ready)}
      </p>
      {labels && still.value && <Stills cards={cards} lang={lang} sorry={labels.sorry} />}
      {labels && !still.value && (
        <div key={lang} ref={root} class="looking-moving" lang={lang}>
          {cards.length > 1 && (
            <fieldset class="looking-which">
              <legend>{labels.whichCard}</legend>
              {cards.map(({ name }, i) => (
                <label key={name}>
                  <input
                    type="radio"
                    name="looking-card"
                    checked={shown.value === i}
                    onChange={() => {
                      shown.value = i
                      moving.peek()?.show(i)
                    }}
                  />
                  {name}
                </label>
              ))}
            </fieldset>
          )}
          <div
            class="looking-stage-3d"
            // biome-ignore lint/a11y/noNoninteractiveTabindex: the keys turn the card.
            tabIndex={0}
            role="application"
            aria-label={labels.stage}
            aria-description={labels.keys}
          >
            <div class="looking-names" aria-hidden="true" />
          </div>
          <p class="looking-said" role="status" />
          <div class="looking-way">
            <button type="button" class="looking-play" data-playing="false">
              {labels.play}
            </button>
            <div class="looking-ruler">
              <input type="range" min="0" max="200" step="1" aria-label={labels.howFar} />
              <fieldset class="looking-stops" aria-label={labels.stopAt}>
                {stops.map((stop) => (
                  <button key={stop} type="button" data-stop={stop}>
                    {labels.stops[stop]}
                  </button>
                ))}
              </fieldset>
            </div>
          </div>
          <div class="looking-wishes">
            <fieldset class="looking-turns">
              <legend>{labels.turnIt}</legend>
              {turns.map((word) => (
                <button key={word} type="button" data-turn={word}>
                  {labels.turns[word]}
                </button>
              ))}
            </fieldset>
            <label>
              <input type="checkbox" class="looking-wants-names" /> {labels.names}
            </label>
          </div>
          {cards[shown.value]?.lacks && <p class="looking-lacks">{cards[shown.value]?.lacks}</p>}
        </div>
      )}
    </section>
  )
}

const stuckWords = (had: boolean): string =>
  had
    ? 'As it is written now the card does not fold: this is how it did before. Mend it, and it follows.'
    : 'There is no card yet that folds. When the lesson has one, it stands here.'

function partsIn(root: HTMLElement): Parts {
  const one = <E extends HTMLElement>(selector: string): E => {
    const found = root.querySelector<E>(selector)
    if (!found) throw new ReferenceError(`Expected \`${selector}\` in the view of the card in space`)
    return found
  }
  return {
    stage: one('.looking-stage-3d'),
    names: one('.looking-names'),
    slider: one<HTMLInputElement>('.looking-ruler input'),
    play: one<HTMLButtonElement>('.looking-play'),
    said: one('.looking-said'),
    wantsNames: one<HTMLInputElement>('.looking-wants-names'),
    choices: [],
    stops: [...root.querySelectorAll<HTMLButtonElement>('[data-stop]')],
    turns: [...root.querySelectorAll<HTMLElement>('[data-turn]')],
  }
}

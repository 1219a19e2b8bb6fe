import './start.css'
import { useEffect, useState } from 'preact/hooks'
import type { FoldOffered } from '../../engine/folds.ts'
import type { Desk } from '../desk.ts'
import { FoldPictureBox } from './fold-picture.tsx'
import { matching } from './matching.ts'

type Unit = 'in' | 'mm'
const unitWords = { in: 'inches', mm: 'millimetres' } as const

interface StartProps {
  readonly desk: Desk
  /** Takes a text to begin with, and what it is called. */
  readonly begin: (text: string, name: string) => void
  readonly examples: readonly { readonly title: string; readonly text: string; readonly name: string }[]
  readonly openLesson: () => void
}

/** The empty desk: a fold to start from, a lesson of one's own, or an example. */
export function Start({ desk, begin, examples, openLesson }: StartProps) {
  const [folds, setFolds] = useState<readonly FoldOffered[]>([])
  const [unit, setUnit] = useState<Unit>(usualUnit)
  const [words, setWords] = useState('')
  useEffect(() => void desk.engine.folds().then(setFolds), [desk])
  const found = matching(folds, words)
  const groups = [...new Set(found.map(({ group }) => group))]
  const start = async (name: string): Promise<void> =>
    begin(await desk.engine.starter(name, unit), name.replaceAll(' ', '-'))
  return (
    <main class="start">
      <header class="start-head">
        <h1>What shall it be?</h1>
        <p class="start-about">
          Write a lesson for a hand-made card once. Every measure, figure and list is worked out for you, for
          any size.
        </p>
      </header>
      <nav class="start-side" aria-label="Lessons">
        <h2>A lesson of yours</h2>
        <button type="button" class="start-open" onClick={openLesson}>
          Open a lesson
        </button>
        {examples.length > 0 && (
          <>
            <h2>Or open an example</h2>
            <ul class="start-examples">
              {examples.map(({ title, text, name }) => (
                <li key={name}>
                  <button type="button" class="start-example" onClick={() => begin(text, name)}>
                    {title}
                  </button>
                </li>
              ))}
            </ul>
          </>
        )}
      </nav>
      <section class="start-folds" aria-labelledby="start-folds">
        <div class="start-folds-head">
          <h2 id="start-folds">Start from a fold</h2>
          <label class="start-find">
            <span>that has to do with</span>
            <input
              type="search"
              class="start-words"
              value={words}
              placeholder="doors, boxes, stands …"
              onInput={({ currentTarget }) => setWords(currentTarget.value)}
            />
          </label>
          <label class="start-unit">
            <span>in</span>
            <select value={unit} onChange={({ currentTarget }) => setUnit(currentTarget.value as Unit)}>
              {Object.entries(unitWords).map(([name, said]) => (
                <option key={name} value={name}>
                  {said}
                </option>
              ))}
            </select>
          </label>
        </div>
        <p class="start-none" role="status">
          {folds.length > 0 && found.length === 0
            ? 'No fold has to do with that. Try another word, or a shorter one.'
            : words.trim() === ''
              ? ''
              : `${found.length} of ${folds.length} folds`}
        </p>
        {groups.map((group) => (
          <section key={group} class="start-group" aria-label={group}>
            <h3>{group}</h3>
            <ul class="start-list">
              {found
                .filter((fold) => fold.group === group)
                .map((fold) => (
                  <li key={fold.name} class="start-fold">
                    <FoldPictureBox engine={desk.engine} fold={fold.name} unit={unit} />
                    <h4>
                      <button type="button" class="start-choose" onClick={() => void start(fold.name)}>
                        {nameOf(fold.name)}
                      </button>
                    </h4>
                    <p>{fold.summary}</p>
                  </li>
                ))}
            </ul>
          </section>
        ))}
      </section>
    </main>
  )
}

/** Where inches are bought and sold, and everywhere else. */
const usualUnit = (): Unit => (/-(US|LR|MM)\b/.test(navigator.language) ? 'in' : 'mm')

const nameOf = (fold: string): string =>
  fold === 'free' ? 'A fold of your own' : `${fold[0]?.toUpperCase()}${fold.slice(1)}`

import './sentence.css'
import type { Settings } from '../../engine/engine.ts'
import type { Desk } from '../desk.ts'
import { SizeWord } from './size-word.tsx'

const papers = { a4: 'A4', letter: 'Letter' } as const
const units = { in: 'inches', mm: 'millimetres' } as const

/** What a print is made with, as a sentence whose words can be changed. */
export function Sentence({ desk, themes }: { readonly desk: Desk; readonly themes: readonly string[] }) {
  const { value: settings } = desk.settings
  const { value: look } = desk.look
  const set = (change: Partial<Settings>): void => {
    desk.settings.value = { ...desk.settings.value, ...change }
  }
  return (
    <p class="sentence">
      <em class="sentence-title">{look?.title ?? 'A lesson'}</em> as a card of <SizeWord desk={desk} />, in{' '}
      <Words
        label="Unit of all measures"
        value={settings.units ?? look?.unit ?? 'in'}
        choices={units}
        choose={(unit) => set({ units: unit })}
      />
      , on{' '}
      <Words
        label="Paper of the printer"
        value={settings.paper}
        choices={papers}
        choose={(paper) => set({ paper })}
      />
      {themes.length > 1 && (
        <>
          {' '}
          as{' '}
          <Words
            label="How it looks"
            value={settings.theme}
            choices={Object.fromEntries(themes.map((name) => [name, name.replace(/-/g, ' ')]))}
            choose={(theme) => set({ theme })}
          />
        </>
      )}
      , for{' '}
      <NumberWord label="People in the class" value={settings.people} set={(people) => set({ people })} />{' '}
      people and <NumberWord label="Spare kits" value={settings.spare} set={(spare) => set({ spare })} /> to
      spare.
    </p>
  )
}

/** A word to be chosen among a few. */
function Words<W extends string>({
  label,
  value,
  choices,
  choose,
}: {
  readonly label: string
  readonly value: W
  readonly choices: Readonly<Record<W, string>>
  readonly choose: (value: W) => void
}) {
  return (
    <select
      class="sentence-word"
      aria-label={label}
      value={value}
      onChange={(event) => choose(event.currentTarget.value as W)}
    >
      {Object.entries<string>(choices).map(([name, words]) => (
        <option key={name} value={name}>
          {words}
        </option>
      ))}
    </select>
  )
}

/** A number of people or kits; what is no whole number leaves it as it was. */
function NumberWord({
  label,
  value,
  set,
}: {
  readonly label: string
  readonly value: number
  readonly set: (value: number) => void
}) {
  return (
    <input
      class="sentence-word sentence-number"
      type="number"
      min={0}
      max={500}
      aria-label={label}
      value={value}
      onChange={({ currentTarget }) => {
        const n = Number(currentTarget.value)
        if (Number.isInteger(n) && n >= 0 && n <= 500 && currentTarget.value !== '') set(n)
        else currentTarget.value = String(value)
      }}
    />
  )
}

import { useId, useState } from 'preact/hooks'
import type { Refusal } from '../../engine/engine.ts'
import type { Field } from '../../engine/form.ts'
import { Troubles } from './troubles.tsx'

/** What something is on: one panel or several. */
export function PanelsEntry({
  field,
  editable,
  set,
}: {
  readonly field: Field
  readonly editable: boolean
  readonly set: (items: readonly string[]) => Promise<Refusal | undefined>
}) {
  const id = useId()
  const [refusal, setRefusal] = useState<Refusal>()
  const { label, items = [], choices = [], trouble } = field
  // A name that the card has not got is shown too, so that it can be taken out.
  const strange = items.filter((item) => choices.every(({ value }) => value !== item))
  const all = [...strange.map((value) => ({ value, label: value })), ...choices]
  const wrong = refusal ? [{ ...refusal, message: refusal.refused, severity: 'error' }] : trouble
  return (
    <>
      <span id={id} class="form-label">
        {label}
      </span>
      <details class="form-panels">
        <summary aria-describedby={id}>{items.length > 0 ? items.join(', ') : 'nothing yet'}</summary>
        <fieldset aria-labelledby={id} disabled={!editable}>
          {all.map((choice) => (
            <label key={choice.value} class="form-flag">
              <input
                type="checkbox"
                checked={items.includes(choice.value)}
                onChange={async ({ currentTarget }) => {
                  const now = currentTarget.checked
                    ? [...items, choice.value]
                    : items.filter((item) => item !== choice.value)
                  setRefusal(await set(now))
                }}
              />
              {choice.label}
            </label>
          ))}
        </fieldset>
      </details>
      <Troubles list={wrong} />
    </>
  )
}

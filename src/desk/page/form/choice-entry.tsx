import { useId, useState } from 'preact/hooks'
import type { Refusal } from '../../engine/engine.ts'
import type { Field } from '../../engine/form.ts'
import { Coded } from './coded.tsx'
import { Troubles } from './troubles.tsx'

/** One of a few words. A word that is none of them stays what it is until another one is chosen. */
export function ChoiceEntry({
  field,
  editable,
  choose,
}: {
  readonly field: Field
  readonly editable: boolean
  readonly choose: (word: string) => Promise<Refusal | undefined>
}) {
  const id = useId()
  const [refusal, setRefusal] = useState<Refusal>()
  const { label, text, usual, choices = [], help, trouble } = field
  const known = choices.some(({ value }) => value === text)
  const wrong = refusal ? [{ ...refusal, message: refusal.refused, severity: 'error' }] : trouble
  return (
    <>
      <label for={id}>{label}</label>
      <div class="form-entry">
        <select
          id={id}
          class="form-input"
          value={text}
          disabled={!editable}
          aria-describedby={help === undefined ? undefined : `${id}-help`}
          aria-invalid={wrong.some(({ severity }) => severity === 'error') || undefined}
          onChange={async ({ currentTarget }) => {
            const refused = await choose(currentTarget.value)
            setRefusal(refused)
            if (refused) currentTarget.value = text
          }}
        >
          {field.kind !== 'shape' && (
            <option value="">{usual === undefined ? '' : `usually ${usual}`}</option>
          )}
          {!known && text !== '' && <option value={text}>{text}</option>}
          {choices.map((choice) => (
            <option key={choice.value} value={choice.value}>
              {choice.label}
            </option>
          ))}
        </select>
      </div>
      {help !== undefined && (
        <p class="form-help" id={`${id}-help`}>
          <Coded text={help} />
        </p>
      )}
      <Troubles list={wrong} />
    </>
  )
}

import { useId } from 'preact/hooks'
import type { Refusal } from '../../engine/engine.ts'
import type { Field } from '../../engine/form.ts'
import { Troubles } from './troubles.tsx'

/** Something that is so or not. */
export function FlagEntry({
  field,
  editable,
  set,
}: {
  readonly field: Field
  readonly editable: boolean
  readonly set: (on: boolean) => Promise<Refusal | undefined>
}) {
  const id = useId()
  return (
    <>
      <label class="form-flag" for={id}>
        <input
          id={id}
          type="checkbox"
          checked={field.text !== ''}
          disabled={!editable}
          onChange={({ currentTarget }) => void set(currentTarget.checked)}
        />
        {field.label}
      </label>
      <Troubles list={field.trouble} />
    </>
  )
}

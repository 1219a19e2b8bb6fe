import type { BorderShape, Field } from '../../engine/form.ts'
import type { Changer } from './changer.ts'
import { ChoiceEntry } from './choice-entry.tsx'
import { FlagEntry } from './flag-entry.tsx'
import { PanelsEntry } from './panels-entry.tsx'
import { TextEntry } from './text-entry.tsx'

/** One field, by its kind. */
export function FieldRow({
  field,
  editable,
  change,
}: {
  readonly field: Field
  readonly editable: boolean
  readonly change: Changer
}) {
  const { path } = field
  const set = (text: string) =>
    change(text.trim() === '' ? { kind: 'clear', path } : { kind: 'set', path, text })
  return <div class={`form-field form-field-${field.kind}`}>{entry()}</div>

  function entry() {
    switch (field.kind) {
      case 'choice':
        return <ChoiceEntry field={field} editable={editable} choose={set} />
      case 'shape':
        return (
          <ChoiceEntry
            field={field}
            editable={editable}
            choose={(shape) => change({ kind: 'shape', path, shape: shape as BorderShape })}
          />
        )
      case 'flag':
        return <FlagEntry field={field} editable={editable} set={(on) => set(on ? 'upright' : '')} />
      case 'panels':
        return (
          <PanelsEntry
            field={field}
            editable={editable}
            set={(items) => change({ kind: 'list', path, items })}
          />
        )
      default:
        return <TextEntry {...field} editable={editable} commit={set} />
    }
  }
}

import { useEffect, useRef, useState } from 'preact/hooks'
import type { Refusal } from '../../engine/engine.ts'
import type { FieldGroup, GroupKind } from '../../engine/form.ts'
import type { Desk } from '../desk.ts'
import type { Changer } from './changer.ts'
import { FieldRow } from './field-row.tsx'
import { TextEntry } from './text-entry.tsx'
import { Troubles } from './troubles.tsx'

/** What a part is, behind its name. */
const kinds: Partial<Record<GroupKind, string>> = {
  box: 'box',
  layer: 'layer',
  span: 'strip across',
  window: 'window',
  lettering: 'letters',
  piece: 'loose piece',
}

/** Which groups lie open, so that they do when the fields are shown again. */
const opened = new Set<string>()

interface GroupProps {
  readonly desk: Desk
  readonly card: string
  readonly group: FieldGroup
  readonly editable: boolean
  /** Whether it was put on the card a moment ago. */
  readonly isNew: boolean
  readonly change: Changer
  readonly renamed: (to: string) => void
  readonly removed: () => void
}

/** The fields of one thing, folded away below its name unless it is the card itself. */
export function Group(props: GroupProps) {
  const { group, card, isNew } = props
  const own = `${card} ${group.name}`
  const whole = group.kind === 'card' || group.kind === 'other'
  const [open, setOpen] = useState(whole || isNew || opened.has(own))
  const element = useRef<HTMLDetailsElement>(null)
  const shown = useRef(false)
  useEffect(() => {
    if (!isNew || shown.current) return
    setOpen(true)
    if (!open) return
    shown.current = true
    element.current?.scrollIntoView({ block: 'nearest' })
    element.current?.querySelector<HTMLElement>('input, select')?.focus()
  }, [isNew, open])
  if (whole)
    return (
      <section class="form-group" aria-label={group.title}>
        <h2>{group.title}</h2>
        <Fields {...props} />
      </section>
    )
  return (
    <details
      class="form-group"
      ref={element}
      open={open}
      onToggle={({ currentTarget }) => {
        setOpen(currentTarget.open)
        if (currentTarget.open) opened.add(own)
        else opened.delete(own)
      }}
    >
      <summary>
        <span class="form-title">{group.title}</span> <span class="form-about">{aboutOf(group)}</span>
      </summary>
      {open && <Fields {...props} />}
    </details>
  )
}

/** In a line: what it is, where, how large, and whether something is wrong with it. */
function aboutOf({ kind, fields, comes, trouble }: FieldGroup): string {
  const said = (key: string) => fields.find(({ path }) => path.at(-1) === key)?.text
  const on = said('on')
  const wrong = [...trouble, ...fields.flatMap((field) => field.trouble)].length > 0
  const what = [kinds[kind], on ? `on ${on}` : undefined].filter(Boolean).join(' ')
  return [what, comes, said('stock'), wrong ? 'something is wrong here' : ''].filter(Boolean).join(', ')
}

function Fields({ desk, card, group, editable, change, renamed, removed }: GroupProps) {
  const isPart = group.path.length === 2
  const rename = async (to: string): Promise<Refusal | undefined> => {
    if (group.from === undefined) return undefined
    const text = desk.text.value
    const edits = await desk.engine.rename(text, group.from, to)
    if ('refused' in edits) return edits
    if (edits.length === 0 || desk.text.value !== text) return undefined
    opened.add(`${card} ${group.path[0]}.${to.trim()}`)
    renamed(to.trim())
    desk.edit(edits)
    return undefined
  }
  return (
    <>
      <Troubles list={group.trouble} />
      {isPart && (
        <div class="form-field">
          <TextEntry label="Name" text={group.title} editable={editable} commit={rename} trouble={[]} />
        </div>
      )}
      {group.fields.map((field) => (
        <FieldRow
          key={`${field.kind === 'shape' ? 'shape ' : ''}${field.path.join('/')}`}
          field={field}
          editable={editable}
          change={change}
        />
      ))}
      {group.removable && editable && (
        <button
          type="button"
          class="form-remove"
          onClick={async () => {
            const refusal = await change({ kind: 'remove', path: group.path })
            if (refusal) desk.say(refusal.refused)
            else removed()
          }}
        >
          Take {isPart ? `“${group.title}”` : 'the envelope'} out
        </button>
      )}
    </>
  )
}

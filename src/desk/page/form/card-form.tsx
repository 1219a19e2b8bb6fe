import './form.css'
import type { RefObject } from 'preact'
import { useMemo, useRef, useState } from 'preact/hooks'
import type { Addition, CardForm as Form } from '../../engine/form.ts'
import type { Desk } from '../desk.ts'
import { makeChanger } from './changer.ts'
import { Group } from './group.tsx'
import { Tabs } from './tabs.tsx'
import { Troubles } from './troubles.tsx'
import { useForm } from './use-form.ts'

/** The card block of the lesson as fields. Both are the same text: what is changed here is changed there. */
export function CardForm({ desk }: { readonly desk: Desk }) {
  const names = (desk.look.value?.cards ?? []).map(({ name }) => name)
  const cards = [...new Set(names)]
  const [wanted, choose] = useState<string>()
  const main = cards.includes('card') ? 'card' : (cards[0] ?? 'card')
  const card = wanted !== undefined && cards.includes(wanted) ? wanted : main
  return (
    <div class="form">
      {cards.length > 1 && <Tabs names={cards} chosen={card} choose={choose} />}
      <OneCard key={card} desk={desk} card={card} />
    </div>
  )
}

function OneCard({ desk, card }: { readonly desk: Desk; readonly card: string }) {
  const form = useForm(desk, card)
  const change = useMemo(() => makeChanger(desk, card), [desk, card])
  const [added, setAdded] = useState<string>()
  const more = useRef<HTMLHeadingElement>(null)
  // A part with a new name is still the same one: it stays open, and the keyboard stays in it.
  const known = useRef(new Map<string, string>())
  const taken = new Set<string>()
  const keyOf = (name: string): string => {
    let key = known.current.get(name) ?? name
    while (taken.has(key)) key += ' again'
    taken.add(key)
    return key
  }
  if (!form) return <p class="form-note">One moment …</p>
  if ('refused' in form) return <Troubles list={[{ ...refusedAs(form), severity: 'error' }]} />
  return (
    <>
      {!form.editable && (
        <p class="form-note">
          The lines of this card cannot be read as they are. Mend them among the words; until then the fields
          show what can be read, and leave it alone.
        </p>
      )}
      <Troubles list={form.trouble} />
      {form.groups.map((group) => (
        <Group
          key={keyOf(group.name)}
          desk={desk}
          card={card}
          group={group}
          editable={form.editable}
          isNew={group.name === added}
          change={change}
          renamed={(to) => {
            known.current.set(`${group.path[0]}.${to}`, known.current.get(group.name) ?? group.name)
          }}
          removed={() => {
            desk.say(`${group.title} is taken out. Undo brings it back.`)
            more.current?.focus()
          }}
        />
      ))}
      {form.onlyInText.length > 0 && (
        <p class="form-note">
          Among the words only:{' '}
          {form.onlyInText.map((key) => (
            <code key={key}>{key}</code>
          ))}
        </p>
      )}
      <More
        form={form}
        heading={more}
        add={async (what, name) => {
          const refusal = await change({ kind: 'add', what, name })
          if (refusal) desk.say(refusal.refused)
          else setAdded(what === 'envelope' ? 'envelope' : `${listOf[what]}.${name}`)
        }}
      />
    </>
  )
}

const refusedAs = ({ refused, suggestion }: { refused: string; suggestion?: string }) => ({
  message: refused,
  ...(suggestion !== undefined && { suggestion }),
})

/** Where each part is listed in the text. */
const listOf: Readonly<Record<Exclude<Addition, 'envelope'>, string>> = {
  layer: 'layers',
  span: 'spans',
  window: 'apertures',
  lettering: 'lettering',
  piece: 'pieces',
}

/** What the card may have besides. */
function More({
  form,
  heading,
  add,
}: {
  readonly form: Form
  readonly heading: RefObject<HTMLHeadingElement | null>
  readonly add: (what: Addition, name: string) => void
}) {
  if (!form.editable || form.additions.length === 0) return null
  return (
    <section class="form-more" aria-labelledby="form-more">
      <h2 id="form-more" tabIndex={-1} ref={heading}>
        Put something on it
      </h2>
      <p class="form-more-list">
        {form.additions.map(({ what, label, name }) => (
          <button key={what} type="button" class="form-add" onClick={() => add(what, name)}>
            {label}
          </button>
        ))}
      </p>
    </section>
  )
}

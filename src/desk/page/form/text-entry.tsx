import { useEffect, useId, useRef, useState } from 'preact/hooks'
import type { Refusal } from '../../engine/engine.ts'
import type { Field } from '../../engine/form.ts'
import { Coded } from './coded.tsx'
import { Troubles } from './troubles.tsx'

interface TextEntryProps
  extends Pick<Field, 'label' | 'text' | 'comes' | 'usual' | 'help' | 'suggestions' | 'trouble'> {
  readonly editable: boolean
  readonly commit: (text: string) => Promise<Refusal | undefined>
}

/** After typing has rested so long, what stands in the field goes into the text, in milliseconds. */
const rest = 1200

/**
 * A line to write in. What is being written stays, whatever happens to the text meanwhile; it goes into the text when
 * the field is left, with Enter, or after a rest. Escape takes it back.
 */
export function TextEntry({
  label,
  text,
  comes,
  usual,
  help,
  suggestions = [],
  trouble,
  editable,
  commit,
}: TextEntryProps) {
  const id = useId()
  const input = useRef<HTMLInputElement>(null)
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined)
  const written = useRef<string>(undefined)
  const [draft, setDraft] = useState<string>()
  const [refusal, setRefusal] = useState<Refusal>()
  written.current = draft
  const isHere = (): boolean => document.activeElement === input.current
  const put = async (): Promise<void> => {
    clearTimeout(timer.current)
    const now = written.current
    if (now === undefined) return
    if (now.trim() === text) {
      if (!isHere()) setDraft(undefined)
      return
    }
    const answer = await commit(now)
    setRefusal(answer)
    if (!answer && !isHere() && written.current === now) setDraft(undefined)
  }
  const last = useRef(put)
  last.current = put
  // What the text says now is shown, unless something is being written here.
  useEffect(() => {
    if (!isHere()) setDraft(undefined)
    setRefusal(undefined)
  }, [text])
  // A field that goes away in mid-word, as its group is folded, takes no word with it.
  useEffect(() => () => void last.current(), [])
  const about = [
    comes && `${id}-comes`,
    help && `${id}-help`,
    (refusal || trouble.length > 0) && `${id}-trouble`,
  ]
  const wrong = refusal
    ? [{ message: refusal.refused, severity: 'error', ...suggestionOf(refusal) }]
    : trouble
  return (
    <>
      <label for={id}>{label}</label>
      <div class="form-entry">
        <input
          id={id}
          ref={input}
          class="form-input"
          type="text"
          autocomplete="off"
          spellcheck={false}
          readOnly={!editable}
          value={draft ?? text}
          placeholder={usual === undefined ? undefined : `usually ${usual}`}
          list={suggestions.length > 0 ? `${id}-list` : undefined}
          aria-describedby={about.filter(Boolean).join(' ') || undefined}
          aria-invalid={wrong.some(({ severity }) => severity === 'error') || undefined}
          onInput={({ currentTarget }) => {
            setDraft(currentTarget.value)
            clearTimeout(timer.current)
            timer.current = setTimeout(() => void last.current(), rest)
          }}
          onBlur={() => void put()}
          onKeyDown={({ key }) => {
            if (key === 'Enter') void put()
            if (key !== 'Escape' || draft === undefined) return
            clearTimeout(timer.current)
            setDraft(undefined)
            setRefusal(undefined)
          }}
        />
        {suggestions.length > 0 && (
          <datalist id={`${id}-list`}>
            {suggestions.map((word) => (
              <option key={word} value={word} />
            ))}
          </datalist>
        )}
        {comes !== undefined && (
          <span class="form-comes" id={`${id}-comes`}>
            <span aria-hidden="true">= </span>
            <span class="unseen">comes to </span>
            {comes}
          </span>
        )}
      </div>
      {help !== undefined && (
        <p class="form-help" id={`${id}-help`}>
          <Coded text={help} />
        </p>
      )}
      <Troubles list={wrong} id={`${id}-trouble`} />
    </>
  )
}

const suggestionOf = ({ suggestion }: Refusal) => (suggestion === undefined ? {} : { suggestion })

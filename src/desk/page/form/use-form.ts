import { useEffect, useRef, useState } from 'preact/hooks'
import type { Refusal } from '../../engine/engine.ts'
import type { CardForm } from '../../engine/form.ts'
import type { Desk } from '../desk.ts'

/** The form of a card, following the text; what is asked last is what counts. */
export function useForm(desk: Desk, card: string): CardForm | Refusal | undefined {
  const [form, setForm] = useState<CardForm | Refusal>()
  const asked = useRef(0)
  const look = desk.look.value
  useEffect(() => {
    const mine = ++asked.current
    void desk.engine.form(look?.text ?? desk.text.value, card).then((answer) => {
      if (mine === asked.current) setForm(answer)
    })
  }, [look?.text, card, desk])
  return form
}

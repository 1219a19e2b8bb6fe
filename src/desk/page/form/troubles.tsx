import type { Trouble } from '../../engine/form.ts'
import { Coded } from './coded.tsx'

/** What is wrong, and what would cure it. */
export function Troubles({ list, id }: { readonly list: readonly Trouble[]; readonly id?: string }) {
  if (list.length === 0) return null
  return (
    <ul class="form-troubles" id={id}>
      {list.map(({ message, suggestion, severity }) => (
        <li key={message} class={`form-trouble form-${severity}`}>
          <Coded text={sentence(message)} />{' '}
          {suggestion !== undefined && <Coded text={sentence(suggestion)} />}
        </li>
      ))}
    </ul>
  )
}

const sentence = (words: string): string => (/[.!?]`?$/.test(words) ? words : `${words}.`)

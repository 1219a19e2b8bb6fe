import { useEffect, useState } from 'preact/hooks'
import { memory } from './memory.ts'

const lights = { room: 'as the room', day: 'by day', night: 'by night' } as const
type Light = keyof typeof lights
const known = (word: string | undefined): Light => (word === 'day' || word === 'night' ? word : 'room')

/** Whether the desk is light or dark: as the computer says, or as is chosen here. The paper stays white. */
export function LightWord() {
  const [light, setLight] = useState(known(memory.get('light')))
  useEffect(() => {
    if (light === 'room') delete document.documentElement.dataset.light
    else document.documentElement.dataset.light = light
    memory.set('light', light === 'room' ? undefined : light)
  }, [light])
  return (
    <select
      class="quiet-button"
      aria-label="Light of the desk"
      value={light}
      onChange={({ currentTarget }) => setLight(known(currentTarget.value))}
    >
      {Object.entries(lights).map(([name, words]) => (
        <option key={name} value={name}>
          Desk {words}
        </option>
      ))}
    </select>
  )
}

import { useRef } from 'preact/hooks'

/** The cards of a lesson that has several. Arrow keys go from one to the next. */
export function Tabs({
  names,
  chosen,
  choose,
}: {
  readonly names: readonly string[]
  readonly chosen: string
  readonly choose: (name: string) => void
}) {
  const list = useRef<HTMLDivElement>(null)
  const go = (by: number): void => {
    const to = (names.indexOf(chosen) + by + names.length) % names.length
    choose(names[to] ?? chosen)
    list.current?.querySelectorAll<HTMLButtonElement>('button')[to]?.focus()
  }
  return (
    <div class="form-tabs" role="tablist" aria-label="Cards of this lesson" ref={list}>
      {names.map((name) => (
        <button
          key={name}
          type="button"
          role="tab"
          class="form-tab"
          aria-selected={name === chosen}
          tabIndex={name === chosen ? 0 : -1}
          onClick={() => choose(name)}
          onKeyDown={({ key }) => {
            if (key === 'ArrowRight') go(1)
            if (key === 'ArrowLeft') go(-1)
          }}
        >
          {name}
        </button>
      ))}
    </div>
  )
}

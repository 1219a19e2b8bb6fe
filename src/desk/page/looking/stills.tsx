import { useEffect, useRef } from 'preact/hooks'
import type { StillCard } from '../../engine/motion.ts'
import { cleaned } from './clean.ts'

/** What stands for the card in space where nothing can be drawn in it: flat, shut and standing. */
export function Stills({
  cards,
  lang,
  sorry,
}: {
  readonly cards: readonly StillCard[]
  readonly lang: string
  readonly sorry: string
}) {
  return (
    <div class="looking-stills" lang={lang}>
      <p>{sorry}</p>
      {cards.map((card) => (
        <div key={card.name} class="looking-still-card">
          {cards.length > 1 && <h2>{card.name}</h2>}
          <Drawn figures={card.figures} />
        </div>
      ))}
    </div>
  )
}

function Drawn({ figures }: { readonly figures: readonly string[] }) {
  const place = useRef<HTMLDivElement>(null)
  useEffect(() => {
    const { body } = new DOMParser().parseFromString(figures.join(''), 'text/html')
    place.current?.replaceChildren(...cleaned(body).childNodes)
  }, [figures])
  return <div ref={place} class="looking-still-figures" />
}

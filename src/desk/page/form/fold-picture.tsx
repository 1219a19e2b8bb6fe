import { useEffect, useRef, useState } from 'preact/hooks'
import type { Engine } from '../../engine/engine.ts'
import type { FoldPicture } from '../../engine/folds.ts'

type Unit = 'in' | 'mm'

const drawn = new Map<string, FoldPicture>()
let queue: Promise<unknown> = Promise.resolve()

/** The picture of a fold. One is drawn after the other, and one that is out of sight again is passed over. */
function picture(
  engine: Engine,
  fold: string,
  unit: Unit,
  wanted: () => boolean,
): Promise<FoldPicture | undefined> {
  const key = `${fold} ${unit}`
  const next = queue.then(async () => {
    const known = drawn.get(key)
    if (known || !wanted()) return known
    const made = await engine.foldPicture(fold, unit)
    if (made) drawn.set(key, made)
    return made
  })
  queue = next.catch(() => undefined)
  return next
}

/** The standing card of a fold, drawn when it comes into sight. */
export function FoldPictureBox({
  engine,
  fold,
  unit,
}: {
  readonly engine: Engine
  readonly fold: string
  readonly unit: Unit
}) {
  const box = useRef<HTMLDivElement>(null)
  const [shown, setShown] = useState(drawn.get(`${fold} ${unit}`))
  useEffect(() => {
    const element = box.current
    if (!element) return undefined
    let near = false
    let alive = true
    const seen = new IntersectionObserver(
      (entries) => {
        near = entries.some(({ isIntersecting }) => isIntersecting)
        if (!near) return
        void picture(engine, fold, unit, () => alive && near).then((made) => {
          if (alive && made) {
            setShown(made)
            seen.disconnect()
          }
        })
      },
      { rootMargin: '200px' },
    )
    seen.observe(element)
    return () => {
      alive = false
      seen.disconnect()
    }
  }, [engine, fold, unit])
  return (
    <div class="start-picture" ref={box}>
      {shown && (
        <img
          src={`data:image/svg+xml,${encodeURIComponent(shown.svg)}`}
          alt={shown.alternative}
          decoding="sync"
        />
      )}
    </div>
  )
}

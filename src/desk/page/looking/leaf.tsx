import type { PageFoot } from '../../engine/engine.ts'
import { pitchOf, type Spot } from './leaves.ts'
import type { FootType, PageBox } from './printed.ts'

/** A white leaf with what stands in its foot. The text lies on it. */
export function Leaf({
  box,
  index,
  count,
  foot,
  lang,
  type,
}: {
  readonly box: PageBox
  readonly index: number
  readonly count: number
  readonly foot?: PageFoot
  readonly lang?: string
  readonly type: FootType
}) {
  const { width, height, bottom, left, right } = box
  return (
    <div
      class="looking-leaf"
      style={{ left: `${index * pitchOf(box)}px`, width: `${width}px`, height: `${height}px` }}
    >
      {foot && (
        <p
          class="looking-foot-line"
          lang={lang}
          style={{ height: `${bottom}px`, left: `${left}px`, right: `${right}px`, ...type }}
        >
          <span>{foot.title}</span>
          <span class="looking-foot-middle">
            {[foot.print, foot.own]
              .filter((line) => line)
              .map((line) => (
                <span key={line}>{line}</span>
              ))}
          </span>
          <span>{numberOf(foot, index + 1, count)}</span>
        </p>
      )}
    </div>
  )
}

function numberOf({ beside, number }: PageFoot, page: number, pages: number): string {
  const said = number.replace('{page}', String(page)).replace('{pages}', String(pages))
  return beside ? `${beside} · ${said}` : said
}

/** A soft mark in the margin beside what is being written. */
export function Marks({ spots, box }: { readonly spots: readonly Spot[]; readonly box: PageBox }) {
  return (
    <>
      {spots.map(({ leaf, top, height }) => (
        <div
          key={leaf}
          class="looking-mark"
          aria-hidden="true"
          style={{
            left: `${leaf * pitchOf(box) + box.left / 2 - 6}px`,
            top: `${top}px`,
            height: `${height}px`,
          }}
        />
      ))}
    </>
  )
}

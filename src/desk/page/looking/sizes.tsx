import './sizes.css'
import { useSignal, useSignalEffect } from '@preact/signals'
import { useRef } from 'preact/hooks'
import type { SizesAnswer } from '../../engine/sizes.ts'
import type { Desk } from '../desk.ts'
import chartCss from './chart-frame.css?inline'
import { chooseInHeads } from './choosing-sizes.ts'
import { blank, documentIn, followLink, sandbox, setBody, setStyles } from './frame.ts'

/** The chart of all sizes of the lesson; the head of a column chooses its size. */
export function Sizes({ desk }: { readonly desk: Desk }) {
  const frame = useRef<HTMLIFrameElement>(null)
  const doc = useSignal<Document | undefined>(undefined)
  const chart = useSignal<SizesAnswer | undefined>(undefined)
  /** Whether the lesson cannot be charted as it is written now. */
  const stuck = useSignal(false)
  useSignalEffect(() => {
    const [look, settings, beside] = [desk.look.value, desk.settings.value, desk.beside.value]
    if (!look) return
    let late = false
    void desk.engine.sizes(look.text, settings, beside).then((answer) => {
      if (late) return
      stuck.value = answer === undefined
      if (answer) chart.value = answer
    })
    return () => {
      late = true
    }
  })
  useSignalEffect(() => {
    const [sheet, answer] = [doc.value, chart.value]
    if (!sheet || !answer) return
    setStyles(sheet, [answer.css, chartCss])
    setBody(sheet, answer.body, answer.lang)
    return chooseInHeads(sheet, answer.columns, (column) => {
      const { closed: _, ...rest } = desk.settings.peek()
      desk.settings.value = {
        ...rest,
        units: column.units,
        ...(column.closed !== undefined && { closed: column.closed }),
      }
      desk.say(`The card is now ${column.label}`)
    })
  })
  useSignalEffect(() => {
    const sheet = doc.value
    if (!sheet) return
    const follow = (event: MouseEvent): void => void followLink(event, sheet)
    sheet.addEventListener('click', follow)
    sheet.addEventListener('auxclick', follow)
    return () => {
      sheet.removeEventListener('click', follow)
      sheet.removeEventListener('auxclick', follow)
    }
  })
  return (
    <section class="looking-sizes" aria-label="The card in every size">
      <p class="looking-hint" role="status">
        {stuck.value
          ? stuckWords(chart.value !== undefined)
          : 'Choose the head of a column, and the card is made in that size.'}
      </p>
      <iframe
        ref={frame}
        class="looking-chart"
        title="Chart of sizes"
        hidden={!chart.value}
        sandbox={sandbox}
        srcdoc={blank}
        onLoad={() => {
          doc.value = documentIn(frame.current)
        }}
      />
    </section>
  )
}

const stuckWords = (had: boolean): string =>
  had
    ? 'The lesson has a mistake, so this is the chart of before. Mend it, and the chart follows.'
    : 'The sizes can be charted when the lesson has a card without mistakes.'

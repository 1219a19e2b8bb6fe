import { useState } from 'preact/hooks'
import { withSetting } from '../../../publish/page-html.ts'
import type { MadeKind } from '../../engine/engine.ts'
import type { Desk } from '../desk.ts'
import type { PrintWish, Store } from '../keeping/store.ts'
import fonts from '../style/fonts.css?inline'
import { Dialog } from './dialog.tsx'
import { printPage } from './print-page.ts'
import { blobOf, saveFile } from './save-file.ts'

/** Something that can be had of the lesson. */
interface Offer {
  readonly words: string
  readonly about: string
  /** What the browser prints or saves. */
  readonly kind: MadeKind
  readonly prints: boolean
  /** What the local server makes a PDF of. */
  readonly pdf?: PrintWish['what']
}

const offers: readonly Offer[] = [
  {
    words: 'Print the handout',
    about: 'On the paper that the sentence at the top says',
    kind: 'page',
    prints: true,
    pdf: 'handout',
  },
  {
    words: 'Print templates',
    about: 'Every piece at its real size, with a ruler to check',
    kind: 'template',
    prints: true,
    pdf: 'template',
  },
  {
    words: 'Save the handout as a web page',
    about: 'One file that any browser opens, pictures and all',
    kind: 'page',
    prints: false,
  },
  {
    words: 'Save the measures as text',
    about: 'Tables for a post or for below a film',
    kind: 'text',
    prints: false,
  },
  {
    words: 'Save the pieces as a drawing',
    about: 'SVG: cuts and scores in their real size',
    kind: 'svg',
    prints: false,
  },
  {
    words: 'Save the pieces for a machine',
    about: 'DXF: cuts and scores on layers of their own',
    kind: 'dxf',
    prints: false,
  },
  {
    words: 'Save the creases as a model',
    about: 'FOLD: for other programs that fold paper',
    kind: 'fold',
    prints: false,
  },
]

/** What can be printed and saved of the lesson as it stands on the desk. */
export function PrintDialog({
  desk,
  store,
  path,
  close,
}: {
  readonly desk: Desk
  readonly store: Store
  readonly path: string
  readonly close: () => void
}) {
  const [trouble, setTrouble] = useState<string>()
  const [busy, setBusy] = useState<string>()
  const [notes, setNotes] = useState<readonly string[]>([])
  const doing = async (words: string, work: () => Promise<void>): Promise<void> => {
    setBusy(words)
    setTrouble(undefined)
    setNotes([])
    try {
      await work()
    } catch (error) {
      setTrouble(error instanceof Error ? error.message : String(error))
    }
    setBusy(undefined)
  }
  const make =
    ({ kind, prints }: Offer) =>
    async (): Promise<void> => {
      const { text, settings, beside } = desk
      const files = await desk.engine.make(text.value, settings.value, kind, beside.value, fonts)
      if ('refused' in files) throw new Error([files.refused, files.suggestion].filter(Boolean).join('. '))
      const { value: setting } = desk.setting
      for (const made of files) {
        const isSet = kind === 'page' && setting !== ''
        const file = isSet ? { ...made, data: withSetting(String(made.data), setting) } : made
        if (prints) await printPage(String(file.data))
        else saveFile(file.name, blobOf(file))
      }
    }
  const pdf = (what: PrintWish['what']) => async (): Promise<void> => {
    const { closed, units, paper, theme } = desk.settings.value
    const wish = {
      path,
      text: desk.text.value,
      what,
      paper,
      theme,
      ...(closed && { closed }),
      ...(units && { units }),
    }
    const made = await store.print?.(wish)
    if (!made) return
    saveFile(`${path.replace(/^.*\/|\.md$/g, '')}${what === 'handout' ? '' : `-${what}`}.pdf`, made.pdf)
    setNotes(made.notes)
  }
  return (
    <Dialog title="Print and save" close={close}>
      <p role="status" class="dialog-note">
        {busy ? `${busy} …` : notes.join(' ')}
      </p>
      {trouble && (
        <p class="dialog-trouble" role="alert">
          {trouble}
        </p>
      )}
      <ul class="dialog-list">
        {offers.map((offer) => (
          <li key={offer.words}>
            <button type="button" class="dialog-choice" onClick={() => void doing(offer.words, make(offer))}>
              <strong>{offer.words}</strong>
              <span>{offer.about}</span>
            </button>
            {offer.pdf && store.print && (
              <button
                type="button"
                class="dialog-choice dialog-more"
                onClick={() => void doing('Making the PDF', pdf(offer.pdf as PrintWish['what']))}
              >
                … or save it as a PDF
              </button>
            )}
          </li>
        ))}
      </ul>
    </Dialog>
  )
}

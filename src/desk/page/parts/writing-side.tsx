import './writing-side.css'
import { useEffect, useRef, useState } from 'preact/hooks'
import { CardForm } from '../form/card-form.tsx'
import { hearPictures } from '../keeping/drop-pictures.ts'
import type { Keeper } from '../keeping/keeper.ts'
import { PictureButton } from '../keeping/picture-button.tsx'
import type { OwnDesk } from '../new-desk.ts'
import { Writing } from '../writing/writing.tsx'

/** The writing, in words or as the fields of the card; put aside, the paper has the desk for itself. */
export function WritingSide({
  desk,
  keeper,
  takePictures,
}: {
  readonly desk: OwnDesk
  readonly keeper: Keeper
  /** Puts pictures in that are chosen, dropped or pasted. */
  readonly takePictures: (files: readonly File[]) => void
}) {
  const [fields, setFields] = useState(false)
  const words = useRef<HTMLDivElement>(null)
  useEffect(() => (words.current ? hearPictures(words.current, takePictures) : undefined), [takePictures])
  const { value: open } = desk.writing
  const looking = keeper.state.value.phase === 'looking'
  useEffect(() => desk.handle()?.lock(looking), [desk, looking])
  return (
    <section class="writing-side" aria-label="Writing" data-open={open}>
      <div class="writing-side-head">
        {open && (
          <>
            <Choice words="The words" chosen={!fields} choose={() => setFields(false)} />
            <Choice words="The card, field by field" chosen={fields} choose={() => setFields(true)} />
            {!fields && <PictureButton take={takePictures} />}
          </>
        )}
        <button
          type="button"
          class="quiet-button writing-side-fold"
          aria-expanded={open}
          onClick={() => {
            desk.writing.value = !open
          }}
        >
          {open ? 'Put the writing aside' : 'Write'}
        </button>
      </div>
      <div class="writing-side-words" ref={words} hidden={!open || fields}>
        <Writing
          desk={desk}
          start={desk.start()}
          changed={(text) => {
            desk.wrote(text)
            keeper.changed(text)
          }}
          onState={() => keeper.changed(desk.handle()?.text() ?? desk.text.value)}
          ready={desk.writes}
        />
      </div>
      {open && fields && <CardForm desk={desk} />}
    </section>
  )
}

function Choice({
  words,
  chosen,
  choose,
}: {
  readonly words: string
  readonly chosen: boolean
  readonly choose: () => void
}) {
  return (
    <button type="button" class="writing-side-choice" aria-pressed={chosen} onClick={choose}>
      {words}
    </button>
  )
}

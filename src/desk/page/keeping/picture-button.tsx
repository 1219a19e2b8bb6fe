import './picture-button.css'
import { useRef } from 'preact/hooks'

/** Lets the teacher choose pictures; on a phone, also take one. */
export function PictureButton({ take }: { readonly take: (files: readonly File[]) => void }) {
  const input = useRef<HTMLInputElement>(null)
  return (
    <>
      <button type="button" class="quiet-button picture-button" onClick={() => input.current?.click()}>
        Put in a picture
      </button>
      <input
        ref={input}
        class="picture-input"
        type="file"
        accept="image/*"
        multiple
        tabIndex={-1}
        aria-hidden="true"
        onChange={(event) => {
          take([...(event.currentTarget.files ?? [])])
          // The same file again is a change again.
          event.currentTarget.value = ''
        }}
      />
    </>
  )
}

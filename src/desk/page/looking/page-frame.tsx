import './page-frame.css'
import { useSignal, useSignalEffect } from '@preact/signals'
import { useEffect, useRef } from 'preact/hooks'
import type { PageOf } from '../../engine/engine.ts'
import { blank, documentIn, followLink, sandbox, setBody, setStyles } from './frame.ts'
import frameCss from './plain-frame.css?inline'

/** A page that is looked at and not broken into leaves: a list of the class, a plan. Nothing in it runs. */
export function PageFrame({ page, title }: { readonly page: PageOf; readonly title: string }) {
  const frame = useRef<HTMLIFrameElement>(null)
  const doc = useSignal<Document | undefined>(undefined)
  const shown = useSignal(page)
  useEffect(() => {
    shown.value = page
  }, [page, shown])
  useSignalEffect(() => {
    const sheet = doc.value
    if (!sheet) return
    const { css, body, lang } = shown.value
    setStyles(sheet, [css, frameCss])
    setBody(sheet, body, lang)
    const follow = (event: MouseEvent): void => void followLink(event, sheet)
    sheet.addEventListener('click', follow)
    return () => sheet.removeEventListener('click', follow)
  })
  return (
    <iframe
      ref={frame}
      class="page-frame"
      title={title}
      sandbox={sandbox}
      srcdoc={blank}
      onLoad={() => {
        doc.value = documentIn(frame.current)
      }}
    />
  )
}

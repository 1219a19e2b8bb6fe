import { bestLayout } from '../../../publish/setting.ts'
import { layoutIn } from './leaves.ts'
import type { PageBox } from './printed.ts'
import { repeatHeads } from './repeated-heads.ts'

/** Chooses the setting whose leaves fall best, as printing does, and leaves the document in it. Nothing is drawn between. */
export async function settle(doc: Document, box: PageBox): Promise<void> {
  const { setting } = await bestLayout((tried) => {
    put(doc, tried ?? '')
    repeatHeads(doc, box)
    return layoutIn(doc, box)
  })
  put(doc, setting ?? '')
  repeatHeads(doc, box)
}

const put = (doc: Document, name: string): void => {
  if (doc.documentElement.className !== name) doc.documentElement.className = name
}

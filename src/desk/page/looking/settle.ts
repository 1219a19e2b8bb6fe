import { onePageSettings } from '../../../publish/one-page.ts'
import { bestLayout, type Layout } from '../../../publish/setting.ts'
import { layoutIn } from './leaves.ts'
import type { PageBox } from './printed.ts'
import { repeatHeads } from './repeated-heads.ts'

/** Chooses the setting whose leaves fall best, as printing does, and leaves the document in it. Nothing is drawn between. */
export async function settle(doc: Document, box: PageBox, onePage = false): Promise<void> {
  const tryOut = (tried = ''): Layout => {
    put(doc, tried)
    repeatHeads(doc, box)
    return layoutIn(doc, box)
  }
  const setting = onePage ? largest(tryOut) : (await bestLayout(tryOut)).setting
  tryOut(setting)
}

/** The largest type in which all is on one page, or else on two, or else the smallest. */
function largest(tryOut: (setting: string) => Layout): string | undefined {
  const within = (most: number): string | undefined =>
    onePageSettings.find((setting) => tryOut(setting).pages <= most)
  return within(1) ?? within(2) ?? onePageSettings.at(-1)
}

const put = (doc: Document, name: string): void => {
  if (doc.documentElement.className !== name) doc.documentElement.className = name
}

import { foldStyles } from '../../card/fold-styles.ts'
import type { FoldStyle } from '../../card/style.ts'
import { type Listing, words } from '../../workshop/listing.ts'
import { listingText } from '../../workshop/listing-text.ts'
import { asJson } from '../answer.ts'
import type { Action } from '../commands.ts'
import { foldNamed } from '../fold-style.ts'
import { exitCodes } from '../problems.ts'

/** `folds [NAME]` */
export const folds: Action = async ([name], { json }, outside) => {
  const style = name === undefined ? undefined : foldNamed(name)
  const styles = style ? [style] : [...foldStyles.values()]
  const text = style ? foldListing(style) : catalogue(styles)
  outside.stdout(json ? asJson({ folds: styles.map(foldJson) }) : listingText(text))
  return exitCodes.done
}

const catalogue = (styles: readonly FoldStyle[]): Listing => ({
  title: 'Folds',
  intro: '`foldlore folds NAME` shows one of them, `foldlore new NAME` writes a starter lesson for it.',
  sections: [
    {
      heading: 'The catalogue',
      columns: [words('fold'), words('what it is'), words('lengths')],
      rows: styles.map((s) => [s.name, s.summary, Object.keys(s.parameters).join(', ')]),
      note: 'For any other card of parallel folds write `fold: free` and list its `panels` and `creases`.',
    },
  ],
})

const foldListing = (style: FoldStyle): Listing => ({
  title: style.name,
  intro: style.summary,
  sections: [
    {
      heading: 'Lengths it takes',
      columns: [words('length'), words('usually'), words('what it is')],
      rows: Object.entries(style.parameters).map(([name, { usual, help }]) => [name, usual, help]),
    },
    {
      heading: 'Panels that layers sit on',
      columns: [words('panel'), words('side they go on unless a layer says otherwise')],
      rows: Object.entries(style.panels).map(([name, side]) => [name, sideWords[side]]),
    },
  ].filter(({ rows }) => rows.length > 0),
})

/** As a layer's `side:` says it. */
const sideWords = { face: 'inside', back: 'outside' } as const

const foldJson = ({ name, summary, parameters, panels }: FoldStyle) => ({
  name,
  summary,
  parameters: Object.entries(parameters).map(([parameter, { usual, help }]) => ({
    name: parameter,
    usual,
    help,
  })),
  panels: Object.entries(panels).map(([panel, side]) => ({ name: panel, side })),
})

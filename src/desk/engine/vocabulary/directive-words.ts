import type { FigureKind } from '../../../lesson/nodes.ts'
import { directiveNames } from '../../../lesson/syntax/directives.ts'
import type { Word } from './card-words.ts'

/** What each figure shows. */
export const figureHelp: Readonly<Record<FigureKind, string>> = {
  flat: 'A piece as it is cut, with its scores.',
  place: 'Where something is stuck.',
  folding: 'How it folds, in stages.',
  closed: 'The shut card.',
  standing: 'The card as it stands.',
  edge: 'The shut card seen along its folds.',
  apart: 'The pieces lifted off one another.',
  lettering: 'Where each letter begins.',
  sheet: 'How the pieces come out of their sheet.',
  envelope: 'The sheet of the envelope, and how it folds.',
}

const attributes: Readonly<Record<string, readonly Word[]>> = {
  figure: [
    { word: 'show', help: 'What is drawn.' },
    { word: 'of', help: 'The piece that is drawn; without it the whole card.' },
    { word: 'label', help: 'Which numbers and names stand in it.' },
  ],
  scan: [{ word: 'link', help: 'The address that the printed code opens.' }],
  caution: [{ word: 'about', help: 'The hazard it speaks of.' }],
}

/** What can stand in the braces of a directive. */
export const attributesOf = (directive: string): readonly Word[] => attributes[directive] ?? []

type Name = (typeof directiveNames)[keyof typeof directiveNames][number]

/** What each word behind colons is for, and how it is begun. */
export const directiveHelp: Readonly<Record<Name, { readonly help: string; readonly begin: string }>> = {
  minutes: { help: 'How long the step takes.', begin: ':minutes[5]' },
  drying: { help: 'How long it must dry before it is used again.', begin: ':drying[20 min]' },
  meant: { help: 'A plain number that is the same at every size.', begin: ':meant[2 mm]' },
  figure: { help: 'A drawing of the card or of a piece.', begin: '::figure[]{show=flat}' },
  scan: { help: 'A code that opens a link.', begin: '::scan[]{link=https://}' },
  tip: { help: 'Advice beside a step.', begin: ':::tip\n\n:::' },
  caution: { help: 'What can hurt, and how to work safely.', begin: ':::caution\n\n:::' },
  ahead: { help: 'What is done before the class.', begin: ':::ahead\n\n:::' },
  variation: { help: 'Another way to make it.', begin: ':::variation\n\n:::' },
}

/** The words behind so many colons. */
export const directivesWith = (colons: number): readonly Name[] =>
  colons === 1 ? directiveNames.text : colons === 2 ? directiveNames.leaf : directiveNames.container

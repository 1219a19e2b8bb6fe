import { cutLinesOf } from '../draw/cut-lines.ts'
import { alone, laidOut, type SheetOfPieces } from '../draw/sheet-of-pieces.ts'
import type { FilledLesson, ProvenCard } from '../lesson/lesson.ts'
import type { ExportKind } from './export-kinds.ts'
import { foldFile } from './fold-file.ts'

/** A file for a machine or for another program. */
export interface ExportedFile {
  /** What stands behind the lesson's name, such as `base`; empty for all of it. */
  readonly name: string
  readonly text: string
}

/**
 * The files of a lesson for machines.
 *
 * @param together all pieces of a card on one sheet instead of one file for each piece. FOLD files always hold a card.
 */
export async function exportLesson(
  lesson: FilledLesson,
  kind: ExportKind,
  together: boolean,
): Promise<ExportedFile[]> {
  const several = lesson.cards.length > 1
  const files = lesson.cards.map(async (proven): Promise<ExportedFile[]> => {
    const own = several ? proven.card.name : ''
    const title = [lesson.frontMatter.title, own].filter((part) => part !== '').join(', ')
    if (kind === 'fold') return [{ name: own, text: foldText(title, proven) }]
    const write = await writerFor(kind)
    const pieces = cutLinesOf(proven.card)
    if (together) return [{ name: own, text: write(title, laidOut(pieces)) }]
    return pieces.map((piece) => ({
      name: [own, piece.name].filter((part) => part !== '').join(' '),
      text: write(`${title}: ${piece.name}`, alone(piece)),
    }))
  })
  return (await Promise.all(files)).flat()
}

const foldText = (title: string, { card, proof }: ProvenCard): string =>
  `${JSON.stringify(foldFile(title, card.structure, proof), undefined, 1)}\n`

/** What is needed for one kind is not loaded for another. */
async function writerFor(kind: 'svg' | 'dxf'): Promise<(title: string, sheet: SheetOfPieces) => string> {
  if (kind === 'svg') return (await import('./export-svg.ts')).sheetSvg
  const { sheetDxf } = await import('./export-dxf.ts')
  return (_, sheet) => sheetDxf(sheet)
}

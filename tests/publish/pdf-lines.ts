import { OPS, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'

type Matrix = readonly [number, number, number, number, number, number]
/** A box in points from the lower left corner of the page. */
export interface LineBox {
  readonly left: number
  readonly bottom: number
  readonly width: number
  readonly height: number
}

const times = (m: Matrix, n: Matrix): Matrix => [
  m[0] * n[0] + m[2] * n[1],
  m[1] * n[0] + m[3] * n[1],
  m[0] * n[2] + m[2] * n[3],
  m[1] * n[2] + m[3] * n[3],
  m[0] * n[4] + m[2] * n[5] + m[4],
  m[1] * n[4] + m[3] * n[5] + m[5],
]

/**
 * The boxes of all paths that a page draws, as a reader of PDF finds them in its operators, as far as nothing cuts them
 * off.
 */
export async function lineBoxes(pdf: PDFDocumentProxy, page: number): Promise<LineBox[]> {
  const { fnArray, argsArray } = await (await pdf.getPage(page)).getOperatorList()
  let now: { matrix: Matrix; clip: LineBox | undefined } = { matrix: [1, 0, 0, 1, 0, 0], clip: undefined }
  const kept: (typeof now)[] = []
  let clips = false
  return fnArray.flatMap((operator, i): LineBox[] => {
    const args = argsArray[i]
    if (operator === OPS.save) kept.push(now)
    else if (operator === OPS.restore) now = kept.pop() ?? now
    else if (operator === OPS.transform) now = { ...now, matrix: times(now.matrix, args as Matrix) }
    else if (operator === OPS.clip || operator === OPS.eoClip) clips = true
    else if (operator === OPS.constructPath) {
      const box = within(boxOf(Array.from(args[2] as ArrayLike<number>), now.matrix), now.clip)
      if (clips) now = { ...now, clip: box ?? nothing }
      clips = false
      return box && args[0] !== OPS.endPath ? [box] : []
    }
    return []
  })
}

const nothing: LineBox = { left: 0, bottom: 0, width: 0, height: 0 }

function boxOf([x1 = 0, y1 = 0, x2 = 0, y2 = 0]: readonly number[], m: Matrix): LineBox {
  const at = (x: number, y: number) => [m[0] * x + m[2] * y + m[4], m[1] * x + m[3] * y + m[5]] as const
  const [a, b] = [at(x1, y1), at(x2, y2)]
  return {
    left: Math.min(a[0], b[0]),
    bottom: Math.min(a[1], b[1]),
    width: Math.abs(b[0] - a[0]),
    height: Math.abs(b[1] - a[1]),
  }
}

/** What of a box lies in another one. */
function within(box: LineBox, clip: LineBox | undefined): LineBox | undefined {
  if (!clip) return box
  const [left, bottom] = [Math.max(box.left, clip.left), Math.max(box.bottom, clip.bottom)]
  const width = Math.min(box.left + box.width, clip.left + clip.width) - left
  const height = Math.min(box.bottom + box.height, clip.bottom + clip.height) - bottom
  return width < 0 || height < 0 ? undefined : { left, bottom, width, height }
}

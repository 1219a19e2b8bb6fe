import Drawing from 'dxf-writer'
import { type CutKind, cutKinds } from '../draw/cut-lines.ts'
import { moved, type SheetOfPieces } from '../draw/sheet-of-pieces.ts'
import { drawingMarks } from './our-marks.ts'

/** Layers, named by the trade's words as far as DXF lets a name have them, with their colours (ACI). */
const layers: Readonly<Record<CutKind, { name: string; colour: number }>> = {
  cut: { name: 'CUT', colour: Drawing.ACI.WHITE },
  valley: { name: 'VALLEY_SCORE', colour: Drawing.ACI.BLUE },
  mountain: { name: 'MOUNTAIN_SCORE', colour: Drawing.ACI.RED },
  mark: { name: 'DRAWN_MARKS', colour: Drawing.ACI.GREEN },
}

/** A sheet of pieces as a DXF drawing in millimetres, one layer for each kind of line. y runs upwards, as in DXF. */
export function sheetDxf(sheet: SheetOfPieces): string {
  const drawing = new Drawing()
  drawing.setUnits('Millimeters')
  for (const kind of cutKinds) {
    const { name, colour } = layers[kind]
    drawing.addLayer(name, colour, 'CONTINUOUS').setActiveLayer(name)
    for (const { piece, at } of sheet.placed)
      for (const path of piece.lines[kind]) {
        const { spots, closed } = moved(path, at)
        const points = spots.map(([x, y]): [number, number] => [micro(x), micro(y)])
        const [from, to] = points
        if (!closed && points.length === 2 && from && to) drawing.drawLine(...from, ...to)
        else drawing.drawPolyline(points, closed)
      }
  }
  // Its types leave this out; without it some programs refuse the file.
  ;(drawing as Drawing & { generateAutocadExtras(): void }).generateAutocadExtras()
  return drawingMarks.dxf + drawing.toDxfString()
}

/** To a thousandth of a micrometre, so that no digits of the computer's own are left. */
const micro = (x: number): number => Number(x.toFixed(6))

import { CanvasTexture, LinearMipmapLinearFilter, RepeatWrapping, type Texture } from 'three'
import type { Flat, HatchTold, StockTold } from './told.ts'

/** Dots to the side of a square of a hatch. */
const dots = 128

/** Where the hatch of a sheet is at one of its points. */
export function hatchSpot({ tile, turn }: HatchTold, [x, y]: Flat): [u: number, v: number] {
  const angle = (-turn * Math.PI) / 180
  const [c, s] = [Math.cos(angle), Math.sin(angle)]
  // Hatches are drawn y downwards, textures are read y upwards.
  return [(x * c + y * s) / tile, -(x * s - y * c) / tile]
}

/** One square of a stock with its hatch, to be repeated; nothing for a plain stock. */
export function hatchTexture(
  { hatch, tint, away }: StockTold,
  back: boolean,
  sharpest: number,
): Texture | null {
  if (!hatch) return null
  const canvas = document.createElement('canvas')
  canvas.width = canvas.height = dots
  const pen = canvas.getContext('2d')
  if (!pen) return null
  const perMm = dots / hatch.tile
  pen.fillStyle = back ? away : tint
  pen.fillRect(0, 0, dots, dots)
  pen.strokeStyle = pen.fillStyle = hatch.colour
  const width = hatch.width * perMm
  for (const { level, at } of hatch.lines) {
    const edge = at * perMm - width / 2
    if (level) pen.fillRect(0, edge, dots, width)
    else pen.fillRect(edge, 0, width, dots)
  }
  for (const [x, y] of hatch.dots) {
    pen.beginPath()
    pen.arc(x * perMm, y * perMm, width / 2, 0, 2 * Math.PI)
    pen.fill()
  }
  const texture = new CanvasTexture(canvas)
  texture.wrapS = texture.wrapT = RepeatWrapping
  texture.minFilter = LinearMipmapLinearFilter
  texture.anisotropy = sharpest
  return texture
}

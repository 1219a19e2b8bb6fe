import { CanvasTexture, DoubleSide, Group, Mesh, MeshBasicMaterial, PlaneGeometry } from 'three'
import { ink } from './pen.ts'
import type { LetterTold } from './told.ts'

/** Dots to the height of a letter's picture. */
const dots = 192

/** The letters on the face of a plate, as high above it as half its sheet and a hair. */
export function letterGroup(letters: readonly LetterTold[], half: number, order: number): Group {
  const group = new Group()
  for (const { text, foot, size } of letters) {
    const picture = letterPicture(text)
    if (!picture) continue
    const side = size * 1.4
    const paint = new MeshBasicMaterial({
      map: picture,
      transparent: true,
      depthWrite: false,
      side: DoubleSide,
    })
    const mesh = new Mesh(new PlaneGeometry(side, side), paint)
    // The foot of the letter is at 0.8 of the picture's height.
    mesh.position.set(foot[0], foot[1] + 0.3 * side, half + 0.06)
    mesh.renderOrder = order
    group.add(mesh)
  }
  return group
}

function letterPicture(text: string): CanvasTexture | undefined {
  const canvas = document.createElement('canvas')
  canvas.width = canvas.height = dots
  const pen = canvas.getContext('2d')
  if (!pen) return undefined
  pen.fillStyle = ink
  pen.textAlign = 'center'
  pen.font = `600 ${dots / 1.4}px "Commissioner Variable", sans-serif`
  pen.fillText(text, dots / 2, dots * 0.8)
  const picture = new CanvasTexture(canvas)
  picture.anisotropy = 8
  return picture
}

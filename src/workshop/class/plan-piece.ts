import type { Wording } from '../../wording/wording.ts'

/** A piece as a cutting plan names it, with its card where a lesson has several: `base`, `base (box)`. */
export function planPiece(name: string, wording: Wording): string {
  const [, piece, card] = /^(.+) \((.+)\)$/.exec(name) ?? []
  return piece === undefined || card === undefined
    ? wording.name(name)
    : wording.say('kit.piece-of-card', { piece: wording.name(piece), card: wording.name(card) })
}

import type { Piece, Plate, Structure } from './structure.ts'

/**
 * The plates of one sheet of a piece. Of several that are cut alike they tell of all: those that scores hold together
 * with `start`, which is the first plate of the piece unless another is asked for.
 */
export function platesOfOne(
  { plates, hinges }: Pick<Structure, 'plates' | 'hinges'>,
  { name, count }: Pick<Piece, 'name' | 'count'>,
  start?: string,
): Plate[] {
  const own = plates.filter((plate) => plate.piece === name)
  const first = start ?? own[0]?.name
  if (count === 1 || first === undefined) return own
  const sheet = new Set([first])
  for (const plate of sheet)
    for (const { between } of hinges)
      if (between.includes(plate)) for (const other of between) sheet.add(other)
  return own.filter((plate) => sheet.has(plate.name))
}

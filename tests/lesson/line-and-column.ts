/** Line and column of an offset, counted anew, without what the stage uses itself. */
export function lineAndColumn(text: string, offset: number): [number, number] {
  const before = text.slice(text.startsWith('\ufeff') ? 1 : 0, offset)
  const lines = before.split(/\r\n|\r|\n/)
  return [lines.length, (lines.at(-1) ?? '').length + 1]
}

/** The words of a text that parts them with commas. */
export const listed = (text: string): readonly string[] =>
  text.split(',').map((word) => word.trim().replace(/\s+/g, ' '))

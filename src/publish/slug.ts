/** A text as part of a file name: `7 1/2 x 5 in` becomes `7-1-2-x-5-in`. */
export const slug = (text: string): string =>
  text
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}.]+/gu, '-')
    .replaceAll(/^[-.]+|[-.]+$/g, '')

/** Class of the root while it is only tried out where things fall. */
export const trial = 'trial'

/** The links that make ends known, for a body that has some. */
export const endLinks = (body: string): string =>
  [...body.matchAll(/ id="(end[\w-]*)"/g)].map(([, id]) => `<a href="#${id}" hidden></a>`).join('')

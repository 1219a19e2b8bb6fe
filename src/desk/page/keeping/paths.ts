/** Path of a lesson's file for a name, as a teacher writes it: `harbour lights` is `harbour-lights.md`. */
export function pathFor(name: string): string {
  const parts = name
    .trim()
    .replace(/\.md$/i, '')
    .split('/')
    .map((part) => part.trim().replace(/[\\:*?"<>|\s]+/g, '-'))
    .map((part) => part.replace(/^[.-]+|[.-]+$/g, ''))
    .filter((part) => part !== '')
  return `${parts.join('/') || 'lesson'}.md`
}

/** `harbour-lights`, `harbour-lights-2`, … */
export const numbered = (name: string, number: number): string => {
  const bare = name.trim().replace(/\.md$/i, '')
  return number === 1 ? bare : `${bare}-${number}`
}

/** What a lesson is called by its path: `spring/harbour-lights.md` is `harbour-lights`. */
export const nameOf = (path: string): string => (path.split('/').at(-1) ?? path).replace(/\.md$/i, '')

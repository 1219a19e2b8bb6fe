/** As long a name may be, without its ending. */
const longest = 60

/**
 * A plain name for a picture: lower case letters, digits and dashes. `Été am Meer (2).HEIC` as JPEG is
 * `ete-am-meer-2.jpg`.
 */
export function plainPictureName(name: string, type: string): string {
  const bare = name
    .replace(/\.[a-z0-9]{1,5}$/i, '')
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, longest)
    .replace(/^-+|-+$/g, '')
  return `${bare || 'picture'}.${endings[type] ?? 'jpg'}`
}

const endings: Readonly<Record<string, string>> = {
  'image/jpeg': 'jpg',
  'image/png': 'png',
  'image/webp': 'webp',
}

/** The same name, or with a number behind it: `pier.jpg`, `pier-2.jpg`, … */
export function freePictureName(name: string, isTaken: (name: string) => boolean): string {
  const dot = name.lastIndexOf('.')
  const [bare, ending] = dot > 0 ? [name.slice(0, dot), name.slice(dot)] : [name, '']
  for (let number = 1; ; number++) {
    const free = number === 1 ? name : `${bare}-${number}${ending}`
    if (!isTaken(free.toLowerCase())) return free
  }
}

/** The places where such a file may be: the folder of a file, and the one above. */
export const workshopPlaces = (path: string): readonly string[] => {
  const folders = path.split('/').slice(0, -1)
  return [folders, ...(folders.length > 0 ? [folders.slice(0, -1)] : [])].map((names) =>
    [...names, 'workshop.yaml'].join('/'),
  )
}

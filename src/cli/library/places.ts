import { basename, join } from 'node:path'

/** Where the prints of a lesson are, from where all prints are: `sea/harbour.md` has those in `sea/harbour`. */
export const folderOf = (lesson: string): string => lesson.replace(/\.md$/i, '')

/** The files of a print, from where all prints are. */
export const fileOf = (lesson: string, name: string, ending: string): string =>
  join(folderOf(lesson), `${name}${ending}`)

/** What the names of a lesson's prints begin with. */
export const nameOf = (lesson: string): string => basename(folderOf(lesson))

/** The page that leads to the prints of a lesson, and the picture of its card. */
export const [lessonPage, cardPicture] = ['index.html', 'card.svg'] as const

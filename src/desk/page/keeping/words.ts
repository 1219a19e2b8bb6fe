import type { Phase } from './keeper.ts'
import type { OnDesk } from './on-desk.ts'

/** What the line at the top says about where the lesson is kept. */
export function wordsOf(on: OnDesk, phase: Phase, keeps: boolean): string {
  const single = on.store.kind === 'downloads'
  const file = on.path ?? on.name
  switch (phase) {
    case 'empty':
      return ''
    case 'looking':
      return 'Open in another tab and written there; here it can only be looked at'
    case 'choose':
      return 'There are two texts of this lesson: choose which one to go on with'
    case 'saving':
      return `Saving in ${file} …`
    case 'saved':
      return single ? `The same as in the file ${file}` : `Saved in ${file}`
    case 'away':
      return keeps
        ? 'The folder cannot be reached; everything is kept here'
        : 'The folder cannot be reached, and this browser keeps nothing: leave this page open'
    case 'kept':
      return on.trouble ? `Not saved: ${on.trouble.words}` : keptWords(single, keeps)
  }
}

const keptWords = (single: boolean, keeps: boolean): string => {
  if (!keeps)
    return `This browser keeps nothing by itself: save ${single ? 'a file' : 'in the folder'} before you leave`
  return single
    ? 'Kept in this browser, not saved as a file yet'
    : 'Kept in this browser, not saved in the folder yet'
}

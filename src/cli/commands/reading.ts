/** The commands that print nothing on paper: one file to load for any of them, because files cost more than lines. */
export { folds } from './folds.ts'
export { kit } from './kit.ts'
export { measure } from './measure.ts'
export { newLesson } from './new.ts'
export { resize } from './resize.ts'

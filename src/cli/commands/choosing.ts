/** The commands for choosing a fold, with what its small drawing takes. */
export { folds } from './folds.ts'
export { newLesson } from './new.ts'

/** The commands that draw nothing: one file to load for any of them, because files cost more than lines. */
export { kit } from './kit.ts'
export { measure } from './measure.ts'
export { resize } from './resize.ts'

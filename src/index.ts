/**
 * The public library: what the commands are made of. Everything but `publishHandout` is a function of its input and
 * runs in a browser too.
 */

export type { Card } from './card/card.ts'
export { foldStyles } from './card/fold-styles.ts'
export type { FoldStyle } from './card/style.ts'
export { drawFigure } from './draw/draw.ts'
export type { Figure } from './draw/figure.ts'
export type { Proof } from './fold/pose.ts'
export { type Finding, hasErrors } from './length/finding.ts'
export type { Length, Size, Unit } from './length/length.ts'
export { readLength, readSize } from './length/text.ts'
export { fillLesson } from './lesson/fill.ts'
export type { FilledLesson, Lesson, Wishes } from './lesson/lesson.ts'
export { readLesson } from './lesson/read.ts'
export { resizeLesson } from './lesson/resize.ts'
export { type FoldFile, foldFile } from './publish/fold-file.ts'
export { type HandoutOptions, type Published, publishHandout } from './publish/handout.ts'
export { type Kit, makeKit } from './workshop/kit.ts'
export { type KitJson, kitJson } from './workshop/kit-json.ts'
export { kitListing } from './workshop/kit-listing.ts'
export type { Listing } from './workshop/listing.ts'
export { listingMarkdown } from './workshop/listing-markdown.ts'
export { listingText } from './workshop/listing-text.ts'
export { type MeasuresJson, measures } from './workshop/measures.ts'
export { measuresListing } from './workshop/measures-listing.ts'
export { starterLesson } from './workshop/starter.ts'

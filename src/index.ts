/**
 * The public library: what the commands are made of. Everything but `publishHandout` is a function of its input and
 * runs in a browser too.
 */

import { learnAll } from './wording/languages.ts'

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
export { type Fixed, fixLesson } from './lesson/loose/fix.ts'
export { type Tied, tieLesson } from './lesson/loose/tie.ts'
export { readLesson } from './lesson/read.ts'
export { resizeLesson } from './lesson/resize.ts'
export { type Caution, closingAdvice } from './lesson/safety/cautions.ts'
export { type FoldFile, foldFile } from './publish/fold-file.ts'
export { type HandoutOptions, type Published, publishHandout } from './publish/handout.ts'
export type { TextKind } from './publish/text/kinds.ts'
export { type LessonText, lessonText, type TextOptions, TooShortError } from './publish/text/lesson-text.ts'
export type { CuttingOptions, CuttingPlan, OfferedSheet, WantedPiece } from './workshop/cutting/cutting.ts'
export { planCutting } from './workshop/cutting/plan-cutting.ts'
export { fitLesson } from './workshop/fit/fit.ts'
export { type FitJson, fitJson } from './workshop/fit/fit-json.ts'
export { fitListing } from './workshop/fit/fit-listing.ts'
export { type Paper, type Question, QuestionError } from './workshop/fit/question.ts'
export { type Kit, makeKit } from './workshop/kit.ts'
export { type KitJson, kitJson } from './workshop/kit-json.ts'
export { kitListing } from './workshop/kit-listing.ts'
export type { Listing } from './workshop/listing.ts'
export { listingMarkdown } from './workshop/listing-markdown.ts'
export { listingText } from './workshop/listing-text.ts'
export { type MeasuresJson, measures } from './workshop/measures.ts'
export { measuresListing } from './workshop/measures-listing.ts'
export { type SizeChart, sizeChart } from './workshop/size-chart.ts'
export { sizeChartCsv } from './workshop/size-chart-csv.ts'
export { type SizeChartJson, sizeChartJson } from './workshop/size-chart-json.ts'
export { sizeChartListing } from './workshop/size-chart-listing.ts'
export { starterLesson } from './workshop/starter.ts'

// A lesson of any language may come at any time, and functions that answer at once cannot wait for its words.
learnAll()

/** The commands that draw the figures of a lesson, and all that it takes to print them. */

export { printFolds } from '../print-folds.ts'
export { printListing } from '../print-listing.ts'
export { printSheets } from '../print-sheets.ts'
export { printSizeChart } from '../print-size-chart.ts'
export { check } from './check.ts'
export { wholeClass } from './class.ts'
export { exportFiles } from './export.ts'
export { labels } from './labels.ts'
export { template } from './template.ts'

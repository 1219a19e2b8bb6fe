import { classKitTables } from '../workshop/class/class-kit-tables.ts'
import type { ClassWork } from '../workshop/class/class-work.ts'
import { peopleTables } from '../workshop/class/people-tables.ts'
import { prepareClass } from '../workshop/class/preparation.ts'
import { timedTables } from '../workshop/class/preparation-tables.ts'
import { runSheetTables } from '../workshop/class/run-sheet-tables.ts'
import { sheetsTables } from '../workshop/class/sheets-tables.ts'
import type { Table } from '../workshop/table.ts'

/** Everything of a class that a spreadsheet wants, a sheet each. */
export const classTables = ({
  title,
  wording,
  file,
  lessons,
  plan,
  kit,
  run,
  labels,
}: ClassWork): Table[] => [
  ...classKitTables(kit),
  ...sheetsTables(title, plan, wording),
  // What to have ready comes with the run sheet.
  ...timedTables(prepareClass(file, lessons, plan), wording),
  ...runSheetTables(run),
  ...peopleTables(title, file, labels, wording),
]

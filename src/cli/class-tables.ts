import { classKitTables } from '../workshop/class/class-kit-tables.ts'
import type { ClassWork } from '../workshop/class/class-work.ts'
import { peopleTables } from '../workshop/class/people-tables.ts'
import { prepareClass } from '../workshop/class/preparation.ts'
import { preparationTables } from '../workshop/class/preparation-tables.ts'
import { runSheetTables } from '../workshop/class/run-sheet-tables.ts'
import { sheetsTables } from '../workshop/class/sheets-tables.ts'
import type { Table } from '../workshop/table.ts'

/** Everything of a class that a spreadsheet wants, a sheet each. */
export const classTables = ({ title, unit, file, lessons, plan, kit, run, labels }: ClassWork): Table[] => [
  ...classKitTables(kit),
  ...sheetsTables(title, plan, unit),
  // What to have ready comes with the run sheet.
  ...preparationTables(prepareClass(file, lessons, plan), unit).filter(({ name }) => name !== 'Have ready'),
  ...runSheetTables(run),
  ...peopleTables(title, file, labels),
]

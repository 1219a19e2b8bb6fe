import { workbook } from '../publish/workbook.ts'
import type { Wording } from '../wording/wording.ts'
import type { Table } from '../workshop/table.ts'
import { tellWritten } from './answer.ts'
import type { Options } from './flags.ts'
import type { Outside } from './outside.ts'
import { writeFile } from './write-text.ts'

/** Writes tables as a workbook and says where it is. Throws what `writeFile` throws. */
export async function writeWorkbook(
  path: string,
  title: string,
  tables: readonly Table[],
  wording: Wording,
  options: Options,
  outside: Outside,
): Promise<void> {
  await writeFile(path, await workbook(title, tables, wording), options, outside)
  tellWritten([path], options, outside)
}

import { checkKeys, fieldsOf, type Reading, report, textOf, wordOf } from '../card/reading.ts'
import { type Entry, type Fields, readYaml } from '../card/yaml.ts'
import { numberIn, type Size } from '../length/length.ts'
import { readSize } from '../length/text.ts'
import { readingOf } from '../lesson/yaml-reading.ts'
import { type Room, type Rooms, rooms } from './figure.ts'
import { type Sheeting, sheetings } from './impose/sheet-order.ts'
import { ThemeError } from './problems.ts'

/** How a theme lays handouts on paper: what a style sheet cannot say. */
export interface ThemePrint {
  /** Whether a page is a whole sheet of paper or half of one, standing. */
  readonly pages: 'whole' | 'half'
  /** How half pages are put on sheets. */
  readonly sheets: Sheeting
  /** Whether all is set as small as it must be for one page. */
  readonly fit: 'flow' | 'one page'
  /** What stands in the foot of a page beside the title: which print it is in words, or its size alone. */
  readonly foot: 'whole' | 'short'
  /** The room of figures, before the style sheet makes them any larger. */
  readonly rooms: Rooms
}

export const usualPrint: ThemePrint = { pages: 'whole', sheets: 'single', fit: 'flow', foot: 'whole', rooms }

const keys = ['pages', 'sheets', 'fit', 'foot', 'figures'] as const

/**
 * Reads the `theme.yaml` of a theme, which says how its handouts are laid on paper: `pages: half`, `sheets: booklet`,
 * `fit: one page`, `foot: short`, `figures: {beside: 50 x 45 mm, across: 112 x 60 mm, cover: 60 x 50 mm}`.
 *
 * @param path of the file, for messages.
 * @throws ThemeError with file and line.
 */
export function readThemePrint(text: string, path: string): ThemePrint {
  const { top, findings } = readYaml({
    text: text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n'),
    place: { line: 1, column: 1, offset: 0 },
  })
  const reading = readingOf(findings)
  const { fields } = top.value
  checkKeys(reading, fields, keys, '`theme.yaml`')
  const entry = (key: (typeof keys)[number]): Entry | undefined => fields.get(key)?.value
  const print: ThemePrint = {
    pages: wordOf(reading, entry('pages'), ['whole', 'half']),
    sheets: wordOf(reading, entry('sheets'), sheetings),
    fit: wordOf(reading, entry('fit'), ['flow', 'one page']),
    foot: wordOf(reading, entry('foot'), ['whole', 'short']),
    rooms: roomsIn(reading, entry('figures')),
  }
  const sheets = entry('sheets')
  if (sheets && print.sheets !== 'single' && print.pages === 'whole')
    report(
      reading,
      'value',
      sheets.place,
      'Only half pages can be put on sheets beside each other',
      'Write `pages: half` too',
    )
  const [first] = findings
  if (!first) return print
  const place = first.place ? `${path}:${first.place.line}:${first.place.column}` : path
  throw new ThemeError(`${place}: ${first.message}`, first.suggestion)
}

function roomsIn(reading: Reading, entry: Entry | undefined): Rooms {
  const cure = 'Write `figures: {beside: 80 x 50 mm, across: 168 x 62 mm, cover: 96 x 74 mm}`'
  const fields: Fields = fieldsOf(reading, entry, '`figures` wants the room of each', cure)
  const names = ['beside', 'across', 'cover'] as const
  checkKeys(reading, fields, names, '`figures`')
  const room = (name: keyof Rooms): Room => {
    const given = fields.get(name)?.value
    const text = given && textOf(reading, given, `\`${name}\` wants a size`, cure)
    const size = text && sizeIn(text.text)
    if (size) return size
    if (text) report(reading, 'value', text.place, `\`${text.text}\` is no room for a figure`, cure)
    return rooms[name]
  }
  return { beside: room('beside'), across: room('across'), cover: room('cover') }
}

/** Room for a figure that anything can be seen in: a centimetre or more each way, and no more than a wall. */
function sizeIn(text: string): Room | undefined {
  let size: Size
  try {
    size = readSize(text)
  } catch {
    return undefined
  }
  const room = { maxWidth: numberIn(size.width, 'mm'), maxHeight: numberIn(size.height, 'mm') }
  const fine = Object.values(room).every((x) => x >= 10 && x <= 2000)
  return fine ? room : undefined
}

import { exportKinds } from '../publish/export-kinds.ts'
import { textKinds } from '../publish/text/kinds.ts'
import { readPaper } from './read-paper.ts'
import {
  readChoice,
  readChoices,
  readCount,
  readGrid,
  readLengthWish,
  readPort,
  readSheetSize,
  readSizeWish,
} from './read-values.ts'
import { readSeconds } from './time-limit.ts'

/** One option: how it is written, how its value is read, and how the help and the manual tell it. */
export interface Flag {
  readonly help: string
  readonly short?: string
  /** What stands for its value in the help; a switch has none. */
  readonly value?: string
  /** Reads the value. Throws UsageError. */
  readonly read?: (text: string) => unknown
}

const text = (value: string): string => value

/** Every option there is. The parser, the help and the manual are all made from this table. */
export const flags = {
  closed: {
    value: 'SIZE',
    read: readSizeWish,
    help: 'another size of the shut card, such as `A6 landscape`; or `portrait` or `landscape`, its own turned',
  },
  units: { value: 'in|mm', read: readChoice(['in', 'mm']), help: 'inches or millimetres' },
  grid: { value: 'LENGTH', read: readGrid, help: 'the finest mark of your ruler, such as `1/16 in`' },
  paper: { value: 'a4|letter', read: readChoice(['a4', 'letter']), help: 'the paper it is printed on' },
  theme: { value: 'NAME', read: text, help: 'how the print looks' },
  as: {
    value: 'KIND',
    read: readChoice([...exportKinds, ...textKinds]),
    help: 'for what a file is: `svg` and `dxf` in millimetres with layers to cut and to score, `fold` for folding programs; `text` or `md` for a post',
  },
  limit: {
    value: 'N',
    read: readCount(1),
    help: 'how many characters a text may have; what goes beyond is left out part by part',
  },
  with: {
    value: 'LIST',
    read: readChoices(['sizes', 'chapters']),
    help: 'what a text is to have besides: `sizes`, the chart of all sizes; `chapters`, where each step begins in a film, from the minutes of the steps; or `sizes,chapters`',
  },
  people: { value: 'N', read: readCount(1), help: 'how many people come' },
  spare: { value: 'N', read: readCount(0), help: 'how many spare kits to make' },
  sheet: {
    value: 'SIZE',
    read: readPaper('sheet'),
    help: 'the sheet that the pieces of each stock must come out of, such as `12 x 12 in`, or `white card: A4, vellum: A5`',
  },
  scraps: {
    value: 'SIZES',
    read: readPaper('scraps'),
    help: 'the scraps that the pieces must come out of, width first, such as `8 x 8 in, 6 x 4 in, A5`',
  },
  stock: { value: 'NAME', read: text, help: 'the stock that the sheet or the scraps are of' },
  envelope: {
    value: 'NAME',
    read: text,
    help: 'the bought envelope that the card must go into, such as `C6`, `A7` or `5 1/4 x 7 1/4 in`',
  },
  whole: {
    value: 'SIZE',
    read: (value: string) => readSheetSize(value),
    help: 'a sheet that one piece is to use whole, such as `6 x 6 in`',
  },
  piece: { value: 'NAME', read: text, help: 'the piece that is to use it' },
  lettering: { help: 'list the sizes at which the lettering fits' },
  wide: { value: 'LENGTH', read: readLengthWish, help: 'keep the shut card this wide' },
  high: { value: 'LENGTH', read: readLengthWish, help: 'keep the shut card this high' },
  within: {
    value: 'TIME',
    read: readSeconds,
    help: 'end the search for a better cutting plan after so long, such as `10 s`, and take the best so far; other runs may find others then',
  },
  output: { short: 'o', value: 'PATH', read: text, help: 'the file or folder to write' },
  explain: { help: 'say of each number where it comes from, how it was rounded, and what it follows' },
  html: { help: 'write a page with drawings' },
  figures: {
    value: 'auto|list',
    read: readChoice(['auto', 'list']),
    help: 'figures for the steps that have none: `auto` puts them in, `check` into the lesson itself and `handout` into the print only; `check --figures list` tells each one at its step',
  },
  port: {
    value: 'N',
    read: readPort,
    help: 'where on this computer the page is; 3653 unless said, or the next that is free',
  },
  open: { help: 'open the page in the browser' },
  jobs: {
    value: 'N',
    read: readCount(1),
    help: 'how much is made at the same time; as much as there are processor cores unless said',
  },
  watch: { help: 'go on until Ctrl-C, and print again what has been saved' },
  fix: { help: 'put names in the place of the plain numbers whose meaning is sure, in the lesson itself' },
  json: { help: 'answer in JSON, for other programs' },
  quiet: { help: 'print errors only' },
  force: { help: 'overwrite files that foldlore did not make' },
  help: { short: 'h', help: 'show the help' },
  version: { help: 'show the version' },
} as const satisfies Record<string, Flag>

export type FlagName = keyof typeof flags

/** The options as read; one that was not given is missing. */
export type Options = {
  readonly [K in FlagName]?: (typeof flags)[K] extends { read: (text: string) => infer V } ? V : boolean
}

export const flagNames = Object.keys(flags) as FlagName[]

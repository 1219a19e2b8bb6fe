import type { FlagName, Options } from './flags.ts'
import type { Outside } from './outside.ts'

/** What carries a command out; gives the exit code. */
export type Action = (operands: readonly string[], options: Options, outside: Outside) => Promise<number>

/** One command: how it is written, what it takes, and where the code for it is. */
export interface Command {
  /** What stands behind its name; `[…]` may be left out, `…` may be repeated. */
  readonly operands: string
  readonly least: number
  readonly most: number
  readonly help: string
  readonly flags: readonly FlagName[]
  readonly load: () => Promise<Action>
}

const choosing = () => import('./commands/choosing.ts')
const printing = () => import('./commands/printing.ts')

const wishes = ['closed', 'units', 'grid'] as const
const file = ['output', 'force', 'quiet'] as const

/** Every command there is. The parser, the help and the manual are all made from this table. */
export const commands: Readonly<Record<string, Command>> = {
  new: {
    operands: 'FOLD [FILE]',
    least: 1,
    most: 2,
    help: 'write a starter lesson for a fold',
    flags: ['force', 'quiet'],
    load: async () => (await choosing()).newLesson,
  },
  check: {
    operands: 'LESSON|CLASS…',
    least: 1,
    most: Number.POSITIVE_INFINITY,
    help: 'say what is wrong in lessons and class files, line by line, and what would cure it',
    flags: ['fix', 'figures', ...wishes, 'json', 'quiet'],
    load: async () => (await printing()).check,
  },
  tie: {
    operands: 'FILE',
    least: 1,
    most: 1,
    help: 'propose names for all the plain numbers of a tutorial that is written by hand',
    flags: ['json', ...file],
    load: async () => (await import('./commands/tie.ts')).tie,
  },
  measure: {
    operands: 'LESSON',
    least: 1,
    most: 1,
    help: 'list the pieces to cut, the scores, the shut and the standing card',
    flags: ['explain', ...wishes, 'json', ...file],
    load: async () => (await import('./commands/measure.ts')).measure,
  },
  handout: {
    operands: 'LESSON',
    least: 1,
    most: 1,
    help: 'write the step sheet as PDF and HTML, beside the lesson or where `-o` says',
    flags: ['figures', ...wishes, 'paper', 'theme', 'json', ...file],
    load: async () => (await import('./commands/handout.ts')).handout,
  },
  resize: {
    operands: 'LESSON',
    least: 1,
    most: 1,
    help: 'write the lesson for another card size, unit or ruler, as Markdown',
    flags: [...wishes, 'json', ...file],
    load: async () => (await import('./commands/resize.ts')).resize,
  },
  sizes: {
    operands: 'LESSON',
    least: 1,
    most: 1,
    help: 'chart every piece, score, lettering mark and envelope for all sizes of a lesson, in both units; `-o` names a `.pdf`, `.html`, `.md` or `.csv` file',
    flags: ['closed', 'units', 'paper', 'theme', 'json', ...file],
    load: async () => (await import('./commands/sizes.ts')).sizes,
  },
  text: {
    operands: 'LESSON',
    least: 1,
    most: 1,
    help: 'tell the pieces and the steps as plain text or Markdown, for a post or below a film; `-o` names a `.txt` or `.md` file',
    flags: ['as', 'limit', 'with', ...wishes, 'json', ...file],
    load: async () => (await import('./commands/text.ts')).text,
  },
  kit: {
    operands: 'CLASS|LESSON',
    least: 1,
    most: 1,
    help: 'list the materials for each person, the tables and the tutor; for a class file also what to buy, and what it costs; `-o` names a `.pdf`, `.html`, `.md`, `.csv` or `.xlsx` file',
    flags: ['people', 'spare', 'within', ...wishes, 'paper', 'theme', 'json', ...file],
    load: async () => (await import('./commands/kit.ts')).kit,
  },
  class: {
    operands: 'CLASS',
    least: 1,
    most: 1,
    help: 'make the folder for the day of a class: kit and shopping list, cutting plan, the evening before, run sheet, step sheets, labels, packing list, and who comes, a workbook of it all, and a page that leads to them; `-o` names the folder',
    flags: ['within', ...wishes, 'paper', 'theme', ...file],
    load: async () => (await printing()).wholeClass,
  },
  sheets: {
    operands: 'CLASS',
    least: 1,
    most: 1,
    help: 'plan how everything for a class is cut from the sheets that its file lists, sheet by sheet, with the settings of the trimmer; `-o` names a `.pdf`, `.html`, `.md`, `.csv` or `.xlsx` file',
    flags: ['within', ...wishes, 'paper', 'theme', 'json', ...file],
    load: async () => (await import('./commands/sheets.ts')).sheets,
  },
  runsheet: {
    operands: 'CLASS',
    least: 1,
    most: 1,
    help: 'lay the steps of a class along the clock, with breaks and what to have ready; `-o` names a `.pdf`, `.html`, `.md`, `.csv` or `.xlsx` file',
    flags: [...wishes, 'paper', 'theme', 'json', ...file],
    load: async () => (await import('./commands/runsheet.ts')).runsheet,
  },
  prepare: {
    operands: 'CLASS',
    least: 1,
    most: 1,
    help: 'list what to cut, score, have ready and pack on the evening before a class, and about how long it takes; `-o` names a `.pdf`, `.html`, `.md`, `.csv` or `.xlsx` file',
    flags: ['within', ...wishes, 'paper', 'theme', 'json', ...file],
    load: async () => (await import('./commands/prepare.ts')).prepare,
  },
  labels: {
    operands: 'CLASS',
    least: 1,
    most: 1,
    help: 'write a label for each kit of a class, with its name, choices and contents, on the sheet of labels that the class file describes',
    flags: [...wishes, 'paper', 'theme', 'json', ...file],
    load: async () => (await printing()).labels,
  },
  fit: {
    operands: 'LESSON',
    least: 1,
    most: 1,
    help: 'find the largest card that comes out of your paper or goes into an envelope, and how its pieces are cut',
    flags: [
      ...(['sheet', 'scraps', 'stock', 'envelope', 'whole', 'piece', 'lettering', 'wide', 'high'] as const),
      ...(['units', 'grid', 'json'] as const),
      ...file,
    ],
    load: async () => (await import('./commands/fit.ts')).fit,
  },
  template: {
    operands: 'LESSON',
    least: 1,
    most: 1,
    help: 'write the pieces at their real size, to trace or to cut through, with a ruler that proves the scale',
    flags: [...wishes, 'paper', 'theme', 'json', ...file],
    load: async () => (await printing()).template,
  },
  motion: {
    operands: 'LESSON',
    least: 1,
    most: 1,
    help: 'write a page in which the card folds, from the flat sheet to shut and on to standing, to be turned and looked at',
    flags: [...wishes, 'paper', 'theme', 'json', ...file],
    load: async () => (await import('./commands/motion.ts')).motion,
  },
  screen: {
    operands: 'LESSON',
    least: 1,
    most: 1,
    help: 'write a page for the screen of a class: one large step at a time, by key, clicker or finger, with the time that is gone and left',
    flags: [...wishes, 'paper', 'theme', 'json', ...file],
    load: async () => (await import('./commands/screen.ts')).screen,
  },
  export: {
    operands: 'LESSON',
    least: 1,
    most: 1,
    help: 'write files for a cutting machine or another program, a file a piece or, with a file behind `-o`, all in one',
    flags: ['as', ...wishes, 'json', ...file],
    load: async () => (await printing()).exportFiles,
  },
  folds: {
    operands: '[NAME]',
    least: 0,
    most: 1,
    help: 'show the catalogue of folds, or one fold with its lengths, panels and sizes; `--html` draws them',
    flags: ['units', 'html', 'paper', 'theme', 'json', ...file],
    load: async () => (await choosing()).folds,
  },
  library: {
    operands: '[FOLDER]',
    least: 0,
    most: 1,
    help: 'print every lesson of a folder in all its sizes, several at a time and only what has changed, with a page that leads to all of it and a report of what was found; `library.yaml` in the folder may ask for more; `-o` names the folder for the prints',
    flags: ['jobs', 'watch', 'json', ...file],
    load: async () => (await import('./commands/library.ts')).library,
  },
  desk: {
    operands: '[FOLDER]',
    least: 0,
    most: 1,
    help: 'open a page on this computer to write the lessons of a folder, to look at them and to print them, until Ctrl-C',
    flags: ['port', 'open'],
    load: async () => (await import('./commands/desk.ts')).desk,
  },
}

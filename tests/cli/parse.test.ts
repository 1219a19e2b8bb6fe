import { expect, test } from 'vitest'
import { parse } from '../../src/cli/parse.ts'
import { UsageError } from '../../src/cli/problems.ts'
import { inches, mm } from '../../src/length/length.ts'

test('every option is read into its type, before or behind the lesson, with a space or an equals sign', () => {
  const wishes = ['--closed=7 x 5 in', 'a.md', '--grid', '1/8 in', '--people', '14', '--spare', '0', '--json']
  const { name, operands, options } = parse(['--units', 'mm', 'kit', ...wishes])
  expect([name, operands]).toEqual(['kit', ['a.md']])
  expect(options).toEqual({
    units: 'mm',
    closed: { text: '7 x 5 in', size: { width: inches(7), height: inches(5) } },
    grid: inches(1, 8),
    people: 14,
    spare: 0,
    json: true,
  })
})

test('a standard size is a size', () => {
  expect(parse(['check', 'a.md', '--closed', 'A6 landscape']).options.closed?.size).toEqual({
    width: mm(148),
    height: mm(105),
  })
})

test('the short option takes its value behind a space or at once', () => {
  const long = parse(['measure', 'a.md', '--output', 'x']).options
  expect([parse(['measure', 'a.md', '-o', 'x']).options, parse(['measure', 'a.md', '-ox']).options]).toEqual([
    long,
    long,
  ])
})

test('what follows two dashes is a file, whatever it looks like', () => {
  expect(parse(['check', '--', '--json']).operands).toEqual(['--json'])
})

test.each([
  [['mesure', 'a.md'], 'Unexpected command `mesure`', 'Write `measure`'],
  [['toString'], 'Unexpected command `toString`', 'Choose one of'],
  [['measure', 'a.md', '--closd', '7 x 5 in'], 'Unexpected option `--closd`', 'Write `--closed`'],
  [['measure', 'a.md', '-x'], 'Unexpected option `-x`', 'foldlore --help'],
  [['measure', 'a.md', '--no-json'], 'Unexpected option `--no-json`', 'foldlore --help'],
  [['folds', '--closed', 'A6'], '`folds` does not take `--closed`', 'It takes --units, --html'],
  [['measure', 'a.md', '--closed', '--json'], '`--closed` needs a value', 'Write `--closed SIZE`'],
  [['measure', 'a.md', '--closed', ''], '`--closed` needs a value', 'Write `--closed SIZE`'],
  [['measure', 'a.md', '--closed'], '`--closed` needs a value', 'Write `--closed SIZE`'],
  [['measure', 'a.md', '--json=yes'], 'Unexpected value `yes` for `--json`', 'Write `--json` alone'],
  [['measure', 'a.md', '--closed', '7 by 5 in'], '`--closed`: Unexpected `by`', 'Units are `in`, `mm`'],
  [['measure', 'a.md', '--closed', '0 x 5 in'], 'expected sides longer than zero', '7 x 5 in'],
  [['measure', 'a.md', '--units', 'im'], 'Unexpected `im`, expected in or mm', 'Write `in`'],
  [['measure', 'a.md', '--grid', '1/16'], '`1/16` has no unit', 'Write `1/16 in` or `1/16 mm`'],
  [['measure', 'a.md', '--grid', '0 in'], 'expected a length above zero', '1/16 in'],
  [['handout', 'a.md', '--paper', 'a5'], 'expected a4 or letter', 'Write `a4`'],
  [['kit', 'a.md', '--people', '0'], 'Unexpected `0`, expected a whole number from 1 up', '14'],
  [['kit', 'a.md', '--people', '3.5'], 'expected a whole number from 1 up', '14'],
  [['kit', 'a.md', '--spare=-1'], 'Unexpected `-1`, expected a whole number from 0 up', '14'],
  [['measure'], '`measure` needs LESSON', 'Write `foldlore measure LESSON`'],
  [['measure', 'a.md', 'b.md'], 'Unexpected `b.md` after `measure`', 'Write `foldlore measure LESSON`'],
  [['new'], '`new` needs FOLD', 'Write `foldlore new FOLD [FILE]`'],
])('%j is wrong usage', (argv, message, suggestion) => {
  let error: unknown
  try {
    parse(argv)
  } catch (caught) {
    error = caught
  }
  expect(error).toBeInstanceOf(UsageError)
  expect((error as UsageError).message).toContain(message)
  expect((error as UsageError).suggestion).toContain(suggestion)
})

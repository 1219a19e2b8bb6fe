import { parseArgs } from 'node:util'
import { nearestWord, suggestWord } from '../length/finding.ts'
import { type Command, commands } from './commands.ts'
import { type Flag, type FlagName, flagNames, flags, type Options } from './flags.ts'
import { UsageError } from './problems.ts'

/** A command line that has been understood. */
export interface Invocation {
  /** Missing when there are only options, such as `--help`. */
  readonly name?: string
  readonly command?: Command
  readonly operands: readonly string[]
  readonly options: Options
}

const table: Readonly<Record<FlagName, Flag>> = flags

/**
 * Reads a command line against the tables of commands and options.
 *
 * @throws UsageError for the first thing that cannot be understood, with the nearest word if there is one.
 */
export function parse(argv: readonly string[]): Invocation {
  const { tokens } = parseArgs({
    args: [...argv],
    // Every mistake is told in our own words, with a cure, so the library only splits the words up.
    strict: false,
    tokens: true,
    options: Object.fromEntries(
      flagNames.map((name) => {
        const { short, value } = table[name]
        return [name, { type: value ? 'string' : 'boolean', ...(short && { short }) } as const]
      }),
    ),
  })
  const words: string[] = []
  const options: { [name: string]: unknown } = {}
  const given: FlagName[] = []
  for (const token of tokens) {
    if (token.kind === 'positional') words.push(token.value)
    if (token.kind !== 'option') continue
    const name = knownFlag(token.name, token.rawName)
    given.push(name)
    options[name] = valueGiven(name, token.rawName, token.value, token.inlineValue === true)
  }
  const [name, ...operands] = words
  if (name === undefined) return { operands, options }
  const command = commandOf(name)
  for (const flag of given) if (!takes(command, flag)) throw notTaken(name, command, flag)
  // `--help` needs nothing else to be right.
  if (!options.help) checkOperands(name, command, operands)
  return { name, command, operands, options }
}

function commandOf(name: string): Command {
  const command = Object.hasOwn(commands, name) ? commands[name] : undefined
  if (command) return command
  throw new UsageError(`Unexpected command \`${name}\``, suggestWord(name, Object.keys(commands)))
}

function knownFlag(name: string, rawName: string): FlagName {
  const known = flagNames.find((flag) => flag === name)
  if (known) return known
  // One letter is near to every short word.
  const near = name.length > 1 ? nearestWord(name, flagNames) : undefined
  throw new UsageError(
    `Unexpected option \`${rawName}\``,
    near ? `Write \`--${near}\`` : 'See `foldlore --help` for the options there are',
  )
}

function valueGiven(name: FlagName, rawName: string, value: string | undefined, inline: boolean): unknown {
  const { value: wanted, read } = table[name]
  if (!wanted) {
    if (value === undefined) return true
    throw new UsageError(`Unexpected value \`${value}\` for \`${rawName}\``, `Write \`${rawName}\` alone`)
  }
  // In `--closed --json` the size has been forgotten; a value that starts with a dash can be given with `=`.
  if (value === undefined || value === '' || (!inline && value.length > 1 && value.startsWith('-')))
    throw new UsageError(
      `\`${rawName}\` needs a value`,
      `Write \`${rawName} ${wanted}\`: ${table[name].help}`,
    )
  try {
    return read?.(value)
  } catch (error) {
    if (!(error instanceof UsageError)) throw error
    throw new UsageError(`\`${rawName}\`: ${error.message}`, error.suggestion)
  }
}

const takes = (command: Command, flag: FlagName): boolean =>
  flag === 'help' || flag === 'version' || command.flags.includes(flag)

function notTaken(name: string, command: Command, flag: FlagName): UsageError {
  const list = command.flags.map((f) => `--${f}`)
  return new UsageError(`\`${name}\` does not take \`--${flag}\``, `It takes ${list.join(', ')}`)
}

function checkOperands(
  name: string,
  { operands: wanted, least, most }: Command,
  given: readonly string[],
): void {
  const usage = `Write \`foldlore ${name} ${wanted}\``
  if (given.length < least)
    throw new UsageError(`\`${name}\` needs ${wanted.split(' ')[given.length]}`, usage)
  if (given.length > most) throw new UsageError(`Unexpected \`${given[most]}\` after \`${name}\``, usage)
}

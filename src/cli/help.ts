import { type Command, commands } from './commands.ts'
import { type Flag, type FlagName, flagNames, flags } from './flags.ts'
import { exitCodeHelp } from './problems.ts'

/** `-o, --output PATH` */
export function flagUsage(name: FlagName): string {
  const { short, value }: Flag = flags[name]
  return `${short ? `-${short}, ` : ''}--${name}${value ? ` ${value}` : ''}`
}

/** `measure LESSON` */
export const commandUsage = (name: string, { operands }: Command): string => `${name} ${operands}`

/** The help for the whole program: its commands and all options. Ends with a newline. */
export function helpText(): string {
  return [
    'foldlore: lessons for hand-made cards, with every measure worked out.',
    '',
    'Usage: foldlore COMMAND LESSON [options]',
    '',
    'Commands:',
    ...columns(Object.entries(commands).map(([name, c]) => [commandUsage(name, c), c.help])),
    '',
    'Options:',
    ...columns(flagNames.map((name) => [flagUsage(name), flags[name].help])),
    '',
    'Exit codes:',
    ...columns(Object.entries(exitCodeHelp)),
    '',
    'foldlore COMMAND --help shows the options of one command.',
    '',
  ].join('\n')
}

/** The help for one command. Ends with a newline. */
export function commandHelp(name: string, command: Command): string {
  return [
    `Usage: foldlore ${commandUsage(name, command)} [options]`,
    '',
    `${command.help[0]?.toUpperCase()}${command.help.slice(1)}.`,
    '',
    'Options:',
    ...columns(command.flags.map((flag) => [flagUsage(flag), flags[flag].help])),
    '',
  ].join('\n')
}

function columns(rows: readonly (readonly [string, string])[]): string[] {
  const width = Math.max(...rows.map(([left]) => left.length))
  return rows.map(([left, right]) => `  ${left.padEnd(width)}  ${right}`)
}

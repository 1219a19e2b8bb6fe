import { commands } from './commands.ts'
import { flagNames, flags } from './flags.ts'
import { commandUsage, flagUsage } from './help.ts'
import { exitCodeHelp } from './problems.ts'

/** The lines of the README between which the manual stands. */
export const manualMarks = ['<!-- manual -->', '<!-- /manual -->'] as const

/** The command manual as Markdown: commands, options and exit codes, from the same tables as the parser. */
export function manual(): string {
  return [
    table(
      ['command', 'what it does', 'options'],
      Object.entries(commands).map(([name, command]) => [
        code(`foldlore ${commandUsage(name, command)}`),
        command.help,
        command.flags.map((flag) => code(`--${flag}`)).join(' '),
      ]),
    ),
    table(
      ['option', 'what it says'],
      flagNames.map((name) => [code(flagUsage(name)), flags[name].help]),
    ),
    table(['exit code', 'meaning'], Object.entries(exitCodeHelp)),
  ].join('\n\n')
}

/** A README with the manual put between its marks. */
export function withManual(readme: string): string {
  const [start, end] = manualMarks
  const from = readme.indexOf(start)
  const to = readme.indexOf(end)
  if (from < 0 || to < from)
    throw new RangeError(`Expected the lines \`${start}\` and \`${end}\` in the README`)
  return `${readme.slice(0, from)}${start}\n\n${manual()}\n\n${readme.slice(to)}`
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.map((c) => c.replaceAll('|', '\\|')).join(' | ')} |`
  return [line(head), `|${'---|'.repeat(head.length)}`, ...rows.map(line)].join('\n')
}

const code = (text: string): string => `\`${text}\``

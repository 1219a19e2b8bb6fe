import type { RuleDoc } from '../lesson/rules/rule.ts'
import { ruleDocs } from '../lesson/rules/rules.ts'
import { commands } from './commands.ts'
import { flagNames, flags } from './flags.ts'
import { commandUsage, flagUsage } from './help.ts'
import { exitCodeHelp } from './problems.ts'

/** The lines of the README between which the manual stands. */
export const manualMarks = ['<!-- manual -->', '<!-- /manual -->'] as const

/** The manual as Markdown: commands, options, exit codes and rules, from the same tables as the program itself. */
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
    '### What `check` looks for in the steps',
    'Besides mistakes in the card and in the measures, `check` reads the lesson as a beginner would follow it. Each finding ends with the name of its rule; open one for a piece of a lesson that breaks it. A rule that is broken on purpose is switched off in the front matter, with the reason: `allow: {crowded-step: Both hands are at work anyway.}`. Errors cannot be switched off.',
    ruleDocs.map(ruleManual).join('\n'),
  ].join('\n\n')
}

/** A rule, to open for its example. The fence is longer than any in the example. */
function ruleManual({ name, about, example }: RuleDoc): string {
  const fence = '````'
  return [
    `<details><summary><code>${name}</code> ${about.replace(/`([^`]+)`/g, '<code>$1</code>')}</summary>`,
    '',
    `${fence}markdown`,
    example,
    fence,
    '',
    '</details>',
  ].join('\n')
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

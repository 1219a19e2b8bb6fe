import type { Outside } from './outside.ts'
import { type Invocation, parse } from './parse.ts'
import { exitCodes } from './problems.ts'
import { isUsage, told } from './told.ts'

/**
 * Runs one command line, without the program's name. Never throws.
 *
 * @returns the exit code: 0 done, 1 the lesson has errors, 2 wrong usage, 3 something outside failed.
 */
export async function run(argv: readonly string[], outside: Outside): Promise<number> {
  try {
    return await dispatch(parse(argv), outside)
  } catch (error) {
    outside.stderr(`foldlore: ${told(error)}\n`)
    return isUsage(error) ? exitCodes.wrongUsage : exitCodes.outside
  }
}

async function dispatch({ name, command, operands, options }: Invocation, outside: Outside): Promise<number> {
  if (options.version) {
    const { default: about } = await import('../../package.json', { with: { type: 'json' } })
    outside.stdout(`${about.version}\n`)
    return exitCodes.done
  }
  if (name !== undefined && command && !options.help) {
    const act = await command.load()
    return act(operands, options, outside)
  }
  const { commandHelp, helpText } = await import('./help.ts')
  const help = name !== undefined && command ? commandHelp(name, command) : helpText()
  if (options.help) {
    outside.stdout(help)
    return exitCodes.done
  }
  outside.stderr(help)
  return exitCodes.wrongUsage
}

import Handlebars from 'handlebars'
import { suggestWord } from '../length/finding.ts'
import { ThemeError } from './problems.ts'
import { registerSay, unknownMessage } from './say-helper.ts'
import { meterEach, templateMeter } from './template-meter.ts'
import { marked } from './template-view.ts'
import { themeLimits } from './theme-limits.ts'

/** A template's text, and the file it stands in, for messages. */
export interface TemplateFile {
  readonly path: string
  readonly text: string
}

/**
 * Makes a function of a template.
 *
 * Text is escaped. What is marked as our own HTML (`{html}`) goes in as it is; a template cannot let anything else
 * through.
 *
 * @param partials by name.
 * @throws ThemeError with file and line, at once or when the function meets something that it does not know.
 */
export function compileTemplate(
  main: TemplateFile,
  partials: ReadonlyMap<string, TemplateFile> = new Map(),
): (view: object) => string {
  const handlebars = Handlebars.create()
  registerSay(handlebars)
  const meter = templateMeter()
  // Those that are being filled in, each included by the one before.
  const within: TemplateFile[] = []
  meterEach(handlebars, meter, () => within.at(-1)?.path ?? main.path)
  const included = new Map<TemplateFile, ReadonlyMap<string, string>>()
  const make = (file: TemplateFile): Handlebars.TemplateDelegate => {
    const { program, places } = parsed(file, [...partials.keys()])
    included.set(file, places)
    const compiled = handlebars.compile(program, { strict: true, preventIndent: true })
    return (context, options) => {
      within.push(file)
      try {
        return compiled(context, options)
      } catch (error) {
        throw error instanceof ThemeError ? error : located(error, file)
      } finally {
        within.pop()
      }
    }
  }
  for (const [name, file] of partials) {
    const fill = make(file)
    handlebars.registerPartial(name, (context, options) => {
      const from = within.at(-1) ?? main
      const place = (): string => included.get(from)?.get(name) ?? from.path
      return meter.partial(() => fill(context, options), place)
    })
  }
  const render = make(main)
  return (view) => {
    meter.begin(lengthIn(view))
    return render(marked(view))
  }
}

/** How many characters there are in a view. */
const lengthIn = (value: unknown): number =>
  typeof value === 'string'
    ? value.length
    : typeof value === 'object' && value !== null
      ? Object.values(value).reduce((sum: number, item) => sum + lengthIn(item), 0)
      : 0

/** A template that is well-formed, and where it first includes which partial. */
interface Parsed {
  readonly program: hbs.AST.Program
  readonly places: ReadonlyMap<string, string>
}

function parsed(file: TemplateFile, known: readonly string[]): Parsed {
  checkDepth(file)
  try {
    const program = Handlebars.parse(file.text, { srcName: file.path })
    const checks = new Checks(file, known)
    checks.accept(program)
    return { program, places: checks.places }
  } catch (error) {
    if (error instanceof ThemeError) throw error
    throw located(error, file)
  }
}

/** Reading blocks takes far longer than their number when they are within each other. */
function checkDepth(file: TemplateFile): void {
  let depth = 0
  for (const { 1: sign, index } of file.text.matchAll(/\{\{~?\s*([#/])/g)) {
    depth = Math.max(0, depth + (sign === '#' ? 1 : -1))
    if (depth <= themeLimits.blocks) continue
    const before = file.text.slice(0, index).split('\n')
    const place = at(file, { line: before.length, column: before.at(-1)?.length ?? 0 })
    throw new ThemeError(
      `${place}: more than ${themeLimits.blocks} blocks are within each other`,
      'Make a partial of what is in them',
    )
  }
}

class Checks extends Handlebars.Visitor {
  readonly #file: TemplateFile
  readonly #partials: readonly string[]
  readonly places = new Map<string, string>()

  constructor(file: TemplateFile, partials: readonly string[]) {
    super()
    this.#file = file
    this.#partials = partials
  }

  override MustacheStatement(node: hbs.AST.MustacheStatement): void {
    if (!node.escaped)
      throw new ThemeError(
        `${at(this.#file, node.loc.start)}: three braces would let text through unescaped`,
        'Write two braces: HTML of foldlore is let through anyway',
      )
    this.#checkMessage(node)
    super.MustacheStatement(node)
  }

  override SubExpression(node: hbs.AST.SubExpression): void {
    this.#checkMessage(node)
    super.SubExpression(node)
  }

  #checkMessage({ path, params: [key], loc }: hbs.AST.MustacheStatement | hbs.AST.SubExpression): void {
    if (path.type !== 'PathExpression' || (path as hbs.AST.PathExpression).original !== 'say') return
    const name = key?.type === 'StringLiteral' ? (key as hbs.AST.StringLiteral).value : undefined
    const unknown = name === undefined ? undefined : unknownMessage(name)
    if (name !== undefined && !unknown) return
    throw new ThemeError(
      `${at(this.#file, loc.start)}: there is no message \`${name ?? ''}\` to say`,
      unknown?.suggestion ?? 'Write the name of the message in quotes: `{{say "handout.pieces-to-cut"}}`',
    )
  }

  override PartialStatement(node: hbs.AST.PartialStatement): void {
    this.#check(node)
    super.PartialStatement(node)
  }

  override PartialBlockStatement(node: hbs.AST.PartialBlockStatement): void {
    this.#check(node)
    super.PartialBlockStatement(node)
  }

  #check({ name, loc }: hbs.AST.PartialStatement | hbs.AST.PartialBlockStatement): void {
    if (name.type !== 'PathExpression') return
    const { original } = name as hbs.AST.PathExpression
    if (!this.places.has(original)) this.places.set(original, at(this.#file, loc.start))
    if (original.startsWith('@') || this.#partials.includes(original)) return
    throw new ThemeError(
      `${at(this.#file, loc.start)}: there is no partial \`${original}\``,
      suggestWord(original, this.#partials),
    )
  }
}

const at = ({ path }: TemplateFile, { line, column }: hbs.AST.Position): string =>
  `${path}:${line}:${column + 1}`

/** A mistake in a template, in plain words as far as they are known. */
function located(error: unknown, file: TemplateFile): ThemeError {
  if (error instanceof RangeError)
    return new ThemeError(
      `${file.path}: it does not come to an end`,
      'Look for a part that includes itself, or an `{{#each}}` within others that goes through the same list',
    )
  const { message, lineNumber, column } = error as Error & { lineNumber?: number; column?: number }
  const inText = /Parse error on line (\d+)/.exec(message)?.[1]
  const line = lineNumber ?? (inText === undefined ? undefined : Number(inText))
  const place = line === undefined ? file.path : at(file, { line, column: column ?? 0 })
  const missing = /^"(.+?)" not defined/.exec(message)?.[1]
  if (missing !== undefined)
    return new ThemeError(`${place}: a handout has no \`${missing}\``, 'Check the name, or take it out')
  const [first = message] = message.replace(/ - \d+:\d+$/, '').split('\n')
  return new ThemeError(
    inText === undefined ? `${place}: ${first}` : `${place}: this is not well-formed`,
    inText === undefined ? undefined : 'Check that each block is closed, and the braces',
  )
}

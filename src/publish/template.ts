import Handlebars from 'handlebars'
import { suggestWord } from '../length/finding.ts'
import { ThemeError } from './problems.ts'
import { registerSay, unknownMessage } from './say-helper.ts'
import { marked } from './template-view.ts'

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
  const make = (file: TemplateFile): Handlebars.TemplateDelegate => {
    const compiled = handlebars.compile(parsed(file, [...partials.keys()]), {
      strict: true,
      preventIndent: true,
    })
    return (context, options) => {
      try {
        return compiled(context, options)
      } catch (error) {
        throw error instanceof ThemeError ? error : located(error, file)
      }
    }
  }
  for (const [name, file] of partials) handlebars.registerPartial(name, make(file))
  const render = make(main)
  return (view) => render(marked(view))
}

function parsed(file: TemplateFile, known: readonly string[]): hbs.AST.Program {
  let program: hbs.AST.Program
  try {
    program = Handlebars.parse(file.text, { srcName: file.path })
  } catch (error) {
    throw located(error, file)
  }
  new Checks(file, known).accept(program)
  return program
}

class Checks extends Handlebars.Visitor {
  readonly #file: TemplateFile
  readonly #partials: readonly string[]

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

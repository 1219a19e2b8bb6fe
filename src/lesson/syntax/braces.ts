import { mdxExpression } from 'micromark-extension-mdx-expression'
import type { Code, Construct, Effects, Extension, State } from 'micromark-util-types'

const open = 123
const close = 125

/**
 * A micromark extension: `{base.size}` in running text. A brace that is not closed in its paragraph, or in which
 * another one opens, is text. A brace alone on a line is running text too, so it makes a paragraph.
 */
export function lessonBraces(): Extension {
  const listed = mdxExpression().text?.[open]
  const expression = Array.isArray(listed) ? listed[0] : listed
  if (!expression) throw new Error('Expected a construct for braces')
  return {
    text: {
      [open]: {
        ...expression,
        tokenize(effects, ok, nok) {
          return effects.check(closed, (code) => expression.tokenize.call(this, effects, ok, nok)(code), nok)
        },
      },
    },
  }
}

/** Looks ahead for the closing brace, at most to the next opening one: every character is looked at once. */
const closed: Construct = {
  partial: true,
  tokenize(effects: Effects, ok: State, nok: State): State {
    return (code) => {
      effects.enter('data')
      effects.consume(code)
      return inside
    }
    function inside(code: Code): State | undefined {
      if (code === null || code === open) return nok(code)
      effects.consume(code)
      if (code !== close) return inside
      effects.exit('data')
      return ok
    }
  },
}

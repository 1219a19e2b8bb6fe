import { directive } from 'micromark-extension-directive'
import type { Code, Construct, Effects, Extension, State, Tokenizer } from 'micromark-util-types'

/** The directives of a lesson, by how many colons they take. Everything else with a colon is text. */
export const directiveNames = {
  text: ['minutes', 'drying', 'meant'],
  leaf: ['figure', 'scan'],
  container: ['tip', 'caution', 'ahead', 'variation'],
} as const

const colon = 58
const bracket = 91
const brace = 123

/**
 * A micromark extension: directives, but only those with our names. The others are never tokenized, so whatever only
 * looks like a directive (`7:30`, `Note:this`, `:foo[*bar*]`) is what CommonMark says it is.
 *
 * @param options.callouts false to leave call-outs out.
 */
export function lessonDirectives({ callouts = true } = {}): Extension {
  const all = directive()
  const [container, leaf] = listed(all.flow?.[colon])
  const [text] = listed(all.text?.[colon])
  if (!container || !leaf || !text) throw new Error('Expected constructs for directives')
  return {
    text: { [colon]: withLabel(only(text, directiveNames.text, 1, 1, (code) => code === bracket)) },
    flow: {
      [colon]: [
        ...(callouts
          ? [only(container, directiveNames.container, 3, Number.POSITIVE_INFINITY, endsName)]
          : []),
        only(leaf, directiveNames.leaf, 2, 2, endsName),
      ],
    },
  }
}

const listed = <T>(one: T | T[] | undefined): T[] =>
  one === undefined ? [] : Array.isArray(one) ? one : [one]

/** Whether a name is over: line endings, tabs and the spaces of a tab are negative codes. */
const endsName = (code: Code): boolean =>
  code === null || code < 0 || code === 32 || code === bracket || code === brace

/** The construct, tried only where it has one of `names` behind a right number of colons. */
function only(
  construct: Construct,
  names: readonly string[],
  fewest: number,
  most: number,
  mayFollow: (code: Code) => boolean,
): Construct {
  const probe: Construct = { partial: true, tokenize: nameProbe(new Set(names), fewest, most, mayFollow) }
  return {
    ...construct,
    tokenize(effects, ok, nok) {
      return effects.check(probe, (code) => construct.tokenize.call(this, effects, ok, nok)(code), nok)
    },
  }
}

function nameProbe(
  names: ReadonlySet<string>,
  fewest: number,
  most: number,
  mayFollow: (code: Code) => boolean,
): Tokenizer {
  return (effects: Effects, ok: State, nok: State): State => {
    let colons = 0
    let name = ''
    return (code) => {
      effects.enter('data')
      return sequence(code)
    }
    function sequence(code: Code): State | undefined {
      if (code !== colon) return colons < fewest || colons > most ? nok(code) : letters(code)
      effects.consume(code)
      colons++
      return sequence
    }
    function letters(code: Code): State | undefined {
      if (code !== null && code >= 97 && code <= 122) {
        effects.consume(code)
        name += String.fromCharCode(code)
        return letters
      }
      effects.exit('data')
      return names.has(name) && mayFollow(code) ? ok(code) : nok(code)
    }
  }
}

/** A text directive without a label, because its bracket is never closed, is text. */
function withLabel(construct: Construct): Construct {
  return {
    ...construct,
    tokenize(effects, ok, nok) {
      const from = this.events.length
      const checked: State = (code) =>
        this.events.slice(from).some(([, token]) => token.type === 'directiveTextLabel')
          ? ok(code)
          : nok(code)
      return construct.tokenize.call(this, effects, checked, nok)
    },
  }
}

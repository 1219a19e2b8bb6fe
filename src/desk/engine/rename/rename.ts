import { readYaml } from '../../../card/yaml.ts'
import { errorsIn, type Finding } from '../../../length/finding.ts'
import { tokens } from '../../../length/tokens.ts'
import { applyEdits } from '../../../lesson/edits.ts'
import type { Edit, Refusal, Span } from '../engine.ts'
import { lessonAt } from '../kept-lesson.ts'
import { ownNames } from './own-names.ts'
import { type Reference, referencesIn } from './references.ts'

/** The name at a place that can be given anew: a piece, a layer, a span or whatever else the card block names itself. */
export function renamableAt(text: string, at: number): (Span & { readonly name: string }) | undefined {
  const found = referenceAt(text, at)
  return found && { from: found.from, to: found.to, name: found.name }
}

/** The name that a place is on, or whose part it is on: the `size` of `sea wall.size` is the sea wall's. */
function referenceAt(text: string, at: number): Reference | undefined {
  const all = referencesIn(lessonAt(text, {}).lesson)
  return (
    all.find(({ from, to }) => from <= at && at <= to) ??
    all.findLast(({ to }) => to < at && /^(?:\.[\p{L}\p{N}]*)+$/u.test(text.slice(to, at)))
  )
}

/**
 * Another name for what a card calls by the name at a place: in its block, in other cards' expressions, in braces, in
 * figures and in the supplies. Ordinary words stay as they are.
 *
 * @returns the changes; or why not, when nothing is named there, when the new name is none or is taken, or when the lesson
 * would have a mistake more.
 */
export function renameAt(text: string, at: number, to: string): readonly Edit[] | Refusal {
  const before = lessonAt(text, {})
  const found = referenceAt(text, at)
  if (!found)
    return {
      refused: 'There is no name of the card here',
      suggestion: 'Put the cursor on the name of a piece',
    }
  const name = to.trim().replace(/\s+/g, ' ')
  if (name === found.name) return []
  if (!isName(name))
    return {
      refused: name === '' ? 'The new name is empty' : `\`${name}\` cannot be a name`,
      suggestion: 'A name is a word or a few, of letters and digits, and begins with a letter',
    }
  const block = before.lesson.cards.find((one) => one.name === found.card)
  const own = block ? ownNames(readYaml(block).top.value) : []
  const card = before.filled.cards.find((one) => one.card.name === found.card)?.card
  const owners = card ? card.names.paths().map((path) => path.split('.')[0] ?? '') : []
  const taken = [...own, ...owners, 'base', 'card', 'closed', 'envelope']
  if (taken.includes(name) || before.lesson.cards.some((one) => one.name === name))
    return { refused: `\`${name}\` is the name of something else already`, suggestion: 'Take another name' }
  const edits = referencesIn(before.lesson)
    .filter((one) => one.card === found.card && one.name === found.name)
    .map(
      ({ from, to: end, bare }): Edit => ({
        from,
        to: end,
        insert: bare && /\s/.test(name) ? `"${name}"` : name,
      }),
    )
  const after = lessonAt(
    applyEdits(
      text,
      edits.map(({ from, to: end, insert }) => ({ start: from, end, text: insert })),
    ),
    {},
  )
  const [worse] = newErrors(before.filled.findings, after.filled.findings)
  return worse
    ? {
        refused: `With that name the lesson has a mistake: ${worse.message}`,
        suggestion: 'Take another name',
      }
    : edits
}

const isName = (text: string): boolean => {
  const [first, end] = tokens(text)
  return first?.kind === 'name' && end?.kind === 'end' && first.text === text && text.length <= 60
}

/** Errors of a kind that there are more of than there were. */
function newErrors(before: readonly Finding[], after: readonly Finding[]): Finding[] {
  const count = (findings: readonly Finding[], rule: string): number =>
    errorsIn(findings).filter((one) => one.rule === rule).length
  return errorsIn(after).filter(({ rule }) => count(after, rule) > count(before, rule))
}

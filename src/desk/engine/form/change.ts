import { Lexer } from 'yaml'
import { applyEdits } from '../../../lesson/edits.ts'
import type { Lesson } from '../../../lesson/lesson.ts'
import type { Edit, Refusal } from '../engine.ts'
import type { FormChange } from '../form.ts'
import { lessonAt } from '../kept-lesson.ts'
import { addition } from './addition.ts'
import { borderAs } from './border.ts'
import { type CardBlock, openBlock, openCard, spotAt } from './card-block.ts'
import { insertValue } from './insert.ts'
import { at, has, isList, isSame, type Plain, put, without } from './plain.ts'
import { removedWith, removeEntry } from './remove.ts'
import { replaceValue } from './replace.ts'

/** What a card block is to say, and the edits that are to bring it about. */
interface Plan {
  readonly wanted: Plain
  readonly edits: readonly Edit[]
}

/** The edits for a change of the form, in a lesson as it is written. */
export const changeAt = (text: string, card: string, change: FormChange): readonly Edit[] | Refusal =>
  changeCard(lessonAt(text, {}).lesson, card, change)

/**
 * The edits of the lesson's text that a change of the form takes: the value itself and nothing round it. They are given
 * only when the block, read again, says just what it is to say and every note in it is still there.
 */
export function changeCard(lesson: Lesson, card: string, change: FormChange): readonly Edit[] | Refusal {
  const open = openCard(lesson, card)
  if (!open) return { refused: `The lesson has no card \`${card}\`` }
  const [problem] = open.broken
  if (problem)
    return {
      refused: 'The card block cannot be read as it is, so the form leaves it alone',
      suggestion: `${problem.suggestion ?? 'Mend it'}, in the text`,
    }
  const plan = planOf(lesson, open, change)
  if ('refused' in plan) return plan
  if (isSame(plan.wanted, open.plain)) return []
  const removes = change.kind === 'clear' || change.kind === 'remove'
  return brings(lesson, open, plan, removes)
    ? plan.edits
    : {
        refused: 'This is written in a way that the form does not change',
        suggestion: 'Change it in the text',
      }
}

function planOf(lesson: Lesson, card: CardBlock, change: FormChange): Plan | Refusal {
  switch (change.kind) {
    case 'set':
      return setPlan(card, change.path, oneLine(change.text))
    case 'list':
      return setPlan(card, change.path, listOrOne(change.items.map(oneLine)))
    case 'shape': {
      const { path, shape } = change
      return setPlan(card, path, borderAs(at(card.plain, path), shape))
    }
    case 'clear':
    case 'remove':
      return clearPlan(card, change.path)
    case 'add': {
      const added = addition(lesson, card, change.what, oneLine(change.name))
      return 'refused' in added ? added : setPlan(card, added.path, added.value)
    }
  }
}

const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim()

/** One panel stands by itself. */
const listOrOne = (items: readonly string[]): Plain => (items.length > 1 ? items : items[0])

function setPlan(card: CardBlock, path: readonly string[], value: Plain): Plan {
  if (value === undefined || value === '') return clearPlan(card, path)
  // An envelope may be its make alone.
  const [key = ''] = path
  const make = path.length === 2 && key === 'envelope' ? at(card.plain, [key]) : undefined
  if (typeof make === 'string')
    return setPlan(
      card,
      [key],
      new Map([
        ['make', make],
        [path[1] ?? '', value],
      ]),
    )
  const wanted = put(card.plain, path, value)
  const spot = has(card.plain, path) ? spotAt(card, path) : undefined
  return { wanted, edits: spot ? replaceValue(card, spot, value) : insertValue(card, path, value) }
}

function clearPlan(card: CardBlock, path: readonly string[]): Plan {
  if (!has(card.plain, path)) return { wanted: card.plain, edits: [] }
  const owner = at(card.plain, path.slice(0, -1))
  // The place of an item in its list says what it is: it cannot go alone.
  if (isList(owner)) return { wanted: card.plain, edits: [] }
  const whole = removedWith(card.plain, path)
  return { wanted: without(card.plain, whole), edits: removeEntry(card, whole) }
}

/** Whether the edits do what they are to do, and nothing besides. */
function brings(lesson: Lesson, card: CardBlock, { wanted, edits }: Plan, removes: boolean): boolean {
  const after = applyEdits(
    lesson.source.text,
    edits.map(({ from, to, insert }) => ({ start: from, end: to, text: insert })),
  )
  // A change lies within the block, and none of them can end it: it is as much longer as the whole text.
  const { text, place } = card.block
  const length = text.length + after.length - lesson.source.text.length
  const inside = after.slice(place.offset, place.offset + Math.max(0, length)).replace(/\r(?!\n)/g, '\n')
  const now = openBlock(after, { ...card.block, text: inside })
  if (now.broken.length > 0) return false
  return isSame(now.plain, wanted) && (removes || notesIn(inside) >= notesIn(text))
}

/** How many notes behind `#` there are. The reader of YAML names its scalars by a sign before them. */
function notesIn(text: string): number {
  let before = ''
  let count = 0
  for (const token of new Lexer().lex(text)) {
    if (token.startsWith('#') && before !== scalarSign) count++
    before = token
  }
  return count
}

const scalarSign = '\u001f'

import type { Entry, YamlBlock } from '../card/yaml.ts'
import type { Finding } from '../length/finding.ts'
import { formatGrid } from '../length/format.ts'
import { type Size, same } from '../length/length.ts'
import { wishedSize, writtenClosed } from './closed-wish.ts'
import { applyEdits, type Edit } from './edits.ts'
import { mainCard } from './figure-target.ts'
import { inFileOrder } from './file-order.ts'
import { fillLesson } from './fill.ts'
import { frontMatterEdit, valueEdit } from './front-matter-edit.ts'
import type { Lesson, Wishes } from './lesson.ts'
import { readLesson } from './read.ts'
import { sizeText } from './size-text.ts'

/**
 * A lesson for another closed size, unit or ruler grid, as Markdown. Only what says so in the file is changed: `closed:`
 * of the main card, and `units:` and `grid:` in the front matter. A lesson that is what is wished already comes back
 * as it is.
 *
 * @returns the text, and all findings of the new lesson, with places in the new text; a size that cannot be changed,
 * because it is worked out from something else, is one of them.
 */
export function resizeLesson(text: string, wishes: Wishes): { text: string; findings: Finding[] } {
  const lesson = readLesson(text)
  const { frontMatter } = lesson
  const edits: Edit[] = []
  const { closed, findings } = wishedSize(lesson.cards, wishes)
  if (closed) edits.push(...closedEdits(text, lesson, closed, wishes))
  if (wishes.units && wishes.units !== frontMatter.units)
    edits.push(frontMatterEdit(text, lesson, 'units', wishes.units))
  if (wishes.grid && !(frontMatter.grid && same(frontMatter.grid, wishes.grid)))
    edits.push(frontMatterEdit(text, lesson, 'grid', formatGrid(wishes.grid)))
  const resized = applyEdits(text, edits)
  const after = readLesson(resized)
  return {
    text: resized,
    findings: inFileOrder([...fillLesson(after).findings, ...findings, ...aboutResizing(after, closed)]),
  }
}

/** `closed` of the main card as it is written. */
function closedOf(lesson: Lesson): { block?: YamlBlock; entry?: Entry; size?: Size } {
  const block = mainCard(lesson.cards)
  if (!block) return {}
  return { block, ...writtenClosed(block) }
}

const sameSize = (a: Size, b: Size): boolean => same(a.width, b.width) && same(a.height, b.height)

function closedEdits(text: string, lesson: Lesson, closed: Size, { units }: Wishes): Edit[] {
  const { entry, size } = closedOf(lesson)
  if (entry?.kind !== 'text' || !size || sameSize(size, closed)) return []
  return valueEdit(text, entry, sizeText(closed, entry.text, [...(units ? [units] : [])]))
}

/** What could not be changed, and what was left as it was. */
function aboutResizing(lesson: Lesson, closed: Size | undefined): Finding[] {
  if (!closed) return []
  const { block, entry, size } = closedOf(lesson)
  if (!block)
    return [
      {
        rule: 'cannot-resize',
        severity: 'error',
        message: 'The lesson has no card that could have another size',
        suggestion: 'Add a card block',
      },
    ]
  // No `closed` at all is told by the card itself.
  if (entry && !(size && sameSize(size, closed)))
    return [
      {
        rule: 'cannot-resize',
        severity: 'error',
        message: 'The closed size is not written out here, so it cannot be replaced',
        suggestion: 'Write width and height, such as `closed: 7 x 5 in`',
        place: entry.place,
      },
    ]
  return lesson.cards
    .filter((other) => other !== block)
    .map((other) => ({
      rule: 'other-card',
      severity: 'hint',
      message: `Only \`${block.name}\` has the new size: \`${other.name}\` is as it was`,
      suggestion: `Change \`closed:\` of \`${other.name}\` too, if it belongs to the other`,
      place: other.place,
    }))
}

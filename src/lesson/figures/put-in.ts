import type { Nodes, Root } from 'mdast'
import { applyEdits, type Edit } from '../edits.ts'
import { fillLesson } from '../fill.ts'
import type { FilledLesson } from '../lesson.ts'
import { readLesson } from '../read.ts'
import { proseOf } from '../rules/prose.ts'
import { directiveOf } from './directive.ts'
import { lineBelow } from './edit.ts'
import { type Offered, offeredFigures } from './offered.ts'
import { withFigures } from './with-figures.ts'

/** A lesson's text with figures put in, and which. */
export interface WithFigures {
  readonly text: string
  readonly placed: readonly Offered[]
}

/**
 * Puts the figures that are offered into the text of a lesson, below the text of their steps. All other characters stay
 * as they are. A figure is put in only if the lesson, read again, is the same with that figure in that step; so a second
 * time nothing is left to do.
 *
 * @param canDraw whether a figure can be drawn; those that cannot are left out.
 */
export function putFiguresIn(
  text: string,
  canDraw: (offered: Offered, lesson: FilledLesson) => boolean,
): WithFigures {
  const lesson = readLesson(text)
  const filled = fillLesson(lesson)
  const offered = offeredFigures(filled, proseOf({ lesson, filled }).course()).filter((one) =>
    canDraw(one, filled),
  )
  const edits = offered.flatMap((one) => {
    const edit = lineBelow(text, one.item, directiveOf(one))
    return edit ? [{ one, edit }] : []
  })
  const isRight = (these: typeof edits): boolean =>
    keeps(
      text,
      these.map(({ edit }) => edit),
      withFigures(
        filled.tree,
        these.map(({ one }) => one),
      ),
    )
  const good = isRight(edits) ? edits : edits.filter((edit) => isRight([edit]))
  const all = isRight(good) ? good : []
  return {
    text: applyEdits(
      text,
      all.map(({ edit }) => edit),
    ),
    placed: all.map(({ one }) => one),
  }
}

/** Whether the changed text reads as a tree, whatever the positions in it. */
function keeps(text: string, edits: readonly Edit[], tree: Root): boolean {
  const read = fillLesson(readLesson(applyEdits(text, edits)))
  return shape(read.tree) === shape(tree)
}

/** Everything of a tree but where it stands, and whether its lists have blank lines. */
const shape = (tree: Nodes): string =>
  JSON.stringify(tree, (key, value) => (unseen.has(key) || isEmptyData(key, value) ? undefined : value))

const unseen: ReadonlySet<string> = new Set(['position', 'spread', 'ofPlace', 'lines'])

const isEmptyData = (key: string, value: unknown): boolean =>
  key === 'data' &&
  typeof value === 'object' &&
  value !== null &&
  Object.keys(value).every((name) => unseen.has(name))

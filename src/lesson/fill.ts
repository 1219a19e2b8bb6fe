import type { Root } from 'mdast'
import { proveCard } from '../fold/prove-card.ts'
import type { Finding } from '../length/finding.ts'
import type { Length } from '../length/length.ts'
import { type Wording, wordingOf } from '../wording/wording.ts'
import type { Course } from './actions/course.ts'
import { withDrying } from './actions/drying.ts'
import { withWork } from './actions/step-work.ts'
import { wishedSize } from './closed-wish.ts'
import { mainCard } from './figure-target.ts'
import { saidInSteps } from './figures/said.ts'
import { inFileOrder } from './file-order.ts'
import { fillTree } from './fill-tree.ts'
import type { FilledLesson, Lesson, ProvenCard, Step, Wishes } from './lesson.ts'
import { type Filling, measureText } from './measure.ts'
import { namesOf } from './names.ts'
import type { FigureNode } from './nodes.ts'
import { gridFor } from './ruler.ts'
import { withoutAllowed } from './rules/allowed.ts'
import { proseOf } from './rules/prose.ts'
import { ruleDocs, rules } from './rules/rules.ts'
import { cautionsOf } from './safety/cautions.ts'
import { dangersOf } from './safety/dangers-of.ts'
import { withStages } from './stages.ts'
import { readSupplies } from './supplies.ts'

/**
 * Builds and proves the cards of a lesson, and fills its measures and supplies in.
 *
 * @param wishes another closed size (of the main card, or its own turned), unit or ruler grid than the lesson's own.
 * @returns everything that could be worked out, and all findings: of the reading, the cards, the folding, the measures
 * and the lesson as a whole. The lesson that was given is not changed.
 */
export function fillLesson(lesson: Lesson, wishes: Wishes = {}): FilledLesson {
  const { frontMatter } = lesson
  const unit = wishes.units ?? frontMatter.units
  const grid = wishes.grid ?? gridFor(frontMatter, unit)
  const wording = wordingOf(frontMatter.lang, unit)
  const { cards, complete, findings } = proveCards(lesson, wording, grid, wishes)
  const names = namesOf(
    cards.map(({ card }) => card),
    complete,
  )
  let needsNames = false
  const filling: Filling = {
    wording,
    grid,
    lookup: (path, at) => {
      needsNames = true
      return names(path, at)
    },
  }
  const figures: FigureNode[] = []
  const tree = fillTree(lesson.tree, {
    figure: (node) => figures.push(node),
    measure: (node) => {
      const { text, findings: found } = measureText(node, filling)
      findings.push(...found)
      return text === undefined ? node : { ...node, text }
    },
  })
  const { supplies, findings: ofSupplies } = readSupplies(lesson.supplies, filling)
  const read = { frontMatter, unit, wording, grid, tree, cards, supplies }
  const prose = proseOf({ lesson, filled: read })
  const built = { ...read, steps: stepsOf(lesson, tree, prose.deeds()) }
  const dangers = dangersOf({ lesson, filled: built, sentences: prose.sentences(), mentions: prose.mentions })
  const said = saidInSteps(prose.sentences(), prose.course())
  const filled = { ...built, said, cautions: cautionsOf(dangers, tree, frontMatter, wording) }
  const input = { lesson, filled, figures, needsNames, complete, prose, wishes }
  const ofRules = rules.flatMap((rule) => rule.find(input))
  const known = ruleDocs.map(({ name }) => name)
  return {
    ...filled,
    findings: inFileOrder([
      ...lesson.findings,
      ...findings,
      ...ofSupplies,
      ...withoutAllowed(ofRules, frontMatter.allow, known, complete),
    ]),
  }
}

/** The steps with what the tree and their words say of them. */
const stepsOf = ({ steps }: Lesson, tree: Root, course: Course): Step[] =>
  withWork(withDrying(withStages(steps, tree), course), course)

function proveCards(
  lesson: Lesson,
  wording: Wording,
  grid: Length,
  wishes: Wishes,
): { cards: ProvenCard[]; complete: boolean; findings: Finding[] } {
  const { unit } = wording
  const main = mainCard(lesson.cards)
  const wished = wishedSize(lesson.cards, wishes)
  const findings = [...wished.findings]
  const cards = lesson.cards.flatMap((block) => {
    const closed = block === main ? wished.closed : undefined
    const proven = proveCard(block, { unit, grid, wording, ...(closed && { closed }) })
    findings.push(...proven.findings)
    return proven.card && proven.proof ? [{ card: proven.card, proof: proven.proof }] : []
  })
  return { cards, complete: cards.length > 0 && cards.length === lesson.cards.length, findings }
}

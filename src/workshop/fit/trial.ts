import type { Card } from '../../card/card.ts'
import { checkCard } from '../../card/check.ts'
import type { YamlBlock } from '../../card/yaml.ts'
import { proveCard } from '../../fold/prove-card.ts'
import { errorsIn, type Finding } from '../../length/finding.ts'
import { type Length, type Size, type Unit, zero } from '../../length/length.ts'
import { once } from '../../length/once.ts'
import { mainCard } from '../../lesson/figure-target.ts'
import { fillLesson } from '../../lesson/fill.ts'
import { fillTree } from '../../lesson/fill-tree.ts'
import type { Lesson } from '../../lesson/lesson.ts'
import { type Filling, measureText } from '../../lesson/measure.ts'
import { namesOf } from '../../lesson/names.ts'
import { readSupplies } from '../../lesson/supplies.ts'
import { wordingOf } from '../../wording/wording.ts'
import { type PaperPiece, paperPieces } from './paper-pieces.ts'

/** What is known of a card before it is folded. Its pieces are those of the folded card, but for the envelope. */
export interface Draft {
  readonly errors: readonly Finding[]
  readonly pieces: readonly PaperPiece[]
}

/** The cards of the lesson at one size, proven, and its measures filled in. */
export interface Proven {
  readonly errors: readonly Finding[]
  /** Missing when the card has errors. */
  readonly card?: Card
  readonly thickness: Length
  readonly pieces: readonly PaperPiece[]
}

/** The lesson tried at one size of its main card; each is worked out when it is first asked for. */
export interface Trial {
  readonly size: Size
  /** Missing when what is to be cut may follow from how the card folds. */
  draft(): Draft | undefined
  proven(): Proven
  /** All that `check` finds at this size: it reads every step too, so it is asked last. */
  checked(): readonly Finding[]
}

export type Trials = (size: Size) => Trial

/** Tries a lesson at any size. */
export function trialsOf(lesson: Lesson, unit: Unit, grid: Length): Trials {
  const block = mainCard(lesson.cards)
  const waits = block === undefined || leansOnThickness(block)
  const others = once(() => otherCards(lesson, unit, grid, block))
  return (size) => ({
    size,
    draft: once(() => {
      if (waits) return undefined
      const { card, findings } = checkCard(block, { unit, grid, closed: size })
      // An envelope that is wrong for a card without thickness may be right for the real one.
      const errors = errorsIn(findings).filter(({ rule }) => !rule.startsWith('envelope'))
      if (!card) return errors.length > 0 ? { errors, pieces: [] } : undefined
      return {
        errors,
        pieces: [...paperPieces([{ ...card, envelope: undefined }], others().several), ...others().pieces],
      }
    }),
    proven: once((): Proven => {
      const { card, proof, findings } = block
        ? proveCard(block, { unit, grid, closed: size })
        : { findings: [] }
      const cards = [...(card ? [card] : []), ...others().cards]
      const filled = card && proof ? measureErrors(lesson, cards, unit, grid) : []
      return {
        errors: errorsIn([...findings, ...others().findings, ...filled]),
        ...(card && { card }),
        thickness: proof?.closed?.thickness ?? zero,
        pieces: paperPieces(cards, others().several),
      }
    }),
    checked: once(() => fillLesson(lesson, { closed: size, units: unit, grid }).findings),
  })
}

/** What is wrong with the measures of the steps and the supplies: a score may be asked for that this size lacks. */
function measureErrors(lesson: Lesson, cards: readonly Card[], unit: Unit, grid: Length): Finding[] {
  const filling: Filling = {
    wording: wordingOf(lesson.frontMatter.lang, unit),
    grid,
    lookup: namesOf(cards, cards.length === lesson.cards.length),
  }
  const findings: Finding[] = []
  fillTree(lesson.tree, {
    figure: () => undefined,
    measure: (node) => {
      findings.push(...measureText(node, filling).findings)
      return node
    },
  })
  return [...findings, ...readSupplies(lesson.supplies, filling).findings]
}

/** Only these words make a length follow from how thick the shut card is; the envelope always does. */
const leansOnThickness = ({ text }: YamlBlock): boolean => /\bauto\b|thickness/.test(text)

/** The cards that keep their size. */
function otherCards(lesson: Lesson, unit: Unit, grid: Length, main: YamlBlock | undefined): Others {
  const proven = lesson.cards
    .filter((block) => block !== main)
    .map((block) => proveCard(block, { unit, grid }))
  const cards = proven.flatMap(({ card }) => card ?? [])
  return {
    several: proven.length > 0,
    cards,
    pieces: paperPieces(cards, true),
    findings: proven.flatMap(({ findings }) => findings),
  }
}

interface Others {
  readonly several: boolean
  readonly cards: readonly Card[]
  readonly pieces: readonly PaperPiece[]
  readonly findings: readonly Finding[]
}

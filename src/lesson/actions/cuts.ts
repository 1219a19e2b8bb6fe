import type { Named } from '../prose/named.ts'
import type { Sentence } from '../prose/sentence.ts'
import type { Action } from './action.ts'
import type { Course } from './course.ts'

/** Where a lesson first cuts a piece. */
export interface Cut {
  /** Number of the step; 0 for what is cut beforehand. */
  readonly step: number
  /** The words, if they say that it is cut and not only what size it is. */
  readonly action?: Action
}

/**
 * The first cut of each piece. A step or a table that says the size of a piece has it cut, too, whatever its words are;
 * `cut all the pieces` cuts those that nothing else does.
 */
export function firstCuts({
  actions,
  asides,
  sentences,
  pieces,
}: Pick<Course, 'actions' | 'asides' | 'sentences' | 'pieces'>): Map<Named, Cut> {
  const cuts = new Map<Named, Cut>()
  const add = (piece: Named | undefined, cut: Cut): void => {
    const known = piece && cuts.get(piece)
    if (piece && (!known || cut.step < known.step || (cut.step === known.step && !known.action)))
      cuts.set(piece, cut)
  }
  const pieceCut = (named: Named): Named | undefined => {
    if (named.kind === 'piece') return named
    // A piece that does not fold is called by the name of its only panel, too.
    const { structure } = named.card
    const panels = structure.plates.filter(({ piece }) => piece === named.piece)
    return named.kind === 'panel' && panels.length === 1
      ? pieces.find(({ card, name }) => card === named.card && name === named.piece)
      : undefined
  }
  for (const action of actions.filter(({ kind }) => kind === 'cut'))
    for (const { named } of action.objects) add(pieceCut(named), { step: stepIn(action.sentence), action })
  for (const { kind, objects, sentence } of asides)
    if (kind === 'cut')
      for (const { named, sure } of objects) if (sure) add(pieceCut(named), { step: aheadOf(sentence) })
  for (const sentence of sentences.filter(({ kind }) => kind === 'text' || kind === 'cell'))
    for (const piece of sizedIn(sentence, pieces)) add(piece, { step: aheadOf(sentence) })
  const ofAll = [...actions, ...asides].find(({ kind, says }) => kind === 'cut' && says === 'several')
  if (ofAll)
    for (const piece of pieces) if (!cuts.has(piece)) cuts.set(piece, { step: aheadOf(ofAll.sentence) })
  return cuts
}

const stepIn = ({ step = 0 }: Sentence): number => step

/** What is done ahead, or said before the first step, is done before it. */
const aheadOf = (sentence: Sentence): number => (sentence.callout === 'ahead' ? 0 : stepIn(sentence))

/** The pieces whose size, or both width and height, a sentence says. */
function sizedIn({ measures, callout }: Sentence, pieces: readonly Named[]): Named[] {
  if (measures.length === 0 || callout === 'variation') return []
  const asked = measures.flatMap(({ paths }) => (paths.length === 1 ? paths : []))
  return pieces.filter(({ name, card }) => {
    const parts = asked.flatMap((path) => {
      const [first, second] = path
      if (first === name && path.length === 2) return path.slice(1)
      return first === card.name && second === name && path.length === 3 ? path.slice(2) : []
    })
    return parts.includes('size') || (parts.includes('width') && parts.includes('height'))
  })
}

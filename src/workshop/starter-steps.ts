import type { Card } from '../card/card.ts'
import { hingesOf } from '../card/scores.ts'
import type { Piece, Structure } from '../card/structure.ts'
import { listOf } from '../length/finding.ts'
import { isFoldedAlone } from '../lesson/figures/wanted.ts'
import { closingAdvice } from '../lesson/safety/cautions.ts'
import { dangersIn } from '../lesson/safety/danger.ts'
import { hazards } from '../lesson/safety/hazards.ts'
import { wordingOf } from '../wording/wording.ts'
import { isBox, isShownShut, mechanismOf } from './mechanism.ts'
import { bendsOf, scoreWays } from './starter-creases.ts'
import { joinedTo, ownGlue, theName } from './starter-glue.ts'
import { furtherCuts } from './starter-tools.ts'

/** A step of a starter lesson: its text, and the blocks below it. */
export interface StarterStep {
  readonly text: string
  readonly below: readonly string[]
}

const shut = '::figure[Shut]{show=closed}'
const standing = '::figure[Done]{show=standing}'
const folding = '::figure[How it is folded]{show=folding}'

/** The steps that make a card: its base, then piece by piece what is stuck on it, and a look at the whole. */
export function stepsOf(card: Card): StarterStep[] {
  const { structure } = card
  const isOnePiece = mechanismOf(structure).length === 1 && !isBox(structure)
  const steps = structure.pieces.flatMap((piece, i) =>
    piece.kind === 'base' ? mechanismSteps(card, piece, i === 0 && isOnePiece) : [layerStep(card, piece)],
  )
  return withCautions([...steps, lastStep(structure, isOnePiece)])
}

function lastStep(structure: Structure, wasShut: boolean): StarterStep {
  const look = isBox(structure)
    ? 'Look at it from all sides: every corner is square, and what is stuck holds.'
    : 'Open and shut the card once, and look whether every edge lies inside it.'
  const figures = isShownShut(structure) ? [shut] : wasShut ? [standing] : [shut, standing]
  return { text: `${look} :minutes[2]`, below: figures }
}

/** Cutting and scoring a piece of the mechanism, then folding and sticking it. */
function mechanismSteps(card: Card, piece: Piece, shuts: boolean): StarterStep[] {
  const { structure } = card
  const ways = scoreWays(structure, piece)
  const more = furtherCuts(card, piece)
  const score = ways.length > 0 ? ` Score ${itOf(piece)} on the scoring board ${listOf(ways)}.` : ''
  const cut = `${cutOf(structure, piece)}, with the paper trimmer.${score}${more}`
  const glue = `${ownGlue(structure, piece)}${joinedTo(structure, piece)}`
  const drawn = `::figure[The ${piece.name}, ${score ? 'scored' : 'cut'}]{show=flat of="${piece.name}"}`
  // A plain piece has nothing to draw.
  if (!score) return [{ text: `${cut}${glue} :minutes[5]`, below: more ? [drawn] : [] }]
  const press = bendsSquare(structure, piece)
    ? 'Press every fold sharp, then open each to a right angle.'
    : 'Press every fold flat.'
  const then = shuts ? ' Shut the card.' : ''
  return [
    { text: `${cut} :minutes[5]`, below: [drawn] },
    {
      text: `Fold ${bendsOf(structure, piece)}. ${press}${glue}${then} :minutes[5]`,
      below: shuts ? [shut] : isFoldedAlone({ name: piece.name, card }) ? [folding] : [],
    },
  ]
}

/** Cutting a layer or a span, and sticking it on. */
function layerStep(card: Card, piece: Piece): StarterStep {
  const glue = joinedTo(card.structure, piece)
  return {
    text: `${cutOf(card.structure, piece)}.${furtherCuts(card, piece)}${glue} :minutes[5]`,
    below:
      piece.kind === 'loose' ? [] : [`::figure[Where the ${piece.name} goes]{show=place of="${piece.name}"}`],
  }
}

const itOf = ({ count }: Piece): string => (count > 1 ? 'them' : 'it')

/** The base may be a panel of another name, and of that name are the steps that stick something on it. */
function cutOf({ plates }: Structure, { name, count }: Piece): string {
  if (count > 1) return `Cut {${name}.count} pieces for ${theName(name)}, each {${name}.size}`
  const own = plates.filter(({ piece }) => piece === name).map((plate) => plate.name)
  const called = own.length === 1 && own[0] !== name ? ` (the ${own[0]})` : ''
  return `Cut ${theName(name)}${called}, {${name}.size}`
}

/** Whether the creases of a piece stand open when the card is shut. */
function bendsSquare({ shut: bends = [], ...structure }: Structure, { name }: Piece): boolean {
  const own = hingesOf(structure, name).map(({ between }) => between.toSorted().join('\n'))
  return bends.some(({ hinge, degrees }) => degrees % 180 !== 0 && own.includes(hinge.toSorted().join('\n')))
}

/** A caution at the first step with each tool that can hurt. */
function withCautions(steps: readonly StarterStep[]): StarterStep[] {
  const wording = wordingOf('en', 'in')
  const found = steps.map(({ text }) => dangersIn(text, { as: 'step', children: false, locale: 'en-GB' }))
  return steps.map((step, i) => {
    const before = new Set(found.slice(0, i).flatMap((dangers) => dangers.map(({ hazard }) => hazard)))
    const here = new Set(found[i]?.map(({ hazard }) => hazard))
    const callouts = hazards
      .filter((hazard) => here.has(hazard) && !before.has(hazard))
      .map(
        ({ name }) =>
          `:::caution{about=${name}}\n${wording.say(`cautions.${name}`)} ${closingAdvice({ wording })}\n:::`,
      )
    return { ...step, below: [...callouts, ...step.below] }
  })
}

import type { Card } from '../../card/card.ts'
import type { Closed } from '../../fold/pose.ts'
import type { Sheet } from '../frame.ts'
import { makePalette } from '../stock.ts'
import { drawnBars } from './bars.ts'
import { bendsOf, jointsOf } from './bends.ts'
import { heightsOf } from './heights.ts'
import { type Drawing, fittedSection, type Labelling } from './layout.ts'
import { creaseMarks, foamMark, padMarks, sheetMarks } from './marks.ts'
import { namesOf, targetOf } from './names.ts'
import { foamOf, lettersOf } from './pads.ts'
import { chooseCut } from './place.ts'
import { eased, flatCreases } from './slopes.ts'
import { stripsOf } from './strips.ts'
import { timesFor } from './times.ts'
import { asLength, edgeCaption, edgeWords, thickText } from './words.ts'

/** A card that lies flat when it is shut, cut across its folds. @param accented plates with a heavier outline. */
export function drawEdgeOfFlat(
  card: Card,
  closed: Closed,
  accented: readonly string[],
  labelling: Labelling,
): Sheet {
  const { wording, options, of } = labelling
  const chosen = chooseCut(card, closed, accented)
  const { cut } = chosen
  const heights = heightsOf(cut, card.structure.bonds)
  const thickest = cut.columns.reduce((a, b) => (b.thickness > a.thickness ? b : a))
  const long = cut.along === 'width' ? closed.size.width : closed.size.height
  const draw = (along: number): Drawing => {
    const times = timesFor(cut, along)
    const scales = { along, thick: along * times }
    const level = drawnBars(cut, heights, scales)
    const joints = jointsOf(level, cut.crossings, along)
    const bars = eased(level, joints)
    const letters = lettersOf(cut, bars, card, scales)
    const foams = foamOf(cut, bars, card, scales)
    return {
      shape: [
        ...foams.map(foamMark),
        ...padMarks(letters, makePalette(card.structure)),
        ...sheetMarks(stripsOf(bars, bendsOf(bars, joints)), card, accented),
        ...creaseMarks(flatCreases(bars, joints)),
      ],
      names: namesOf(
        card,
        bars,
        letters,
        foams.map(({ target }) => target),
        wording,
      ),
      solid: [...bars.map(targetOf), ...letters.map(({ target }) => target)],
      long: { from: 0, to: cut.long * along, text: wording.length(long) },
      thick: {
        low: 0,
        high: thickest.thickness * scales.thick,
        text: thickText(asLength(thickest.thickness), wording),
        until: thickest.to * along,
      },
      caption: edgeCaption(chosen, card, closed, times, wording),
      times,
    }
  }
  const { marks, times } = fittedSection(draw, cut.long, labelling)
  return {
    marks,
    title: wording.say('figures.card-edge-on'),
    alternative: edgeWords(chosen, card, closed, times, of, wording),
    ...(options.key !== undefined && { key: options.key }),
  }
}

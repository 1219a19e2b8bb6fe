import type { Structure } from '../../src/card/structure.ts'
import { bodiesOf } from '../../src/fold/bodies.ts'
import { closingsOf } from '../../src/fold/closings.ts'
import { layerOrdersOf } from '../../src/fold/layer-order.ts'
import { layerProblemOf } from '../../src/fold/layer-rules.ts'
import { layOut } from '../../src/fold/layout.ts'
import { modelOf } from '../../src/fold/model.ts'
import { ringsOf } from '../../src/fold/rings.ts'
import { sectionOf } from '../../src/fold/section.ts'

/** In how many ways the layers of a card can lie on each other in its smallest closing. */
export function countLayerOrders(structure: Structure): number {
  const model = modelOf(structure, [])
  const section = model && sectionOf(model, bodiesOf(model, []), model.shown, [])
  if (!section) throw new Error('not a card')
  const [closing] = closingsOf(section, ringsOf(section.bodies, section.links))
  if (!closing) return 0
  return [...layerOrdersOf(layerProblemOf(layOut(section, closing)))].length
}

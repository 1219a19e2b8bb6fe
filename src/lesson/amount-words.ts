import { type Area, inTenths } from '../length/area.ts'
import type { Wording } from '../wording/wording.ts'
import type { Counted } from './count-text.ts'
import { type Dose, toldDose } from './dose.ts'

/** `5`, `3 drops`, `1 drop`. */
export const countInWords = ({ count, of }: Counted, wording: Wording): string =>
  of === undefined ? String(count) : wording.say('handout.counted', { count, of })

/** `42.5 sq in`, `274,2 cm²`: up to the next tenth, so that it is never too little. */
export const areaInWords = (area: Area, wording: Wording): string =>
  wording.say('handout.area', {
    unit: wording.unit,
    number: wording.in('mm').number(inTenths(area, wording.unit)),
  })

/** `5 g`, `1.2 kg`, `1,5 l`. Decimals and never fractions, as scales and jugs have them. */
export function doseInWords(dose: Dose, wording: Wording): string {
  const { number, unit } = toldDose(dose)
  return `${wording.in('mm').number(number)} ${unit}`
}

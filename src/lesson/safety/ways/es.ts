import type { Ways } from '../way.ts'

export const es: Ways = {
  /** `sin cúter`, `en lugar de un cúter`, `no usar cola caliente`; `el cúter no hace falta`. */
  isRefused: (before, after) =>
    /(?<!\p{L})(?:sin|ni|ningún|ninguna|nunca|en (?:vez|lugar) del?|(?:no|nunca) (?:us|utili|emple)\p{L}+|no tomar)(?: (?:un[ao]?s?|el|la|los|las|ningún|ninguna))? $/iu.test(
      before,
    ) ||
    /^ no (?:hacen? falta|(?:es|son) necesari[oa]s?|se (?:usa|necesita|utiliza)n?)(?!\p{L})/iu.test(after),
  /** `dibujar una vela`, `un globo de papel`, `un sello de vela`. */
  isPicture: (before, after) =>
    /(?<!\p{L})(?:dibuj|pint|traz|colore|estamp|imprim)\p{L}+(?: (?:un[ao]?s?|el|la|los|las))?(?: \p{Ll}{2,9})? $/iu.test(
      before,
    ) ||
    /(?<!\p{L})(?:sello|pegatina|plantilla|motivo|imagen|dibujo)s?(?: de(?: un[ao]?| la| el)?)? $/iu.test(
      before,
    ) ||
    /^ (?:(?:de|en) (?:papel|cartulina|cartón|fieltro)|(?:dibujad|pintad|impres|estampad)[oa]s?)(?!\p{L})/iu.test(
      after,
    ),
  isUsed: (before) => /(?<!\p{L})con (?:un|una|el|la) $/iu.test(before),
  adult:
    /(?<!\p{L})(?:adult[oa]s?|personas? mayor|padres?|madres?|maestr[oa]|profesor|docente|tutor|monitor|educador|supervis|vigila)/iu,
}

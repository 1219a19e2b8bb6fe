import type { Ways } from '../way.ts'

export const fr: Ways = {
  /** `sans cutter`, `pas de colle chaude`, `au lieu d’un cutter`; `un cutter n’est pas nécessaire`. */
  isRefused: (before, after) =>
    /(?<!\p{L})(?:sans|ni|(?:pas|jamais) d(?:e |['’])|au lieu d(?:e |u |['’])|plutôt qu(?:e |['’])|jamais (?:utiliser|prendre|employer) |n(?:e |['’])(?:pas |jamais )?(?:utilise[rz]?|prendre|prenez|emploie|employe[rz])(?: pas| jamais)? )(?:\s*(?:une?|l[ea]|les|des|aucune?)\s+|\s*l['’]|\s*de\s+|\s*)$/iu.test(
      before,
    ) || /^ (?:n['’]est|ne sont|ne sert)(?: à)? (?:pas|rien)(?!\p{L})/iu.test(after),
  /** `dessiner une bougie`, `un ballon en papier`, `un tampon bougie`. */
  isPicture: (before, after) =>
    /(?<!\p{L})(?:dessine[rz]?|peindre|peins|peignez|trace[rz]?|colorie[rz]?|tamponne[rz]?|imprime[rz]?)(?: (?:une?|l[ea]|les|des|quelques))?(?: \p{Ll}{2,9})? $/iu.test(
      before,
    ) ||
    /(?<!\p{L})(?:tampon|autocollant|gommette|gabarit|pochoir|motif|image|dessin)s?(?: de| en forme de)? (?:d['’])?$/iu.test(
      before,
    ) ||
    /^ (?:(?:en|de) (?:papier|carton|feutrine)|(?:dessiné|peint|imprimé|tamponné)e?s?)(?!\p{L})/iu.test(
      after,
    ),
  isUsed: (before) => /(?<!\p{L})(?:avec (?:une? |l[ea] |l['’])|au )$/iu.test(before),
  adult:
    /(?<!\p{L})(?:adultes?|grandes personnes|parents?|enseignant|professeur|maître|maîtresse|animat(?:eur|rice)|encadr|accompagnat|surveill|moniteur|monitrice)/iu,
}

import type { Ways } from '../way.ts'

export const de: Ways = {
  /** `ohne Messer`, `kein scharfes Messer`, `statt eines Messers`; `ein Messer ist nicht nötig`. */
  isRefused: (before, after) =>
    /(?<!\p{L})(?:kein\p{L}*|ohne|(?:an)?statt|nie(?:mals)?)(?: (?:ein|d|jed)\p{L}{1,3})?(?: \p{Ll}+e[nrsm]?)? $/iu.test(
      before,
    ) ||
    /^ (?:ist|sind|wird|werden)(?: hier| dafür| dazu)? nicht (?:nötig|notwendig|gebraucht|benötigt|benutzt|verwendet|erforderlich)(?!\p{L})/iu.test(
      after,
    ),
  /** `Papierballon`, `eine gemalte Kerze`; `eine Kerze zeichnen`, `ein Ballon aus Papier`. */
  isPicture: (before, after, word) =>
    /^(?:papier|karton|papp|filz|stempel|stanz)\p{L}/iu.test(word) ||
    /(?:papier|karton|filz|(?<!\p{L})(?:auf)?ge(?:mal|zeichne|druck|stempel)te[nrsm]?)[ -]$/iu.test(before) ||
    /(?<!\p{L})(?:zeichne|male|stemple|skizziere|drucke)(?: (?:ein|d)\p{L}{1,3})?(?: \p{Ll}+)? $/iu.test(
      before,
    ) ||
    /^ aus (?:papier|karton|pappe|filz|fotokarton)/i.test(after) ||
    /^-(?:sticker|aufkleber|stempel|motiv|form|schablone|stanz\p{L}*|bild)/iu.test(after) ||
    /^(?: (?!und |oder )\p{Ll}+){0,3} (?:auf|ein|nach|vor)?(?:zeichnen|malen|stempeln|skizzieren|drucken)(?!\p{L})/u.test(
      after,
    ),
  isUsed: (before) => /(?<!\p{L})mit (?:eine[mr]|de[mr]) $/iu.test(before),
  adult:
    /(?<!\p{L})(?:erwachsen|lehrer|lehrkr|eltern|mutter|mütter|vater|väter|kursleit|leiter|leitung|betreu|begleitperson|aufsicht|beaufsichtig|helfer|tutor)/iu,
}

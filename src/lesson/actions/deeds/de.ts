import type { DeedWords } from './deed-words.ts'

/** German: `Die Grundkarte zuschneiden`, `Schneide die Grundkarte zu`, `Schneiden Sie die Grundkarte zu`. */
export const de: DeedWords = {
  verbs: {
    cut: 'zuschneiden schneiden ausschneiden zurechtschneiden herausschneiden',
    shape: `abschneiden wegschneiden einschneiden beschneiden durchschneiden zurückschneiden kürzen stutzen
      abrunden runden zuspitzen stanzen ausstanzen lochen reißen abreißen`,
    score: 'rillen vorrillen nachrillen ritzen anritzen',
    fold: `falten einfalten auffalten vorfalten umfalten zurückfalten zusammenfalten falzen klappen umklappen
      einklappen knicken biegen umbiegen einschlagen`,
    stick: `kleben ankleben aufkleben festkleben einkleben zusammenkleben überkleben bekleben verkleben
      befestigen anbringen fixieren heften tackern nähen annähen`,
    lay: `legen hinlegen auflegen einlegen anlegen setzen einsetzen aufsetzen stellen stecken einstecken
      schieben einschieben durchziehen hängen aufhängen fädeln auffädeln binden knoten ausrichten auftragen`,
    write: `schreiben beschriften zeichnen einzeichnen anzeichnen aufzeichnen malen bemalen anmalen ausmalen
      stempeln bestempeln kolorieren nummerieren färben markieren`,
    turn: 'wenden umwenden zurückwenden drehen umdrehen zurückdrehen',
  },
  called: (verb) => [verb, verb.replace(/n$/, ''), verb.replace(/en$/, '')],
  // Not `gemessen`, which tells what has been done.
  ending: /^(?!(?:\p{L}{2,5})?ge\p{L}{3,}en$).*\p{Ll}(?:en|eln|ern)$/u,
  noVerbs: `oben unten innen außen aussen hinten vorn vorne neben zusammen dagegen daneben beiden allen jeden
    diesen denen ihnen gegen zwischen eben offen einen keinen seinen ihren deren dessen anderen
    werden sollen können müssen dürfen haben bleiben`,
  verbLast: true,
  prepositions: `auf an in aus von vom mit bei beim zu zum zur nach über unter neben hinter vor um entlang durch
    gegen zwischen am im ins ans aufs für ohne ab bis außer statt seit`,
  onto: 'auf an in über unter hinter gegen durch zwischen am im ins ans aufs',
  pronouns: 'sie ihn es diese diesen dieses beide alles ihre seine',
  several: 'alle alles sämtliche teile lagen schichten rest übrigen restlichen',
  small: `der die das den dem des ein eine einen einem einer und oder dann danach nun jetzt zuerst erst noch
    wieder ebenso auch genau so sie bitte davon dabei je jeweils einmal zweimal mal × x`,
  and: 'und oder dann danach nun anschließend',
  notDone: 'nicht nie ohne bevor ehe bis wenn falls statt um sobald solange damit',
}

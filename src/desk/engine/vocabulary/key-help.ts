/**
 * What a key of a card block is, in a sentence. The keys themselves come from whoever reads them; this only tells about
 * them, and one without a word is offered all the same.
 */
const ofEveryCard: Readonly<Record<string, string>> = {
  fold: 'Which fold the card is.',
  closed: 'The size of the shut card, width first.',
  base: 'What the base is made of.',
  layers: 'Pieces that are stuck on a panel or on another layer.',
  spans: 'Strips that reach from one panel to another.',
  lettering: 'Letters spaced out evenly along a piece.',
  apertures: 'Windows that are cut out of a panel.',
  pieces: 'Pieces that are cut and have no fixed place on the card.',
  envelope: 'An envelope for the card, folded from one sheet.',
}

const ofAnyPart: Readonly<Record<string, string>> = {
  on: 'What it sits on: a panel, a layer or a span.',
  side: 'Which side of the panel it is on.',
  border: 'How far its edges stay inside what it sits on.',
  raise: 'How high foam holds it.',
  stock: 'The paper or card it is cut from.',
  weight: 'How heavy the sheet is, such as `300 gsm`.',
  bulk: 'Cubic centimetres to a gram of the sheet, as its maker gives it.',
  caliper: 'How thick one sheet is, such as `0.3 mm` or `14 pt`.',
  direction: 'Whether its pattern has a top, so that it is never turned.',
  width: 'How wide it is.',
  height: 'How high it is.',
  at: 'Where it is on its panels, or how far above their lower edge.',
  from: 'The panel on which it begins.',
  to: 'The panel on which it ends.',
  letters: 'The letters, in their order.',
  widths: 'How wide the letters are: one length for all, or a list.',
  margin: 'What stays free at both ends.',
  size: 'Its size, width first.',
  count: 'How many of it are cut.',
  left: 'How far it is from the left edge.',
  right: 'How far it is from the right edge.',
  top: 'How far it is from the top edge.',
  bottom: 'How far it is from the lower edge.',
  sides: 'The left and the right edge at once.',
  ends: 'The top and the lower edge at once.',
  spine: 'The edge beside the spine.',
  opening: 'The edge at which the card opens.',
  rim: 'The least that must be left around the window.',
  make: 'How the envelope is made.',
  clearance: 'How much larger than the card the envelope is inside.',
  seam: 'How far the flaps of the envelope lap.',
  flap: 'How wide the glue flaps of the envelope are.',
}

const ofFrontMatter: Readonly<Record<string, string>> = {
  title: 'What the lesson is called.',
  summary: 'One sentence about it, printed below the title.',
  level: 'For whom it is.',
  units: 'Whether it is printed in inches or in millimetres.',
  grid: 'The finest mark of the ruler that is used.',
  sizes: 'Other shut sizes that the lesson is offered in.',
  sheets: 'The sheets that its stocks are cut from, for figures of a sheet.',
  for: 'Whom it is taught to: with children each caution says what an adult does.',
  time: 'How long the class is, such as `90 min`.',
  allow: 'Advice that the lesson does not follow on purpose, each with the reason.',
  lang: 'The language it is written in, such as `en-GB` or `de`.',
  video: 'The link to a film, printed as a code to scan.',
  credits: 'Who made it.',
  brand: 'The logo, the colours and the footer of your workshop.',
}

const ofBrand: Readonly<Record<string, string>> = {
  logo: 'A picture beside the lesson, such as `harbour-mark.svg`.',
  name: 'What your workshop is called: the logo says it to those who do not see it.',
  accent: 'A colour for the numbers of steps, such as `"#1b5e6b"`.',
  second: 'A colour for captions and links.',
  footer: 'A line in the foot of every page.',
}

const ofSupplies: Readonly<Record<string, string>> = {
  each: 'What every person gets.',
  shared: 'What several people share, such as `1 per 2`.',
  tutor: 'What the teacher brings.',
}

/** What a key at the top of a card block is. */
export const blockKeyHelp = (key: string): string | undefined => ofEveryCard[key]
/** What a key of a layer, a span or another part is. */
export const partKeyHelp = (key: string): string | undefined => ofAnyPart[key]
/** What a key of the front matter is. */
export const frontKeyHelp = (key: string): string | undefined => ofFrontMatter[key]
/** What a key of `brand` is. */
export const brandKeyHelp = (key: string): string | undefined => ofBrand[key]
/** What a group of supplies is. */
export const supplyKeyHelp = (key: string): string | undefined => ofSupplies[key]

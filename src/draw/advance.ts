/**
 * Advance widths of Commissioner in thousandths of the text size, for the characters from space to tilde: the wider of
 * its regular and semibold weights, without kerning, measured in a browser from the font that ships.
 */
const ascii = [
  192, 255, 415, 693, 570, 920, 754, 218, 403, 403, 486, 595, 244, 425, 255, 451, 661, 445, 564, 579, 609,
  580, 614, 543, 615, 614, 255, 255, 575, 575, 575, 443, 889, 709, 657, 685, 737, 596, 576, 733, 750, 303,
  310, 690, 578, 962, 754, 817, 642, 817, 685, 596, 644, 731, 703, 1038, 700, 672, 682, 396, 451, 396, 625,
  421, 600, 528, 592, 495, 583, 528, 405, 547, 577, 272, 270, 564, 267, 873, 577, 598, 592, 587, 408, 463,
  418, 567, 533, 821, 556, 539, 510, 432, 277, 432, 575,
]
const others: Readonly<Record<string, number>> = {
  '\u202f': 96,
  '\u00a0': 192,
  '×': 576,
  '–': 606,
  '—': 795,
  '‘': 244,
  '’': 244,
  '“': 441,
  '”': 441,
  '„': 441,
  '«': 620,
  '»': 620,
  '…': 765,
  '·': 255,
  '¿': 413,
  '¡': 255,
  ß: 611,
  œ: 931,
  æ: 815,
}
/** As wide as the widest capital: a character that the table lacks is never taken for narrower than it is. */
const unknown = 1038
/** A digit of a real fraction, and the slash between its numbers. */
const smallDigit = 425
const fractionSlash = 305

/** Width of a run of text in mm at a text size in mm, never less than it comes out in print. */
export function advance(text: string, size: number, fraction = false): number {
  let sum = 0
  for (const char of text.normalize('NFC')) {
    if (fraction) sum += char === '/' ? fractionSlash : smallDigit
    else sum += ascii[(char.codePointAt(0) ?? 0) - 32] ?? others[char] ?? accented(char)
  }
  return (sum * size) / 1000
}

/** An accented letter is as wide as its bare one, or a little wider. */
function accented(char: string): number {
  const bare = char.normalize('NFD')
  return (bare.length > 1 ? (ascii[bare.charCodeAt(0) - 32] ?? unknown) : unknown) + 30
}

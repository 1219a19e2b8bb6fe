/** What the words round a literal say about which part of something it is. */
export interface Said {
  /** The words of its clause before it, lower case, ending where it starts. */
  readonly before: string
  /** The words of its sentence behind it, starting where it ends. */
  readonly behind: string
  readonly sentence: string
  /** The sentence before, if this one goes on about the same thing. */
  readonly earlier: string
}

interface PartWords {
  readonly part: RegExp
  /** Words that speak for it. */
  readonly near?: RegExp
  /** Without any of its words it is not meant. */
  readonly needed: boolean
}

/** Where something is put, or how thick it is, is no size of it. */
const place =
  /\bfrom (?:(?:the|its|each|either|both|one|a) )?(?:[\w-]+ )?(?:left|right|top|bottom|edges?|ends?|corners?|sides?|folds?|centre|middle)\b|\b(?:below|above|apart|in from|up from|scor\w*|thick)\b/
const isTall = /^,? (?:high|tall|in height|deep)\b/
const isWide = /^,? (?:wide|across|in width|broad)\b/
const isLong = /^,? (?:long|from end to end|in length)\b/
const edge =
  /\bfrom the (?:left|right|top|bottom|sides?)(?: edges?)?(?:, the \w+)*,? (?:and (?:from )?)?the (?:left|right|top|bottom|lower|upper)|\b(?:border|margin|showing|shows?|see|left bare|bare|leav(?:e|es|ing)|hair|rim|frame of|inset|all round|from (?:its|the|each|every) (?:\w+ )?edges?)\b|\b(?:either|each|every|both|all(?: four)?) (?:sides?|edges?)|all (?:the way )?round/

/** The words of the trade for each part, the special parts first. Common practice, no source. */
const parts: readonly PartWords[] = [
  { part: /^border\./, near: edge, needed: true },
  {
    part: /^(?:valleys|mountains|scores|uprights|levels)\.\d+$/,
    near: /\bscor|\bfold(?:s| at| line)|\bcrease/,
    needed: true,
  },
  { part: /^valleys$/, near: /\bvalley/, needed: true },
  { part: /^mountains$/, near: /\bmountain/, needed: true },
  { part: /^(?:scores)$/, near: /\bscor|\bfold(?:s| at| line)|\bcrease/, needed: true },
  { part: /^sides$/, near: /\bscor(?:e|es|ing)\b.*from the left|\bside flaps/, needed: true },
  { part: /^ends$/, near: /\bscor(?:e|es|ing)\b.*from the (?:bottom|lower)|\bend flaps/, needed: true },
  { part: /^gap$/, near: /\bgaps?\b|\bbetween them\b|\bapart\b|\bspaces?\b/, needed: true },
  { part: /^marks(?:\.\d+)?$/, near: /\bmarks?\b|\bleft edges?\b|\bfrom the left end\b/, needed: true },
  { part: /^margin$/, near: /\bmargins?\b|\bfrom (?:each|either|both) ends?\b/, needed: true },
  { part: /^raise$/, near: /\brais|\bfoam\b|\bstand(?:s|ing)? off\b|\blift/, needed: true },
  { part: /^thickness$/, near: /\bthick/, needed: true },
  { part: /^seam$/, near: /\bdots?\b|\bin from\b/, needed: true },
  {
    part: /^score$/,
    near: /\bmeasure\b.*\bcorners?\b|\bfrom (?:a|one|each|the|two|both) (?:opposite )?corners?\b|\balong both edges\b/,
    needed: true,
  },
  { part: /^clearance$/, near: /\bclearance\b|\broom\b|\bspare\b|\bplay\b/, needed: true },
  { part: /^flap$/, near: /\bflaps?\b|\boverlap|\blaps?\b/, needed: true },
  { part: /^inside(?:\.\w+)?$/, near: /\binside\b|\bframe\b/, needed: true },
  { part: /^sheet$/, near: /\bsheet\b|\bsquare\b|\bcut\b|\bpaper\b/, needed: false },
  { part: /^(?:size|width|height)?$/, needed: false },
]

/**
 * How well the words go with a part, from -1 (they speak of another) over 0 (they say nothing) to 1.
 *
 * @param part of a piece: `width`, `border.left`, or empty for a length with a name of its own.
 */
export function partFit(part: string, { before, behind, sentence, earlier }: Said): number {
  if (part === 'uprights' || part === 'levels') return directionFit(part, behind, sentence)
  const found = parts.find((one) => one.part.test(part))
  if (!found) return -1
  const near = `${before.slice(-60)} | ${behind.slice(0, 45)}`
  const sizeWords = isTall.test(behind)
    ? 'height'
    : isWide.test(behind)
      ? 'width'
      : isLong.test(behind)
        ? 'long'
        : undefined
  if (found.near) {
    if (sizeWords !== undefined && /^border|^gap|^margin|^raise|^seam|^clearance/.test(part)) return -1
    // What comes right before is nearer than what follows; a rule for the whole sentence is enough for scores.
    if (found.near.test(near))
      return part.startsWith('border.') ? 0.8 + sideFit(part, near) : part === 'sheet' ? 1.1 : 1
    if (/^(?:valleys|mountains|scores|marks|sides|ends)/.test(part) && found.near.test(sentence)) return 0.7
    // "It leaves 5 mm at the left and 6 mm at the top": one verb for several numbers.
    if (
      part.startsWith('border.') &&
      sizeWords === undefined &&
      found.near.test(sentence.slice(0, 200)) &&
      sideFit(part, near) > 0.05
    )
      return 0.6 + sideFit(part, near)
    if (/^(?:flap|seam|score|clearance|inside|raise|gap)/.test(part) && found.near.test(earlier)) return 0.6
    return found.needed ? -1 : 0
  }
  return sizeFit(part, near, before, sizeWords)
}

/** Scores in two directions are told apart by the edge that they are measured from. */
function directionFit(part: 'uprights' | 'levels', behind: string, sentence: string): number {
  const edge =
    part === 'uprights' ? /^,? (?:in )?from the left/ : /^,? (?:in )?(?:up )?from the (?:lower|bottom)/
  return /\b(?:scor|fold|crease)/.test(sentence) && edge.test(behind) ? 0.9 : -1
}

function sizeFit(part: string, near: string, before: string, words?: 'height' | 'width' | 'long'): number {
  if (part === 'size')
    return /\b(?:cut|trim|to|is|are|measures?|size|piece|of|each|makes?)\b/.test(near) ? 1 : 0.5
  const isSquare = /\b(?:square|on all sides|with sides of|each way|each side|to a side)\b/.test(near)
  if (isSquare && part !== '' && /\b(?:cut|trim|square|paper|measures?)\b/.test(before)) return 0.8
  // Another thing is spoken of: a border, a place, a score.
  if (words === undefined && (edge.test(near) || place.test(near))) return part === '' ? -0.5 : -1
  if (part === '') return words === undefined ? 0.4 : 0.6
  if (words === 'long') return part === 'width' ? 0.7 : 0.5
  if (words !== undefined) return words === part ? 1 : -1
  if (isSquare) return 0.8
  if (/\b(?:width|wide)\b[^,;]{0,12}$/.test(before)) return part === 'width' ? 1 : -1
  if (/\b(?:height|high|tall)\b[^,;]{0,12}$/.test(before)) return part === 'height' ? 1 : -1
  return 0
}

/** Borders differ by side: a little for the side that is named. */
function sideFit(part: string, near: string): number {
  const side = part.replace('border.', '')
  if (new RegExp(`\\b${side}\\b`).test(near)) return 0.2
  if (/\b(?:left|right)\b/.test(near) && /left|right/.test(side)) return 0.1
  if (/\b(?:top|bottom)\b/.test(near) && /top|bottom/.test(side)) return 0.1
  return /\b(?:top|bottom|left|right)\b/.test(near) ? -0.1 : side === 'left' ? 0.05 : 0
}

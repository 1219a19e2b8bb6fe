/** The work of a step by the words for it. Generous: it only says that something listed may well be used. */
const words = {
  cut: /\b(?:cut|cuts|cutting|trim\p{L}*|snip\p{L}*|slit|slits|slice\p{L}*|taper\p{L}*|halve)\b/iu,
  score: /\bscor(?:e|es|ed|ing)\b|\bindent\p{L}*/iu,
  fold: /\b(?:fold\p{L}*|creas\p{L}*|press\p{L}*|burnish\p{L}*|smooth\p{L}*|bend\p{L}*|scor(?:e|es|ed|ing))\b/iu,
  stick:
    /\b(?:stick\p{L}*|stuck|glu(?:e|es|ed|ing)|tap(?:e|es|ed|ing)|adher\p{L}*|attach\p{L}*|mount\p{L}*|fix\p{L}*|fasten\p{L}*|join\p{L}*|seal\p{L}*|add|adds|bond\p{L}*)\b/iu,
  raise: /\b(?:rais(?:e|es|ed|ing)|foam|stick\p{L}*|stuck|mount\p{L}*|add)\b/iu,
  mark: /\b(?:mark\p{L}*|draw\p{L}*|drawn|measur\p{L}*|trac(?:e|es|ed|ing)|dot|dots|lines?|writ\p{L}*|number\p{L}*|sketch\p{L}*)\b/iu,
  line: /\b(?:mark\p{L}*|draw\p{L}*|measur\p{L}*|lines?|cut|cutting|scor(?:e|es|ed|ing)|fold|tear)\b/iu,
  write: /\b(?:writ\p{L}*|draw\p{L}*|sign|signs|letter\p{L}*|colou?r\p{L}*|outline\p{L}*)\b/iu,
  colour: /\b(?:colou?r\p{L}*|shad(?:e|es|ed|ing)|paint\p{L}*|blend\p{L}*|draw\p{L}*)\b/iu,
  erase: /\b(?:rub\p{L}*|eras\p{L}*)\b/iu,
  punch: /\b(?:punch\p{L}*|holes?|round(?:s|ed|ing)?)\b/iu,
  pierce: /\b(?:pierc\p{L}*|prick\p{L}*|holes?|sew\p{L}*|stitch\p{L}*|thread\p{L}*)\b/iu,
  stamp: /\b(?:stamp\p{L}*|ink\p{L}*|print\p{L}*)\b/iu,
  dieCut: /\b(?:die-?cut\p{L}*|dies?|emboss\p{L}*|letters|cut|cuts)\b/iu,
  heat: /\b(?:heat\p{L}*|emboss\p{L}*|melt\p{L}*|iron\p{L}*|warm\p{L}*)\b/iu,
  tie: /\b(?:tie|ties|tied|tying|bow|bows|knot\p{L}*|thread\p{L}*|hang\p{L}*|sew\p{L}*|stitch\p{L}*|wrap\p{L}*)\b/iu,
  hold: /\b(?:hold\p{L}*|clip\p{L}*|clamp\p{L}*|dr(?:y|ies|ied|ying)|weigh\p{L}*)\b/iu,
} as const satisfies Readonly<Record<string, RegExp>>

/** A kind of work. */
export type Work = keyof typeof words

/** Whether a text asks for a kind of work. */
export const asksFor = (work: Work, text: string): boolean => words[work].test(text)

/** The work of a step by the words for it. Generous: it only says that something listed may well be used. */
const words = {
  cut: /\b(?:cut|cuts|cutting|trim[a-z]*|snip[a-z]*|slit|slits|slice[a-z]*|taper[a-z]*|halve)\b/i,
  score: /\bscor(?:e|es|ed|ing)\b|\bindent[a-z]*/i,
  fold: /\b(?:fold[a-z]*|creas[a-z]*|press[a-z]*|burnish[a-z]*|smooth[a-z]*|bend[a-z]*|scor(?:e|es|ed|ing))\b/i,
  stick:
    /\b(?:stick[a-z]*|stuck|glu(?:e|es|ed|ing)|tap(?:e|es|ed|ing)|adher[a-z]*|attach[a-z]*|mount[a-z]*|fix[a-z]*|fasten[a-z]*|join[a-z]*|seal[a-z]*|add|adds|bond[a-z]*)\b/i,
  raise: /\b(?:rais(?:e|es|ed|ing)|foam|stick[a-z]*|stuck|mount[a-z]*|add)\b/i,
  mark: /\b(?:mark[a-z]*|draw[a-z]*|drawn|measur[a-z]*|trac(?:e|es|ed|ing)|dot|dots|lines?|writ[a-z]*|number[a-z]*|sketch[a-z]*)\b/i,
  line: /\b(?:mark[a-z]*|draw[a-z]*|measur[a-z]*|lines?|cut|cutting|scor(?:e|es|ed|ing)|fold|tear)\b/i,
  write: /\b(?:writ[a-z]*|draw[a-z]*|sign|signs|letter[a-z]*|colou?r[a-z]*|outline[a-z]*)\b/i,
  colour: /\b(?:colou?r[a-z]*|shad(?:e|es|ed|ing)|paint[a-z]*|blend[a-z]*|draw[a-z]*)\b/i,
  erase: /\b(?:rub[a-z]*|eras[a-z]*)\b/i,
  punch: /\b(?:punch[a-z]*|holes?|round(?:s|ed|ing)?)\b/i,
  pierce: /\b(?:pierc[a-z]*|prick[a-z]*|holes?|sew[a-z]*|stitch[a-z]*|thread[a-z]*)\b/i,
  stamp: /\b(?:stamp[a-z]*|ink[a-z]*|print[a-z]*)\b/i,
  dieCut: /\b(?:die-?cut[a-z]*|dies?|emboss[a-z]*|letters|cut|cuts)\b/i,
  heat: /\b(?:heat[a-z]*|emboss[a-z]*|melt[a-z]*|iron[a-z]*|warm[a-z]*)\b/i,
  tie: /\b(?:tie|ties|tied|tying|bow|bows|knot[a-z]*|thread[a-z]*|hang[a-z]*|sew[a-z]*|stitch[a-z]*|wrap[a-z]*)\b/i,
  hold: /\b(?:hold[a-z]*|clip[a-z]*|clamp[a-z]*|dr(?:y|ies|ied|ying)|weigh[a-z]*)\b/i,
} as const satisfies Readonly<Record<string, RegExp>>

/** A kind of work. */
export type Work = keyof typeof words

/** Whether a text asks for a kind of work. */
export const asksFor = (work: Work, text: string): boolean => words[work].test(text)

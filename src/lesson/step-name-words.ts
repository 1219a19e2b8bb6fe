import type { Locale } from '../wording/locales.ts'

/** The words by which the first clause of an instruction is found. */
export interface ClauseWords {
  /** Words that lead to a measure. */
  readonly before: readonly string[]
  /** Words between two measures. */
  readonly and: readonly string[]
  /** Words that the next clause begins with. */
  readonly next: readonly string[]
  /** Other words that no name ends with, since they lead to what is left out; none where the verb is last. */
  readonly articles: readonly string[]
  /** Whether an instruction ends with its verb, behind its measures. */
  readonly verbLast: boolean
}

const english: ClauseWords = {
  before: ['to', 'at', 'of', 'with', 'from', 'by', 'in', 'is', 'are', 'be'],
  and: ['and', 'or', 'by'],
  next: ['and', 'so that', 'until', 'where', 'with', 'then'],
  articles: [
    'the',
    'a',
    'an',
    'its',
    'their',
    'this',
    'that',
    'these',
    'each',
    'both',
    'on',
    'along',
    'so',
    'about',
  ],
  verbLast: false,
}

/** By language. */
export const clauseWords: Readonly<Record<Locale, ClauseWords>> = {
  'en-GB': english,
  'en-US': english,
  de: {
    before: ['auf', 'bei', 'von', 'mit', 'aus', 'um', 'zu', 'in', 'an', 'ab', 'im Abstand von', 'je'],
    and: ['und', 'oder', 'mal', 'bis'],
    next: ['und', 'so dass', 'sodass', 'bis', 'wo', 'dann'],
    articles: [],
    verbLast: true,
  },
  fr: {
    before: ['à', 'de', 'en', 'avec', 'par', 'sur', 'au format', 'du', 'est', 'sont', 'mesure', 'font'],
    and: ['et', 'ou', 'sur'],
    next: ['et', 'pour que', 'jusqu’à', 'où', 'avec', 'puis'],
    articles: [
      'le',
      'la',
      'les',
      'un',
      'une',
      'des',
      'son',
      'sa',
      'ses',
      'chaque',
      'depuis',
      'au',
      'aux',
      'que',
    ],
    verbLast: false,
  },
  es: {
    before: ['a', 'de', 'en', 'con', 'por', 'desde', 'al', 'del', 'es', 'son', 'mide', 'miden'],
    and: ['y', 'o', 'por'],
    next: ['y', 'para que', 'hasta', 'donde', 'con', 'luego'],
    articles: ['el', 'la', 'los', 'las', 'un', 'una', 'su', 'sus', 'cada', 'ambos', 'ambas', 'que', 'para'],
    verbLast: false,
  },
}

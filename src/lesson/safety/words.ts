import type { Locale } from '../../wording/locales.ts'
import type { Hazard, HazardName, HazardWords } from './hazard.ts'
import { de } from './words/de.ts'
import { es } from './words/es.ts'
import { fr } from './words/fr.ts'

const others: Partial<Readonly<Record<Locale, Readonly<Record<HazardName, HazardWords>>>>> = { de, fr, es }

/** What names a hazard in a language. */
export const wordsOf = (hazard: Hazard, locale: Locale): HazardWords =>
  others[locale]?.[hazard.name] ?? hazard

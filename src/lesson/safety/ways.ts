import type { Locale } from '../../wording/locales.ts'
import type { Ways } from './way.ts'
import { de } from './ways/de.ts'
import { en } from './ways/en.ts'
import { es } from './ways/es.ts'
import { fr } from './ways/fr.ts'

/** How each language speaks of tools and supplies. */
export const ways: Readonly<Record<Locale, Ways>> = { 'en-GB': en, 'en-US': en, de, fr, es }

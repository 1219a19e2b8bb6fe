import type { Locale } from '../../wording/locales.ts'
import { englishSpelling, type Spelling } from './word-list.ts'

/** Words without what an apostrophe has left of the word before: `aiguille` of `l’aiguille`. */
const part = /[\p{L}\p{M}\p{N}]+/gu
const between = /^[\s'’-]+$/

/** In small letters and without accents, so that a word is found however it is typed. */
const plainLetters = (text: string): string =>
  text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replace(/œ/g, 'oe')

/** All ways to write the words of a phrase one after the other. */
const phrase = (words: string, waysOf: (word: string) => readonly string[]): readonly string[] =>
  words
    .split(' ')
    .map(waysOf)
    .reduce((before, ways) => before.flatMap((one) => ways.map((way) => `${one} ${way}`)))

/** Every ending of a noun or of an adjective. A plural with another vowel, such as `Drähte`, is a word of its own. */
const germanEndings = ['', 'e', 'en', 'n', 'er', 'ern', 'em', 'es', 's']

/** Umlauts may be typed as `ae`, `oe` and `ue`, and `ß` as `ss`; but `Löcher` and `Locher` are not the same. */
const typed: Readonly<Record<string, string>> = { ä: 'ae', ö: 'oe', ü: 'ue', ß: 'ss' }
const german: Spelling = {
  part,
  between,
  alike: (text) =>
    plainLetters(
      text.normalize('NFC').replace(/[äöüß]/gi, (letter) => typed[letter.toLowerCase()] ?? letter),
    ),
  written: (words) => phrase(words, (word) => germanEndings.map((ending) => word + ending)),
}

/** Words of two letters, such as `de`, stay as they are. */
const french: Spelling = {
  part,
  between,
  alike: plainLetters,
  written: (words) => phrase(words, (word) => (word.length < 3 ? [word] : [word, `${word}s`, `${word}x`])),
}

const spanish: Spelling = {
  part,
  between,
  alike: plainLetters,
  written: (words) =>
    phrase(words, (word) =>
      word.length < 3 ? [word] : [word, `${word}s`, `${word}es`, word.replace(/z$/, 'ces')],
    ),
}

/** How the words of a list are written in each language: roughly, so that rather too much is found than too little. */
export const spellings: Readonly<Record<Locale, Spelling>> = {
  'en-GB': englishSpelling,
  'en-US': englishSpelling,
  de: german,
  fr: french,
  es: spanish,
}

import { apertureKeys } from '../../../card/apertures.ts'
import { borderKeys, spineBorderKeys } from '../../../card/borders.ts'
import { blockKeys } from '../../../card/check.ts'
import { keysOf } from '../../../card/chosen.ts'
import { envelopeKeys, envelopeMakes } from '../../../card/envelope.ts'
import { foldStyles } from '../../../card/fold-styles.ts'
import { bondKeys } from '../../../card/folds/free/read-bonds.ts'
import { sheetKeys } from '../../../card/folds/free/read-sheets.ts'
import { standKeys } from '../../../card/folds/free/read-stand.ts'
import { stripKeys } from '../../../card/folds/free/read-strip.ts'
import { slitKeys } from '../../../card/folds/free/slits.ts'
import { freeKeys } from '../../../card/folds/free.ts'
import { layerKeys, layerSides } from '../../../card/layers.ts'
import { letteringKeys } from '../../../card/lettering.ts'
import { looseKeys } from '../../../card/loose.ts'
import { foamWords } from '../../../card/raise.ts'
import { spanKeys, spanPlaces } from '../../../card/spans.ts'
import { stockKeys } from '../../../card/stock.ts'
import { type FoldStyle, wordsOf } from '../../../card/style.ts'
import { catalogue } from '../../../workshop/catalogue.ts'
import { blockKeyHelp, partKeyHelp } from './key-help.ts'

/** A word that may be written, and a sentence about it. */
export interface Word {
  readonly word: string
  readonly help?: string
}

/** What kind of thing a value is. */
export type ValueKind = 'fold' | 'size' | 'length' | 'panels' | 'piece' | 'stock' | 'words' | 'other'

/** The groups of a card block whose keys are names that the teacher gives. */
export const namedGroups = ['layers', 'spans', 'lettering', 'apertures', 'pieces'] as const

const partKeys: Readonly<Record<string, readonly string[]>> = {
  layers: layerKeys,
  spans: spanKeys,
  lettering: letteringKeys,
  apertures: apertureKeys,
  pieces: looseKeys,
  sheets: [...sheetKeys, ...stockKeys],
  strips: stripKeys,
  slits: slitKeys,
}

const lists: Readonly<Record<string, readonly string[]>> = {
  bonds: bondKeys,
  glue: bondKeys,
  stand: standKeys,
}

/** The keys that may stand in the mapping at a path of a card block; undefined where the teacher gives the names. */
export function keysAt(path: readonly string[], fold: string | undefined): readonly Word[] | undefined {
  const [group = '', , ...rest] = path
  if (path.length === 0) return blockWords(fold)
  if (path.length === 1) {
    if (group === 'base') return partWords(stockKeys)
    if (group === 'envelope') return partWords(envelopeKeys)
    const own = lists[group]
    return own && partWords(own)
  }
  if (rest[0] === 'border' && rest.length === 1) return partWords([...borderKeys, ...spineKeys(fold)])
  // A sheet may have strips of its own.
  if (group === 'sheets' && rest[0] === 'strips') return rest.length === 2 ? partWords(stripKeys) : undefined
  if (path.length > 2) return undefined
  const own = partKeys[group]
  return own && partWords(own)
}

const partWords = (keys: readonly string[]): Word[] =>
  keys.map((word) => ({ word, ...helpOf(partKeyHelp(word)) }))

function blockWords(fold: string | undefined): Word[] {
  const style = foldStyles.get(fold ?? '')
  const own = style ? keysOf(style) : fold === 'free' ? freeKeys : []
  return [...blockKeys, ...own].map((word) => ({ word, ...helpOf(blockHelp(word, fold)) }))
}

/** What a key at the top of a card block is: of every card, or of its fold. */
export function blockHelp(key: string, fold: string | undefined): string | undefined {
  const shown = catalogue.get(fold ?? '')
  const { parameters = {}, counts = {}, choices = {}, parts = {} } = shown ?? {}
  const parameter = parameters[key]
  const help = parameter?.help ?? counts[key]?.help ?? choices[key]?.help ?? parts[key]
  if (help === undefined) return blockKeyHelp(key)
  const usual = parameter?.usual ?? counts[key]?.usual ?? choices[key]?.words[0]
  const said = `${help[0]?.toUpperCase()}${help.slice(1)}.`
  return usual === undefined ? said : `${said} Usually \`${usual}\`.`
}

const spineKeys = (fold: string | undefined): readonly string[] =>
  'spine' in (foldStyles.get(fold ?? '')?.choices ?? {}) ? spineBorderKeys : []

const helpOf = (help: string | undefined): { help: string } | object => (help === undefined ? {} : { help })

/** What may be the value at a path: its kind, and the words that can stand there. */
export function valueAt(
  path: readonly string[],
  fold: string | undefined,
): { kind: ValueKind; words: readonly Word[] } {
  const key = path.at(-1) ?? ''
  const group = path[0] ?? ''
  if (path.length === 1) return blockValue(key, fold)
  const words = (all: readonly string[]): Word[] => all.map((word) => ({ word }))
  if (key === 'stock') return { kind: 'stock', words: [] }
  if (key === 'on' && group === 'lettering') return { kind: 'piece', words: [] }
  if (['on', 'from', 'to', 'panel', 'onto'].includes(key)) return { kind: 'panels', words: [] }
  if (key === 'direction') return { kind: 'words', words: words(['upright']) }
  if (key === 'side') return { kind: 'words', words: words(layerSides) }
  if (key === 'make') return { kind: 'words', words: words(envelopeMakes) }
  if (key === 'raise') return { kind: 'length', words: words(foamWords) }
  if (key === 'at' && group === 'spans') return { kind: 'length', words: words(spanPlaces) }
  if (key === 'size') return { kind: 'size', words: [] }
  if (path.includes('border'))
    return { kind: 'length', words: [{ word: 'auto', help: 'As much as the shut card needs there.' }] }
  if (path.includes('creases')) return { kind: 'words', words: words(['valley', 'mountain']) }
  const isPlain = ['weight', 'bulk', 'caliper', 'letters', 'count', 'turn', 'rests'].includes(key)
  return { kind: isPlain ? 'other' : 'length', words: [] }
}

function blockValue(key: string, fold: string | undefined): { kind: ValueKind; words: readonly Word[] } {
  if (key === 'fold')
    return {
      kind: 'fold',
      words: [...catalogue.values()].map(({ name, summary }) => ({ word: name, help: summary })),
    }
  if (key === 'closed') return { kind: 'size', words: [] }
  if (key === 'envelope') return { kind: 'words', words: envelopeMakes.map((word) => ({ word })) }
  if (key === 'creases') return { kind: 'words', words: ['valley', 'mountain'].map((word) => ({ word })) }
  const style: FoldStyle | undefined = foldStyles.get(fold ?? '')
  const choice = style?.choices?.[key]
  if (choice) return { kind: 'words', words: wordsOf(choice).map((word) => ({ word })) }
  const isLength = style !== undefined && key in style.parameters
  return { kind: isLength ? 'length' : 'other', words: [] }
}

import type { YamlBlock } from '../../../card/yaml.ts'
import type { Lesson } from '../../../lesson/lesson.ts'
import { attributeSite } from './attribute-site.ts'
import { type YamlSite, yamlSite } from './yaml-site.ts'

/** What a place of a lesson is, as far as it decides what may be written there. */
export type Site =
  | ({ readonly kind: 'front matter' } & YamlSite)
  | ({ readonly kind: 'card'; readonly block: YamlBlock } & YamlSite)
  | ({ readonly kind: 'supplies' } & YamlSite)
  /** In braces in the words: what is written of the measure. */
  | { readonly kind: 'measure'; readonly word: string; readonly from: number }
  /** Behind colons. */
  | { readonly kind: 'directive'; readonly colons: number; readonly from: number; readonly isAlone: boolean }
  | ({ readonly kind: 'attribute' } & AttributeSite)
  | { readonly kind: 'words' }

/** In the braces of a directive. */
export interface AttributeSite {
  readonly directive: string
  /** The attribute whose value is written; missing where its name is. */
  readonly name?: string
  readonly quote: string
  readonly word: string
  readonly from: number
  /** What the braces say before. */
  readonly said: Readonly<Record<string, string>>
}

/** What stands at a place of the text. The lesson is the one that was read from it. */
export function siteAt(lesson: Lesson, at: number): Site {
  const { text } = lesson.source
  const inYaml = (block: YamlBlock | undefined): YamlSite | undefined => {
    if (!block) return undefined
    const start = block.place.offset
    if (at < start || at > start + block.text.length) return undefined
    const site = yamlSite(text.slice(start, at).replace(/\r/g, ' '))
    return { ...site, from: start + site.from }
  }
  const front = inYaml(lesson.frontMatterBlock)
  if (front) return { kind: 'front matter', ...front }
  for (const block of lesson.cards) {
    const site = inYaml(block)
    if (site) return { kind: 'card', block, ...site }
  }
  const supplies = inYaml(lesson.supplies)
  if (supplies) return { kind: 'supplies', ...supplies }
  return siteInWords(text, at)
}

function siteInWords(text: string, at: number): Site {
  // A paragraph is as far as a brace or a directive reaches.
  const start = Math.max(
    0,
    ...[...text.slice(Math.max(0, at - 2000), at).matchAll(/\n[ \t>]*\r?\n/g)].map(
      ({ index, 0: gap }) => Math.max(0, at - 2000) + index + gap.length,
    ),
  )
  const before = text.slice(start, at)
  const attribute = attributeSite(before, start)
  if (attribute) return { kind: 'attribute', ...attribute }
  const brace = /(?<!\\)\{([^{}]*)$/.exec(before)
  if (brace) return { kind: 'measure', word: brace[1] ?? '', from: at - (brace[1] ?? '').length }
  const colons = /(?:^|[\s\p{P}])(?<!:)(:{1,})([a-z]*)$/u.exec(before)
  if (!colons) return { kind: 'words' }
  const [, marks = '', name = ''] = colons
  const line = before.slice(before.lastIndexOf('\n') + 1)
  const isAlone = /^[\s>]*(?:(?:[-*+]|\d+[.)])\s+)?:+[a-z]*$/.test(line)
  return { kind: 'directive', colons: marks.length, from: at - marks.length - name.length, isAlone }
}

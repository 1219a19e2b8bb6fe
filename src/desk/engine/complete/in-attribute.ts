import { figureNames } from '../../../lesson/figure-target.ts'
import { labelsOfKind } from '../../../lesson/figures/labels-of-kind.ts'
import { figureKinds } from '../../../lesson/nodes.ts'
import { cautionTopics } from '../../../lesson/safety/hazards.ts'
import type { Completion } from '../complete.ts'
import type { KeptLesson } from '../kept-lesson.ts'
import type { AttributeSite } from '../site/site.ts'
import { attributesOf, figureHelp } from '../vocabulary/directive-words.ts'

/** What may be written in the braces of a directive. */
export function attributeCompletions(site: AttributeSite, { filled }: KeptLesson): Completion[] {
  if (site.name === undefined)
    return attributesOf(site.directive)
      .filter(({ word }) => !(word in site.said))
      .map(({ word, help }) => ({
        insert: `${word}=`,
        from: site.from,
        label: word,
        ...(help !== undefined && { info: help }),
        kind: 'key',
      }))
  const values = valuesOf(site, filled)
  return values.map(({ word, info, kind }) => ({
    insert: site.quote === '' && /[\s,]/.test(word) ? `"${word}"` : word,
    from: site.from + lastWordAt(site),
    label: word,
    ...(info !== undefined && { info }),
    kind,
  }))
}

interface Value {
  readonly word: string
  readonly info?: string
  readonly kind: Completion['kind']
}

function valuesOf({ directive, name, said }: AttributeSite, { cards }: KeptLesson['filled']): Value[] {
  if (directive === 'caution' && name === 'about')
    return cautionTopics.map((word) => ({ word, kind: 'word' }))
  if (directive !== 'figure') return []
  if (name === 'show') return figureKinds.map((word) => ({ word, info: figureHelp[word], kind: 'figure' }))
  if (name === 'label') {
    const kind = figureKinds.find((one) => one === said.show)
    return kind ? labelsOfKind(kind).map((word) => ({ word, kind: 'word' })) : []
  }
  if (name !== 'of') return []
  const names = cards.flatMap(({ card }) => figureNames(card))
  const several = cards.flatMap(({ card }) =>
    figureNames(card).map((own) =>
      names.indexOf(own) === names.lastIndexOf(own) ? own : `${card.name}.${own}`,
    ),
  )
  const whole = cards.length > 1 ? cards.map(({ card }) => card.name) : []
  return [...new Set([...several, ...whole])].map((word) => ({ word, kind: 'piece' }))
}

/** `label` and `about` take several words: the last one is written. */
const lastWordAt = ({ name, word }: AttributeSite): number =>
  name === 'label' || name === 'about' ? word.length - (/[^\s,]*$/.exec(word)?.[0].length ?? 0) : 0

import type { BorderShape, Field } from '../form.ts'
import { shapeOf } from './border.ts'
import { fieldAt, keysAt, type Making, whereIs } from './field.ts'
import { at, isList } from './plain.ts'
import { edgeLabels } from './words.ts'

const shapes: readonly { readonly value: BorderShape; readonly label: string }[] = [
  { value: 'one', label: 'the same all round' },
  { value: 'two', label: 'left and right, top and bottom' },
  { value: 'four', label: 'each edge by itself' },
]
const edges = ['left', 'right', 'top', 'bottom'] as const

/** How the border of a layer is written, and its lengths. */
export function borderFields(making: Making, layer: readonly string[]): Field[] {
  const path = [...layer, 'border']
  const name = layer.at(-1) ?? ''
  const plain = at(making.card.plain, path)
  const shape = shapeOf(plain)
  const own = (key: string, measure: string, label = edgeLabels[key] ?? key): Field =>
    fieldAt(making, [...path, key], {
      kind: 'length',
      label: `Border: ${label.toLowerCase()}`,
      name: `${name}.border.${measure}`,
      suggestions: ['auto'],
      help: 'How far its edge stays inside what it sits on; `auto` leaves what the folds need.',
    })
  return [...lengths(), shapeField()]

  function lengths(): Field[] {
    if (shape === 'one')
      return [
        fieldAt(making, path, {
          kind: 'length',
          name: `${name}.border.left`,
          suggestions: ['auto'],
          help: 'How far its edges stay inside what it sits on; `auto` leaves what the folds need.',
        }),
      ]
    if (shape === 'two') return [own('sides', 'left'), own('ends', 'top')]
    if (isList(plain)) return edges.map((edge, i) => own(String(i), edge, edgeLabels[edge]))
    if (shape === 'four') return edges.map((edge) => own(edge, edge))
    return keysAt(making, path).map((key) => own(key, { sides: 'left', ends: 'top' }[key] ?? key))
  }

  function shapeField(): Field {
    const span = whereIs(making.card, path)
    return {
      path,
      label: 'The border is',
      kind: 'shape',
      text: shape,
      choices: [
        ...shapes,
        ...(shape === 'mixed' ? [{ value: shape, label: 'some edges by themselves' }] : []),
      ],
      ...span,
      trouble: making.troubles.take(span),
    }
  }
}

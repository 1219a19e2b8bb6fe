import type { Root } from 'mdast'
import type { Step } from './lesson.ts'
import { plainText } from './plain-text.ts'

/** Steps with the names of their stages as they are printed: a heading may hold a measure. */
export function withStages(steps: readonly Step[], tree: Root): Step[] {
  let stage: string | undefined
  const stages = new Map<number, string | undefined>()
  for (const node of tree.children) {
    if (node.type === 'heading') stage = plainText(node)
    if (node.type === 'list')
      for (const { data } of node.children) if (data?.step) stages.set(data.step, stage)
  }
  return steps.map((step) => {
    const named = stages.get(step.number)
    return named === undefined ? step : { ...step, stage: named }
  })
}

import type { Heading, List } from 'mdast'
import { plainText } from '../plain-text.ts'
import { placeOf } from '../source.ts'
import type { Handler } from './walk.ts'

/** A heading names the stage of the steps below it. */
export const heading: Handler<Heading> = (node, walk, at, descend) => {
  descend(node, { ...at, top: false })
  if (at.top) walk.stage = plainText(node)
  return node
}

/** The items of an ordered list at the top level are steps, numbered on through the lesson. */
export const list: Handler<List> = (node, walk, at, descend) => {
  if (!node.ordered || !at.top) {
    descend(node, { ...at, top: false })
    return node
  }
  for (const item of node.children) {
    let minutes = 0
    const addMinutes = (more: number): void => {
      minutes += more
    }
    let drying = 0
    // What dries at the same time is dry with the last of it.
    const addDrying = (one: number): void => {
      drying = Math.max(drying, one)
    }
    descend(item, { ...at, top: false, addMinutes, addDrying })
    const number = walk.steps.length + 1
    item.data = { ...item.data, step: number }
    walk.steps.push({
      number,
      ...(walk.stage !== undefined && { stage: walk.stage }),
      ...(minutes > 0 && { minutes }),
      ...(drying > 0 && { drying: { minutes: drying, of: [] } }),
      place: placeOf(item.position),
    })
  }
  return node
}

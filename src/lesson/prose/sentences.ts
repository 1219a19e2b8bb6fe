import type { Nodes, Root } from 'mdast'
import { ExpressionError } from '../../length/expression.ts'
import type { Place } from '../../length/finding.ts'
import { parseMeasure } from '../../length/parse.ts'
import { pathsIn } from '../../length/paths.ts'
import type { CalloutKind, MeasureNode } from '../nodes.ts'
import { placeOf, type Source } from '../source.ts'
import { type Run, runsIn } from './runs.ts'
import type { SaidMeasure, Sentence } from './sentence.ts'

type Where = Pick<Sentence, 'step' | 'callout' | 'kind'>

/** Every sentence of a lesson, in the order of the file. */
export function sentencesOf(tree: Root, source: Source): Sentence[] {
  return below(tree, { kind: 'text' }, source)
}

function below(node: Nodes, where: Where, source: Source): Sentence[] {
  const into = (next: Where): Sentence[] =>
    'children' in node ? node.children.flatMap((child) => below(child as Nodes, next, source)) : []
  switch (node.type) {
    case 'listItem':
      return into(node.data?.step === undefined ? where : { ...where, step: node.data.step })
    case 'callout':
      return into({ ...where, callout: node.kind satisfies CalloutKind })
    case 'paragraph':
      return sentencesIn(node, where, source)
    case 'heading':
      return sentencesIn(node, { ...where, kind: 'heading' }, source)
    case 'figure':
    case 'scan':
      return sentencesIn(node, { ...where, kind: 'caption' }, source)
    case 'tableCell':
      return sentencesIn(node, { ...where, kind: 'cell' }, source)
    default:
      return into(where)
  }
}

function sentencesIn(node: Nodes, where: Where, source: Source): Sentence[] {
  const runs = runsIn(node, source)
  const text = runs.map((run) => run.text).join('')
  let from = 0
  return ends(text).flatMap((to) => {
    const start = from + (/^\s*/.exec(text.slice(from, to))?.[0].length ?? 0)
    const words = text.slice(start, to).trimEnd()
    from = to
    if (words === '') return []
    return [
      {
        ...where,
        words,
        measures: measuresIn(runs, start, start + words.length),
        meant: meantIn(runs, start, start + words.length),
        place: (a: number, b: number) => placeIn(runs, start + a, start + b, source),
      },
    ]
  })
}

/** What a full stop may stand behind without ending a sentence. */
const abbreviation = /(?:^|[\s(])(?:approx|e\.g|i\.e|no|nos|fig|figs|vs|ca|cf|mr|mrs|ms|dr|st)\.$/i

/** Where sentences end: behind a full stop and the like, before a space and the beginning of another one. */
function ends(text: string): number[] {
  const all = [...text.matchAll(/[.!?…]["'”’)]*(?=\s+["'“‘(]?[\p{Lu}\p{N}{])/gu)]
    .filter(({ index }) => !abbreviation.test(text.slice(Math.max(0, index - 8), index + 1)))
    .map(({ index, 0: mark }) => index + mark.length)
  return [...all, text.length]
}

function measuresIn(runs: readonly Run[], start: number, end: number): SaidMeasure[] {
  let at = 0
  return runs.flatMap(({ text, measure }) => {
    const from = at - start
    at += text.length
    if (!measure || at <= start || from + start >= end) return []
    return [{ node: measure, start: from, end: from + text.length, paths: pathsOf(measure) }]
  })
}

function meantIn(runs: readonly Run[], start: number, end: number): Sentence['meant'] {
  let at = 0
  return runs.flatMap(({ text, meant }) => {
    const from = Math.max(at, start)
    at += text.length
    const to = Math.min(at, end)
    return meant && from < to ? [{ start: from - start, end: to - start }] : []
  })
}

function pathsOf({ value }: MeasureNode): (readonly string[])[] {
  try {
    return pathsIn(parseMeasure(value.replace(/[\r\n]/g, ' ')).expression)
  } catch (error) {
    if (!(error instanceof ExpressionError)) throw error
    return []
  }
}

/** The place of a stretch; with its offsets if both of its ends stand in the file as they are. */
function placeIn(runs: readonly Run[], start: number, end: number, source: Source): Place {
  const first = runAt(runs, start)
  const last = runAt(runs, Math.max(start, end - 1))
  const from = first && offsetIn(first.run, first.at)
  const to = last && (last.run.measure ? last.run.position?.end.offset : last.run.offsets?.[last.at + 1])
  if (from !== undefined && to !== undefined) return source.place(from, to)
  const { line, column } = placeOf((first?.run ?? runs[0])?.position)
  return { line, column }
}

const offsetIn = ({ measure, position, offsets }: Run, at: number): number | undefined =>
  measure ? position?.start.offset : offsets?.[at]

/** The run that has a character, and where in it. */
function runAt(runs: readonly Run[], index: number): { run: Run; at: number } | undefined {
  let at = index
  for (const run of runs) {
    if (at < run.text.length) return { run, at }
    at -= run.text.length
  }
  return undefined
}

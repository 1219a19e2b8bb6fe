import { visit } from 'unist-util-visit'
import { readYaml, type YamlBlock } from '../../../card/yaml.ts'
import { placeIn } from '../../../lesson/measure.ts'
import { figureKinds } from '../../../lesson/nodes.ts'
import type { Settings } from '../engine.ts'
import type { Explained } from '../explain.ts'
import { type KeptLesson, lessonAt } from '../kept-lesson.ts'
import { pathsWithPlaces } from '../rename/paths-in.ts'
import { attributesOf, directiveHelp, figureHelp } from '../vocabulary/directive-words.ts'
import { frontKeyHelp, supplyKeyHelp } from '../vocabulary/key-help.ts'
import { explainInCard } from './in-card.ts'
import { explainExpression, explainPath } from './measure.ts'

/** What stands at a place of a lesson: the value of a measure and where it comes from, or what a word is. */
export function explainAt(text: string, at: number, settings: Settings): Explained | undefined {
  const kept = lessonAt(text, settings)
  const { lesson } = kept
  const holds = ({ place, text: own }: YamlBlock): boolean =>
    place.offset <= at && at <= place.offset + own.length
  const card = lesson.cards.find(holds)
  if (card) return explainInCard(card, at, kept)
  if (lesson.frontMatterBlock && holds(lesson.frontMatterBlock))
    return keyAt(lesson.frontMatterBlock, at, frontKeyHelp)
  if (lesson.supplies && holds(lesson.supplies)) return keyAt(lesson.supplies, at, supplyKeyHelp)
  return inMeasure(at, kept) ?? directiveAt(text, at)
}

function keyAt(
  block: YamlBlock,
  at: number,
  help: (key: string) => string | undefined,
): Explained | undefined {
  for (const { key, keyPlace } of readYaml(block).top.value.fields.values()) {
    const { offset: from = 0, end: to = 0 } = keyPlace
    const line = help(key)
    if (line !== undefined && from <= at && at <= to) return { from, to, lines: [line] }
  }
  return undefined
}

function inMeasure(at: number, kept: KeptLesson): Explained | undefined {
  let found: Explained | undefined
  visit(kept.lesson.tree, 'measure', (node) => {
    const { start, end } = node.position ?? {}
    const [from, to] = [start?.offset ?? 0, end?.offset ?? 0]
    if (found || at < from || at > to) return
    for (const { path, words } of pathsWithPlaces(node.value)) {
      const first = placeIn(node, words[0]?.start ?? 0, words[0]?.end ?? 0).offset ?? 0
      const last = placeIn(node, words.at(-1)?.start ?? 0, words.at(-1)?.end ?? 0).end ?? 0
      const named = first <= at && at <= last ? explainPath(path, undefined, kept) : undefined
      if (named) found = { from: first, to: last, ...named }
    }
    const whole = found ? undefined : explainExpression(node.value, kept)
    if (whole) found = { from, to, ...whole }
  })
  return found
}

/** A word behind colons, an attribute in its braces, or what a figure shows. */
function directiveAt(text: string, at: number): Explained | undefined {
  const start = text.lastIndexOf('\n', at - 1) + 1
  const [line = ''] = /^[^\r\n]*/.exec(text.slice(start)) ?? []
  for (const { index, 0: whole, 1: colons = '', 2: name = '', 3: inside = '' } of line.matchAll(
    /(:{1,})([a-z]+)(?:\[[^\]]*\])?(?:\{([^}]*)\})?/g,
  )) {
    if (!(name in directiveHelp)) continue
    const from = start + index
    const to = from + colons.length + name.length
    if (from <= at && at <= to)
      return { from, to, lines: [directiveHelp[name as keyof typeof directiveHelp].help] }
    const inner = start + index + whole.length - 1 - inside.length
    for (const { index: i, 0: word } of inside.matchAll(/[\w-]+/g)) {
      const kind = figureKinds.find((one) => one === word)
      const help = attributesOf(name).find((one) => one.word === word)?.help ?? (kind && figureHelp[kind])
      if (help && inner + i <= at && at <= inner + i + word.length)
        return { from: inner + i, to: inner + i + word.length, lines: [help] }
    }
  }
  return undefined
}

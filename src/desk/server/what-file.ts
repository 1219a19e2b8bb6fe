import { posix } from 'node:path'
import type { Fields } from '../../card/yaml.ts'
import { readYaml } from '../../card/yaml.ts'
import { frontMatterKeys } from '../../lesson/front-matter.ts'

/** What a file is to a teacher. */
export interface WhatFile {
  readonly kind: 'lesson' | 'class'
  readonly title: string
}

/**
 * What a file is, by what stands in it: Markdown with a card block or with our front matter is a lesson, YAML that names
 * lessons is a class file. Undefined for all else, such as notes.
 */
export function whatFile(path: string, text: string): WhatFile | undefined {
  const plain = text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n')
  if (/\.ya?ml$/i.test(path)) {
    const fields = fieldsIn(plain)
    if (!fields.has('lesson') && !fields.has('lessons')) return undefined
    return { kind: 'class', title: titleIn(fields) ?? named(path) }
  }
  const front = fieldsIn(/^---[ \t]*\n(.*?)\n---[ \t]*(\n|$)/s.exec(plain)?.[1] ?? '')
  const isLesson = [...front.keys()].filter((key) => ours.has(key)).length > 1 || card.test(plain)
  return isLesson ? { kind: 'lesson', title: titleIn(front) ?? heading(plain) ?? named(path) } : undefined
}

/** Much of the world's Markdown has a `title`, so that alone tells nothing. */
const ours = new Set<string>(frontMatterKeys)

/** The first line of a card block. */
const card = /^ {0,3}(`{3,}|~{3,})[ \t]*card([ \t]|$)/m

const fieldsIn = (text: string): Fields =>
  readYaml({ text, place: { line: 1, column: 1, offset: 0 } }).top.value.fields

function titleIn(fields: Fields): string | undefined {
  const title = fields.get('title')?.value
  return (title?.kind === 'text' && title.text.trim()) || undefined
}

const heading = (text: string): string | undefined => /^# +(.*\S)/m.exec(text)?.[1]

/** A name for what has none: `sea/harbour-lights.md` is `Harbour lights`. */
function named(path: string): string {
  const words = posix
    .basename(path)
    .replace(/\.\w+$/, '')
    .replaceAll(/[-_]+/g, ' ')
    .trim()
  return `${words[0]?.toUpperCase() ?? ''}${words.slice(1)}`
}

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { isMap, parseDocument, type YAMLMap } from 'yaml'
import { foldStyles } from '../../../src/card/fold-styles.ts'
import { type Finding, hasErrors } from '../../../src/length/finding.ts'
import { readSize } from '../../../src/length/text.ts'
import { fillLesson } from '../../../src/lesson/fill.ts'
import { readLesson } from '../../../src/lesson/read.ts'
import { sizeFindings } from '../../../src/lesson/sizes/findings.ts'

const lessonOf = (card: string, size: string): string =>
  `---\ntitle: A card\nlevel: beginner\nunits: in\nsizes: [${size}]\n---\n\n\`\`\`card\n${card}\n\`\`\`\n\n1. Fold it.\n`

/** Does what a cure says, as a hand would: finds the key in the block and writes the value there. */
function obeyed(card: string, cure: string): string {
  const document = parseDocument(card)
  for (const [, key = '', value = '', owner] of cure.matchAll(/`([\w ]+): ([^`]+)`(?: for `([^`]+)`)?/g)) {
    const home = owner === undefined ? (document.contents as YAMLMap) : mapNamed(document.contents, owner)
    const inBorder = home?.get('border')
    const place = !home?.has(key) && isMap(inBorder) && owner !== undefined ? inBorder : home
    place?.set(key, value)
  }
  return String(document)
}

function mapNamed(node: unknown, name: string): YAMLMap | undefined {
  if (!isMap(node)) return undefined
  for (const { key, value } of node.items) {
    if (String(key) === name && isMap(value)) return value
    const below = mapNamed(value, name)
    if (below) return below
  }
  return undefined
}

/** Whether the card of a block works in a size, in both units. */
const works = (card: string, size: string): boolean =>
  (['in', 'mm'] as const).every(
    (units) =>
      !hasErrors(
        fillLesson(readLesson(lessonOf(card, size)), { closed: readSize(size), units }).findings.filter(
          ofCard,
        ),
      ),
  )
const ofCard = ({ place }: Finding): boolean => (place?.line ?? 0) > 7

const tried = { cured: 0, resized: 0 }

/** Square folds have one cure, which is tested elsewhere. */
const cards = [
  ...[...foldStyles.values()]
    .filter(({ name }) => !/endless|exploding/.test(name))
    .map((style) => style.starter),
  'fold: bridge\nclosed: 7 x 5 in\nspans:\n  wall: {height: 1 in}\nlettering:\n  name: {on: wall, letters: HARBOUR, widths: 5/8 in}',
  'fold: side\nclosed: 5 x 7 in\nlayers:\n  mat: {on: front, border: {sides: 1 1/4 in, ends: 1/8 in}}\napertures:\n  porthole: {on: front, size: 2 x 2 in}',
]
/** Small cards are the ones that fail; in quarters of an inch. */
const quarters = fc.integer({ min: 6, max: 13 }).map((n) => n / 4)
const small = fc.record({ card: fc.constantFrom(...cards), width: quarters, height: quarters })

test('the cure that is told for a card of any fold and size, done to its text, cures it', {
  timeout: 240_000,
}, () => {
  fc.assert(
    fc.property(small, ({ card, width, height }) => {
      const size = `${width} x ${height} in`
      const lesson = readLesson(lessonOf(card, size))
      const findings = sizeFindings(lesson, fillLesson(lesson))
      expect(hasErrors(findings)).toBe(!works(card, size))
      const cures = findings.flatMap(({ severity, suggestion = '' }) =>
        severity === 'error' ? [suggestion] : [],
      )
      if (cures.length === 0) return
      const exact = cures.find((cure) => cure.includes(' here in both units'))
      const other = cures.flatMap((cure) => /`([^`]+)` is the nearest size/.exec(cure)?.[1] ?? [])[0]
      if (exact !== undefined) {
        tried.cured++
        const sentence = exact.slice(exact.lastIndexOf('; ') + 1)
        expect(works(obeyed(card, sentence), size), `${size}: ${sentence}\n${card}`).toBe(true)
      } else if (other !== undefined) {
        tried.resized++
        expect(works(card, other), `${other}\n${card}`).toBe(true)
      }
    }),
    { numRuns: 80 },
  )
  expect(tried.cured).toBeGreaterThan(0)
})

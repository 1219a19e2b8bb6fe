import { describe, expect, test } from 'vitest'
import { fillLesson } from '../../../src/lesson/fill.ts'
import { readLesson } from '../../../src/lesson/read.ts'
import { wordingOf } from '../../../src/wording/wording.ts'
import { clockText } from '../../../src/workshop/class/clock.ts'
import { readClass } from '../../../src/workshop/class/read-class.ts'
import { runSheet } from '../../../src/workshop/class/run-sheet.ts'
import { slotWords } from '../../../src/workshop/class/slots.ts'
import { taughtLesson } from '../../../src/workshop/class/taught.ts'

const card = `\`\`\`card
fold: bridge
closed: 7 x 5 in
layers:
  backdrop: {on: floor, border: 1/8 in}
spans:
  sea wall: {height: 1 1/4 in, at: bottom}
\`\`\`
`
const lessonOf = (title: string, steps: string) =>
  fillLesson(readLesson(`---\ntitle: ${title}\n---\n\n${card}\n${steps}`))

/** The first course of a class from ten, in short. */
function class_(text: string, ...lessons: ReturnType<typeof lessonOf>[]) {
  const names = lessons.map((_, i) => `${i}.md`).join(', ')
  const { file, findings } = readClass(`people: 4\nstart: 10:00\nlessons: [${names}]\n${text}`)
  expect(findings).toEqual([])
  const taught = file.lessons.flatMap((one, i) => {
    const lesson = lessons[i]
    return lesson ? [taughtLesson(one, lesson, file).taught] : []
  })
  const [course] = runSheet(file, taught).courses
  if (!course) throw new Error('Expected a course')
  return {
    slots: course.slots.map(
      ({ from, minutes, what, step }) => `${clockText(from)} ${minutes} ${step ?? what}`,
    ),
    words: course.slots.map((slot) => slotWords(slot, wordingOf('en', 'in'))),
  }
}

const paint = '1. Paint the backdrop. :minutes[5] :drying[20 min]\n'
const wall = '2. Fold the sea wall. :minutes[8]\n'
const stick = '3. Stick the backdrop on the floor. :minutes[2]\n'

describe('drying', () => {
  // By hand: painted at 10:05, so dry at 10:25.
  test('the class goes on meanwhile, and waits where it must', () => {
    const { slots, words } = class_('', lessonOf('A', paint + wall + stick))
    expect(slots).toEqual(['10:00 5 1', '10:05 8 2', '10:13 12 wait', '10:25 2 3'])
    expect(words[0]).toBe('Paint the backdrop. Dry at 10:25.')
    expect(words[2]).toBe('Wait until 10:25: the backdrop dries.')
  })
  test('nobody waits for what is dry already', () => {
    const { slots } = class_('', lessonOf('A', paint + wall.replace('[8]', '[21]') + stick))
    expect(slots).toEqual(['10:00 5 1', '10:05 21 2', '10:26 2 3'])
  })
  test('a break whose time comes while it dries is taken then', () => {
    const { slots } = class_('breaks: {at: 10:24, for: 10 min}', lessonOf('A', paint + wall + stick))
    expect(slots).toEqual(['10:00 5 1', '10:05 8 2', '10:13 10 break', '10:23 2 wait', '10:25 2 3'])
  })
  test('what dries at the end of a lesson does so during the next one, and while things are cleared up', () => {
    const last = '1. Paint the backdrop. :minutes[5] :drying[40 min]\n'
    const next = '1. Fold the sea wall. :minutes[8]\n'
    const { slots } = class_('clearing: 5', lessonOf('A', last), lessonOf('B', next))
    expect(slots).toEqual(['10:00 5 1', '10:05 8 1', '10:13 5 clearing', '10:18 27 wait'])
  })
})

describe('what is done beforehand', () => {
  const steps =
    '1. Cut the base to {base.size}. :minutes[4]\n2. Score it at {base.scores}. :minutes[3]\n3. Cut the backdrop to {backdrop.size} and stick it on the floor. :minutes[6]\n'
  const lesson = lessonOf('A', steps)
  test.each([
    ['prepare: nothing', ['10:00 4 1', '10:04 3 2', '10:07 6 3']],
    ['', ['10:00 0 1', '10:00 3 2', '10:03 6 3']],
    ['prepare: [cut, score]', ['10:00 0 1', '10:00 0 2', '10:00 6 3']],
  ])('`%s`: a step takes no time when all of it is done', (text, expected) => {
    expect(class_(text, lesson).slots).toEqual(expected)
  })
  test('a step that asks for more keeps its minutes, and says what of it is done', () => {
    const { words } = class_('', lesson)
    expect(words[0]).toMatch(/ Done beforehand\.$/)
    expect(words[1]).not.toMatch(/beforehand|already/)
    expect(words[2]).toMatch(/ The paper is cut already\.$/)
  })
})

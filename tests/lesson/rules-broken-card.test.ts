import { expect, test } from 'vitest'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'

test('a supply whose amount cannot be worked out is on the list all the same, and is not told as missing', () => {
  const lesson = `---
title: Jetty
level: beginner
units: in
---

\`\`\`card
fold: bridge
closd: 7 x 5 in
\`\`\`

\`\`\`supplies
each:
  double-sided tape: base.width * 3
\`\`\`

1. Stick the base down with double-sided tape. :minutes[5]
`
  const { supplies, findings } = fillLesson(readLesson(lesson))
  expect(supplies.each.map(({ item }) => item)).toEqual(['double-sided tape'])
  expect(findings.map(({ rule }) => rule)).not.toContain('unlisted-tool')
})

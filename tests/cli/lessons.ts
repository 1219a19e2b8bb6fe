import { readFileSync } from 'node:fs'

/** The example lesson: no errors. */
export const harbour = readFileSync(new URL('../../lessons/harbour-lights.md', import.meta.url), 'utf8')

/** A small lesson without any finding. */
export const small = `---
title: Low tide
summary: A card that opens like a book.
level: beginner
units: in
---

\`\`\`card
fold: side
closed: 5 x 7 in
base: {stock: white card, weight: 300 gsm}
layers:
  mat: {on: front, border: 1/8 in, stock: patterned paper}
\`\`\`

\`\`\`supplies
each:
  double-sided tape: base.width * 2
shared:
  scoring board: 1 per 3
tutor:
  finished sample: 1
\`\`\`

## Make it

1. Cut the base to {base.size} and score it on the scoring board at {base.scores}.

2. Cut the mat to {mat.size} and stick it to the front with double-sided tape.

::figure[The base]{show=flat of=base}
`

/** The small lesson with two mistakes: a name in line 27 and another in line 29. */
export const broken = small.replace('{base.scores}', '{base.scors}').replace('{mat.size}', '{mta.size}')

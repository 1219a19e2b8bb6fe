/** A small lesson in which nothing is wrong, for texts that come in beside a lesson. */
export const steady = `# Tide table

\`\`\`card
fold: side
closed: 5 x 7 in
base: {stock: card}
\`\`\`

\`\`\`supplies
shared:
  scissors: 1 per 2
\`\`\`

1. Cut the base to {base.size} with scissors, score it at {base.scores} and fold it.
`
